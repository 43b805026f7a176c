package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** Changes of level between floors, spaces at the leaf of a door, risers. */
public final class TransitionCases extends GatheredTopic {
  private static final String FILE = "transitions_and_clearances.csv";
  private static final String FINISHED = "space under the leaf, over the finished floor";
  private static final String BARE = "space under the leaf, over the bare subfloor";
  private static final String JAMB = "gap between leaf and head or jamb";

  private static final List<String> LAYERS = List.of("2 mm", "14 mm");

  /** Makes the topic. */
  public TransitionCases() {}

  @Override
  public String name() {
    return "Changes of level and spaces at doors";
  }

  @Override
  public List<String> files() {
    return List.of(FILE);
  }

  @Override
  List<FileCases> gather() {
    FileCases file = new FileCases(FILE);
    for (DataRow row : file.rows()) {
      String item = row.text("item");
      String name = row.text("source") + ": " + item;
      if (item.startsWith("walking surface") || item.startsWith("cross slope")) {
        file.leaveOut(row, name, "slopes of ways to walk on, which no floor of boards has");
      } else if (item.startsWith("clearance to heating pipes")) {
        file.leaveOut(row, name, "the rule for walls, checked with expansion_gaps.csv");
      } else if (item.startsWith("hole for pipe")) {
        file.leaveOut(row, name, "from memory");
      } else {
        add(file, row, name, item, row.text("value"));
      }
    }
    return List.of(file);
  }

  private static void add(FileCases file, DataRow row, String name, String item, String value) {
    switch (item) {
      case "vertical change in level without edge treatment, at most" -> level(file, row, name, value, Expected.text("treatment", "no treatment"),
          Expected.text("slope", "none"));
      case "change in level bevelled not steeper than 1:2" -> {
        level(file, row, name, value, Expected.text("treatment", "a bevelled edge"), Expected.text("slope", "1:2"));
        level(file, row, name + ", from its lower end", "6.350001", Expected.text("treatment", "a bevelled edge"), Expected.text("slope", "1:2"));
      }
      case "above 1/2 in: ramp, maximum slope" -> {
        level(file, row, name, "12.700001", Expected.text("treatment", "a ramp"), Expected.text("slope", value));
        level(file, row, name + ", of any height", "1000", Expected.text("treatment", "a ramp"), Expected.text("slope", value));
      }
      case "slope 1:10 to 1:12 where space limited, rise at most" -> {
        level(file, row, name, value, steeper("1:10"));
        level(file, row, name + ", a little more", "152.400001", steeper("none"));
      }
      case "slope 1:8 to 1:10 where space limited, rise at most" -> {
        level(file, row, name, value, steeper("1:10, 1:8"));
        level(file, row, name + ", a little more", "76.200001", steeper("1:10"));
      }
      case "adjoining covering laid first" -> {
        level(file, row, name, "0", Expected.text("treatment", "no treatment"));
        level(file, row, name + ", not flush", "0.000001", Expected.text("treatment", "a chamfered threshold or a bar"));
      }
      case "T profile evens out up to" -> practice(file, row, name, value, "a T profile", "a reducer");
      case "reducer up to" -> practice(file, row, name, value, "a reducer", "a bevelled edge");
      case "edge bevelled 1:2 up to" -> practice(file, row, name, value, "a bevelled edge", "nothing is said");
      case "undercut of internal doors above finished floor, at least" -> {
        door(file, row, name, FINISHED, value, "");
        leaf(file, row, name + ", floor of 16 mm", "26 mm", value, "met");
        leaf(file, row, name + ", floor of 16 mm, a little less", "25.999999 mm", "9.999999", "not met");
      }
      case "undercut above bare floorboards" -> door(file, row, name, BARE, value, "");
      case "gap under internal door to unfinished floor" -> door(file, row, name, BARE, value.split(" to ")[0], value.split(" to ")[1]);
      case "gap door to head or jamb at most" -> door(file, row, name, JAMB, "", value);
      case "leaf above finished floor" -> door(file, row, name, FINISHED, value.split(" to ")[0], value.split(" to ")[1]);
      case "difference between any two risers, at most" -> {
        stair(file, row, name, Expected.exactly("spreadMillimetres", value));
        risers(file, row, name + ", foot raised by as much", value + " mm", value, "met");
        risers(file, row, name + ", foot raised by 10 mm", "10 mm", "10", "not met");
      }
      case "riser at most" -> stair(file, row, name, Expected.exactly("highestMillimetres", value));
      case "profile where the same floor goes on at one height" -> profile(file, row, name, "the same floor", "0 mm", value);
      case "profile where the same floor goes on at another height" -> profile(file, row, name, "the same floor", "5 mm", value);
      case "profile at a fixed edge" -> profile(file, row, name, "a fixed edge", "5 mm", value);
      case "casing cut above the floor by" -> file.add(row, name, Kind.COMMON_PRACTICE, Question.of("undercut-of-casing").withList("layers", LAYERS),
          // 2 mm and 14 mm of floor, and what is left above it.
          Expected.exactly("millimetres", new BigDecimal(value).add(BigDecimal.valueOf(16)).toPlainString()));
      default -> throw new IllegalStateException(row + " is neither used nor left out");
    }
  }

  private static Kind kind(DataRow row) {
    return Kind.ofStatus(row.text("status")).orElseThrow();
  }

  private static Expected steeper(String slopes) {
    return Expected.text("steeperWhereSpaceIsLimited", slopes);
  }

  private static void level(FileCases file, DataRow row, String id, String millimetres, Expected... figures) {
    Expected[] all = Arrays.copyOf(figures, figures.length + 1);
    all[figures.length] = FileCases.standing(kind(row));
    file.add(row, id, kind(row), Question.of("change-of-level").with("source", row.text("source")).with("difference", millimetres + " mm"), all);
  }

  /** Up to a figure, itself included, and what a nanometre more asks for. */
  private static void practice(FileCases file, DataRow row, String id, String millimetres, String treatment, String beyond) {
    level(file, row, id, millimetres, Expected.text("treatment", treatment));
    level(file, row, id + ", a little more", new BigDecimal(millimetres).add(new BigDecimal("0.000001")).toPlainString(),
        Expected.text("treatment", beyond));
  }

  private static void door(FileCases file, DataRow row, String id, String space, String least, String most) {
    file.add(row, id, kind(row), Question.of("space-at-door").with("source", row.text("source")).with("space", space),
        least.isEmpty() ? Expected.text("leastMillimetres", "none") : Expected.exactly("leastMillimetres", least),
        most.isEmpty() ? Expected.text("mostMillimetres", "none") : Expected.exactly("mostMillimetres", most), FileCases.standing(kind(row)));
  }

  /** The space under a leaf over a floor of 2 mm and 14 mm. */
  private static void leaf(FileCases file, DataRow row, String id, String leaf, String millimetres, String verdict) {
    file.add(row, id, Kind.WORKED_APART, Question.of("space-under-leaf").with("source", row.text("source")).with("leafAboveSubfloor", leaf)
        .withList("layers", LAYERS), Expected.exactly("millimetres", millimetres), Expected.text("verdict", verdict));
  }

  private static void profile(FileCases file, DataRow row, String id, String beyond, String difference, String profile) {
    file.add(row, id, Kind.COMMON_PRACTICE, Question.of("profile-at-edge").with("source", row.text("source")).with("beyond", beyond)
        .with("difference", difference), Expected.text("profile", profile));
  }

  /** Three risers of 180 mm, the lowest of which a floor at the foot makes lower. */
  private static void risers(FileCases file, DataRow row, String id, String floorAtFoot, String spread, String verdict) {
    file.add(row, id, Kind.WORKED_APART, Question.of("risers-after-floor").with("source", row.text("source"))
        .withList("risers", List.of("180 mm", "180 mm", "180 mm")).with("floorAtFoot", floorAtFoot),
        Expected.exactly("spreadMillimetres", spread), Expected.exactly("highestMillimetres", "180"), Expected.text("verdict", verdict));
  }

  private static void stair(FileCases file, DataRow row, String id, Expected expected) {
    file.add(row, id, kind(row), Question.of("risers-of-stairs").with("source", row.text("source")), expected, FileCases.standing(kind(row)));
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.DISAGREEMENT, FILE, "Under a door there are at least 10 mm over the finished floor in UK ventilation practice, 1/2 to 3/4 in in "
            + "common practice; over the bare subfloor at least 20 mm for air to pass, 5 to 22 mm by the tolerances of a warranty."),
        new Remark(Remark.Sort.NO_SOURCE, FILE, "Up to which difference of height a T profile, a reducer or a bevelled edge does, and how much risers may differ "
            + "where they are not the code's: common practice."));
  }
}
