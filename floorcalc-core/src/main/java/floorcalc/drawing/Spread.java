package floorcalc.drawing;

/** Moves things on a line apart so that they do not overlap, and no further from where they belong than that takes. */
final class Spread {
  private Spread() {
  }

  /**
   * Returns the middles of things of some widths, in the same order, near the places wanted and between two limits if there is room: those that
   * would overlap share the shift (least squares, by joining neighbours until all are in order).
   *
   * @param wanted the places wanted, in order
   * @param widths how much each takes
   */
  static double[] of(double[] wanted, double[] widths, double low, double high) {
    int n = wanted.length;
    // Less all widths before it, a place only has to be no smaller than the one before.
    double[] offset = new double[n];
    for (int i = 1; i < n; i++) {
      offset[i] = offset[i - 1] + (widths[i - 1] + widths[i]) / 2;
    }
    double[] mean = new double[n];
    int[] count = new int[n];
    int groups = 0;
    for (int i = 0; i < n; i++) {
      mean[groups] = wanted[i] - offset[i];
      count[groups] = 1;
      groups++;
      while (groups > 1 && mean[groups - 1] < mean[groups - 2]) {
        int both = count[groups - 2] + count[groups - 1];
        mean[groups - 2] = (mean[groups - 2] * count[groups - 2] + mean[groups - 1] * count[groups - 1]) / both;
        count[groups - 2] = both;
        groups--;
      }
    }
    double[] places = new double[n];
    int i = 0;
    for (int group = 0; group < groups; group++) {
      for (int k = 0; k < count[group]; k++, i++) {
        places[i] = mean[group] + offset[i];
      }
    }
    keepWithin(places, widths, low, high);
    return places;
  }

  private static void keepWithin(double[] places, double[] widths, double low, double high) {
    double right = high;
    for (int i = places.length - 1; i >= 0; i--) {
      places[i] = Math.min(places[i], right - widths[i] / 2);
      right = places[i] - widths[i] / 2;
    }
    double left = low;
    for (int i = 0; i < places.length; i++) {
      places[i] = Math.max(places[i], left + widths[i] / 2);
      left = places[i] + widths[i] / 2;
    }
  }
}
