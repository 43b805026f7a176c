package floorcalc.outline.survey;

/** What may have happened to a measurement that does not fit. */
final class Slips {
  private final Survey survey;

  Slips(Survey survey) {
    this.survey = survey;
  }

  /** Returns the likely slip in words, empty if none fits what the others say. */
  String of(Measured measured, double expected, double deviation, Layout others) {
    if (measured.kind() == Measured.Kind.TURN) {
      return turn(measured, expected, deviation);
    }
    return betweenOtherCorners(measured, others);
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
