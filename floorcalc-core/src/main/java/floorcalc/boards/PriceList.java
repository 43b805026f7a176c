package floorcalc.boards;

/**
 * Prices of pieces in boards, such that what one board can give never costs more than one board.
 * <p>
 * Let Q be a board less a saw kerf. An end piece of length e and a start piece of length s come from one board if
 * e + s is at most Q. Take a function u that rises from 0 to 1: an end piece costs u(e), a start piece 1 - u(Q - s). Then a
 * pair costs u(e) + 1 - u(Q - s), at most 1 because e is at most Q - s. Pieces too long for any partner cost 1, as whole
 * boards do. Here u rises in straight lines between knots at equal distances, from the least piece to the longest that can
 * have a partner.
 */
final class PriceList {
  final int knots;
  final long least;
  final long most;
  final double spacing;
  private final long fitting;
  private final double[] rise;

  /**
   * @param weights the share of all rise: below the least piece, between each two knots, above the longest
   */
  PriceList(Stock stock, double[] weights) {
    this.fitting = stock.longest() - stock.kerf;
    this.least = Math.max(1, stock.minimumPiece);
    this.most = fitting - least;
    this.knots = weights.length - 2;
    this.spacing = (double) (most - least) / knots;
    this.rise = new double[knots + 1];
    double sum = weights[0];
    rise[0] = sum;
    for (int j = 1; j <= knots; j++) {
      sum += weights[j];
      rise[j] = Math.min(1, sum);
    }
  }

  /** Tells whether any two pieces can come from one board at all. */
  static boolean isOfUse(Stock stock) {
    return stock.longest() - stock.kerf - 2 * Math.max(1, stock.minimumPiece) > 0;
  }

  /** The shares of rise by which pieces cost their length and a kerf, as parts of a board and a kerf. */
  static double[] byLength(Stock stock, int knots) {
    double whole = (double) stock.longest() + stock.kerf;
    long least = Math.max(1, stock.minimumPiece);
    double most = stock.longest() - stock.kerf - least;
    double[] weights = new double[knots + 2];
    weights[0] = (least + stock.kerf) / whole;
    for (int j = 1; j <= knots; j++) {
      weights[j] = (most - least) / knots / whole;
    }
    weights[knots + 1] = 1 - (most + stock.kerf) / whole;
    return weights;
  }

  double endPiece(long length) {
    return length > most ? 1 : at(length);
  }

  double startPiece(long length) {
    long partner = fitting - length;
    return partner < least ? 1 : 1 - at(Math.min(partner, most));
  }

  private double at(long length) {
    double place = Math.max(0, (length - least) / spacing);
    int knot = Math.min((int) place, knots - 1);
    return rise[knot] + (rise[knot + 1] - rise[knot]) * Math.min(1, place - knot);
  }

  /** Adds, for each share of rise, how much of it an end piece pays. */
  void addEndPiece(long length, double[] paid) {
    if (length > most) {
      addAll(paid);
      return;
    }
    double place = (length - least) / spacing;
    paid[0] += 1;
    for (int j = 1; j <= knots; j++) {
      paid[j] += Math.max(0, Math.min(1, place - (j - 1)));
    }
  }

  /** Adds, for each share of rise, how much of it a start piece pays. */
  void addStartPiece(long length, double[] paid) {
    long partner = fitting - length;
    if (partner < least) {
      addAll(paid);
      return;
    }
    double place = (Math.min(partner, most) - least) / spacing;
    for (int j = 1; j <= knots; j++) {
      paid[j] += Math.max(0, Math.min(1, j - place));
    }
    paid[knots + 1] += 1;
  }

  private static void addAll(double[] paid) {
    for (int j = 0; j < paid.length; j++) {
      paid[j] += 1;
    }
  }
}
