package floorcalc.examples.job;

import floorcalc.deviations.DeviationReadings;
import floorcalc.measure.Length;
import floorcalc.rules.RuleKey;

/**
 * The lengths that a field allows, both ends among them; a least length of one nanometre stands for "more than 0".
 *
 * @param least the smallest
 * @param most the largest
 */
record LengthRange(Length least, Length most) {
  private static final Length ABOVE_ZERO = Length.ofNanometres(1);
  private static final long METRE = 1_000_000_000L;
  private static final long KILOMETRE = 1000 * METRE;

  /** A coordinate or a difference. */
  static final LengthRange ANYWHERE = new LengthRange(JobLimits.FARTHEST.negated(), JobLimits.FARTHEST);
  /** A step up or down. */
  static final LengthRange HEIGHT = new LengthRange(JobLimits.WIDEST_BOARD.negated(), JobLimits.WIDEST_BOARD);
  static final LengthRange SIZE = new LengthRange(ABOVE_ZERO, JobLimits.FARTHEST);
  static final LengthRange SIZE_OR_ZERO = new LengthRange(Length.ZERO, JobLimits.FARTHEST);
  static final LengthRange BOARD_LENGTH = new LengthRange(JobLimits.SHORTEST_BOARD, JobLimits.LONGEST_BOARD);
  static final LengthRange COVER_WIDTH = new LengthRange(JobLimits.NARROWEST_BOARD, JobLimits.WIDEST_BOARD);
  static final LengthRange THICKNESS = new LengthRange(ABOVE_ZERO, JobLimits.THICKEST);
  static final LengthRange OPENING = new LengthRange(Length.ZERO, JobLimits.THICKEST);

  static final LengthRange ROLL_WIDTH = new LengthRange(Length.ofMillimetres(50), Length.ofMillimetres(20_000));
  static final LengthRange ROLL_LENGTH = new LengthRange(Length.ofMillimetres(100), Length.ofMillimetres(100_000));
  static final LengthRange BAR_THICKNESS = new LengthRange(Length.ZERO, Length.ofMillimetres(300));
  static final LengthRange SHEET_THICKNESS = new LengthRange(Length.ofNanometres(1000), Length.ofMillimetres(100));
  static final LengthRange BEAD = new LengthRange(ABOVE_ZERO, Length.ofMillimetres(100));

  /** What a board may be off, or is. */
  static final LengthRange OFF = new LengthRange(Length.ZERO, DeviationReadings.GREATEST);

  static final LengthRange DEVIATION = new LengthRange(JobLimits.LEAST_DEVIATION, JobLimits.MOST_DEVIATION);
  static final LengthRange DEVIATION_PER_METRE = new LengthRange(Length.ZERO, JobLimits.MOST_DEVIATION);

  /** The lengths that a rule takes. */
  static LengthRange of(RuleKey<Length> key) {
    return new LengthRange(key.least(), key.most());
  }

  boolean contains(Length length) {
    return length.compareTo(least) >= 0 && length.compareTo(most) <= 0;
  }

  String words() {
    return "a length "
        + (least.equals(ABOVE_ZERO) ? "of more than 0 mm and at most " : "from " + inWords(least) + " to ") + inWords(most);
  }

  private static String inWords(Length length) {
    long nanometres = length.toNanometres();
    if (nanometres != 0 && nanometres % KILOMETRE == 0) {
      return nanometres / KILOMETRE + " km";
    }
    return nanometres != 0 && nanometres % METRE == 0 ? nanometres / METRE + " m" : length.toString();
  }
}
