package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * The risers of a stair once floors lie at its foot, on its treads and at its top.
 * <p>
 * A floor at the foot lowers the first riser, one at the top raises the last; boards on the treads raise the first and lower
 * the last and leave those between as they are.
 *
 * @param after each riser from below, in the finished stair; not null
 * @param spread the highest less the lowest, not null
 * @param judgements the spread and the highest riser held against the limits, not null
 * @since 0.1
 */
public record Risers(List<Length> after, Length spread, List<Judgement> judgements) {
  private static final int MOST = 100;

  /** Checks that no part is null and copies the lists. */
  public Risers {
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(judgements, "judgements");
    after = List.copyOf(after);
    Objects.requireNonNull(spread, "spread");
    judgements = List.copyOf(judgements);
  }

  /**
   * Works out the risers of a finished stair.
   *
   * @param before the risers as they are, from below, measured from bare to bare; not null, 1 to 100, each more than zero
   * @param foot the floor at the foot of the stair, not null
   * @param treads what is laid on each tread, not null
   * @param top the floor at the top, not null
   * @param set the limits, not null
   * @return the risers with a step {@code riser} for each and {@code riser-spread}; a finding {@code risers-uneven} or
   *     {@code riser-too-high} where a limit is not kept; not null
   * @throws IllegalArgumentException if there is no riser, there are more than 100, or one is not more than zero, before or after
   */
  public static Calculated<Risers> of(List<Length> before, HeightStack foot, HeightStack treads, HeightStack top,
      StairSet set) {
    Objects.requireNonNull(treads, "treads");
    if (before.isEmpty() || before.size() > MOST) {
      throw new IllegalArgumentException("a stair must have 1 to " + MOST + " risers, but has " + before.size());
    }
    List<Length> after = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      Length below = i == 0 ? foot.total() : treads.total();
      Length above = i == before.size() - 1 ? top.total() : treads.total();
      after.add(before.get(i).minus(below).plus(above));
      if (!before.get(i).isPositive() || !after.get(i).isPositive()) {
        throw new IllegalArgumentException("riser " + (i + 1) + " must be more than 0 mm, but is " + before.get(i)
            + " before and " + after.get(i) + " after the floor; measure it again");
      }
      steps.add(new Step("riser", "How high is riser " + (i + 1) + " once the floor lies?", "r = o - b + a",
          List.of(Term.of("o", "as it is", before.get(i)), Term.of("b", i == 0 ? "floor at the foot" : "laid on the tread below", below),
              Term.of("a", i == before.size() - 1 ? "floor at the top" : "laid on the tread above", above)), after.get(i),
          Source.DEFINITION));
    }
    Length highest = Collections.max(after);
    Length spread = highest.minus(Collections.min(after));
    List<Term> terms = new ArrayList<>();
    after.forEach(one -> terms.add(Term.of("r" + (terms.size() + 1), "riser " + (terms.size() + 1), one)));
    String symbols = terms.stream().map(Term::symbol).collect(Collectors.joining(", "));
    steps.add(new Step("riser-spread", "How far apart are the highest and the lowest?",
        "s = max(" + symbols + ") - min(" + symbols + ")", terms, spread, Source.DEFINITION));
    return judged(after, spread, highest, steps, set);
  }

  private static Calculated<Risers> judged(List<Length> after, Length spread, Length highest, List<Step> steps, StairSet set) {
    List<Judgement> judgements = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    boolean even = spread.compareTo(set.spread()) <= 0;
    judgements.add(judgement("riser-spread", "spread of the risers", spread, set.spread(), even, set,
        "pad or pare treads until the risers agree"));
    if (!even) {
      findings.add(new Finding("risers-uneven", Severity.SERIOUS, "", "risers are " + spread + " apart, " + set.name() + " allows "
          + set.spread() + ": uneven risers trip people; pad the treads, and follow the local code", set.source()));
    }
    set.highest().ifPresent(limit -> {
      boolean low = highest.compareTo(limit) <= 0;
      judgements.add(judgement("riser-height", "highest riser", highest, limit, low, set, "follow the local code"));
      if (!low) {
        findings.add(new Finding("riser-too-high", Severity.SERIOUS, "", "a riser is " + highest + " high, " + set.name()
            + " allows " + limit + "; follow the local code", set.source()));
      }
    });
    return Calculated.of(new Risers(after, spread, judgements), steps, findings);
  }

  private static Judgement judgement(String code, String check, Length found, Length limit, boolean met, StairSet set,
      String advice) {
    return new Judgement(code, check + ", by '" + set.name() + "'", "", found.toString(), "at most " + limit,
        met ? Outcome.MET : Outcome.NOT_MET, set.source(), met ? "" : advice);
  }

  /**
   * Returns how much nosing a stair takes, one piece to a step, each as long as its own step is wide.
   *
   * @param widths the width of each step, not null, each more than zero
   * @return the sum, with the step {@code nosing-length}; not null
   * @throws IllegalArgumentException if there is no step or one is not more than zero wide
   */
  public static Calculated<Length> nosing(List<Length> widths) {
    if (widths.isEmpty() || widths.size() > MOST || widths.stream().anyMatch(one -> !one.isPositive())) {
      throw new IllegalArgumentException("nosing takes 1 to " + MOST + " steps, each more than 0 mm wide, but they are " + widths);
    }
    List<Term> terms = new ArrayList<>();
    widths.forEach(one -> terms.add(Term.of("w" + (terms.size() + 1), "width of step " + (terms.size() + 1), one)));
    Length sum = widths.stream().reduce(Length.ZERO, Length::plus);
    return Calculated.of(sum, List.of(new Step("nosing-length", "How much nosing do the steps take, a piece each?",
        "n = " + terms.stream().map(Term::symbol).collect(Collectors.joining(" + ")), terms, sum, Source.DEFINITION)));
  }
}
