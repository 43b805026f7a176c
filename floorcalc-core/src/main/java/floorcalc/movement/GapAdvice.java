package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Which gap to leave, or how wide a bay may be before it needs an expansion break, for a floor that swells as forecast.
 * <p>
 * Widths of floors are across the boards. The gap is <b>on each side</b>, square to a wall that the boards run along; the
 * floor is taken to move from its middle, so each side takes half of the swelling, or from one side that holds it, so the
 * other takes all. A gap that a rule asks for is the least that is advised. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class GapAdvice {
  private static final Length MILLIMETRE = Length.ofMillimetres(1);

  /**
   * Where the floor stays put.
   *
   * @since 0.1
   */
  public enum StaysPut {
    /** In the middle: each side takes half. */
    IN_THE_MIDDLE("in the middle", 2),
    /** At one side: the other takes all. */
    AT_ONE_SIDE("at one side", 1);

    private final String words;
    private final int sides;

    StaysPut(String words, int sides) {
      this.words = words;
      this.sides = sides;
    }
  }

  private final Length width;
  private final Length swelling;
  private final Length needed;
  private final Length gap;
  private final Length greatestWidth;
  private final long bays;
  private final Length breakGap;

  private GapAdvice(Length width, Length swelling, Length needed, Length gap, Length greatestWidth, long bays,
      Length breakGap) {
    this.width = width;
    this.swelling = swelling;
    this.needed = needed;
    this.gap = gap;
    this.greatestWidth = greatestWidth;
    this.bays = bays;
    this.breakGap = breakGap;
  }

  /**
   * Returns advice for a floor.
   *
   * @param forecast what the boards will do, not null
   * @param width the floor across the boards, through all openings without a break, more than zero, not null
   * @param rule the gap on each side that a rule asks for, not null
   * @param staysPut where the floor stays put, not null
   * @return the advice with the steps {@code swelling}, {@code gap-needed}, {@code gap-advised}, {@code greatest-width} and
   *     {@code bays} (the last two if the boards swell at all and the gap of the rule is not 0), and the finding
   *     {@code gap-too-small-for-movement} if the rule's gap does not suffice; not null
   * @throws IllegalArgumentException if the width is not more than zero
   */
  public static Calculated<GapAdvice> of(MovementForecast forecast, Length width, RuleValue<Length> rule,
      StaysPut staysPut) {
    if (!Objects.requireNonNull(width, "width").isPositive()) {
      throw new IllegalArgumentException("the width of the floor must be more than 0 mm, but was " + width);
    }
    requireGap(rule);
    int sides = staysPut.sides;
    Calculated<Length> swelling = forecast.swelling(width);
    List<Step> steps = new ArrayList<>(forecast.seasons());
    steps.addAll(swelling.steps());
    Length needed = swelling.value().dividedBy(sides, RoundingMode.CEILING);
    steps.add(new Step("gap-needed", "Which gap does a side need if the floor stays put " + staysPut.words + "?",
        "g = dD / " + sides + ", rounded up to a whole nanometre",
        List.of(Term.of("dD", "swelling of the whole width", swelling.value())), needed, Source.DEFINITION));
    Length whole = MILLIMETRE.multipliedBy(-needed.negated().dividedBy(MILLIMETRE));
    Length gap = rule.value().max(whole);
    steps.add(new Step("gap-advised", "Which gap is advised on each side, in whole millimetres if movement asks for more"
        + " than the rule?", "a = max(r, ceil(g / 1mm) * 1mm)",
        List.of(new Term("r", "gap that the rule asks for, on each side", rule.value(), rule.source()),
            Term.of("g", "gap needed for the movement", needed)), gap, Source.DEFINITION));
    BigDecimal share = forecast.swellingShare(forecast.coefficient());
    if (share.signum() == 0 || rule.value().isZero()) {
      return Calculated.of(new GapAdvice(width, swelling.value(), needed, gap, null, 1, null), steps,
          findings(forecast, swelling.findings(), rule, gap, null));
    }
    Length greatest = greatest(rule.value(), share, sides, steps);
    long bays = -width.negated().dividedBy(greatest);
    steps.add(new Step("bays", "Into how many bays must the floor be split to keep the gap of the rule?", "n = ceil(W / w)",
        List.of(Term.of("W", "width of the floor", width), Term.of("w", "greatest width of a bay", greatest)), bays,
        Source.DEFINITION));
    Length breakGap = bays == 1 ? null : breakGap(forecast, width.dividedBy(bays, RoundingMode.CEILING), steps);
    return Calculated.of(new GapAdvice(width, swelling.value(), needed, gap, greatest, bays, breakGap), steps,
        findings(forecast, swelling.findings(), rule, gap, bays == 1 ? null : greatest));
  }

  private static void requireGap(RuleValue<Length> rule) {
    if (!rule.key().equals(LayingRules.EXPANSION_GAP)) {
      throw new IllegalArgumentException("the rule must be " + LayingRules.EXPANSION_GAP + ", but was " + rule.key());
    }
  }

  private static Length greatest(Length gap, BigDecimal share, int sides, List<Step> steps) {
    BigDecimal nanometres = BigDecimal.valueOf(gap.toNanometres()).multiply(BigDecimal.valueOf(sides))
        .divide(share, 0, RoundingMode.FLOOR).min(BigDecimal.valueOf(Long.MAX_VALUE));
    Length greatest = Length.ofNanometres(nanometres.longValueExact()).max(Length.ofNanometres(1));
    steps.add(new Step("greatest-width", "How wide may a bay be with the gap of the rule on each side?",
        "w = " + sides + " * r / m, rounded down to a whole nanometre",
        List.of(Term.of("r", "gap that the rule asks for, on each side", gap),
            Term.of("m", "swelling as a share of the width", share.toPlainString())), greatest, Source.DEFINITION));
    return greatest;
  }

  /** Half of the swelling of the bay on either side of it, in whole millimetres. */
  private static Length breakGap(MovementForecast forecast, Length bay, List<Step> steps) {
    Calculated<Length> swelling = forecast.swelling(bay);
    Length gap = MILLIMETRE.multipliedBy(-swelling.value().negated().dividedBy(MILLIMETRE));
    steps.addAll(swelling.steps());
    steps.add(new Step("break-gap", "How wide is a break between two such bays, half the swelling of each, in whole"
        + " millimetres?", "b = ceil((dD / 2 + dD / 2) / 1mm) * 1mm",
        List.of(Term.of("dD", "swelling of a bay", swelling.value())), gap, Source.DEFINITION));
    return gap;
  }

  private static List<Finding> findings(MovementForecast forecast, List<Finding> more, RuleValue<Length> rule, Length gap,
      Length greatest) {
    List<Finding> findings = new ArrayList<>(forecast.findings());
    findings.addAll(more);
    if (gap.compareTo(rule.value()) > 0) {
      findings.add(new Finding("gap-too-small-for-movement", Severity.WARNING, "", "a gap of " + rule.value()
          + " on each side, square to the wall, does not suffice: leave " + gap + " on each side"
          + (greatest == null ? "" : ", or split the floor into bays of at most " + greatest + " across the boards, at"
              + " openings first"), rule.source()));
    }
    return findings;
  }

  /**
   * Returns the width that the advice is for.
   *
   * @return the floor across the boards, not null
   */
  public Length width() {
    return width;
  }

  /**
   * Returns how much the floor swells.
   *
   * @return in total, over both sides, not null
   */
  public Length swelling() {
    return swelling;
  }

  /**
   * Returns the gap that the movement needs.
   *
   * @return on each side, square to the wall, rounded up to a whole nanometre, not null
   */
  public Length needed() {
    return needed;
  }

  /**
   * Returns the gap that is advised: that of the rule, or whole millimetres where movement needs more.
   *
   * @return on each side, square to the wall, not null
   */
  public Length gap() {
    return gap;
  }

  /**
   * Returns how wide a bay may be that keeps the gap of the rule.
   *
   * @return across the boards, rounded down; empty if the boards do not swell or the rule asks for no gap; not null
   */
  public Optional<Length> greatestWidth() {
    return Optional.ofNullable(greatestWidth);
  }

  /**
   * Returns into how many bays the floor must be split to keep the gap of the rule.
   *
   * @return 1 if it need not be, or no split would help
   */
  public long bays() {
    return bays;
  }

  /**
   * Returns how wide a break is between bays of equal width.
   *
   * @return whole millimetres, empty if there is none; not null
   */
  public Optional<Length> breakGap() {
    return Optional.ofNullable(breakGap);
  }
}
