package floorcalc.boards;

import floorcalc.rules.LayingRules;

/** The figures of goods and rules that the search and the cutting need again and again, in whole nanometres. */
final class Stock {
  /** The lengths sold, longest first. */
  final long[] lengths;
  /** How many of each a pack holds. */
  final int[] perPack;
  final int boardsPerPack;
  final long width;
  final long kerf;
  final long minimumPiece;
  final long minimumOffset;

  Stock(BoardGoods goods, LayingRules rules) {
    lengths = goods.pack().stream().mapToLong(p -> p.length().toNanometres()).toArray();
    perPack = goods.pack().stream().mapToInt(PackContent::perPack).toArray();
    boardsPerPack = goods.boardsPerPack();
    width = goods.laidPitch().toNanometres();
    kerf = rules.value(LayingRules.SAW_KERF).toNanometres();
    minimumPiece = rules.value(LayingRules.MINIMUM_END_PIECE).toNanometres();
    minimumOffset = rules.value(LayingRules.MINIMUM_JOINT_OFFSET).toNanometres();
  }

  boolean isUniform() {
    return lengths.length == 1;
  }

  long longest() {
    return lengths[0];
  }

  /** The place of a length among those sold, or -1. */
  int kindOf(long length) {
    for (int i = 0; i < lengths.length; i++) {
      if (lengths[i] == length) {
        return i;
      }
    }
    return -1;
  }

  /**
   * The length to open for a piece: of those that are long enough, the one of which the packs have most to spare;
   * among equals the shortest.
   */
  int kindFor(long piece, int[] opened) {
    int best = -1;
    for (int i = lengths.length - 1; i >= 0; i--) {
      if (lengths[i] >= piece
          && (best < 0 || (long) opened[i] * perPack[best] < (long) opened[best] * perPack[i])) {
        best = i;
      }
    }
    return best;
  }

  /** Whole packs that hold the boards opened, none to spare. */
  int packs(int[] opened) {
    int boards = 0;
    int packs = 0;
    for (int i = 0; i < opened.length; i++) {
      boards += opened[i];
      packs = Math.max(packs, (opened[i] + perPack[i] - 1) / perPack[i]);
    }
    return Math.max(packs, (boards + boardsPerPack - 1) / boardsPerPack);
  }

  /** Boards opened, weighed so that packs come out even: for one length this is their number. */
  double weight(int[] opened) {
    if (opened.length == 1) {
      return opened[0];
    }
    double metres = 0;
    double pack = 0;
    double fullest = 0;
    for (int i = 0; i < opened.length; i++) {
      metres += (double) opened[i] * lengths[i];
      pack += (double) perPack[i] * lengths[i];
      fullest = Math.max(fullest, (double) opened[i] / perPack[i]);
    }
    return boardsPerPack * (0.5 * metres / pack + 0.5 * fullest);
  }
}
