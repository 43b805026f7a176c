package floorcalc.boards;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which strips count as taking the whole width of their boards.
 * <p>
 * At any place along a board there is one low edge and one high edge. So strips that need the low edge never lie side by
 * side, nor do strips that need the high edge. Only a low strip and a high strip may, where both fit beside a saw kerf. Take
 * the low strips of some width or more, and the high strips too wide to lie beside one of that width: no two of them share a
 * place along a board, so all of these count and the others ride along. The width is chosen for which most length counts.
 */
final class StripSharing {
  private final long lowFrom;
  private final long highOver;

  private StripSharing(long lowFrom, long highOver) {
    this.lowFrom = lowFrom;
    this.highOver = highOver;
  }

  static StripSharing of(List<List<Stretch>> stretches, Stock stock) {
    long room = stock.width - stock.kerf;
    List<Stretch> low = widestFirst(stretches, Edges.LOW);
    List<Stretch> high = widestFirst(stretches, Edges.HIGH);
    double[] lowLength = lengths(low);
    double[] highLength = lengths(high);
    StripSharing best = new StripSharing(Long.MAX_VALUE, 0);
    double most = highLength[high.size()];
    int highs = high.size();
    for (int lows = 1; lows <= low.size(); lows++) {
      long narrowest = width(low.get(lows - 1));
      while (highs > 0 && width(high.get(highs - 1)) <= room - narrowest) {
        highs--;
      }
      if (lowLength[lows] + highLength[highs] > most) {
        most = lowLength[lows] + highLength[highs];
        best = new StripSharing(narrowest, room - narrowest);
      }
    }
    return best;
  }

  /** The lengths of the widest strips, of none at first. */
  private static double[] lengths(List<Stretch> strips) {
    double[] lengths = new double[strips.size() + 1];
    for (int i = 0; i < strips.size(); i++) {
      lengths[i + 1] = lengths[i] + strips.get(i).length().toMillimetres();
    }
    return lengths;
  }

  /** As {@link #of}, but the width is chosen for which most length lies in runs that count all along. */
  static StripSharing ofWholeRuns(List<List<Stretch>> stretches, Stock stock) {
    List<List<Stretch>> narrowest = new ArrayList<>();
    for (List<Stretch> run : stretches) {
      Length length = run.stream().map(Stretch::length).reduce(Length.ZERO, Length::plus);
      List<Stretch> parts = new ArrayList<>();
      for (Edges edges : List.of(Edges.LOW, Edges.HIGH)) {
        run.stream().filter(stretch -> stretch.edges() == edges).map(Stretch::width).min(Comparator.naturalOrder())
            .ifPresent(width -> parts.add(new Stretch(length, width, edges)));
      }
      narrowest.add(parts);
    }
    return of(narrowest, stock);
  }

  private static List<Stretch> widestFirst(List<List<Stretch>> runs, Edges edges) {
    List<Stretch> strips = new ArrayList<>();
    for (List<Stretch> run : runs) {
      for (Stretch stretch : run) {
        if (stretch.edges() == edges && stretch.length().isPositive()) {
          strips.add(stretch);
        }
      }
    }
    strips.sort(Comparator.comparingLong(StripSharing::width).reversed());
    return strips;
  }

  private static long width(Stretch stretch) {
    return stretch.width().toNanometres();
  }

  /** How much of a run counts, in nanometres. */
  long counted(List<Stretch> run) {
    long counted = 0;
    for (Stretch stretch : run) {
      counted += counts(stretch) ? stretch.length().toNanometres() : 0;
    }
    return counted;
  }

  /** Tells whether pieces of the stretch count as full boards' widths. */
  private boolean counts(Stretch stretch) {
    return switch (stretch.edges()) {
      case BOTH -> true;
      case LOW -> width(stretch) >= lowFrom;
      case HIGH -> width(stretch) > highOver;
      case NONE -> false;
    };
  }
}
