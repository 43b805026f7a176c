package floorcalc.boards;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * Empties boards that have been filled with parts, those with least in them first: each of their parts finds room elsewhere, for
 * itself or in place of a shorter one that finds room. Where no board can be emptied, fuller boards are filled more by exchanging
 * parts with emptier ones, and it begins anew.
 */
final class BoardEmptying {
  private final BoardFilling filling;
  private final List<List<Integer>> parts = new ArrayList<>();
  private final Deque<int[]> moves = new ArrayDeque<>();
  private long steps;

  BoardEmptying(BoardFilling filling) {
    this.filling = filling;
    for (int b = 0; b < filling.boards; b++) {
      parts.add(new ArrayList<>(3));
    }
    for (int part : filling.longestFirst) {
      parts.get(filling.boardOf[part]).add(part);
    }
  }

  /** Goes on until no more than {@code least} boards are left, or nothing changes, or the steps are used up. */
  void empty(int least, long most) {
    boolean changed = true;
    while (changed && filling.boards > least && steps < most) {
      changed = false;
      Integer[] emptiest = emptiestFirst();
      for (int i = 0; i < emptiest.length && !changed && steps < most; i++) {
        changed = moveAllAway(emptiest[i], most);
        if (changed) {
          drop(emptiest[i]);
        }
      }
      for (int i = emptiest.length - 1; !changed && i > 0 && steps < most; i--) {
        changed = exchange(emptiest[i]);
      }
    }
  }

  private Integer[] emptiestFirst() {
    Integer[] emptiest = new Integer[filling.boards];
    Arrays.setAll(emptiest, b -> b);
    Arrays.sort(emptiest, Comparator.<Integer>comparingLong(b -> -filling.room[b]).thenComparingInt(b -> b));
    return emptiest;
  }

  /** Takes away an empty board; the last one gets its number. */
  private void drop(int empty) {
    int last = --filling.boards;
    filling.room[empty] = filling.room[last];
    filling.free[empty] = filling.free[last];
    parts.set(empty, parts.get(last));
    parts.remove(last);
    if (empty < last) {
      parts.get(empty).forEach(part -> filling.boardOf[part] = empty);
    }
  }

  private boolean moveAllAway(int target, long most) {
    moves.clear();
    for (int part : List.copyOf(parts.get(target))) {
      if (filling.spans[part] == filling.board || steps > most || !moveAway(part, target)) {
        while (!moves.isEmpty()) {
          int[] move = moves.pop();
          shift(move[0], move[1]);
        }
        return false;
      }
    }
    return true;
  }

  private boolean moveAway(int part, int target) {
    int into = tightest(part, target, target);
    if (into >= 0) {
      move(part, into);
      return true;
    }
    for (int b = 0; b < filling.boards; b++) {
      for (int other : b == target ? List.<Integer>of() : parts.get(b)) {
        steps++;
        boolean givesWay = filling.spans[other] < filling.spans[part] && canReplace(part, other, b);
        int elsewhere = givesWay ? tightest(other, b, target) : -1;
        if (elsewhere >= 0) {
          move(other, elsewhere);
          move(part, b);
          return true;
        }
      }
    }
    return false;
  }

  private boolean canReplace(int part, int other, int in) {
    return filling.spans[part] - filling.spans[other] <= filling.room[in]
        && (filling.ends[part] & ~(filling.free[in] | filling.ends[other])) == 0;
  }

  /** The board, neither of two, in which a part leaves least room; -1 if there is none. */
  private int tightest(int part, int but, int target) {
    int best = -1;
    for (int b = 0; b < filling.boards; b++) {
      steps++;
      if (b != target && b != but && filling.fits(part, b) && (best < 0 || filling.room[b] < filling.room[best])) {
        best = b;
      }
    }
    return best;
  }

  /** Puts in a part of an emptier board, in place of a shorter one or of none, that fills a board best; false if none does. */
  private boolean exchange(int into) {
    long most = 0;
    int taken = -1;
    int given = -1;
    for (int b = 0; b < filling.boards && filling.room[into] > 0; b++) {
      for (int part : b == into || filling.room[b] < filling.room[into] ? List.<Integer>of() : parts.get(b)) {
        steps += 1 + parts.get(into).size();
        long whole = filling.spans[part] + filling.kerf;
        if (whole > most && filling.fits(part, into)) {
          most = whole;
          taken = part;
          given = -1;
        }
        for (int other : parts.get(into)) {
          long gain = filling.spans[part] - filling.spans[other];
          if (gain > most && canReplace(part, other, into) && canReplace(other, part, b)) {
            most = gain;
            taken = part;
            given = other;
          }
        }
      }
    }
    if (taken >= 0) {
      int from = filling.boardOf[taken];
      lift(taken);
      if (given >= 0) {
        lift(given);
        lay(given, from);
      }
      lay(taken, into);
    }
    return taken >= 0;
  }

  private void move(int part, int into) {
    moves.push(new int[] {part, filling.boardOf[part]});
    shift(part, into);
  }

  private void shift(int part, int into) {
    lift(part);
    lay(part, into);
  }

  private void lift(int part) {
    parts.get(filling.boardOf[part]).remove((Integer) part);
    filling.take(part);
  }

  private void lay(int part, int into) {
    filling.put(part, into);
    parts.get(into).add(part);
  }
}
