package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.List;
import java.util.Objects;

/** What all calculations of rows ask of their widths. */
final class Widths {
  private Widths() {}

  static Length requirePositive(Length value, String name, String whatToDo) {
    if (!Objects.requireNonNull(value, name).isPositive()) {
      throw new IllegalArgumentException(name + " must be more than 0 mm, but was " + value + "; " + whatToDo);
    }
    return value;
  }

  static Length requireNotNegative(Length value, String name, String whatToDo) {
    if (Objects.requireNonNull(value, name).isNegative()) {
      throw new IllegalArgumentException(name + " must not be negative, but was " + value + "; " + whatToDo);
    }
    return value;
  }

  /** Returns the minimum, or a full board if boards are narrower than it, which is said in a step and a finding. */
  static Length inForce(Length minimum, Length pitch, Source source, List<Step> steps, List<Finding> findings) {
    if (minimum.compareTo(pitch) <= 0) {
      return minimum;
    }
    steps.add(new Step("minimum-in-force", "How wide must an outer row be when a full board is narrower than that?",
        "m = min(m0, p)", List.of(new Term("m0", "narrowest row asked for", minimum, source),
            Term.of("p", "laid pitch", pitch)), pitch, Source.DEFINITION));
    findings.add(new Finding("boards-narrower-than-minimum", Severity.NOTE, "",
        "boards of " + pitch + " are narrower than the " + minimum + " asked for in the outer rows;"
            + " full boards are asked for there in its place", source));
    return pitch;
  }
}
