package floorcalc.joints;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The end joints of all rows of a floor as they fall: the smallest offset, offsets below a minimum, H patterns and
 * stair patterns.
 * <p>
 * Rows are counted from 1, from the lowest up. Joints are places along the rows. Where two rows touch only in part, the
 * intervals in which they do are given; joints outside them are not compared. Everything is found in one pass over
 * each pair of rows, in time that grows with the number of joints and of findings.
 * <pre>{@code
 * JointLayout joints = JointLayout.of(List.of(
 *     List.of(Length.ofMillimetres(2200), Length.ofMillimetres(4400)),
 *     List.of(Length.ofMillimetres(1000), Length.ofMillimetres(3200))));
 * joints.smallestOffset().orElseThrow().offset();   // 1000 mm, 2200 to 3200 and others
 * }</pre>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class JointLayout {
  /** Joints no further apart than this count as in line: 2 mm. */
  public static final Length IN_LINE = Length.ofMillimetres(2);
  /** Steps that differ by no more than this count as equal: 3 mm. */
  public static final Length EQUAL_STEPS = Length.ofMillimetres(3);
  /** The fewest rows that make a stair: three joints, two equal steps. */
  public static final int LEAST_STAIR_ROWS = 3;

  /** Where the two tolerances come from: what is asked of joints that are meant to be in line, or evenly shifted. */
  public static final Source TOLERANCES =
      new Source("NF DTU 51.11 P1-1", "AFNOR", 2009, "clause 9.4.2, half-bond pattern", Standing.READ);

  private final JointRows rows;

  private JointLayout(JointRows rows) {
    this.rows = rows;
  }

  /**
   * Returns a layout of rows that touch their neighbours everywhere.
   *
   * @param jointsPerRow the joints of each row, from the lowest row up, in any order; not null
   * @return the layout, not null
   */
  public static JointLayout of(List<List<Length>> jointsPerRow) {
    long[][] joints = new long[jointsPerRow.size()][];
    for (int row = 0; row < joints.length; row++) {
      joints[row] = jointsPerRow.get(row).stream().mapToLong(Length::toNanometres).toArray();
    }
    return new JointLayout(new JointRows(joints, new long[0][]));
  }

  /**
   * Returns a layout of rows in whole nanometres that touch their neighbours everywhere. The arrays are copied.
   *
   * @param joints the joints of each row, from the lowest row up, in nanometres, in any order; not null
   * @return the layout, not null
   */
  public static JointLayout ofNanometres(long[][] joints) {
    return new JointLayout(new JointRows(joints, new long[0][]));
  }

  /**
   * Returns a layout of rows in whole nanometres that touch their neighbours in places. The arrays are copied.
   *
   * @param joints the joints of each row, from the lowest row up, in nanometres, in any order; not null
   * @param touching for each row the places where it touches the next one: from, to, from, to, in nanometres and in
   *     order, ends included; rows beyond the end of this array touch everywhere; not null
   * @return the layout, not null
   * @throws IllegalArgumentException if intervals are out of order or one has no end
   */
  public static JointLayout ofNanometres(long[][] joints, long[][] touching) {
    return new JointLayout(new JointRows(joints, touching));
  }

  /**
   * Returns how many rows there are.
   *
   * @return the number, not negative
   */
  public int rows() {
    return rows.count();
  }

  /**
   * Returns the end joints of a row.
   *
   * @param row the row, from 1 to {@link #rows()}
   * @return the joints in order, an unmodifiable list, not null
   * @throws IndexOutOfBoundsException if there is no such row
   */
  public List<Length> joints(int row) {
    Objects.checkIndex(row - 1, rows.count());
    return Arrays.stream(rows.all(row - 1)).mapToObj(Length::ofNanometres).toList();
  }

  /**
   * Returns the two joints of touching rows that lie nearest to each other; of equals, those in the lowest row and
   * there at the lowest place.
   *
   * @return the pair, empty if no two rows with joints touch; not null
   */
  public Optional<JointPair> smallestOffset() {
    JointPair best = null;
    for (int row = 1; row < rows.count(); row++) {
      JointPair nearest = nearest(row - 1);
      if (nearest != null && (best == null || nearest.offset().compareTo(best.offset()) < 0)) {
        best = nearest;
      }
    }
    return Optional.ofNullable(best);
  }

  /**
   * Returns the two joints of a row and of the next one that lie nearest to each other where the rows touch; of equals, those
   * at the lowest place.
   *
   * @param row the lower row, from 1 to the last but one
   * @return the pair, empty if one of the rows has no joint where they touch; not null
   * @throws IndexOutOfBoundsException if there is no such row with one above it
   */
  public Optional<JointPair> smallestOffset(int row) {
    Objects.checkIndex(row - 1, rows.count() - 1);
    return Optional.ofNullable(nearest(row - 1));
  }

  /** The nearest joints of a row, from 0, and the next one; null if there are none. */
  private JointPair nearest(int row) {
    long bestAt = 0;
    long bestOther = 0;
    long best = Long.MAX_VALUE;
    long[] lower = rows.where(row, row);
    long[] upper = rows.where(row + 1, row);
    int j = 0;
    for (long joint : lower) {
      while (j < upper.length && upper[j] < joint) {
        j++;
      }
      for (int k = Math.max(0, j - 1); k < Math.min(upper.length, j + 1); k++) {
        long offset = Math.abs(upper[k] - joint);
        if (offset < best) {
          best = offset;
          bestAt = joint;
          bestOther = upper[k];
        }
      }
    }
    return best == Long.MAX_VALUE ? null : pair(row, bestAt, row + 1, bestOther);
  }

  /**
   * Returns all pairs of joints of touching rows that lie closer than a minimum.
   *
   * @param minimum the least offset wanted, not null
   * @return the pairs by row and place, an unmodifiable list, not null
   */
  public List<JointPair> closerThan(Length minimum) {
    Objects.requireNonNull(minimum, "minimum");
    List<JointPair> pairs = new ArrayList<>();
    for (int row = 0; row + 1 < rows.count(); row++) {
      addPairs(pairs, row, rows.where(row, row), row + 1, rows.where(row + 1, row), minimum.toNanometres() - 1);
    }
    return List.copyOf(pairs);
  }

  /**
   * Returns the H patterns: joints in line, within {@link #IN_LINE}, with a single row between them.
   *
   * @return the pairs by row and place, an unmodifiable list, not null
   */
  public List<JointPair> inLine() {
    return inLine(IN_LINE);
  }

  /**
   * Returns the H patterns with a tolerance of one's own.
   *
   * @param tolerance how far apart two joints may be and still count as in line, not null, not negative
   * @return the pairs by row and place, an unmodifiable list, not null
   * @throws IllegalArgumentException if the tolerance is negative
   */
  public List<JointPair> inLine(Length tolerance) {
    long within = tolerance(tolerance);
    List<JointPair> pairs = new ArrayList<>();
    for (int row = 0; row + 2 < rows.count(); row++) {
      addPairs(pairs, row, rows.where(row, row), row + 2, rows.where(row + 2, row + 1), within);
    }
    return List.copyOf(pairs);
  }

  private static void addPairs(List<JointPair> pairs, int row, long[] lower, int otherRow, long[] upper, long within) {
    int j = 0;
    for (long joint : lower) {
      while (j < upper.length && upper[j] < joint - within) {
        j++;
      }
      for (int k = j; k < upper.length && upper[k] <= joint + within; k++) {
        pairs.add(pair(row, joint, otherRow, upper[k]));
      }
    }
  }

  private static JointPair pair(int row, long at, int otherRow, long otherAt) {
    return new JointPair(row + 1, Length.ofNanometres(at), otherRow + 1, Length.ofNanometres(otherAt));
  }

  private static long tolerance(Length tolerance) {
    if (Objects.requireNonNull(tolerance, "tolerance").isNegative()) {
      throw new IllegalArgumentException("the tolerance must not be negative, but was " + tolerance);
    }
    return tolerance.toNanometres();
  }

  /**
   * Returns the stair patterns with the tolerance {@link #EQUAL_STEPS}; see {@link #stairs(Length)}.
   *
   * @return the stairs by row and place, an unmodifiable list, not null
   */
  public List<JointStair> stairs() {
    return stairs(EQUAL_STEPS);
  }

  /**
   * Returns the stair patterns: a joint in each of three or more consecutive rows with equal steps of the same sense.
   * <p>
   * A step goes from a joint to the nearest joint of the next row. Where a joint to the left and one to the right are
   * equally near, within the tolerance, the eye sees no sense in the step and there is no stair: half a board's shift
   * is none, a third of a board's is. Joints in line are none either. Each stair is given once, at its full length.
   *
   * @param tolerance by how much a step may differ from the one before and still count as equal, not null, not negative
   * @return the stairs by row and place, an unmodifiable list, not null
   * @throws IllegalArgumentException if the tolerance is negative
   */
  public List<JointStair> stairs(Length tolerance) {
    return List.copyOf(new StairSearch(rows, tolerance(tolerance)).find());
  }

  /**
   * Holds the layout against the rule on offsets and looks for both patterns.
   *
   * @param place what the rows belong to, such as a bay's name, for the findings; not null, may be empty
   * @param minimum the rule on offsets, see {@link LayingRules#MINIMUM_JOINT_OFFSET}; not null
   * @return the layout with the step {@code joint-offset} for its smallest offset, a warning {@code joints-too-close}
   *     for each pair closer than the minimum, a note {@code joints-in-line} for each H pattern, a note
   *     {@code joints-in-steps} for each stair; not null
   */
  public Calculated<JointLayout> check(String place, RuleValue<Length> minimum) {
    String prefix = place.isEmpty() ? "" : place + " ";
    List<Step> steps = new ArrayList<>();
    smallestOffset().ifPresent(pair -> steps.add(new Step("joint-offset",
        "How far apart are the nearest end joints of rows that touch, in rows " + pair.row() + " and "
            + pair.otherRow() + "?", "d = abs(x2 - x1)",
        List.of(Term.of("x2", "joint in row " + pair.otherRow(), pair.otherAt()),
            Term.of("x1", "joint in row " + pair.row(), pair.at())), pair.offset(), Source.DEFINITION)));
    List<Finding> findings = new ArrayList<>();
    for (JointPair pair : closerThan(minimum.value())) {
      findings.add(new Finding("joints-too-close", Severity.WARNING, prefix + "row " + pair.row(),
          "end joints at " + pair.at() + " and, in row " + pair.otherRow() + ", at " + pair.otherAt() + " are "
              + pair.offset() + " apart, at least " + minimum.value()
              + " is asked for; start one of the rows with another piece", minimum.source()));
    }
    for (JointPair pair : inLine()) {
      findings.add(new Finding("joints-in-line", Severity.NOTE, prefix + "row " + pair.row(),
          "end joints at " + pair.at() + " and, in row " + pair.otherRow() + ", at " + pair.otherAt()
              + " are in line within " + IN_LINE + " with one row between (H pattern);"
              + " start one of the rows with another piece", TOLERANCES));
    }
    for (JointStair stair : stairs()) {
      findings.add(new Finding("joints-in-steps", Severity.NOTE, prefix + "row " + stair.firstRow(),
          "end joints of rows " + stair.firstRow() + " to " + stair.lastRow() + " go on in equal steps of "
              + stair.step() + " from " + stair.joints().get(0) + " (stair pattern);"
              + " start one of the rows with another piece", TOLERANCES));
    }
    return Calculated.of(this, steps, findings);
  }
}
