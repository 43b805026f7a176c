package floorcalc.boards;

/**
 * Prices of pieces in boards, such that what one board can give never costs more than one board.
 * <p>
 * Let f be a board less a saw kerf. An end piece of length e and a start piece of length s come from one board if e is at
 * most f - s. Take a function u that rises from 0 to 1: an end piece costs u(e), a start piece 1 - u(f - s). Then a pair
 * costs at most 1. A single piece of length l, cut from between them, takes the length used from x to x + c + l: it costs
 * the least that u rises over any such stretch. Pieces too long for any partner cost 1, as whole boards do. Here u rises in
 * steps just beyond its knots and in straight lines between them.
 */
final class PriceList {
  private final long fitting;
  private final long board;
  private final long kerf;
  private final long least;
  private final long most;
  private final Knots knots;
  /** How high u is at each knot, and just beyond it. */
  private final double[] at;
  private final double[] beyond;

  /**
   * @param rises the share of all rise just beyond each knot, then between each knot and the next, then beyond all
   */
  PriceList(Stock stock, Knots knots, double[] rises) {
    this.board = stock.longest();
    this.kerf = stock.kerf;
    this.fitting = board - kerf;
    this.least = Math.max(1, stock.minimumPiece);
    this.most = fitting - least;
    this.knots = knots;
    int count = knots.count();
    this.at = new double[count];
    this.beyond = new double[count];
    double sum = 0;
    for (int j = 0; j < count; j++) {
      sum += j == 0 ? 0 : rises[count + j - 1];
      at[j] = Math.min(1, sum);
      sum += rises[j];
      beyond[j] = Math.min(1, sum);
    }
  }

  /** Tells whether any two pieces can come from one board at all. */
  static boolean isOfUse(Stock stock) {
    return stock.longest() - stock.kerf - 2 * Math.max(1, stock.minimumPiece) > 0;
  }

  Knots knots() {
    return knots;
  }

  double endPiece(long length) {
    return length > most ? 1 : rise(length);
  }

  double startPiece(long length) {
    long partner = fitting - length;
    return partner < least ? 1 : 1 - rise(Math.min(partner, most));
  }

  /** u at a length that is at most the longest that can have a partner. */
  private double rise(long length) {
    int j = knots.below(length);
    if (j < 0) {
      return 0;
    }
    if (j == at.length - 1) {
      return beyond[j];
    }
    long low = knots.at(j);
    return beyond[j] + (at[j + 1] - beyond[j]) * (length - low) / (knots.at(j + 1) - low);
  }

  /** The least rise over any stretch that a single piece can take. */
  double singlePiece(long length) {
    if (length >= board) {
      return 1;
    }
    double least = used(length);
    long room = fitting - length;
    for (int j = 0; j < knots.count() && least > 0; j++) {
      long knot = knots.at(j);
      for (long x : new long[] {knot, knot + 1, knot - kerf - length, knot - kerf - length + 1}) {
        if (x >= 1 && x <= room) {
          least = Math.min(least, used(x + kerf + length) - used(x));
        }
      }
    }
    for (long x : new long[] {1, room, Math.min(room, most), Math.min(room, most + 1), most - kerf - length, most - kerf - length + 1}) {
      if (x >= 1 && x <= room) {
        least = Math.min(least, used(x + kerf + length) - used(x));
      }
    }
    return Math.max(0, least);
  }

  private double used(long length) {
    return length > most ? 1 : rise(length);
  }
}
