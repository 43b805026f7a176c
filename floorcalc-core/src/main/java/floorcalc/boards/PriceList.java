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
  /** For each place between knots how high u is at its low end, and how much it rises over it. */
  private final double[] low;
  private final double[] rising;

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
    this.low = new double[count + 2];
    this.rising = new double[count + 2];
    double sum = 0;
    for (int j = 0; j < count; j++) {
      sum += j == 0 ? 0 : rises[count + j - 1];
      rising[j] = j == 0 ? 0 : Math.min(1, sum) - low[j];
      sum += rises[j];
      low[j + 1] = Math.min(1, sum);
    }
    low[count + 1] = 1;
  }

  /** Tells whether any two pieces can come from one board at all. */
  static boolean isOfUse(Stock stock) {
    return stock.longest() - stock.kerf - 2 * Math.max(1, stock.minimumPiece) > 0;
  }

  Knots knots() {
    return knots;
  }

  double endPiece(long length) {
    return used(length);
  }

  double startPiece(long length) {
    long partner = fitting - length;
    return partner < least ? 1 : 1 - used(Math.min(partner, most));
  }

  /** u at a place told by {@link Knots#place} and {@link Knots#share}. */
  double rise(int place, double share) {
    return low[place] + rising[place] * share;
  }

  private double used(long length) {
    return rise(knots.place(length), knots.share(length));
  }

  /** The least rise over any stretch that a single piece can take. */
  double singlePiece(long length) {
    if (length >= board) {
      return 1;
    }
    long place = cheapestPlace(length);
    return Math.max(0, place == 0 ? used(length) : used(place + kerf + length) - used(place));
  }

  /** Adds, for each rise, how much of it a single piece pays at the place where it is cheapest. */
  void addSinglePiece(long length, double[] paid) {
    if (length >= board) {
      knots.addEndPiece(length, 1, paid);
      return;
    }
    long place = cheapestPlace(length);
    knots.addEndPiece(place == 0 ? length : place + kerf + length, 1, paid);
    if (place > 0) {
      knots.addEndPiece(place, -1, paid);
    }
  }

  /** How far from the low end of a board a single piece is cheapest, the kerf before it not counted; 0 for the end itself. */
  private long cheapestPlace(long length) {
    long best = 0;
    double least = used(length);
    long room = fitting - length;
    for (int j = 0; j < knots.count(); j++) {
      long knot = knots.at(j);
      for (long x : new long[] {knot, knot + 1, knot - kerf - length, knot - kerf - length + 1}) {
        if (x >= 1 && x <= room && used(x + kerf + length) - used(x) < least) {
          least = used(x + kerf + length) - used(x);
          best = x;
        }
      }
    }
    for (long x : new long[] {1, room, Math.min(room, most), Math.min(room, most + 1), most - kerf - length, most - kerf - length + 1}) {
      if (x >= 1 && x <= room && used(x + kerf + length) - used(x) < least) {
        least = used(x + kerf + length) - used(x);
        best = x;
      }
    }
    return best;
  }
}
