package floorcalc.rows;

import floorcalc.measure.Length;
import floorcalc.rows.FloorCells.Cell;
import floorcalc.rows.LayingOrder.Meeting;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Goes from cell to cell as a layer would. */
final class LayingWalk {
  /** A cell laid back from another, and what they share. */
  record Back(Cell cell, boolean up, double level, double from, double to) {}

  private final List<Cell> cells;
  private final Map<Double, List<Cell>> byLow = new TreeMap<>();
  private final Map<Double, List<Cell>> byHigh = new TreeMap<>();
  private final Map<Cell, Boolean> up = new LinkedHashMap<>();
  private final Deque<Cell> open = new ArrayDeque<>();
  private final Set<Cell> starts = new LinkedHashSet<>();

  LayingWalk(List<Cell> cells) {
    this.cells = cells;
    for (Cell cell : cells) {
      byLow.computeIfAbsent(cell.low(), level -> new ArrayList<>()).add(cell);
      byHigh.computeIfAbsent(cell.high(), level -> new ArrayList<>()).add(cell);
    }
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
          tongue = tongue.plus(LayingOrder.nearest(overlap(over.leftLow(), over.rightLow(), cell.leftHigh(), cell.rightHigh())));
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
    return upwards ? byLow.getOrDefault(cell.high(), List.of()).stream().filter(cell::isBelow).toList()
        : byHigh.getOrDefault(cell.low(), List.of()).stream().filter(other -> other.isBelow(cell)).toList();
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
    Set<Cell> part = new LinkedHashSet<>(List.of(cell));
    Deque<Cell> more = new ArrayDeque<>(part);
    while (!more.isEmpty()) {
      next(more.remove(), upwards).stream().filter(other -> up.getOrDefault(other, upwards) == upwards && part.add(other))
          .forEach(more::add);
    }
    return List.copyOf(part);
  }

  int laid() {
    return up.size();
  }

  /** Where a cell is reached from several sides behind it, and where two cells are laid towards each other. */
  List<Meeting> meetings() {
    List<Meeting> meetings = new ArrayList<>();
    Map<Cell, Integer> order = new LinkedHashMap<>();
    up.keySet().forEach(cell -> order.put(cell, order.size()));
    for (Cell cell : cells) {
      if (!up.containsKey(cell)) {
        continue;
      }
      boolean upwards = up.get(cell);
      List<Cell> arms = starts.contains(cell) ? List.of() : next(cell, !upwards).stream()
          .filter(arm -> up.containsKey(arm) && (up.get(arm) == upwards || order.get(arm) < order.get(cell)))
          .sorted(Comparator.comparingDouble(Cell::leftLow)).toList();
      for (int i = 1; i < arms.size(); i++) {
        double from = upwards ? arms.get(i - 1).rightHigh() : arms.get(i - 1).rightLow();
        double to = upwards ? arms.get(i).leftHigh() : arms.get(i).leftLow();
        meetings.add(new Meeting(LayingOrder.nearest(upwards ? cell.low() : cell.high()), LayingOrder.nearest(from), LayingOrder.nearest(to),
            Meeting.How.SIDE_BY_SIDE));
      }
      if (upwards) {
        next(cell, true).stream().filter(over -> !up.get(over)).forEach(over -> meetings.add(new Meeting(LayingOrder.nearest(cell.high()),
            LayingOrder.nearest(Math.max(cell.leftHigh(), over.leftLow())), LayingOrder.nearest(Math.min(cell.rightHigh(), over.rightLow())),
            Meeting.How.HEAD_ON)));
      }
    }
    return meetings;
  }
}
