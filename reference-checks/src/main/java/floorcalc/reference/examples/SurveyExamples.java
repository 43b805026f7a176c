package floorcalc.reference.examples;

import static floorcalc.reference.examples.Printed.in;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.survey.Angle;
import floorcalc.outline.survey.AngleBalance;
import floorcalc.outline.survey.ClosingLimit;
import floorcalc.outline.survey.Course;
import floorcalc.outline.survey.Squareness;
import floorcalc.outline.survey.Traverse;
import floorcalc.reference.check.Expected;
import floorcalc.reference.data.DataRow;
import floorcalc.reference.examples.WorkedExample.Maker;
import floorcalc.rows.ErrorBudget;
import floorcalc.rows.ErrorPart;
import java.math.BigDecimal;
import java.util.List;

/** Measuring rooms. */
final class SurveyExamples {
  private static final String COURSES = "survey_traverse_courses.csv";
  private static final String WALKS = "survey_traverse_summary.csv";

  private SurveyExamples() {}

  static List<WorkedExample> all() {
    return List.of(walk("closed-walk", "A walk round a plot does not close. Where are its corners?", "T1",
            "The source prints 276.479 for the third adjusted length; its own coordinates give 276.497: two digits changed places."),
        walk("walk-that-misses", "A walk misses its start by a long way. Where are its corners?", "T4",
            "The walk misses by 1 in 203: the compass rule shares the error out all the same, and the library says that it is too large to be trusted."),
        angles(), diagonal(), tenParts());
  }

  private static WorkedExample walk(String name, String title, String id, String remark) {
    DataRow walk = Printed.row(WALKS, "id", id);
    List<DataRow> courses = Printed.rows(COURSES, "id", id);
    Maker maker = new Maker(name, title, walk.text("source"), "Azimuths in degrees and lengths in " + walk.text("unit") + ", read as metres here, which changes no digit: "
        + String.join("; ", courses.stream().map(row -> row.text("azimuth_deg") + " for " + row.text("length")).toList()) + ".");
    Traverse traverse = maker.shown(Traverse.of(courses.stream().map(row -> new Course(Angle.fromDegrees(row.number("azimuth_deg")),
        Printed.metres(row.text("length")))).toList(), ClosingLimit.FLOOR));
    for (int i = 0; i < courses.size(); i++) {
      maker.figure(Expected.within("latitude of course " + (i + 1), courses.get(i).text("lat_published"), "0.00065", "the source rounds azimuths"),
          in(traverse.latitudes().get(i), "m"), Printed.QUOTED);
      maker.figure(Expected.within("departure of course " + (i + 1), courses.get(i).text("dep_published"), "0.00065", "the source rounds azimuths"),
          in(traverse.departures().get(i), "m"), Printed.QUOTED);
    }
    BigDecimal area = BigDecimal.valueOf(traverse.area().toSquareMetres());
    return maker.figure(Expected.within("sum of latitudes", walk.text("misclosure_lat_published"), "0.0007", "the source adds rounded figures"), in(traverse.latitudeError(), "m"), Printed.QUOTED)
        .figure(Expected.within("sum of departures", walk.text("misclosure_dep_published"), "0.0007", "the source adds rounded figures"), in(traverse.departureError(), "m"), Printed.QUOTED)
        .figure(Expected.within("area", walk.text("area_published"), "0.06", "the source goes on with rounded figures"), area, Printed.QUOTED).done(remark);
  }

  private static WorkedExample angles() {
    String file = "survey_angle_balance.csv";
    List<DataRow> rows = Printed.rows(file, "id", "B1");
    Maker maker = new Maker("angles-balanced", "Six angles of a room with a reflex corner add up to 18 seconds too much. What are they, balanced?", Printed.source(file),
        "Angles " + String.join(", ", rows.stream().map(row -> row.text("station") + " " + row.text("observed_dms")).toList()) + ".");
    AngleBalance balance = maker.shown(AngleBalance.of(rows.stream().map(row -> angle(row.text("observed_dms"))).toList()));
    maker.figure(Expected.exactly("too much [seconds]", "18"), balance.misclosure().seconds(), Printed.QUOTED);
    for (int i = 0; i < rows.size(); i++) {
      maker.figure(Expected.text("angle " + rows.get(i).text("station"), rows.get(i).text("adjusted_published_dms")), balance.angles().get(i).toString(),
          Printed.QUOTED);
    }
    return maker.done("Six angles add up to (6 - 2) × 180° = 720°; each gives up 3 seconds.");
  }

  /** Degrees, minutes and seconds with hyphens between. */
  private static Angle angle(String dms) {
    String[] parts = dms.split("-");
    return Angle.parse(parts[0] + "° " + parts[1] + "' " + parts[2] + "\"");
  }

  private static WorkedExample diagonal() {
    DataRow row = Printed.row("survey_squareness_rectangles.csv", "id", "R6");
    Maker maker = new Maker("diagonal-of-a-foundation", "A foundation is 20 by 30 ft. How long must its diagonals be?", row.text("source"),
        "Sides of " + row.text("a") + " and " + row.text("b") + ", read as metres here, which changes no digit.");
    Length diagonal = maker.shown(Squareness.squareDiagonal(Printed.metres(row.text("a")), Printed.metres(row.text("b"))));
    return maker.figure(Expected.printed("diagonal", row.text("published")), in(diagonal, "m"), Printed.APART)
        .done("The sides were read in the source, the value was worked out from them. Equal diagonals alone prove nothing: opposite sides must be equal, too.");
  }

  private static WorkedExample tenParts() {
    DataRow row = Printed.row("tolerance_and_monte_carlo.csv", "id", "R1");
    String[] published = row.text("published").split("; ");
    Maker maker = new Maker("ten-parts-in-a-stack", "Ten parts may each be off by 0.1 mm. How far is their stack off?", Printed.source("tolerance_and_monte_carlo.csv"),
        "Ten parts, each within ± 0.1 mm.");
    ErrorBudget budget = maker.shown(ErrorBudget.of(List.of(new ErrorPart("parts", ErrorPart.Shape.WITHIN_LIMITS, Length.parse("0.1 mm"), 10))));
    return maker.figure(Expected.printed("worst case [mm]", published[0]), in(budget.worstCase().orElseThrow(), "mm"), Printed.QUOTED)
        .figure(Expected.printed("root of the sum of squares [mm]", published[1]), in(budget.rootSumSquare(), "mm"), Printed.QUOTED)
        .done("The working shows the standard deviation, which is the root of the sum of squares over √3: an error within limits is not at its limit.");
  }

  /** For areas whose unit is the square of what is read as metres. */
  static BigDecimal squareMetres(Area area) {
    return new BigDecimal(area.toHalfSquareNanometres()).divide(BigDecimal.valueOf(2)).movePointLeft(18);
  }
}
