package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What a skirting or a beading hides: the gap beneath it may vary from the least that the floor needs to the most at which the
 * trim still rests on the boards.
 *
 * @param cover how far the trim reaches from the wall over the floor, not null
 * @param bearing the least that it is to rest on the boards, not null, not negative; in the driest season the boards draw back from
 *     it, so give what is wanted then and what they shrink
 * @param leastGap the least gap that the floor needs, not null, not negative
 * @since 0.1
 */
public record TrimCover(Length cover, Length bearing, Length leastGap) {

  /**
   * Checks that no part is null and that the trim covers the least gap.
   *
   * @throws IllegalArgumentException if {@code bearing} or {@code leastGap} is negative, or together they are more than
   *     {@code cover}
   */
  public TrimCover {
    Objects.requireNonNull(leastGap, "leastGap");
    Widths.requirePositive(cover, "cover of the trim", "give how far it reaches from the wall over the floor");
    Widths.requireNotNegative(bearing, "bearing of the trim", "give 0 mm if it need not rest on the boards");
    Widths.requireNotNegative(leastGap, "least gap", "give the gap that the floor needs");
    if (bearing.plus(leastGap).compareTo(cover) > 0) {
      throw new IllegalArgumentException("a trim that reaches " + cover + " over the floor does not cover a gap of " + leastGap
          + " and rest on " + bearing + " of the boards; take a wider one");
    }
  }

  /**
   * Returns by how much the gap may vary.
   *
   * @return {@code cover - bearing - leastGap}, not negative, not null
   */
  public Length span() {
    return cover.minus(bearing).minus(leastGap);
  }

  /**
   * Returns how much of a wall's taper or bow has to be sawn, the rest being hidden.
   *
   * @param variation by how much the distance of the wall from the rows varies, not null, not negative
   * @return {@code max(0, variation - span)} with the steps {@code trim-span} and {@code left-to-saw}, and the finding
   *     {@code trim-hides-all} or {@code trim-hides-part}; not null
   * @throws IllegalArgumentException if the variation is negative
   */
  public Calculated<Length> toSaw(Length variation) {
    Widths.requireNotNegative(variation, "variation of the wall", "give the greatest less the least distance");
    Length left = variation.minus(span()).max(Length.ZERO);
    List<Step> steps = List.of(spanStep(), new Step("left-to-saw",
        "How much of the taper or bow has to be ripped or scribed, where the wall comes nearest?", "t' = max(0mm, t - q)",
        List.of(Term.of("t", "by how much the distance of the wall varies", variation),
            Term.of("q", "what the trim hides", span())), left, Source.DEFINITION));
    return Calculated.of(left, steps, List.of(finding(variation, left)));
  }

  /**
   * Returns how much has to be sawn at each of two walls if the line that the rows start from is turned by half of the taper, so
   * that each wall has half of it.
   *
   * @param taper by how much the two walls run apart over the length of the rows, not null, not negative
   * @return {@code max(0, taper / 2 - span)} at each wall, with the steps {@code half-taper}, by which the line is turned over the
   *     length of the rows, rounded up to a whole nanometre, {@code trim-span} and {@code left-to-saw}, and the finding
   *     {@code trim-hides-all} or {@code trim-hides-part}; not null
   * @throws IllegalArgumentException if the taper is negative
   */
  public Calculated<Length> toSawAtEachOfTwo(Length taper) {
    Widths.requireNotNegative(taper, "taper", "give by how much the walls run apart");
    Length half = taper.dividedBy(2, RoundingMode.CEILING);
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("half-taper", "By how much is the start line turned over the length of the rows, so that both walls taper"
        + " alike?", "h = t / 2, rounded up to a whole nanometre",
        List.of(Term.of("t", "by how much the walls run apart", taper)), half, Source.DEFINITION));
    Calculated<Length> each = toSaw(half);
    steps.addAll(each.steps());
    return Calculated.of(each.value(), steps, each.findings());
  }

  Step spanStep() {
    return new Step("trim-span", "By how much may the gap vary beneath the trim?", "q = c - b - g",
        List.of(Term.of("c", "how far the trim reaches over the floor", cover),
            Term.of("b", "least that it rests on the boards", bearing), Term.of("g", "least gap", leastGap)), span(),
        Source.DEFINITION);
  }

  private Finding finding(Length variation, Length left) {
    if (left.isZero()) {
      return new Finding("trim-hides-all", Severity.NOTE, "", "the wall varies by " + variation + ", the trim hides " + span()
          + ": a straight edge serves, with a gap from " + leastGap + " to " + leastGap.plus(variation), Source.DEFINITION);
    }
    return new Finding("trim-hides-part", Severity.NOTE, "", "the wall varies by " + variation + ", the trim hides " + span()
        + " of it: up to " + left + " has to be ripped or scribed, or a trim is needed that reaches " + cover.plus(left)
        + " over the floor", Source.DEFINITION);
  }
}
