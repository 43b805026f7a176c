package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * Where places along a board come on paper: to scale near what is cut out, plain stretches shortened. Places rise along the board, and so do
 * their places on paper.
 */
final class BoardScale {
  /** A plain stretch takes at most this on paper, mm. */
  private static final double LONGEST = 26;
  /** Places that differ are this far apart at least, mm, so that a shallow cut can be seen. */
  private static final double SHORTEST = 1.2;

  private final List<Length> places;
  private final double[] paper;
  private final double[] breaks;

  private BoardScale(List<Length> places, double[] paper, double[] breaks) {
    this.places = places;
    this.paper = paper;
    this.breaks = breaks;
  }

  /**
   * @param places what has to be seen, the two ends of the board among it
   * @param scale millimetres on paper to the millimetre of board
   * @param most the most that the whole may take, mm
   */
  static BoardScale of(Collection<Length> places, double scale, double most) {
    List<Length> sorted = new ArrayList<>(new TreeSet<>(places));
    double[] paper = new double[sorted.size()];
    List<Double> breaks = new ArrayList<>();
    for (int i = 1; i < paper.length; i++) {
      double natural = sorted.get(i).minus(sorted.get(i - 1)).toMillimetres() * scale;
      paper[i] = paper[i - 1] + Math.max(SHORTEST, Math.min(LONGEST, natural));
      if (natural > LONGEST) {
        breaks.add((paper[i - 1] + paper[i]) / 2);
      }
    }
    double shrunk = Math.min(1, most / paper[paper.length - 1]);
    for (int i = 0; i < paper.length; i++) {
      paper[i] *= shrunk;
    }
    return new BoardScale(sorted, paper, breaks.stream().mapToDouble(at -> at * shrunk).toArray());
  }

  double length() {
    return paper[paper.length - 1];
  }

  /** The middles of the stretches that were shortened. */
  double[] breaks() {
    return breaks;
  }

  double at(Length place) {
    int i = 1;
    while (i + 1 < paper.length && places.get(i).compareTo(place) < 0) {
      i++;
    }
    double from = places.get(i - 1).toMillimetres();
    double to = places.get(i).toMillimetres();
    return paper[i - 1] + (paper[i] - paper[i - 1]) * ((place.toMillimetres() - from) / (to - from));
  }
}
