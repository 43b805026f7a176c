package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.stream.Stream;

/** What may have happened to a measurement that does not fit. */
final class Slips {
  private static final Length SIXTY_FOURTH = Length.ofInches(0, 1, 64);
  private static final Length TENTH = Length.ofNanometres(100_000);

  private final Survey survey;

  Slips(Survey survey) {
    this.survey = survey;
  }

  /** Returns the likely slip in words, empty if none fits what the others say. */
  String of(Measured measured, double expected, double deviation, Layout others) {
    if (measured.kind() == Measured.Kind.TURN) {
      return turn(measured, expected, deviation);
    }
    String usual = usual(measured, expected, deviation);
    return usual.isEmpty() ? betweenOtherCorners(measured, others) : usual;
  }

  /** A slip of the kind that the marks of the tape invite: which marks it had is seen from the reading. */
  private static String usual(Measured measured, double expected, double deviation) {
    Length read = Length.fromMillimetres(measured.read(), RoundingMode.HALF_EVEN);
    Length should = Length.fromMillimetres(expected, RoundingMode.HALF_EVEN);
    double off = StrictMath.hypot(deviation, measured.result().observation().deviation());
    boolean inches = read.remainder(SIXTY_FOURTH).isZero();
    boolean millimetres = read.remainder(TENTH).isZero();
    return Stream.of(Slip.Marks.values())
        .filter(marks -> marks == Slip.Marks.METRIC ? millimetres || !inches : inches)
        .flatMap(marks -> Slip.of(read, marks, should, Length.fromMillimetres(off, RoundingMode.CEILING)).stream())
        .min(Comparator.comparing(slip -> slip.corrected().minus(should).abs())).map(Slip::toString).orElse("");
  }

  private String turn(Measured measured, double expected, double deviation) {
    double within = 3 * StrictMath.hypot(deviation, survey.uncertainty().turnDegrees());
    if (StrictMath.abs(measured.read() + expected) <= within) {
      return "left and right exchanged";
    }
    double inner = StrictMath.copySign(180, expected) - expected;
    return StrictMath.abs(measured.read() - inner) <= within ? "the inner angle given in place of the turn" : "";
  }

  /** Whether the reading is just the distance between two other corners, one of them an end of it, or that of another wall. */
  private String betweenOtherCorners(Measured measured, Layout others) {
    int n = survey.size();
    double within = 3 * measured.result().observation().deviation();
    String found = "";
    double nearest = within;
    for (int a = 1; a <= n; a++) {
      for (int b = a + 1; b <= n; b++) {
        boolean same = a == Math.min(measured.from(), measured.to()) && b == Math.max(measured.from(), measured.to());
        boolean near = a == measured.from() || a == measured.to() || b == measured.from() || b == measured.to()
            || b == a + 1 || a == 1 && b == n;
        double off = StrictMath.abs(others.distance(a - 1, b - 1) - measured.read());
        if (!same && near && off < nearest) {
          nearest = off;
          found = "it is the distance from corner " + a + " to corner " + b + ": taken between the wrong corners";
        }
      }
    }
    return found;
  }
}
