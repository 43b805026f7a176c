package floorcalc.examples.job;

import floorcalc.measure.Length;

/** The lengths that a field allows. */
enum LengthRange {
  /** A coordinate or a difference. */
  ANYWHERE(JobLimits.FARTHEST.negated(), JobLimits.FARTHEST),
  /** A step up or down. */
  HEIGHT(JobLimits.WIDEST_BOARD.negated(), JobLimits.WIDEST_BOARD),
  SIZE(Length.ofNanometres(1), JobLimits.FARTHEST),
  SIZE_OR_ZERO(Length.ZERO, JobLimits.FARTHEST),
  BOARD_LENGTH(JobLimits.SMALLEST_BOARD, JobLimits.LONGEST_BOARD),
  COVER_WIDTH(JobLimits.SMALLEST_BOARD, JobLimits.WIDEST_BOARD),
  THICKNESS(Length.ofNanometres(1), JobLimits.THICKEST_BOARD),
  GAP(Length.ZERO, JobLimits.WIDEST_GAP),
  KERF(Length.ZERO, JobLimits.WIDEST_KERF),
  PIPE(Length.ofNanometres(1), JobLimits.THICKEST_PIPE);

  private final Length least;
  private final Length most;

  LengthRange(Length least, Length most) {
    this.least = least;
    this.most = most;
  }

  boolean contains(Length length) {
    return length.compareTo(least) >= 0 && length.compareTo(most) <= 0;
  }

  String words() {
    String from = least.toNanometres() == 1 ? "of more than 0 mm and at most " : "from " + inWords(least) + " to ";
    return "a length " + from + inWords(most);
  }

  private static String inWords(Length length) {
    long metre = 1_000_000_000L;
    if (length.toNanometres() % (1000 * metre) == 0 && !length.isZero()) {
      return length.toNanometres() / (1000 * metre) + " km";
    }
    return length.toNanometres() % metre == 0 && !length.isZero()
        ? length.toNanometres() / metre + " m" : length.toString();
  }
}
