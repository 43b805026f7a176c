package floorcalc.boards;

import java.util.List;

/**
 * Which strips count as taking the whole width of their boards.
 * <p>
 * At any place along a board there is one low edge and one high edge. So strips that need the low edge never lie side by
 * side, nor do strips that need the high edge. Only a low strip and a high strip may, where the narrowest of each fit
 * beside a saw kerf. If they do, one sort counts and the other rides along: the sort with more length counts.
 */
final class StripSharing {
  private final Edges riding;

  private StripSharing(Edges riding) {
    this.riding = riding;
  }

  static StripSharing of(List<Stretch> stretches, Stock stock) {
    long[] narrowest = {Long.MAX_VALUE, Long.MAX_VALUE};
    double[] length = new double[2];
    for (Stretch stretch : stretches) {
      int sort = stretch.edges() == Edges.LOW ? 0 : stretch.edges() == Edges.HIGH ? 1 : -1;
      if (sort >= 0 && stretch.length().isPositive()) {
        narrowest[sort] = Math.min(narrowest[sort], stretch.width().toNanometres());
        length[sort] += stretch.length().toMillimetres();
      }
    }
    boolean both = length[0] > 0 && length[1] > 0;
    if (!both || narrowest[0] + stock.kerf + narrowest[1] > stock.width) {
      return new StripSharing(null);
    }
    return new StripSharing(length[0] < length[1] ? Edges.LOW : Edges.HIGH);
  }

  /** Tells whether pieces of the stretch count as full boards' widths. */
  boolean counts(Stretch stretch) {
    return stretch.edges() != Edges.NONE && stretch.edges() != riding;
  }
}
