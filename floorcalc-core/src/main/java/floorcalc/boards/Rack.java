package floorcalc.boards;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.TreeMap;

/** Offcuts of one sort, found by length; of equal ones the first put in comes out first. */
final class Rack {
  private final TreeMap<Long, Deque<Offcut>> byLength = new TreeMap<>();

  void put(Offcut offcut) {
    byLength.computeIfAbsent(offcut.span(), length -> new ArrayDeque<>(2)).addLast(offcut);
  }

  /** Takes the shortest offcut that holds a piece, looking at no more than a few lengths; null if there is none. */
  Offcut take(PieceWanted piece, long[] boardLengths) {
    int looked = 0;
    for (Map.Entry<Long, Deque<Offcut>> entry : byLength.tailMap(piece.span(), true).entrySet()) {
      for (Offcut offcut : entry.getValue()) {
        if (offcut.holds(piece, boardLengths[offcut.board()])) {
          remove(entry.getKey(), offcut);
          return offcut;
        }
        if (++looked > 64) {
          return null;
        }
      }
    }
    return null;
  }

  Long shortestFor(long span) {
    return byLength.ceilingKey(span);
  }

  private void remove(Long length, Offcut offcut) {
    Deque<Offcut> same = byLength.get(length);
    same.remove(offcut);
    if (same.isEmpty()) {
      byLength.remove(length);
    }
  }

  void addAllTo(java.util.List<Offcut> list) {
    byLength.values().forEach(list::addAll);
  }
}
