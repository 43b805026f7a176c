package floorcalc.bays;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;

/**
 * What a part has to keep to, in nanometres: an extent of a part is that of the laid floor and the gap at either end. A part no wider than the gaps on
 * its two sides, the last of these, leaves no floor.
 */
record SplitLimits(double deepest, double widestVoid, double along, double across, double gaps) {
  /** What may be lost where corners are rounded to whole nanometres. */
  static final double ROUNDING = 1_000;

  static SplitLimits of(LayingRules rules) {
    double gaps = 2.0 * gapAtEnds(rules).toNanometres();
    return new SplitLimits(rules.value(LayingRules.DEEPEST_RECESS).toNanometres() + ROUNDING,
        rules.value(LayingRules.WIDEST_VOID).toNanometres() + ROUNDING,
        rules.value(LayingRules.MAXIMUM_RUN_ALONG).toNanometres() + gaps + ROUNDING,
        rules.value(LayingRules.MAXIMUM_RUN_ACROSS).toNanometres() + gaps + ROUNDING, gaps);
  }

  /** The lesser of the gap at walls and of half the gap of a break. */
  static Length gapAtEnds(LayingRules rules) {
    Length atWalls = rules.value(LayingRules.EXPANSION_GAP);
    Length atBreaks = rules.value(LayingRules.BREAK_GAP);
    return atBreaks.isZero() ? atWalls : atWalls.min(Length.ofNanometres(atBreaks.toNanometres() / 2));
  }
}
