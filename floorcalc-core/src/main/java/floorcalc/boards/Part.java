package floorcalc.boards;

import java.util.Arrays;

/**
 * A length of board that one piece takes, or a low and a high strip side by side.
 *
 * @param span its length
 * @param ends which factory ends it needs, as bits, see {@link BoardFilling}
 * @param pieces the pieces cut from it
 * @param offsets where each begins, from the low end of the part
 */
record Part(long span, int ends, int[] pieces, long[] offsets) {

  static Part of(int place, PieceWanted piece) {
    return new Part(piece.span(), bits(piece.ends()), new int[] {place}, new long[1]);
  }

  /** Two strips that need the same ends, side by side. */
  static Part sideBySide(int low, PieceWanted lowStrip, int high, PieceWanted highStrip) {
    long span = Math.max(lowStrip.span(), highStrip.span());
    boolean atHighEnd = lowStrip.ends() == Ends.HIGH;
    return new Part(span, bits(lowStrip.ends()), new int[] {low, high},
        atHighEnd ? new long[] {span - lowStrip.span(), span - highStrip.span()} : new long[2]);
  }

  /** A whole board ripped from end to end, either strip filled with pieces. */
  static Part ripped(long board, Part lowStrip, Part highStrip) {
    int count = lowStrip.pieces.length;
    int[] pieces = Arrays.copyOf(lowStrip.pieces, count + highStrip.pieces.length);
    long[] offsets = Arrays.copyOf(lowStrip.offsets, pieces.length);
    System.arraycopy(highStrip.pieces, 0, pieces, count, highStrip.pieces.length);
    System.arraycopy(highStrip.offsets, 0, offsets, count, highStrip.pieces.length);
    return new Part(board, BoardFilling.LOW | BoardFilling.HIGH, pieces, offsets);
  }

  static int bits(Ends ends) {
    return (ends.low() ? BoardFilling.LOW : 0) | (ends.high() ? BoardFilling.HIGH : 0);
  }
}
