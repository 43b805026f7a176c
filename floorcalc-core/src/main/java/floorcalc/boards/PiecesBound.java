package floorcalc.boards;

import java.util.List;

/** The fewest boards of one length that given pieces of full width could come from: by length, and by pairs. */
final class PiecesBound {
  private PiecesBound() {}

  static int of(List<PieceWanted> pieces, Stock stock) {
    double length = 0;
    int whole = 0;
    int ends = 0;
    int starts = 0;
    long[] endSpans = new long[pieces.size()];
    long[] startSpans = new long[pieces.size()];
    for (PieceWanted piece : pieces) {
      if (piece.low() > 0 || piece.high() < stock.width) {
        continue;
      }
      length += (double) piece.span() + stock.kerf;
      if (piece.ends() == Ends.BOTH || piece.span() == stock.longest()) {
        whole++;
      } else if (piece.ends() == Ends.LOW) {
        endSpans[ends++] = piece.span();
      } else if (piece.ends() == Ends.HIGH) {
        startSpans[starts++] = piece.span();
      }
    }
    int pairs = Pairs.most(java.util.Arrays.copyOf(endSpans, ends), java.util.Arrays.copyOf(startSpans, starts),
        stock.longest() - stock.kerf);
    int byLength = (int) StrictMath.ceil(length / (stock.longest() + stock.kerf) - 1e-9 * (1 + pieces.size()));
    return Math.max(byLength, whole + ends + starts - pairs);
  }
}
