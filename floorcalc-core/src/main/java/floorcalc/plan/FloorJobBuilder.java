package floorcalc.plan;

import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.BoardGoods;
import floorcalc.boards.OffcutUse;
import floorcalc.boards.SearchEffort;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.joints.JointPattern;
import floorcalc.materials.FloorGoods;
import floorcalc.rows.RowWay;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Gathers the parts of a {@link FloorJob}, for which {@link FloorJob#of} starts it: what is not set is as common practice has it. Not thread-safe.
 *
 * @since 0.1
 */
public final class FloorJobBuilder {
  final String title;
  final BoardGoods board;
  LayingRules rules;
  DirectionChoice direction = DirectionChoice.LONGEST_WALL;
  OffcutUse offcuts = OffcutUse.IN_LAYING_ORDER;
  SearchEffort effort = SearchEffort.FULL;
  RowWay rowWay = RowWay.AS_NEEDED;
  JointPattern pattern = JointPattern.FREE;
  ThroughBreaks throughBreaks = ThroughBreaks.EACH_BAY_ITS_OWN;
  FloorGoods goods = FloorGoods.NONE;
  MeasuredBoards measured;
  final List<Room> rooms = new ArrayList<>();

  FloorJobBuilder(String title, BoardGoods board) {
    this.title = Objects.requireNonNull(title, "title");
    this.board = Objects.requireNonNull(board, "board");
    this.rules = RuleSet.COMMON_PRACTICE.forBoard(board.thickness(), board.coverWidth());
  }

  /**
   * Sets the rules in place of common practice.
   *
   * @param laying the rules, not null
   * @return this builder, not null
   */
  public FloorJobBuilder rules(LayingRules laying) {
    this.rules = Objects.requireNonNull(laying, "laying");
    return this;
  }

  /**
   * Sets how the direction of the boards is chosen; along the longest wall if not set.
   *
   * @param choice the choice, not null
   * @return this builder, not null
   */
  public FloorJobBuilder direction(DirectionChoice choice) {
    this.direction = Objects.requireNonNull(choice, "choice");
    return this;
  }

  /**
   * Sets when an offcut may be used; in laying order if not set.
   *
   * @param use the use of offcuts, not null
   * @return this builder, not null
   */
  public FloorJobBuilder offcuts(OffcutUse use) {
    this.offcuts = Objects.requireNonNull(use, "use");
    return this;
  }

  /**
   * Sets how hard to look for few boards; at first {@link SearchEffort#FULL}.
   *
   * @param chosen the effort, not null
   * @return this builder, not null
   */
  public FloorJobBuilder effort(SearchEffort chosen) {
    this.effort = Objects.requireNonNull(chosen, "chosen");
    return this;
  }

  /**
   * Sets how the first row's width is chosen; as needed if not set.
   *
   * @param way the way, not null
   * @return this builder, not null
   */
  public FloorJobBuilder rowWay(RowWay way) {
    this.rowWay = Objects.requireNonNull(way, "way");
    return this;
  }

  /**
   * Sets the pattern of the end joints; free if not set.
   *
   * @param joints the pattern, not null
   * @return this builder, not null
   */
  public FloorJobBuilder pattern(JointPattern joints) {
    this.pattern = Objects.requireNonNull(joints, "joints");
    return this;
  }

  /**
   * Sets how the rows of the bays of a room lie to each other; each bay for itself if not set.
   *
   * @param way the way, not null
   * @return this builder, not null
   */
  public FloorJobBuilder throughBreaks(ThroughBreaks way) {
    this.throughBreaks = Objects.requireNonNull(way, "way");
    return this;
  }

  /**
   * Sets what is bought beside the boards; nothing is stated if not set.
   *
   * @param bought the goods, not null
   * @return this builder, not null
   */
  public FloorJobBuilder goods(FloorGoods bought) {
    this.goods = Objects.requireNonNull(bought, "bought");
    return this;
  }

  /**
   * Sets what was measured of a sample of the boards; nothing was if not set. The plan then holds it against what they may deviate.
   *
   * @param sample the sample, not null
   * @return this builder, not null
   */
  public FloorJobBuilder measuredBoards(MeasuredBoards sample) {
    this.measured = Objects.requireNonNull(sample, "sample");
    return this;
  }

  /**
   * Adds a room; rooms are laid in the order they are added.
   *
   * @param room the room, not null
   * @return this builder, not null
   */
  public FloorJobBuilder room(Room room) {
    rooms.add(Objects.requireNonNull(room, "room"));
    return this;
  }

  /**
   * Returns the job.
   *
   * @return the job, not null
   * @throws IllegalArgumentException if there is no room, or two rooms share a name
   */
  public FloorJob build() {
    return new FloorJob(this);
  }
}
