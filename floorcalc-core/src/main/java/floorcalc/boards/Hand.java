package floorcalc.boards;

/** What is on hand while a run is laid: offcuts are used where they fit, else boards are opened. */
final class Hand {
  private final Stock stock;
  final int[] opened;
  long[] forStarts;
  long[] forEnds;

  Hand(Stock stock, LaidRuns layer) {
    this.stock = stock;
    this.opened = layer.opened.clone();
    this.forStarts = layer.forStarts;
    this.forEnds = layer.forEnds;
  }

  /** Lays a run: start and end pieces come from offcuts where they fit. */
  void lay(Run run, long[] joints) {
    if (joints.length == 0) {
      single(run.span());
      return;
    }
    start(joints[0] - run.from());
    if (stock.isUniform()) {
      opened[0] += joints.length - 1;
    } else {
      for (int i = 1; i < joints.length; i++) {
        opened[stock.kindOf(joints[i] - joints[i - 1])]++;
      }
    }
    end(run.to() - joints[joints.length - 1]);
  }

  private void start(long piece) {
    int whole = stock.kindOf(piece);
    if (whole >= 0) {
      opened[whole]++;
      return;
    }
    int offcut = LaidRuns.shortestFor(forStarts, piece);
    if (offcut >= 0) {
      forStarts = LaidRuns.without(forStarts, offcut);
      return;
    }
    int kind = stock.kindFor(piece, opened);
    opened[kind]++;
    long rest = stock.lengths[kind] - piece - stock.kerf;
    if (rest >= stock.minimumPiece && rest > 0) {
      forEnds = LaidRuns.with(forEnds, rest);
    }
  }

  private void end(long piece) {
    int whole = stock.kindOf(piece);
    if (whole >= 0) {
      opened[whole]++;
      return;
    }
    int offcut = LaidRuns.shortestFor(forEnds, piece);
    if (offcut >= 0) {
      forEnds = LaidRuns.without(forEnds, offcut);
      return;
    }
    int kind = stock.kindFor(piece, opened);
    opened[kind]++;
    long rest = stock.lengths[kind] - piece - stock.kerf;
    if (rest >= stock.minimumPiece && rest > 0) {
      forStarts = LaidRuns.with(forStarts, rest);
    }
  }

  private void single(long piece) {
    int start = LaidRuns.shortestFor(forStarts, piece);
    int end = LaidRuns.shortestFor(forEnds, piece);
    if (start >= 0 && (end < 0 || forStarts[start] <= forEnds[end])) {
      long rest = forStarts[start] - piece - stock.kerf;
      forStarts = LaidRuns.without(forStarts, start);
      if (rest > 0 && rest >= stock.minimumPiece) {
        forStarts = LaidRuns.with(forStarts, rest);
      }
    } else if (end >= 0) {
      long rest = forEnds[end] - piece - stock.kerf;
      forEnds = LaidRuns.without(forEnds, end);
      if (rest > 0 && rest >= stock.minimumPiece) {
        forEnds = LaidRuns.with(forEnds, rest);
      }
    } else {
      int kind = stock.kindFor(piece, opened);
      opened[kind]++;
      long rest = stock.lengths[kind] - piece - stock.kerf;
      if (rest > 0 && rest >= stock.minimumPiece) {
        forStarts = LaidRuns.with(forStarts, rest);
      }
    }
  }
}
