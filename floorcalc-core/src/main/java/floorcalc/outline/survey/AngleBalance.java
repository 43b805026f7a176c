package floorcalc.outline.survey;

import floorcalc.working.Calculated;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The angles of a room made to add up: those of a shape of {@code n} corners come to {@code (n - 2) * 180} degrees, and
 * what they miss is shared by all alike.
 *
 * @param angles the angles as balanced, not null
 * @param misclosure what the measured angles came to beyond what they should, not null
 * @since 0.1
 */
public record AngleBalance(List<Angle> angles, Angle misclosure) implements Serializable {

  /** Checks that no part is null and copies the list. */
  public AngleBalance {
    Objects.requireNonNull(angles, "angles");
    angles = List.copyOf(angles);
    Objects.requireNonNull(misclosure, "misclosure");
  }

  /**
   * Returns angles balanced.
   * <p>
   * Where the misclosure cannot be shared out in whole millionths of a second, its running share is rounded, never the
   * share of one: the balanced angles come to the sum exactly.
   *
   * @param measured the angles on the floor's side in order, not null, 3 or more, each more than 0 and less than 360 degrees
   * @return the balanced angles with the steps {@code angle-sum}, {@code misclosure} and one for each angle, not null
   * @throws IllegalArgumentException if there are fewer than 3 or one is out of range
   */
  public static Calculated<AngleBalance> of(List<Angle> measured) {
    int n = measured.size();
    if (n < 3) {
      throw new IllegalArgumentException("a room has at least 3 angles, but " + n + " were given");
    }
    Angle sum = Angle.ZERO;
    List<Term> terms = new ArrayList<>();
    StringBuilder all = new StringBuilder("s = ");
    for (int i = 0; i < n; i++) {
      Angle angle = measured.get(i);
      if (angle.compareTo(Angle.ZERO) <= 0 || angle.compareTo(Angle.ofDegrees(360)) >= 0) {
        throw new IllegalArgumentException("angle " + (i + 1) + " must be more than 0 and less than 360 degrees, but was " + angle
            + "; give the angle on the floor's side");
      }
      sum = sum.plus(angle);
      terms.add(Term.of("a" + (i + 1), "angle " + (i + 1), angle));
      all.append(i == 0 ? "" : " + ").append("a").append(i + 1);
    }
    Angle should = Angle.ofDegrees(180 * (n - 2));
    Angle misclosure = sum.minus(should);
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("angle-sum", "What do the angles come to?", all.toString(), terms, sum, Source.DEFINITION));
    steps.add(new Step("misclosure", "How much is that beyond what they must come to?", "m = s - (n - 2) * 180deg",
        List.of(Term.of("s", "sum of the angles", sum), Term.of("n", "corners", n)), misclosure, Source.DEFINITION));
    List<Angle> balanced = new ArrayList<>();
    Angle before = Angle.ZERO;
    for (int i = 0; i < n; i++) {
      Angle share = misclosure.part(i + 1, n);
      Angle own = share.minus(before);
      Angle angle = measured.get(i).minus(own);
      steps.add(new Step("balanced-" + (i + 1), "What is angle " + (i + 1) + " less its share?", "b = a - c",
          List.of(Term.of("a", "angle " + (i + 1) + " as measured", measured.get(i)),
              Term.of("c", "one of " + n + " shares of " + misclosure, own)), angle, Source.DEFINITION));
      balanced.add(angle);
      before = share;
    }
    return Calculated.of(new AngleBalance(balanced, misclosure), steps);
  }
}
