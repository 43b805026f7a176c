package floorcalc.boards;

/**
 * Where the joint of one run would make H and stair patterns with runs that are placed: looked up once, for many start pieces.
 * See {@link Patterns}.
 */
final class PatternMarks {
  private static final int NONE = -1;

  private final StartMoves moves;
  private final RunTable table;
  private int looked = NONE;
  private int count;
  /** Start pieces less whole boards that bring the joint in line, and that bring it to equal steps. */
  private long[] inLine = new long[4];
  private long[] equalSteps = new long[4];
  /** Twice the start piece counts for equal steps: the run is the middle one. */
  private boolean[] twice = new boolean[4];
  /** Patterns that the run makes wherever its joint falls. */
  private int always;

  PatternMarks(StartMoves moves) {
    this.moves = moves;
    this.table = moves.table;
  }

  /** Forgets the marks: a run was placed or lifted. */
  void forget() {
    looked = NONE;
  }

  /** How many patterns a run would be part of. */
  int patterns(int run, long piece) {
    if (!table.hasJoint(run, piece)) {
      return 0;
    }
    if (looked != run) {
      look(run);
    }
    int patterns = always;
    for (int i = 0; i < count; i++) {
      long steps = twice[i] ? piece + piece : piece;
      if (!twice[i] && isNear(piece, inLine[i], Patterns.IN_LINE) || isNear(steps, equalSteps[i], Patterns.EQUAL_STEPS)) {
        patterns++;
      }
    }
    return patterns;
  }

  /** Tells whether two lengths under three boards differ by whole boards, but for a little. */
  private boolean isNear(long length, long mark, long little) {
    long over = length - mark;
    while (over >= table.board) {
      over -= table.board;
    }
    long off = over < 0 ? -over : over;
    return off <= little || table.board - off <= little;
  }

  private void look(int run) {
    looked = run;
    count = 0;
    always = 0;
    int[][] threes = table.threes[run];
    if (inLine.length < threes.length) {
      inLine = new long[threes.length];
      equalSteps = new long[threes.length];
      twice = new boolean[threes.length];
    }
    for (int[] three : threes) {
      int one = three[0] == run ? three[1] : three[0];
      int other = three[2] == run ? three[1] : three[2];
      if (moves.isJointed(one) && moves.isJointed(other)) {
        mark(three, run);
      }
    }
  }

  private void mark(int[] three, int run) {
    long last = joint(three[0]);
    long middle = joint(three[1]);
    long first = joint(three[2]);
    long from = table.from[run];
    if (run != three[1]) {
      long far = run == three[0] ? first : last;
      twice[count] = false;
      inLine[count] = Math.floorMod(far - from, table.board);
      equalSteps[count++] = Math.floorMod(2 * middle - far - from, table.board);
    } else if (Patterns.around(last - first, table.board) <= Patterns.IN_LINE) {
      always++;
    } else {
      twice[count] = true;
      equalSteps[count++] = Math.floorMod(last + first - 2 * from, table.board);
    }
  }

  private long joint(int run) {
    return table.from[run] + moves.start[run];
  }
}
