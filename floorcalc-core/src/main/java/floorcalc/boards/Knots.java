package floorcalc.boards;

/**
 * Lengths at which prices may step: at equal distances from just below the least piece on, and at the longest piece that can have
 * a partner. And, for each step and for each stretch between two knots, how much of it a piece pays: its share from 0 to 1.
 */
final class Knots {
  private static final int MOST = 1024;

  private final long[] knots;
  private final double perSpacing;
  private final long fitting;
  private final long kerf;
  private final long least;
  private final long most;

  private Knots(Stock stock, double spacing, int count) {
    this.kerf = stock.kerf;
    this.fitting = stock.longest() - kerf;
    this.least = Math.max(1, stock.minimumPiece);
    this.most = fitting - least;
    this.perSpacing = 1 / spacing;
    boolean isShort = least - 1 + Math.round((count - 1) * spacing) < most;
    this.knots = new long[isShort ? count + 1 : count];
    for (int j = 0; j < count; j++) {
      knots[j] = least - 1 + Math.round(j * spacing);
    }
    if (isShort) {
      knots[count] = most;
    }
  }

  /**
   * About so many knots, such that a whole number of spacings makes a given length; more than one. Where the length is
   * short, there are more knots, or a whole number of lengths makes a spacing.
   */
  static Knots every(Stock stock, double length, int about) {
    double all = stock.longest() - stock.kerf - 2.0 * Math.max(1, stock.minimumPiece) + 1;
    double whole = length > 0 && length <= all ? length : all;
    double parts = Math.max(1, Math.rint(whole / (all / about)));
    double spacing = Math.max(1, whole / parts);
    spacing *= Math.max(1, Math.ceil(all / spacing / MOST));
    return new Knots(stock, spacing, (int) Math.max(2, Math.floor(all / spacing + 1e-9) + 1));
  }

  int count() {
    return knots.length;
  }

  /**
   * The number of rises: a step beyond each knot, a straight rise between each two, and one beyond the longest piece that
   * can have a partner.
   */
  int rises() {
    return 2 * knots.length;
  }

  long at(int index) {
    return knots[index];
  }

  /** Where a length lies: 0 before all knots, one more beyond each knot, one more beyond the longest that can have a partner. */
  int place(long length) {
    return length > most ? knots.length + 1 : below(length) + 1;
  }

  /** How far a length lies between two knots, from 0 to 1; 0 where no knot follows or none goes before. */
  double share(long length) {
    int below = length > most ? -1 : below(length);
    return below < 0 || below == knots.length - 1 ? 0 : share(below, length);
  }

  /** The last knot below a length, or -1. */
  private int below(long length) {
    int j = length < least ? -1 : Math.min(knots.length - 1, (int) ((length - least) * perSpacing) + 1);
    while (j >= 0 && knots[j] >= length) {
      j--;
    }
    while (j + 1 < knots.length && knots[j + 1] < length) {
      j++;
    }
    return j;
  }

  /** Rises by which pieces cost their length and a kerf, as parts of a board and a kerf. */
  double[] byLength() {
    double all = (double) fitting + 2.0 * kerf;
    double[] rises = new double[rises()];
    double sum = (knots[0] + kerf) / all;
    rises[0] = sum;
    for (int j = 1; j < knots.length; j++) {
      double rise = (knots[j] - knots[j - 1]) / all;
      rises[knots.length + j - 1] = rise;
      sum += rise;
    }
    rises[2 * knots.length - 1] = 1 - sum;
    return rises;
  }

  /** Adds, for each rise, how much of it an end piece pays, some times over. */
  void addEndPiece(long length, int times, double[] paid) {
    if (length > most) {
      addAll(times, paid);
      return;
    }
    int below = below(length);
    for (int j = 0; j <= below; j++) {
      paid[j] += times;
    }
    for (int j = 1; j <= below; j++) {
      paid[knots.length + j - 1] += times;
    }
    if (below + 1 < knots.length && below >= 0) {
      paid[knots.length + below] += times * share(below, length);
    }
  }

  /** Adds, for each rise, how much of it a start piece pays. */
  void addStartPiece(long length, double[] paid) {
    long partner = fitting - length;
    if (partner < least) {
      addAll(1, paid);
      return;
    }
    int below = below(Math.min(partner, most));
    for (int j = below + 1; j < knots.length; j++) {
      paid[j] += 1;
    }
    for (int j = below + 2; j < knots.length; j++) {
      paid[knots.length + j - 1] += 1;
    }
    if (below + 1 < knots.length) {
      paid[knots.length + below] += 1 - share(below, Math.min(partner, most));
    }
    paid[paid.length - 1] += 1;
  }

  private double share(int below, long length) {
    return (double) (length - knots[below]) / (knots[below + 1] - knots[below]);
  }

  private static void addAll(int times, double[] paid) {
    for (int j = 0; j < paid.length; j++) {
      paid[j] += times;
    }
  }
}
