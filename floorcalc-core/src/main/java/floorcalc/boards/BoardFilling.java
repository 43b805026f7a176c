package floorcalc.boards;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Fills boards of one length with parts: in each at most one that needs the low end, one that needs the high end, and any
 * others between them, a saw kerf apart. A bin-packing problem in which two sorts of part exclude their like.
 * <p>
 * Two ways are tried: ends and starts are paired first, as many as can be, and each other part goes, the longest first, where
 * least is left over; or all parts go so. Then boards are emptied, see {@link BoardEmptying}. Deterministic; the effort is counted.
 */
final class BoardFilling {
  static final int LOW = 1;
  static final int HIGH = 2;
  private static final int BOTH = LOW | HIGH;

  final long[] spans;
  final int[] ends;
  final long board;
  final long kerf;
  final Integer[] longestFirst;
  int[] boardOf;
  int boards;
  /** What is left of each board, with a kerf added. */
  long[] room;
  /** Which ends of each board are free. */
  int[] free;

  /**
   * @param spans how long each part is
   * @param ends which ends of the board each needs, as bits
   */
  BoardFilling(long[] spans, int[] ends, long board, long kerf) {
    this.spans = spans;
    this.ends = ends;
    this.board = board;
    this.kerf = kerf;
    this.longestFirst = new Integer[spans.length];
    Arrays.setAll(longestFirst, i -> i);
    Arrays.sort(longestFirst, Comparator.<Integer>comparingLong(i -> -spans[i]).thenComparingInt(i -> i));
  }

  /** Fills boards in each way, keeps the fewest, and goes on emptying boards until no more than {@code least} are left. */
  void fill(int least, long steps) {
    begin();
    pair();
    place();
    if (boards > least) {
      int[] pairedBoardOf = boardOf;
      int pairedBoards = boards;
      long[] pairedRoom = room;
      int[] pairedFree = free;
      begin();
      place();
      if (pairedBoards <= boards) {
        boardOf = pairedBoardOf;
        boards = pairedBoards;
        room = pairedRoom;
        free = pairedFree;
      }
    }
    if (boards > least && steps > 0) {
      new BoardEmptying(this).empty(least, steps);
    }
  }

  private void begin() {
    boardOf = new int[spans.length];
    Arrays.fill(boardOf, -1);
    boards = 0;
    room = new long[spans.length];
    free = new int[spans.length];
  }

  private int open() {
    room[boards] = board + kerf;
    free[boards] = BOTH;
    return boards++;
  }

  void put(int part, int into) {
    boardOf[part] = into;
    room[into] -= spans[part] + kerf;
    free[into] &= ~ends[part];
  }

  void take(int part) {
    int from = boardOf[part];
    boardOf[part] = -1;
    room[from] += spans[part] + kerf;
    free[from] |= ends[part];
  }

  boolean fits(int part, int into) {
    return spans[part] + kerf <= room[into] && (ends[part] & ~free[into]) == 0;
  }

  /** Pairs each end piece, the longest first, with the longest start piece that fits beside it. */
  private void pair() {
    List<Integer> starts = new ArrayList<>();
    for (int i = longestFirst.length - 1; i >= 0; i--) {
      if (ends[longestFirst[i]] == HIGH) {
        starts.add(longestFirst[i]);
      }
    }
    Deque<Integer> fitting = new ArrayDeque<>();
    int next = 0;
    for (int end : longestFirst) {
      if (ends[end] != LOW) {
        continue;
      }
      while (next < starts.size() && spans[starts.get(next)] <= board - kerf - spans[end]) {
        fitting.push(starts.get(next++));
      }
      if (!fitting.isEmpty()) {
        int into = open();
        put(end, into);
        put(fitting.pop(), into);
      }
    }
  }

  /** Puts each part that has no board yet, the longest first, where least is left over, else into a new board. */
  private void place() {
    List<TreeMap<Long, Deque<Integer>>> byFree = new ArrayList<>();
    for (int state = 0; state <= BOTH; state++) {
      byFree.add(new TreeMap<>());
    }
    for (int b = 0; b < boards; b++) {
      rack(byFree, b);
    }
    for (int part : longestFirst) {
      if (boardOf[part] >= 0) {
        continue;
      }
      int into = spans[part] == board ? -1 : tightest(byFree, part);
      if (into < 0) {
        into = open();
      }
      put(part, into);
      rack(byFree, into);
    }
  }

  private void rack(List<TreeMap<Long, Deque<Integer>>> byFree, int b) {
    if (room[b] > kerf) {
      byFree.get(free[b]).computeIfAbsent(room[b], length -> new ArrayDeque<>(2)).addLast(b);
    }
  }

  private int tightest(List<TreeMap<Long, Deque<Integer>>> byFree, int part) {
    int best = -1;
    Map.Entry<Long, Deque<Integer>> found = null;
    for (int state = 0; state <= BOTH; state++) {
      if ((ends[part] & ~state) == 0) {
        Map.Entry<Long, Deque<Integer>> entry = byFree.get(state).ceilingEntry(spans[part] + kerf);
        if (entry != null && (found == null || entry.getKey() < found.getKey())) {
          found = entry;
          best = state;
        }
      }
    }
    if (found == null) {
      return -1;
    }
    int into = found.getValue().removeFirst();
    if (found.getValue().isEmpty()) {
      byFree.get(best).remove(found.getKey());
    }
    return into;
  }
}
