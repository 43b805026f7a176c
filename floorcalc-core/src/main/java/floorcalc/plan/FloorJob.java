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
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * All that is known about a floor before it is planned: the goods, the rules, the choices, the rooms in laying order.
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class FloorJob implements Serializable {
  private static final long serialVersionUID = 1L;

  private final String title;
  private final BoardGoods board;
  private final LayingRules rules;
  private final DirectionChoice direction;
  private final OffcutUse offcuts;
  private final SearchEffort effort;
  private final RowWay rowWay;
  private final JointPattern pattern;
  private final ThroughBreaks throughBreaks;
  private final FloorGoods goods;
  private final MeasuredBoards measured;
  @SuppressWarnings("serial")
  private final List<Room> rooms;

  FloorJob(FloorJobBuilder builder) {
    this.title = builder.title;
    this.board = builder.board;
    this.rules = builder.rules;
    this.direction = builder.direction;
    this.offcuts = builder.offcuts;
    this.effort = builder.effort;
    this.rowWay = builder.rowWay;
    this.pattern = builder.pattern;
    this.throughBreaks = builder.throughBreaks;
    this.goods = builder.goods;
    this.measured = builder.measured;
    this.rooms = List.copyOf(builder.rooms);
    if (rooms.isEmpty()) {
      throw new IllegalArgumentException("a job needs at least one room");
    }
    long names = rooms.stream().map(Room::name).distinct().count();
    if (names < rooms.size()) {
      throw new IllegalArgumentException("each room needs a name of its own, but two rooms of the job share one");
    }
  }

  /**
   * Returns a job with the defaults of common practice for the goods, to which rooms and choices are added.
   *
   * @param title what the job is called, not null
   * @param board the boards as they are sold, not null
   * @return a builder, not null
   */
  public static FloorJobBuilder of(String title, BoardGoods board) {
    return new FloorJobBuilder(title, board);
  }

  /** {@return what the job is called, not null} */
  public String title() {
    return title;
  }

  /** {@return the boards as they are sold, not null} */
  public BoardGoods board() {
    return board;
  }

  /** {@return the rules in force, not null} */
  public LayingRules rules() {
    return rules;
  }

  /** {@return how the direction of the boards is chosen, not null} */
  public DirectionChoice direction() {
    return direction;
  }

  /** {@return when an offcut may be used, not null} */
  public OffcutUse offcuts() {
    return offcuts;
  }

  /** {@return how hard to look for few boards, not null} */
  public SearchEffort effort() {
    return effort;
  }

  /** {@return how the first row's width is chosen, not null} */
  public RowWay rowWay() {
    return rowWay;
  }

  /** {@return the pattern of the end joints, not null} */
  public JointPattern pattern() {
    return pattern;
  }

  /** {@return how the rows of the bays of a room lie to each other, not null} */
  public ThroughBreaks throughBreaks() {
    return throughBreaks;
  }

  /**
   * Returns what is bought beside the boards.
   *
   * @return the goods, {@link FloorGoods#NONE} if none are stated; not null
   */
  public FloorGoods goods() {
    return goods;
  }

  /**
   * Returns what was measured of a sample of the boards.
   *
   * @return the sample, empty if none was measured; not null
   */
  public Optional<MeasuredBoards> measuredBoards() {
    return Optional.ofNullable(measured);
  }

  /**
   * Returns the rooms in laying order.
   *
   * @return an unmodifiable list, not null, not empty
   */
  public List<Room> rooms() {
    return rooms;
  }

  /**
   * Returns the same job with other rooms.
   *
   * @param others the rooms in laying order, not null, not empty
   * @return the job, not null
   * @throws IllegalArgumentException if there is no room, or two rooms share a name
   */
  public FloorJob withRooms(List<Room> others) {
    Objects.requireNonNull(others, "others");
    FloorJobBuilder builder = copy();
    builder.rooms.clear();
    builder.rooms.addAll(others);
    return builder.build();
  }

  /**
   * Returns the same job with another choice of direction.
   *
   * @param choice how the direction of the boards is chosen, not null
   * @return the job, not null
   */
  public FloorJob withDirection(DirectionChoice choice) {
    return copy().direction(choice).build();
  }

  /**
   * Returns the same job with other rules.
   *
   * @param others the rules, not null
   * @return the job, not null
   */
  public FloorJob withRules(LayingRules others) {
    Objects.requireNonNull(others, "others");
    return copy().rules(others).build();
  }

  /**
   * Returns the same job, planned with another effort.
   *
   * @param other how hard to look for few boards, not null
   * @return the job, not null
   */
  public FloorJob withEffort(SearchEffort other) {
    Objects.requireNonNull(other, "other");
    return copy().effort(other).build();
  }

  private FloorJobBuilder copy() {
    FloorJobBuilder builder = new FloorJobBuilder(title, board);
    builder.rules = rules;
    builder.direction = direction;
    builder.offcuts = offcuts;
    builder.effort = effort;
    builder.rowWay = rowWay;
    builder.pattern = pattern;
    builder.throughBreaks = throughBreaks;
    builder.goods = goods;
    builder.measured = measured;
    builder.rooms.addAll(rooms);
    return builder;
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    FloorJobBuilder builder = of(title, board).rules(rules).direction(direction).offcuts(offcuts).effort(effort).rowWay(rowWay).pattern(pattern)
        .throughBreaks(throughBreaks).goods(goods);
    rooms.forEach(builder::room);
    return (measured == null ? builder : builder.measuredBoards(measured)).build();
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof FloorJob other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(title, board, rules, direction, offcuts, effort, rowWay, pattern,
        throughBreaks, goods, measured, rooms);
  }
}
