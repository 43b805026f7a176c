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
import java.io.Serializable;
import java.util.ArrayList;
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

  private FloorJob(Builder builder) {
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
  public static Builder of(String title, BoardGoods board) {
    return new Builder(title, board);
  }

  /**
   * Returns what the job is called.
   *
   * @return the title, not null
   */
  public String title() {
    return title;
  }

  /**
   * Returns the boards as they are sold.
   *
   * @return the goods, not null
   */
  public BoardGoods board() {
    return board;
  }

  /**
   * Returns the rules in force.
   *
   * @return the rules, not null
   */
  public LayingRules rules() {
    return rules;
  }

  /**
   * Returns how the direction of the boards is chosen.
   *
   * @return the choice, not null
   */
  public DirectionChoice direction() {
    return direction;
  }

  /**
   * Returns when an offcut may be used.
   *
   * @return the use of offcuts, not null
   */
  public OffcutUse offcuts() {
    return offcuts;
  }

  /**
   * Returns how hard to look for few boards.
   *
   * @return the effort, not null
   */
  public SearchEffort effort() {
    return effort;
  }

  /**
   * Returns how the first row's width is chosen.
   *
   * @return the way, not null
   */
  public RowWay rowWay() {
    return rowWay;
  }

  /**
   * Returns the pattern of the end joints.
   *
   * @return the pattern, not null
   */
  public JointPattern pattern() {
    return pattern;
  }

  /**
   * Returns how the rows of the bays of a room lie to each other.
   *
   * @return the way, not null
   */
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
    Builder builder = copy();
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

  private Builder copy() {
    Builder builder = new Builder(title, board);
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

  /**
   * Gathers the parts of a job. Not thread-safe.
   *
   * @since 0.1
   */
  public static final class Builder {
    private final String title;
    private final BoardGoods board;
    private LayingRules rules;
    private DirectionChoice direction = DirectionChoice.LONGEST_WALL;
    private OffcutUse offcuts = OffcutUse.IN_LAYING_ORDER;
    private SearchEffort effort = SearchEffort.FULL;
    private RowWay rowWay = RowWay.AS_NEEDED;
    private JointPattern pattern = JointPattern.FREE;
    private ThroughBreaks throughBreaks = ThroughBreaks.EACH_BAY_ITS_OWN;
    private FloorGoods goods = FloorGoods.NONE;
    private MeasuredBoards measured;
    private final List<Room> rooms = new ArrayList<>();

    private Builder(String title, BoardGoods board) {
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
    public Builder rules(LayingRules laying) {
      this.rules = Objects.requireNonNull(laying, "laying");
      return this;
    }

    /**
     * Sets how the direction of the boards is chosen; along the longest wall if not set.
     *
     * @param choice the choice, not null
     * @return this builder, not null
     */
    public Builder direction(DirectionChoice choice) {
      this.direction = Objects.requireNonNull(choice, "choice");
      return this;
    }

    /**
     * Sets when an offcut may be used; in laying order if not set.
     *
     * @param use the use of offcuts, not null
     * @return this builder, not null
     */
    public Builder offcuts(OffcutUse use) {
      this.offcuts = Objects.requireNonNull(use, "use");
      return this;
    }

    /**
     * Sets how hard to look for few boards; at first {@link SearchEffort#FULL}.
     *
     * @param chosen the effort, not null
     * @return this builder, not null
     */
    public Builder effort(SearchEffort chosen) {
      this.effort = Objects.requireNonNull(chosen, "chosen");
      return this;
    }

    /**
     * Sets how the first row's width is chosen; as needed if not set.
     *
     * @param way the way, not null
     * @return this builder, not null
     */
    public Builder rowWay(RowWay way) {
      this.rowWay = Objects.requireNonNull(way, "way");
      return this;
    }

    /**
     * Sets the pattern of the end joints; free if not set.
     *
     * @param joints the pattern, not null
     * @return this builder, not null
     */
    public Builder pattern(JointPattern joints) {
      this.pattern = Objects.requireNonNull(joints, "joints");
      return this;
    }

    /**
     * Sets how the rows of the bays of a room lie to each other; each bay for itself if not set.
     *
     * @param way the way, not null
     * @return this builder, not null
     */
    public Builder throughBreaks(ThroughBreaks way) {
      this.throughBreaks = Objects.requireNonNull(way, "way");
      return this;
    }

    /**
     * Sets what is bought beside the boards; nothing is stated if not set.
     *
     * @param bought the goods, not null
     * @return this builder, not null
     */
    public Builder goods(FloorGoods bought) {
      this.goods = Objects.requireNonNull(bought, "bought");
      return this;
    }

    /**
     * Sets what was measured of a sample of the boards; nothing was if not set. The plan then holds it against what they may deviate.
     *
     * @param sample the sample, not null
     * @return this builder, not null
     */
    public Builder measuredBoards(MeasuredBoards sample) {
      this.measured = Objects.requireNonNull(sample, "sample");
      return this;
    }

    /**
     * Adds a room; rooms are laid in the order they are added.
     *
     * @param room the room, not null
     * @return this builder, not null
     */
    public Builder room(Room room) {
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

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    Builder builder = of(title, board).rules(rules).direction(direction).offcuts(offcuts).effort(effort).rowWay(rowWay).pattern(pattern)
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
