package floorcalc.boards;

/**
 * Moves start pieces so that fewer cuts are made, with no board and no pattern more and no joints nearer to each other.
 * <p>
 * Each end piece and each start piece takes a cut, but a pair that fills its board except for one kerf takes one cut together.
 * All such pairs there can be are had with the most pairs of all, see {@link PairsAnew}; so the cuts follow from how many end
 * pieces of a length there are, and how many start pieces that fill a board with it. A run moves to where it takes fewer cuts,
 * and now and then to where it takes as many, so that another can move.
 */
final class FewerCuts {
  private static final int PASSES = 8;
  /** So many passes that save nothing are the end. */
  private static final int IDLE = 2;
  private static final int SIDEWAYS = 4;

  private final StartMoves moves;
  private final int boards;
  private final long fitting;
  private boolean weighed;

  /** Moves runs that are all placed; the offset to keep is that of the moves. */
  FewerCuts(StartMoves moves, int boards) {
    this.moves = moves;
    this.boards = boards;
    this.fitting = moves.fitting();
  }

  /** Moves the runs; returns how many cuts that saves. */
  int save() {
    int saved = 0;
    int idle = 0;
    for (int pass = 0; pass < PASSES && idle < IDLE; pass++) {
      int before = saved;
      for (int run = 0; run < moves.table.count; run++) {
        saved += move(run);
      }
      idle = saved > before ? 0 : idle + 1;
    }
    return saved;
  }

  private int move(int run) {
    long piece = moves.start[run];
    moves.lift(run);
    weighed = false;
    int before = cutsWith(run, piece);
    int fewest = before;
    if (before > 0) {
      int patterns = moves.patterns(run, piece);
      moves.findTries(run);
      moves.lookAround(run, -1);
      for (int i = 0; i < moves.tryCount && fewest > 0; i++) {
        long start = moves.tries[i];
        int cuts = cutsWith(run, start);
        boolean worth = cuts < fewest || cuts == fewest && start != piece && moves.random(SIDEWAYS) == 0;
        if (worth && moves.keepsRules(start) && moves.patterns(run, start) <= patterns && takesNoBoardMore(run, start)) {
          fewest = cuts;
          piece = start;
        }
      }
    }
    moves.place(run, piece);
    return before - fewest;
  }

  private boolean takesNoBoardMore(int run, long start) {
    if (!weighed) {
      moves.tally.weigh(boards);
      weighed = true;
    }
    return moves.boardsWith(run, start) <= boards;
  }

  /** How many cuts more there are with a run that is laid with a start piece. */
  private int cutsWith(int run, long piece) {
    long start = moves.table.cutStart(piece);
    long end = moves.table.cutEnd(run, piece);
    int cuts = 0;
    if (end > 0) {
      cuts += moves.tally.endsOver(end) < 0 ? 0 : 1;
    }
    if (start > 0) {
      long partner = fitting - start;
      cuts += moves.tally.endsOver(partner) + (end == partner ? 1 : 0) > 0 ? 0 : 1;
    }
    return cuts;
  }
}
