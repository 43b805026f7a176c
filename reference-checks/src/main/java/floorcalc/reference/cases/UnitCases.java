package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Units of length and area: factors that are exact by definition. */
public final class UnitCases implements Topic {
  private static final String FILE = "unit_conversions.csv";
  /** How each unit of length of the table is written on a tape; a yard is three feet by definition. */
  private static final Map<String, String> LENGTHS = Map.of("inch", "1 in", "foot (international)", "1 ft", "yard", "3 ft",
      "mil (0.001 in)", "0.001 in", "1/16 inch", "1/16 in", "1/8 inch", "1/8\"", "3/16 inch", "3/16\"", "1/4 inch", "1/4 in");
  /** Each unit of area as two sides; an acre is a chain by a furlong, 66 ft by 660 ft. */
  private static final Map<String, List<String>> AREAS = Map.of("square inch", List.of("1 in", "1 in"), "square foot", List.of("1 ft", "1 ft"),
      "square yard", List.of("3 ft", "3 ft"), "acre (international)", List.of("66 ft", "660 ft"));

  /** Makes the topic. */
  public UnitCases() {}

  @Override
  public String name() {
    return "Units";
  }

  @Override
  public List<String> files() {
    return List.of(FILE);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    for (DataRow row : DataFile.read(FILE).rows()) {
      String unit = row.text("unit");
      String factor = row.text("factor");
      // Factors were read where they define a unit; products of them follow.
      Kind kind = List.of("inch", "foot (international)").contains(unit) ? Kind.READ : Kind.WORKED_APART;
      if (LENGTHS.containsKey(unit)) {
        String millimetres = row.text("si_unit").equals("mm") ? factor : new BigDecimal(factor).movePointRight(3).toPlainString();
        cases.add(new ReferenceCase(unit, FILE, kind, Question.of("length-in-millimetres").with("length", LENGTHS.get(unit)),
            List.of(Expected.exactly("millimetres", millimetres))));
        cases.add(new ReferenceCase(unit + ", from " + row.text("si_unit"), FILE, kind,
            Question.of("length-in-millimetres").with("length", factor + " " + row.text("si_unit")),
            List.of(Expected.exactly("millimetres", millimetres))));
      } else if (AREAS.containsKey(unit)) {
        cases.add(new ReferenceCase(unit, FILE, kind, Question.of("area-of-rectangle").with("length", AREAS.get(unit).get(0))
            .with("width", AREAS.get(unit).get(1)), List.of(Expected.exactly("squareMetres", factor))));
      }
    }
    return cases;
  }

  @Override
  public List<Remark> remarks() {
    return List.of(new Remark(Remark.Sort.LEFT_OUT, FILE, "Units of volume, mass, force, pressure and moisture flow, and the US survey foot, which is no "
        + "whole number of nanometres and out of use since 2022: the library has no such units, or takes readings in them as they are."));
  }
}
