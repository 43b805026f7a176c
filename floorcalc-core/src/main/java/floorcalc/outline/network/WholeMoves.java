package floorcalc.outline.network;

import java.util.ArrayList;
import java.util.List;

/** All points moved together: along x, along y, round, and, where nothing says how large a network is, apart. */
final class WholeMoves {
  private static final double ALIKE = 1e-6;

  private WholeMoves() {}

  /**
   * Turns points about their middle, and draws them apart if that is free as well, so that the squares of their
   * distances from other places with the same middle are least in sum.
   *
   * @param place where they are, x and y of each in turn, counted from their middle; is changed
   * @param about the other places, the same
   * @param apart whether something says how large the network is
   */
  static void layOn(double[] place, double[] about, Apart apart) {
    double along = 0;
    double across = 0;
    double square = 0;
    for (int i = 0; i < place.length; i += 2) {
      along += place[i] * about[i] + place[i + 1] * about[i + 1];
      across += place[i] * about[i + 1] - place[i + 1] * about[i];
      square += place[i] * place[i] + place[i + 1] * place[i + 1];
    }
    double length = apart == Apart.FREE ? square : StrictMath.hypot(along, across);
    if (length == 0) {
      return;
    }
    double cosine = along / length;
    double sine = across / length;
    for (int i = 0; i < place.length; i += 2) {
      double x = place[i];
      place[i] = x * cosine - place[i + 1] * sine;
      place[i + 1] = x * sine + place[i + 1] * cosine;
    }
  }

  /** Whether something says how large a network is. */
  enum Apart {
    /** Some distance does. */
    MEASURED,
    /** Nothing does. */
    FREE
  }

  /**
   * Returns what is left of some ways to move when what is common to all points is taken out.
   *
   * @param ways unit vectors square to each other: x and y of each point in turn
   * @param place where the points are, the same
   * @param size about how large the network is
   */
  static double[][] without(List<double[]> ways, double[] place, double size) {
    List<double[]> taken = new ArrayList<>();
    for (int kind = 0; kind < 3; kind++) {
      double[] whole = new double[place.length];
      for (int i = 0; i < place.length; i += 2) {
        whole[i] = kind == 0 ? 1 : kind == 2 ? -place[i + 1] / size : 0;
        whole[i + 1] = kind == 1 ? 1 : kind == 2 ? place[i] / size : 0;
      }
      addWhatIsLeft(whole, taken, 0);
    }
    int common = taken.size();
    for (double[] way : ways) {
      addWhatIsLeft(way, taken, ALIKE);
    }
    return taken.subList(common, taken.size()).toArray(double[][]::new);
  }

  private static void addWhatIsLeft(double[] way, List<double[]> taken, double least) {
    double[] left = way.clone();
    for (int pass = 0; pass < 2; pass++) {
      for (double[] other : taken) {
        double along = 0;
        for (int i = 0; i < left.length; i++) {
          along += left[i] * other[i];
        }
        for (int i = 0; i < left.length; i++) {
          left[i] -= along * other[i];
        }
      }
    }
    double length = 0;
    for (double part : left) {
      length += part * part;
    }
    length = StrictMath.sqrt(length);
    if (length > least) {
      for (int i = 0; i < left.length; i++) {
        left[i] /= length;
      }
      taken.add(left);
    }
  }
}
