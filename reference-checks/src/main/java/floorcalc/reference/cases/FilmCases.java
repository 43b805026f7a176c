package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.List;

/** Films and underlays below a floor: how far they overlap, how thick and how tight they are. */
public final class FilmCases extends GatheredTopic {
  private static final String FILE = "membranes_and_underlays.csv";

  /** Makes the topic. */
  public FilmCases() {}

  @Override
  public String name() {
    return "Films below a floor";
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
      String value = row.text("value");
      Kind kind = Kind.ofStatus(row.text("status")).orElseThrow();
      if (item.startsWith("overlap") || item.startsWith("soft underlays")) {
        Question question = Question.of("overlap-of-film").with("source", row.text("source"));
        if (kind == Kind.FROM_MEMORY) {
          // The figure is not checked against, only that the library says what it is.
          file.add(row, name, kind, question, FileCases.standing(kind));
        } else {
          file.add(row, name, kind, question, Expected.exactly("millimetres", value), FileCases.standing(kind));
        }
      } else if (row.text("source").equals("IRC classes")) {
        addClass(file, row, name, kind);
      } else if (row.text("source").equals("NOFMA")) {
        // 4 or 6 mil: the lesser figure, 4 * 0.0254 mm.
        file.add(row, name, kind, limits(row, "concrete"), Expected.exactly("thinnestMillimetres", "0.1016"), FileCases.standing(kind));
      } else {
        String figure = item.startsWith("polyethylene") ? "thinnestMillimetres" : item.endsWith("at least") ? "leastPerm" : "mostPerm";
        file.add(row, name, kind, limits(row, item.contains("wood") ? "wood" : "concrete"), Expected.exactly(figure, value),
            FileCases.standing(kind));
      }
    }
    return List.of(file);
  }

  private static Question limits(DataRow row, String over) {
    return Question.of("limits-of-film").with("source", row.text("source")).with("over", over);
  }

  /** The bound of a class is in it, and what lets through a hair more is in the next. */
  private static void addClass(FileCases file, DataRow row, String name, Kind kind) {
    String item = row.text("item");
    String next = item.startsWith("Class III") ? "no vapour retarder" : item.startsWith("Class II") ? "Class III" : "Class II";
    BigDecimal bound = row.number("value");
    file.add(row, name, kind, Question.of("class-of-vapour-retarder").with("permeance", bound),
        Expected.text("class", item.substring(0, item.indexOf(' ', "Class ".length()))), FileCases.standing(kind));
    file.add(row, name + ", a little more", kind, Question.of("class-of-vapour-retarder").with("permeance", bound.add(new BigDecimal("0.000001"))),
        Expected.text("class", next));
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.DISAGREEMENT, FILE, "Films overlap by 4 in (101.6 mm) in NWFA's magazine, 150 mm in NBS K21, 100 mm in Chinese practice, and, "
            + "from memory alone, 200 mm in German practice; none of them is taken for another."),
        new Remark(Remark.Sort.DISAGREEMENT, FILE, "Polyethylene on a slab is at least 6 mil by NWFA and 4 or 6 mil by NOFMA, of which the library takes the "
            + "lesser figure."),
        new Remark(Remark.Sort.LEFT_OUT, FILE, "The overlap of German practice is from memory: that the library says so is checked, its figure is not."),
        new Remark(Remark.Sort.NO_SOURCE, FILE, "That soft underlays butt is common practice."));
  }
}
