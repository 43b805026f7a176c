package floorcalc.boards;

import java.util.Arrays;
import java.util.List;

/**
 * The fewest boards of one length that given pieces could come from: by length, and by pairs. Pieces of full width count, and strips
 * of which no two fit side by side; where some do, those that need one edge ride along with those that need the other.
 */
final class PiecesBound {
  private final Stock stock;
  private long[] endSpans;
  private long[] startSpans;
  private double length;
  private int whole;
  private int ends;
  private int starts;

  private PiecesBound(int pieces, Stock stock) {
    this.stock = stock;
    this.endSpans = new long[pieces];
    this.startSpans = new long[pieces];
  }

  static int of(List<PieceWanted> pieces, Stock stock) {
    long narrowestLow = stock.width;
    long narrowestHigh = 0;
    double lowLength = 0;
    double highLength = 0;
    for (PieceWanted piece : pieces) {
      if (isLowStrip(piece, stock)) {
        narrowestLow = Math.min(narrowestLow, piece.high());
        lowLength += piece.span();
      } else if (isHighStrip(piece, stock)) {
        narrowestHigh = Math.max(narrowestHigh, piece.low());
        highLength += piece.span();
      }
    }
    boolean anyFit = narrowestLow + stock.kerf <= narrowestHigh;
    boolean lowCounts = !anyFit || lowLength >= highLength;
    boolean highCounts = !anyFit || lowLength < highLength;
    PiecesBound bound = new PiecesBound(pieces.size(), stock);
    for (PieceWanted piece : pieces) {
      boolean full = piece.low() == 0 && piece.high() == stock.width;
      if (full || lowCounts && isLowStrip(piece, stock) || highCounts && isHighStrip(piece, stock)) {
        bound.add(piece);
      }
    }
    return bound.boards(pieces.size());
  }

  private static boolean isLowStrip(PieceWanted piece, Stock stock) {
    return piece.low() == 0 && piece.high() < stock.width;
  }

  private static boolean isHighStrip(PieceWanted piece, Stock stock) {
    return piece.low() > 0 && piece.high() == stock.width;
  }

  private void add(PieceWanted piece) {
    length += (double) piece.span() + stock.kerf;
    if (piece.ends() == Ends.BOTH || piece.span() == stock.longest()) {
      whole++;
    } else if (piece.ends() == Ends.LOW) {
      endSpans[ends++] = piece.span();
    } else if (piece.ends() == Ends.HIGH) {
      startSpans[starts++] = piece.span();
    }
  }

  private int boards(int pieces) {
    int pairs = Pairs.most(Arrays.copyOf(endSpans, ends), Arrays.copyOf(startSpans, starts), stock.longest() - stock.kerf);
    int byLength = (int) StrictMath.ceil(length / (stock.longest() + stock.kerf) - 1e-9 * (1 + pieces));
    return Math.max(byLength, whole + ends + starts - pairs);
  }
}
