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
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Which parts of a floor are laid on from a start line, which are laid back from a row, and where both ways round an obstacle meet.
 * <p>
 * Rows are laid up from the line, to its left, and down from it where there is floor on that side. A part that is reached only by going
 * back, such as the floor behind a wall between two doors, needs a new first row: it is laid back from a row that lies already, groove
 * to groove on a loose tongue (double tongue, spline) of the whole length. Where two arms come together again the floor closes: both
 * must arrive in phase and at one angle, see {@link Closure}. Immutable and thread-safe.
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
   */
  public record Turn(Length level, Length from, Length to, Length farthest, List<String> walls) {
    /** Checks that no part is null and copies the list. */
    public Turn {
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
   */
  public record Meeting(Length level, Length from, Length to, How how) {
    /** How arms meet. */
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
   * Returns the order in which a floor is laid.
   *
   * @param parts its rooms and openings in the same coordinates, as laid, not empty, not null
   * @param line the line that rows start from and run along; they start on the part of it in the floor that its first point lies on or,
   *     if none does, on the first beyond it; not null
   * @param pitch the laid pitch, not null, more than zero
   * @return the order with the step {@code loose-tongue}, and the findings {@code laid-back}, {@code arms-meet} and
   *     {@code not-reached} at each such place; not null
   * @throws IllegalArgumentException if there is no part, the pitch is out of range or the line misses the floor
   */
  public static Calculated<LayingOrder> of(List<FloorPart> parts, ControlLine line, Length pitch) {
    Widths.requirePositive(pitch, "laid pitch", "give the width that a laid board covers");
    FloorStops stops = FloorStops.of(parts, line);
    List<Cell> cells = new FloorCells(parts, line, 0).cells();
    Walk walk = new Walk(cells);
    Length atLine = walk.start();
    List<Turn> turns = new ArrayList<>();
    while (walk.goOn()) {
      for (Walk.Back back : walk.turnBack()) {
        turns.add(turn(back, walk, stops, pitch));
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

  private static Turn turn(Walk.Back back, Walk walk, FloorStops stops, Length pitch) {
    boolean down = !back.up();
    Length at = nearest(back.level());
    long rows = down ? -at.negated().dividedBy(pitch) : at.dividedBy(pitch);
    List<Cell> part = walk.partLaidWith(back.cell());
    double farthest = part.stream().mapToDouble(cell -> down ? cell.low() : cell.high()).reduce(back.level(),
        down ? Math::min : Math::max);
    Stop.Side ends = down ? Stop.Side.FLOOR_ABOVE : Stop.Side.FLOOR_BELOW;
    List<String> walls = stops.bounds().stream().filter(bound -> bound.stop().side() == ends)
        .filter(bound -> part.stream().anyMatch(cell -> bound.touches(cell))).map(bound -> bound.stop().name()).toList();
    return new Turn(pitch.multipliedBy(rows), nearest(back.from()), nearest(back.to()), nearest(farthest), walls);
  }

  private static Length nearest(double nanometres) {
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

  /** Goes from cell to cell as a layer would. */
  private static final class Walk {
    /** A cell laid back from another, and what they share. */
    record Back(Cell cell, boolean up, double level, double from, double to) {}

    private final List<Cell> cells;
    private final Map<Cell, Boolean> up = new LinkedHashMap<>();
    private final Deque<Cell> open = new ArrayDeque<>();
    private final List<Cell> starts = new ArrayList<>();

    Walk(List<Cell> cells) {
      this.cells = cells;
    }

    /** Lays the cells at the start line; returns how long the line is if there is floor on both sides of it. */
    Length start() {
      List<Cell> above = cells.stream().filter(cell -> cell.low() == 0).toList();
      List<Cell> below = cells.stream().filter(cell -> cell.high() == 0).toList();
      double[] chord = chord(above, below);
      for (Cell cell : above) {
        if (overlap(cell.leftLow(), cell.rightLow(), chord[0], chord[1]) > FloorCells.NEAR) {
          lay(cell, true);
        }
      }
      Length tongue = Length.ZERO;
      for (Cell cell : below) {
        if (overlap(cell.leftHigh(), cell.rightHigh(), chord[0], chord[1]) > FloorCells.NEAR) {
          lay(cell, false);
          for (Cell over : next(cell, true)) {
            tongue = tongue.plus(nearest(overlap(over.leftLow(), over.rightLow(), cell.leftHigh(), cell.rightHigh())));
          }
        }
      }
      starts.addAll(up.keySet());
      return tongue;
    }

    /** The connected stretch of floor along the start line that holds its first point, or else the first one beyond it. */
    private static double[] chord(List<Cell> above, List<Cell> below) {
      List<double[]> spans = new ArrayList<>();
      above.forEach(cell -> spans.add(new double[] {cell.leftLow(), cell.rightLow()}));
      below.forEach(cell -> spans.add(new double[] {cell.leftHigh(), cell.rightHigh()}));
      spans.sort(Comparator.comparingDouble(span -> span[0]));
      double[] chord = null;
      for (double[] span : spans) {
        if (chord != null && span[0] < chord[1]) {
          chord[1] = Math.max(chord[1], span[1]);
        } else if (chord == null || chord[1] <= 0) {
          chord = span.clone();
        }
      }
      if (chord == null || chord[1] <= 0) {
        throw new IllegalArgumentException(
            "the start line misses the floor, or the floor ends before its first point; take a line through it");
      }
      return chord;
    }

    private static double overlap(double from, double to, double from2, double to2) {
      return Math.min(to, to2) - Math.max(from, from2);
    }

    private void lay(Cell cell, boolean upwards) {
      if (up.putIfAbsent(cell, upwards) == null) {
        open.add(cell);
      }
    }

    private List<Cell> next(Cell cell, boolean upwards) {
      return cells.stream().filter(other -> upwards ? cell.isBelow(other) : other.isBelow(cell)).toList();
    }

    /** Lays on from all open cells; returns whether some neighbour is left to be laid back to. */
    boolean goOn() {
      while (!open.isEmpty()) {
        Cell cell = open.remove();
        boolean upwards = up.get(cell);
        next(cell, upwards).forEach(other -> lay(other, upwards));
      }
      return up.entrySet().stream()
          .anyMatch(entry -> next(entry.getKey(), !entry.getValue()).stream().anyMatch(other -> !up.containsKey(other)));
    }

    /** Lays back to every neighbour that is not laid, from all cells that share an edge with it. */
    List<Back> turnBack() {
      List<Back> backs = new ArrayList<>();
      Map<Cell, Boolean> before = new LinkedHashMap<>(up);
      before.forEach((cell, upwards) -> {
        for (Cell other : next(cell, !upwards)) {
          if (!before.containsKey(other) && up.getOrDefault(other, !upwards) != upwards) {
            lay(other, !upwards);
            Cell low = upwards ? other : cell;
            Cell high = upwards ? cell : other;
            backs.add(new Back(other, !upwards, low.high(), Math.max(low.leftHigh(), high.leftLow()),
                Math.min(low.rightHigh(), high.rightLow())));
          }
        }
      });
      return backs;
    }

    /** The cells that are laid on from a cell, itself counted. */
    List<Cell> partLaidWith(Cell cell) {
      boolean upwards = up.get(cell);
      List<Cell> part = new ArrayList<>(List.of(cell));
      for (int i = 0; i < part.size(); i++) {
        next(part.get(i), upwards).stream().filter(other -> !part.contains(other) && up.getOrDefault(other, upwards) == upwards)
            .forEach(part::add);
      }
      return part;
    }

    int laid() {
      return up.size();
    }

    /** Where a cell is reached from several sides behind it, and where two cells are laid towards each other. */
    List<Meeting> meetings() {
      List<Meeting> meetings = new ArrayList<>();
      List<Cell> order = List.copyOf(up.keySet());
      for (Cell cell : cells) {
        if (!up.containsKey(cell)) {
          continue;
        }
        boolean upwards = up.get(cell);
        List<Cell> arms = next(cell, !upwards).stream().filter(arm -> !starts.contains(cell) && (up.get(arm) == upwards
            || order.indexOf(arm) < order.indexOf(cell))).sorted(Comparator.comparingDouble(Cell::leftLow)).toList();
        for (int i = 1; i < arms.size(); i++) {
          double from = upwards ? arms.get(i - 1).rightHigh() : arms.get(i - 1).rightLow();
          double to = upwards ? arms.get(i).leftHigh() : arms.get(i).leftLow();
          meetings.add(new Meeting(nearest(upwards ? cell.low() : cell.high()), nearest(from), nearest(to),
              Meeting.How.SIDE_BY_SIDE));
        }
        if (upwards) {
          next(cell, true).stream().filter(over -> !up.get(over)).forEach(over -> meetings.add(new Meeting(nearest(cell.high()),
              nearest(Math.max(cell.leftHigh(), over.leftLow())), nearest(Math.min(cell.rightHigh(), over.rightLow())),
              Meeting.How.HEAD_ON)));
        }
      }
      return meetings;
    }
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
