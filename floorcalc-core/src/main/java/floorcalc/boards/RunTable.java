package floorcalc.boards;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Runs as plain numbers, with the runs that each one touches before and after it: for searches that move the joints of
 * boards of one length.
 * <p>
 * A run is told by its start piece. A start piece of the run's own length, or of 0, means that one piece fills the run:
 * cut as a start piece, or as an end piece.
 */
final class RunTable {
  final int count;
  final long board;
  final long least;
  final long[] from;
  final long[] span;
  /** The runs that each run touches, before and after it. */
  final int[][] touched;
  /** The one run before each run that it touches, or -1 if there is none or more than one. */
  final int[] before;
  /** Runs three in a row, each touching the one before alone, as (last, middle, first); for each run those it belongs to. */
  final int[][][] threes;
  /** What is left of each run's length beyond whole boards, and how many those are. */
  final long[] rest;
  private final long[] boards;
  /** The place of each run's low end within a board's length. */
  private final long[] phase;
  /** Start pieces worth trying whatever lies beside each run. */
  final long[][] plain;
  private final long[][][] contacts;
  private final long[][] longest;

  RunTable(List<Run> runs, Stock stock) {
    this.count = runs.size();
    this.board = stock.longest();
    this.least = Math.max(1, stock.minimumPiece);
    this.from = new long[count];
    this.span = new long[count];
    this.before = new int[count];
    this.rest = new long[count];
    this.boards = new long[count];
    this.phase = new long[count];
    List<List<Integer>> touching = lists();
    List<List<long[]>> where = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      where.add(new ArrayList<>());
    }
    for (int k = 0; k < count; k++) {
      Run run = runs.get(k);
      from[k] = run.from();
      span[k] = run.span();
      rest[k] = span[k] % board;
      boards[k] = span[k] / board;
      phase[k] = Math.floorMod(from[k], board);
      before[k] = run.neighbourCount() == 1 ? run.neighbour(0) : -1;
      for (int i = 0; i < run.neighbourCount(); i++) {
        touching.get(k).add(run.neighbour(i));
        where.get(k).add(run.contact(i));
        touching.get(run.neighbour(i)).add(k);
        where.get(run.neighbour(i)).add(run.contact(i));
      }
    }
    this.touched = new int[count][];
    this.contacts = new long[count][][];
    this.longest = new long[count][];
    for (int k = 0; k < count; k++) {
      touched[k] = touching.get(k).stream().mapToInt(Integer::intValue).toArray();
      contacts[k] = where.get(k).toArray(new long[0][]);
      longest[k] = Arrays.stream(contacts[k]).mapToLong(RunTable::longestOf).toArray();
    }
    this.threes = threes();
    this.plain = new long[count][];
    for (int k = 0; k < count; k++) {
      plain[k] = plainStarts(span[k], board - stock.kerf);
    }
  }

  private long[] plainStarts(long length, long fitting) {
    long[] starts = {board, length, least, length - least, fitting - least, length - fitting + least, (length + fitting) / 2,
        (length - board + fitting) / 2, length / 2};
    return Arrays.stream(starts).map(this::withinBoard).distinct().toArray();
  }

  /** A start piece longer or shorter by whole boards, such that it comes from one board. */
  long withinBoard(long start) {
    long within = Math.floorMod(start, board);
    return within == 0 ? board : within;
  }

  private List<List<Integer>> lists() {
    List<List<Integer>> lists = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      lists.add(new ArrayList<>());
    }
    return lists;
  }

  private static long longestOf(long[] contact) {
    long longest = 0;
    for (int i = 0; i < contact.length; i += 2) {
      longest = Math.max(longest, contact[i + 1] - contact[i]);
    }
    return longest;
  }

  private int[][][] threes() {
    List<List<int[]>> found = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      found.add(new ArrayList<>());
    }
    for (int k = 0; k < count; k++) {
      int middle = before[k];
      int first = middle < 0 ? -1 : before[middle];
      if (first >= 0) {
        int[] three = {k, middle, first};
        for (int run : three) {
          found.get(run).add(three);
        }
      }
    }
    return found.stream().map(list -> list.toArray(new int[0][])).toArray(int[][][]::new);
  }

  /** Tells whether a run whose start piece is given has a joint. */
  boolean hasJoint(int run, long start) {
    return start > 0 && start < span[run];
  }

  /** Whole boards between the start and the end piece, or filling the run; a start piece that is a whole board counts too. */
  long whole(int run, long start) {
    if (start == 0 || start == span[run]) {
      return span[run] == board ? 1 : 0;
    }
    return boards[run] - (start > rest[run] ? 1 : 0) + (start == board ? 1 : 0);
  }

  /** The start piece that is cut, or 0 if there is none or it is a whole board. */
  long cutStart(long start) {
    return start == board ? 0 : start;
  }

  /** The end piece that is cut, or 0 if there is none or it is a whole board. */
  long cutEnd(int run, long start) {
    long end = rest[run] - start;
    return end < 0 ? end + board : end;
  }

  /** How many whole boards a run is long. */
  long wholeBoards(int run) {
    return boards[run];
  }

  /** How far the low end of a run lies beyond that of another, less whole boards. */
  long apart(int run, int other) {
    return phase[run] - phase[other];
  }

  /** Tells whether start and end piece are long enough and no longer than a board. */
  boolean fits(int run, long start) {
    long length = span[run];
    if (start == 0 || start == length) {
      return length <= board;
    }
    if (start < 0 || start > length || start > board || start < least && start != board) {
      return false;
    }
    long end = cutEnd(run, start);
    return end == 0 || end >= least;
  }

  /** Tells whether a joint of a run comes nearer than an offset to one of a run that it touches, where they touch. */
  boolean near(int run, long start, int link, long otherStart, long offset) {
    int other = touched[run][link];
    if (!hasJoint(run, start) || !hasJoint(other, otherStart)) {
      return false;
    }
    if (!isNear(apart(run, other) + start - otherStart, offset)) {
      return false;
    }
    if (longest[run][link] >= board + offset) {
      return true;
    }
    return nearWhereTheyTouch(run, from[run] + start, other, from[other] + otherStart, contacts[run][link], offset);
  }

  /** Tells whether two places less than two boards apart are, whole boards left out, nearer than an offset. */
  boolean isNear(long apart, long offset) {
    long after = apart < 0 ? apart + board : apart;
    after += after < 0 ? board : 0;
    after -= after >= board ? board : 0;
    return after < offset || board - after < offset;
  }

  /** Each joint may lie in another stretch of the contact. */
  private boolean nearWhereTheyTouch(int run, long joint, int other, long otherJoint, long[] contact, long offset) {
    long after = Math.floorMod(joint - otherJoint, board);
    long apart = board - after;
    for (int i = 0; i < contact.length; i += 2) {
      long low = first(joint, contact[i]);
      long high = last(joint, Math.min(contact[i + 1], from[run] + span[run] - 1));
      for (int j = 0; j < contact.length && low <= high; j += 2) {
        long otherLow = first(otherJoint, contact[j]);
        long otherHigh = last(otherJoint, Math.min(contact[j + 1], from[other] + span[other] - 1));
        if (after < offset && Math.max(otherLow, low - after) <= Math.min(otherHigh, high - after)
            || apart < offset && Math.max(low, otherLow - apart) <= Math.min(high, otherHigh - apart)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The first joint at a place or beyond it, of those that follow each other by a board's length. */
  private long first(long joint, long place) {
    return joint >= place ? joint : joint + (place - joint + board - 1) / board * board;
  }

  /** The last joint at a place or before it; far below all if there is none. */
  private long last(long joint, long place) {
    return place < joint ? Long.MIN_VALUE / 4 : joint + (place - joint) / board * board;
  }
}
