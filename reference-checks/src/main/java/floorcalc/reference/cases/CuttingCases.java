package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Pieces cut from bars and boards: the fewest, what no cutting can do without, quick ways, the longest leftover. */
public final class CuttingCases implements Topic {
  private static final String INDEX = "bpp_index.csv";
  private static final List<String> LISTS = List.of("bpp_instances_small.txt", "bpp_instances_falkenauer.txt", "bpp_instances_scholl.txt");
  private static final String TEXTBOOK = "csp_textbook.csv";
  private static final String TWO = "two_per_bin_from_published.csv";
  private static final String LEFT_RIGHT = "two_per_bin_left_right_constructed.csv";
  private static final String LEFTOVER = "usable_leftover_constructed.csv";
  private static final String CUT = "bars-cut";
  private static final String ESTIMATE = "bars-estimate";
  /** Half a unit of the last digit of a printed value of the linear program of 4 decimals: it is rounded up after that much is taken off. */
  private static final BigDecimal PRINTED_TO = new BigDecimal("0.00005");
  /** Its optimum is known, but no bound that proves it. */
  private static final String HARD = "HARD0";

  /** Makes the topic. */
  public CuttingCases() {}

  /** A published list of lengths; the unit is millimetres. */
  private record Instance(String name, String file, String bar, String optimum, List<String> lengths) {
    static Instance of(String file, String line) {
      String[] parts = line.split(",");
      return new Instance(parts[0], file, parts[1], parts[2], List.of(parts[3].trim().split(" ")));
    }

    Question ask(String calculation) {
      return pieces(calculation, bar, lengths);
    }
  }

  @Override
  public String name() {
    return "Cutting from bars and boards";
  }

  @Override
  public List<String> files() {
    return List.of(INDEX, LISTS.get(0), LISTS.get(1), LISTS.get(2), TEXTBOOK, TWO, LEFT_RIGHT, LEFTOVER);
  }

  @Override
  public List<ReferenceCase> cases() {
    Map<String, Instance> instances = new LinkedHashMap<>();
    for (String file : LISTS) {
      DataFile.read(file).lines().stream().map(line -> Instance.of(file, line)).forEach(one -> instances.put(one.name(), one));
    }
    List<ReferenceCase> cases = new ArrayList<>();
    DataFile.read(INDEX).rows().forEach(row -> addBounds(row, instances.get(row.text("name")), cases));
    instances.values().forEach(one -> addOptimum(one, cases));
    DataFile.read(TEXTBOOK).rows().forEach(row -> addTextbook(row, cases));
    DataFile.read(TWO).rows().forEach(row -> cases.add(new ReferenceCase(row.text("instance"), TWO, Kind.WORKED_APART,
        instances.get(row.text("instance")).ask("boards-of-two-pieces"),
        List.of(Expected.exactly("pieces", row.text("n")), Expected.exactly("boards", row.text("optimum_two_per_bin"))))));
    DataFile.read(LEFT_RIGHT).rows().forEach(row -> addLeftRight(row, cases));
    DataFile.read(LEFTOVER).rows().forEach(row -> addLeftover(row, cases));
    return cases;
  }

  private static Question pieces(String calculation, String bar, List<String> lengths) {
    return Question.of(calculation).with("bar", bar + " mm").withList("pieces", lengths.stream().map(length -> length + " mm").toList())
        .with("sawKerf", "0 mm");
  }

  private static void addBounds(DataRow row, Instance instance, List<ReferenceCase> cases) {
    List<Expected> expected = new ArrayList<>(List.of(Expected.exactly("pieces", row.text("n")),
        Expected.exactly("lengthOfPieces", row.text("sum")), Expected.exactly("barsByLength", row.text("L1")),
        Expected.exactly("barsByLongPieces", row.text("L2")), Expected.exactly("barsLongestIntoFirst", row.text("FFD")),
        Expected.exactly("barsLongestIntoFullest", row.text("BFD"))));
    if (!row.isEmpty("lp")) {
      expected.add(Expected.exactly("barsByPrices", row.number("lp").subtract(PRINTED_TO).setScale(0, RoundingMode.CEILING).toPlainString()));
    }
    cases.add(new ReferenceCase(row.text("name"), INDEX, Kind.WORKED_APART, instance.ask(ESTIMATE), expected));
  }

  private static void addOptimum(Instance one, List<ReferenceCase> cases) {
    Kind kind = one.name().endsWith("minus46") ? Kind.WORKED_APART : Kind.QUOTED;
    List<Expected> expected = one.name().equals(HARD)
        ? List.of(Expected.between("barsAtLeast", "55", one.optimum(), "a true bound is at most the published optimum; 55 is the bound by length"),
            Expected.between("bars", one.optimum(), "59", "no cutting needs fewer than the published optimum; longest first needs 59"))
        : fewest(one.optimum());
    cases.add(new ReferenceCase(one.name(), one.file(), kind, one.ask(CUT), expected));
  }

  /** The bound is as good as the cutting, so the cutting is proven. */
  private static List<Expected> fewest(String optimum) {
    return List.of(Expected.exactly("bars", optimum), Expected.exactly("barsAtLeast", optimum));
  }

  private static void addTextbook(DataRow row, List<ReferenceCase> cases) {
    List<String> lengths = new ArrayList<>();
    for (String term : row.text("demand").split(" ")) {
      String[] parts = term.split("x");
      lengths.addAll(Collections.nCopies(Integer.parseInt(parts[0]), parts[1]));
    }
    String name = row.text("name");
    Kind kind = row.text("status").equals("verified against text found") ? Kind.QUOTED : Kind.WORKED_APART;
    List<Expected> cut = new ArrayList<>(fewest(row.text("optimum")));
    cut.add(Expected.printed("leftOverPercent", row.text("waste_percent")));
    cases.add(new ReferenceCase(name, TEXTBOOK, kind, pieces(CUT, row.text("stock"), lengths), cut));
    cases.add(new ReferenceCase(name + ", bounds", TEXTBOOK, Kind.WORKED_APART, pieces(ESTIMATE, row.text("stock"), lengths), List.of(
        Expected.exactly("pieces", row.text("pieces")), Expected.exactly("lengthOfPieces", row.text("total_length")),
        Expected.exactly("barsByLength", row.text("L1")), Expected.exactly("barsLongestIntoFirst", row.text("FFD")),
        Expected.exactly("barsByPrices",
            row.number("lp_optimum").subtract(PRINTED_TO.movePointLeft(2)).setScale(0, RoundingMode.CEILING).toPlainString()))));
  }

  private static void addLeftRight(DataRow row, List<ReferenceCase> cases) {
    cases.add(new ReferenceCase(row.text("id"), LEFT_RIGHT, Kind.WORKED_APART, Question.of("boards-of-a-left-and-a-right-piece")
        .with("board", row.text("board") + " mm").withList("leftPieces", lengths(row, "left_pieces"))
        .withList("rightPieces", lengths(row, "right_pieces")).with("sawKerf", row.text("kerf") + " mm"),
        List.of(Expected.exactly("boards", row.text("min_boards")), Expected.exactly("boardsOfTwo", row.text("max_pairs")))));
  }

  private static List<String> lengths(DataRow row, String column) {
    return Arrays.stream(row.text(column).split(" ")).map(length -> length + " mm").toList();
  }

  private static void addLeftover(DataRow row, List<ReferenceCase> cases) {
    List<Expected> expected = new ArrayList<>(fewest(row.text("min_boards")));
    expected.add(Expected.exactly("longestLeftover", row.text("max_single_leftover")));
    expected.add(Expected.text("longestLeftoverProven", "yes"));
    expected.add(Expected.exactly("leftOver", row.text("total_leftover")));
    cases.add(new ReferenceCase(row.text("id"), LEFTOVER, Kind.CONSTRUCTED,
        pieces(CUT, row.text("board"), List.of(row.text("pieces").split(" "))), expected));
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.DISAGREEMENT, LISTS.get(1), "OR-Library lists 51 bins as best known for u120_08; 50 is proven, and is what stands here."),
        new Remark(Remark.Sort.DISAGREEMENT, LISTS.get(2), "HARD0: the published optimum of 56 is neither met nor proven by the library within the steps it "
            + "allows itself, nor was it by the program that worked the other figures out apart (55 and 59); what is checked is that 56 lies between "
            + "the library's bound and its cutting."),
        new Remark(Remark.Sort.LEFT_OUT, INDEX, "The value of the linear program itself: the library rounds it up to whole bars, and so is the printed figure here, less half "
            + "of its last digit. It is not given for HARD0. The optimum of each list is checked under the file of its lengths."),
        new Remark(Remark.Sort.LEFT_OUT, TEXTBOOK, "Columns patterns_all and patterns_maximal: the library makes the ways to fill a bar as it needs them and does not count them."),
        new Remark(Remark.Sort.LEFT_OUT, TWO, "Column optimum_unlimited: it is the optimum of the list, checked under the file of its lengths."),
        new Remark(Remark.Sort.NO_SOURCE, TEXTBOOK, "453 (Chvatal) and 47 (AMPL) are known from memory as printed; they were found again by a program apart, and count as such."),
        new Remark(Remark.Sort.NO_SOURCE, LEFTOVER, "No published instance for usable leftovers with all its numbers was found, nor one for left-hand and right-hand pieces: "
            + "these lists are made up."));
  }
}
