package floorcalc.examples.job;

import floorcalc.laying.JobCheck;
import floorcalc.measure.Length;
import floorcalc.outline.survey.Survey;
import java.math.BigDecimal;

/** How large a job file and what is in it may be. The same figures stand in {@code docs/job.schema.json}. */
final class JobLimits {
  /** Bytes in a file: 20 MB. */
  static final int FILE_BYTES = 20_000_000;
  /** Objects and arrays within each other; a job needs 8. */
  static final int DEPTH = 32;
  /** Texts, numbers, objects, arrays and so on in a file. */
  static final int VALUES = 2_000_000;
  /** Mistakes that are listed one by one. */
  static final int MISTAKES_LISTED = 1000;
  /** Characters in a name, a title or any other text. */
  static final int TEXT = 200;
  static final int ROOMS = 500;
  /** Corners of one ring. */
  static final int CORNERS = 2000;
  static final int VOIDS = 200;
  static final int DOORS = 100;
  static final int PIPES = 500;
  static final int BREAKS = 100;
  /** Walls of a survey, which is also the most arcs. */
  static final int WALLS = Survey.MOST_WALLS;
  static final int TIES = Survey.MOST_TIES;
  /** Points of walls off their straight line, in one room. */
  static final int OFFSETS = 500;
  static final int MIXED_LENGTHS = 50;
  static final int PER_PACK = 10_000;
  /** Readings of one kind in one room. */
  static final int READINGS = 10_000;
  /** Boards in one job. */
  static final long BOARDS = 1_000_000;
  /** Decimals of a number that is not a length. */
  static final int DECIMALS = 9;

  static final Length FARTHEST = Length.ofMillimetres(10_000_000);
  static final Length LONGEST_BOARD = Length.ofMillimetres(100_000);
  static final Length WIDEST_BOARD = Length.ofMillimetres(10_000);
  static final Length SHORTEST_BOARD = JobCheck.SHORTEST_BOARD;
  static final Length NARROWEST_BOARD = Length.ofMillimetres(1);
  /** A board, a pipe, or the gap under a straightedge. */
  static final Length THICKEST = Length.ofMillimetres(1000);
  /** Standard deviations of measured lengths: no tape is better or worse. */
  static final Length LEAST_DEVIATION = Length.ofNanometres(10_000);
  static final Length MOST_DEVIATION = Length.ofMillimetres(100);
  /** Standard deviations of measured turns, in degrees. */
  static final BigDecimal LEAST_TURN_DEVIATION = new BigDecimal("0.001");
  static final BigDecimal MOST_TURN_DEVIATION = BigDecimal.valueOf(45);

  private JobLimits() {
  }
}
