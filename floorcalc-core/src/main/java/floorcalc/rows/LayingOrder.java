package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.rows.FloorCells.Cell;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Which parts of a floor are laid on from a start line, which are laid back from a row, and where both ways round an obstacle meet.
 * <p>
 * Rows are laid up from the line, to its left, and down from it where there is floor on that side. A part that is reached only by going
 * back, such as the floor behind a wall between two doors, needs a new first row: it is laid back from a row that lies already, groove
 * to groove on a loose tongue (double tongue, spline) of the whole length. Where two arms come together again the floor closes: both
 * must arrive in phase and at one angle, see {@link Closure}. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class LayingOrder {
  private final Length tongueAtLine;
  private final List<Turn> turns;
  private final List<Meeting> meetings;
  private final int notReached;

  /**
   * A row line from which a part of the floor is laid back.
   *
   * @param level the row line at or beyond the place where the part begins, as a height over the start line; not null
   * @param from where the loose tongue begins along the line, rounded to the nearest nanometre; not null
   * @param to where it ends, not null
   * @param farthest how far back the part goes at most, as a height over the start line; not null
   * @param walls the stops where the rows of the part end, such as {@code "hall, wall 3"}; not null
   * @since 0.1
   */
  public record Turn(Length level, Length from, Length to, Length farthest, List<String> walls) {
    /** Checks that no part is null and copies the list. */
    public Turn {
      Objects.requireNonNull(walls, "walls");
      Objects.requireNonNull(level, "level");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(farthest, "farthest");
      walls = List.copyOf(walls);
    }

    /**
     * Returns how long the loose tongue is.
     *
     * @return more than zero, not null
     */
    public Length tongue() {
      return to.minus(from);
    }
  }

  /**
   * A place where two arms of the floor meet again.
   *
   * @param level how high over the start line, not null
   * @param from where the obstacle between the arms begins along the line, not null
   * @param to where it ends, not null
   * @param how whether the arms come side by side or from opposite sides, not null
   * @since 0.1
   */
  public record Meeting(Length level, Length from, Length to, How how) {
    /**
     * How arms meet.
     *
     * @since 0.1
     */
    public enum How {
      /** Both were laid the same way: one row goes on over both. */
      SIDE_BY_SIDE,
      /** They were laid towards each other: the last row between them is ripped to fit, its joints glued. */
      HEAD_ON
    }

    /** Checks that no part is null. */
    public Meeting {
      Objects.requireNonNull(level, "level");
      Objects.requireNonNull(from, "from");
      Objects.requireNonNull(to, "to");
      Objects.requireNonNull(how, "how");
    }
  }

  private LayingOrder(Length tongueAtLine, List<Turn> turns, List<Meeting> meetings, int notReached) {
    this.tongueAtLine = tongueAtLine;
    this.turns = List.copyOf(turns);
    this.meetings = List.copyOf(meetings);
    this.notReached = notReached;
  }

  /**
   * Returns the order in which a floor is laid whose first row, or first rows both ways, are of full width.
   *
   * @param parts its rooms and openings, not empty, not null
   * @param line the line that rows start from and run along, not null
   * @param pitch the laid pitch, not null, more than zero
   * @return the order, as {@link #of(List, ControlLine, Length, Length)}; not null
   * @throws IllegalArgumentException as there
   */
  public static Calculated<LayingOrder> of(List<FloorPart> parts, ControlLine line, Length pitch) {
    Objects.requireNonNull(pitch, "pitch");
    return of(parts, line, pitch, pitch);
  }

  /**
   * Returns the order in which a floor is laid.
   *
   * @param parts its rooms and openings in the same coordinates, as laid, not empty, not null
   * @param line the line that rows start from and run along; they start on the part of it in the floor that its first point lies on or,
   *     if none does, on the first beyond it; not null
   * @param pitch the laid pitch, not null, more than zero
   * @param firstRow how wide the first row is that lies on the line's left, more than zero and at most the pitch; not null
   * @return the order with the step {@code loose-tongue}, and the findings {@code laid-back}, {@code arms-meet} and
   *     {@code not-reached} at each such place; not null
   * @throws IllegalArgumentException if there is no part, a width is out of range or the line misses the floor
   */
  public static Calculated<LayingOrder> of(List<FloorPart> parts, ControlLine line, Length pitch, Length firstRow) {
    Objects.requireNonNull(firstRow, "firstRow");
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    Widths.requirePositive(firstRow, "width of the first row", "give the height of the first row line over the start line");
    if (firstRow.compareTo(pitch) > 0) {
      throw new IllegalArgumentException("the first row must not be wider than the laid pitch, " + pitch + ", but was " + firstRow);
    }
    FloorStops stops = FloorStops.of(parts, line);
    List<Cell> cells = new FloorCells(parts, line, 0).cells();
    LayingWalk walk = new LayingWalk(cells);
    Length atLine = walk.start();
    List<Turn> turns = new ArrayList<>();
    while (walk.goOn()) {
      for (LayingWalk.Back back : walk.turnBack()) {
        turns.add(turn(back, walk, stops, pitch, firstRow));
      }
    }
    List<Meeting> meetings = walk.meetings();
    LayingOrder order = new LayingOrder(atLine, turns, meetings, cells.size() - walk.laid());
    Length all = turns.stream().map(Turn::tongue).reduce(atLine, Length::plus);
    List<Term> terms = new ArrayList<>(List.of(Term.of("T0", "along the start line, laid both ways", atLine)));
    StringBuilder sum = new StringBuilder("T = T0");
    for (Turn turn : turns) {
      sum.append(" + T").append(terms.size());
      terms.add(Term.of("T" + terms.size(), "along the row line " + turn.level() + " over the start line", turn.tongue()));
    }
    Step step = new Step("loose-tongue", "How much loose tongue is needed in all?", sum.toString(), terms, all, Source.DEFINITION);
    return Calculated.of(order, List.of(step), order.findings());
  }

  private static Turn turn(LayingWalk.Back back, LayingWalk walk, FloorStops stops, Length pitch,
      Length firstRow) {
    boolean down = !back.up();
    Length at = nearest(back.level()).minus(firstRow);
    long rows = down ? -at.negated().dividedBy(pitch) : at.dividedBy(pitch);
    List<Cell> part = walk.partLaidWith(back.cell());
    double farthest = part.stream().mapToDouble(cell -> down ? cell.low() : cell.high()).reduce(back.level(),
        down ? Math::min : Math::max);
    Stop.Side ends = down ? Stop.Side.FLOOR_ABOVE : Stop.Side.FLOOR_BELOW;
    List<String> walls = stops.bounds().stream().filter(bound -> bound.stop().side() == ends)
        .filter(bound -> part.stream().anyMatch(cell -> bound.touches(cell))).map(bound -> bound.stop().name()).toList();
    return new Turn(firstRow.plus(pitch.multipliedBy(rows)), nearest(back.from()), nearest(back.to()), nearest(farthest), walls);
  }

  static Length nearest(double nanometres) {
    return Length.fromMillimetres(nanometres / 1e6, RoundingMode.HALF_EVEN);
  }

  private List<Finding> findings() {
    List<Finding> findings = new ArrayList<>();
    for (Turn turn : turns) {
      findings.add(new Finding("laid-back", Severity.NOTE, String.join("; ", turn.walls()), "this part is laid back from the row line "
          + turn.level() + " over the start line: a loose tongue of " + turn.tongue() + ", from " + turn.from() + " to " + turn.to()
          + " along it", Source.DEFINITION));
    }
    for (Meeting meeting : meetings) {
      findings.add(new Finding("arms-meet", Severity.NOTE, "", meeting.how() == Meeting.How.SIDE_BY_SIDE
          ? "two arms meet " + meeting.level() + " over the start line, past what stands from " + meeting.from() + " to "
              + meeting.to() + " along it: set out both from one line and check that they arrive in phase and at one angle"
          : "rows laid both ways meet " + meeting.level() + " over the start line, from " + meeting.from() + " to " + meeting.to()
              + " along it: the last row between them is ripped to fit and glued", Source.DEFINITION));
    }
    if (notReached > 0) {
      findings.add(new Finding("not-reached", Severity.WARNING, "", "a part of the floor does not hang together with the start"
          + " line; give the opening between them, or lay it from a line of its own", Source.DEFINITION));
    }
    return findings;
  }

  /**
   * Returns how much loose tongue lies along the start line itself.
   *
   * @return the length that has floor on both sides, zero if rows are laid one way; not null
   */
  public Length tongueAtLine() {
    return tongueAtLine;
  }

  /**
   * Returns where parts of the floor are laid back from a row.
   *
   * @return an unmodifiable list in the order of laying, not null
   */
  public List<Turn> turns() {
    return turns;
  }

  /**
   * Returns where arms of the floor meet again.
   *
   * @return an unmodifiable list from low to high, not null
   */
  public List<Meeting> meetings() {
    return meetings;
  }
}
