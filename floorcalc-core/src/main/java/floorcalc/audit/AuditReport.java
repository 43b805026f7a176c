package floorcalc.audit;

import floorcalc.measure.Area;
import floorcalc.working.Finding;
import floorcalc.working.Step;
import java.util.List;

/**
 * What an audit found: every promise that the plan breaks, and how much was looked at. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class AuditReport {
  private final List<Finding> breaches;
  private final List<Finding> notes;
  private final List<Step> steps;
  private final Tally tally;

  AuditReport(Breaches breaches, List<Step> steps, Tally tally) {
    this.breaches = List.copyOf(breaches.found());
    this.notes = List.copyOf(breaches.notes());
    this.steps = List.copyOf(steps);
    this.tally = tally;
  }

  /**
   * Tells whether the plan keeps everything that was checked.
   *
   * @return true if there is no breach
   */
  public boolean isClean() {
    return breaches.isEmpty();
  }

  /**
   * Returns every promise that the plan breaks: a code for programs, the place, and a sentence with the values and the
   * bound. Of one code at most 200 are put in words; one more then says how many were left out.
   *
   * @return an unmodifiable list, not null, empty if the plan is clean
   */
  public List<Finding> breaches() {
    return breaches;
  }

  /**
   * Returns what is worth knowing but breaks nothing, such as a compromise that was listed though the rule is kept.
   *
   * @return an unmodifiable list, not null
   */
  public List<Finding> notes() {
    return notes;
  }

  /**
   * Returns the sums that were compared, each with its numbers and its result.
   *
   * @return an unmodifiable list, not null
   */
  public List<Step> steps() {
    return steps;
  }

  /**
   * Returns the number of bays that were checked.
   *
   * @return the number of bays
   */
  public int bays() {
    return tally.bays;
  }

  /**
   * Returns the number of rows that were checked.
   *
   * @return the number of rows
   */
  public int rows() {
    return tally.rows;
  }

  /**
   * Returns the number of pieces that were checked.
   *
   * @return the number of pieces
   */
  public int pieces() {
    return tally.pieces;
  }

  /**
   * Returns the number of boards that were checked.
   *
   * @return the number of boards
   */
  public int boards() {
    return tally.boards;
  }

  /**
   * Returns the number of places where the ends of two pieces meet.
   *
   * @return the number of end joints
   */
  public int joints() {
    return tally.joints;
  }

  /**
   * Returns the exact area of all pieces, each worked out from its own corners.
   *
   * @return the area, not null
   */
  public Area pieceArea() {
    return Area.ofHalfSquareNanometres(tally.pieceArea.value());
  }

  /**
   * Returns the exact area of all laid areas, worked out from their corners.
   *
   * @return the area, not null
   */
  public Area laidArea() {
    return Area.ofHalfSquareNanometres(tally.laidArea.value());
  }

  /** How many lines were looked at while sweeping over the rows: the measure of the audit's work. */
  long visits() {
    return tally.visits;
  }

  /**
   * Returns the result in one line.
   *
   * @return for example {@code "clean: 3 bays, 57 rows, 214 pieces, 120 boards and 157 end joints checked"}, not null
   */
  public String summary() {
    String checked = count(bays(), "bay") + ", " + count(rows(), "row") + ", " + count(pieces(), "piece") + ", "
        + count(boards(), "board") + " and " + count(joints(), "end joint") + " checked";
    return (isClean() ? "clean: " : count(breaches.size(), "breach") + ": ") + checked;
  }

  private static String count(int number, String thing) {
    return number + " " + (number == 1 ? thing : thing.endsWith("h") ? thing + "es" : thing + "s");
  }

  /**
   * Returns the summary, then each breach on a line of its own.
   *
   * @return lines separated by {@code \n}, without one at the end; not null
   */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(summary());
    for (Finding breach : breaches) {
      text.append('\n').append(breach.code()).append(' ').append(breach.where()).append(": ").append(breach.message());
    }
    return text.toString();
  }
}
