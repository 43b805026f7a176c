package floorcalc.joints;

import floorcalc.measure.Length;
import java.util.List;
import java.util.Objects;

/**
 * End joints that step on evenly, one in each of three or more consecutive rows.
 *
 * @param firstRow the lowest row, counted from 1
 * @param joints where the joints lie along the rows, from the lowest row upwards; not null, at least three
 * @since 0.1
 */
public record JointStair(int firstRow, List<Length> joints) {
  /** Copies the list and checks that it holds at least three joints. */
  public JointStair {
    Objects.requireNonNull(joints, "joints");
    joints = List.copyOf(joints);
    if (joints.size() < JointLayout.LEAST_STAIR_ROWS) {
      throw new IllegalArgumentException(
          "a stair has at least " + JointLayout.LEAST_STAIR_ROWS + " joints, but was given " + joints.size());
    }
  }

  /**
   * Returns the highest row.
   *
   * @return the row, counted from 1
   */
  public int lastRow() {
    return firstRow + joints.size() - 1;
  }

  /**
   * Returns the first step: positive if the stair climbs towards high x, negative if towards low x.
   *
   * @return the step, not zero, not null
   */
  public Length step() {
    return joints.get(1).minus(joints.get(0));
  }
}
