package floorcalc.bays;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The lines across a room that is longer along the boards, or wider across them, than a bay may be: square to what is too long, at equal
 * divisions and at whole longest runs from either end. Where there are no more than twelve places with corners, also at these, at
 * equal divisions between any two of them, and at whole longest runs from each.
 */
final class RunCuts {
  /** Places nearer to each other than this are one: 100 mm. */
  private static final double ONE_PLACE = 100e6;
  /** Corners that turn by less are passed over. */
  private static final double SLIGHT = StrictMath.toRadians(15);
  /** More places than this are not tried in one direction; those of the earlier kinds are kept. */
  private static final int MOST_PLACES = 12;
  private static final int FEW_CORNERS = 12;

  private final RoomShape shape;
  private final List<Cut> cuts = new ArrayList<>();

  RunCuts(RoomShape shape) {
    this.shape = shape;
  }

  static List<Cut> of(RoomShape shape, SplitLimits limits) {
    RunCuts runs = new RunCuts(shape);
    runs.add(limits.along(), shape.ux, shape.uy);
    runs.add(limits.across(), -shape.uy, shape.ux);
    return runs.cuts;
  }

  private void add(double limit, double dx, double dy) {
    double[] at = new double[shape.size()];
    for (int i = 0; i < at.length; i++) {
      at[i] = shape.xs[i] * dx + shape.ys[i] * dy;
    }
    double low = Arrays.stream(at).min().getAsDouble();
    double high = Arrays.stream(at).max().getAsDouble();
    if (high - low <= limit) {
      return;
    }
    List<Double> places = new ArrayList<>();
    divide(places, low, high, limit);
    int whole = places.size();
    int equal = whole;
    double[] sorted = IntStream.range(0, at.length).filter(i -> StrictMath.abs(shape.turn(i)) > SLIGHT).mapToDouble(i -> at[i]).sorted()
        .distinct().toArray();
    if (sorted.length <= FEW_CORNERS) {
      for (double from : sorted) {
        for (double to : sorted) {
          divide(places, from, to, limit);
        }
      }
      equal = places.size();
    }
    double[] ends = sorted.length <= FEW_CORNERS ? sorted : new double[] {low, high};
    for (double corner : ends) {
      take(places, corner, low, high);
    }
    for (double corner : ends) {
      for (int k = 1; k * limit < high - low && k < MOST_PLACES; k++) {
        take(places, corner + k * (limit - SplitLimits.ROUNDING), low, high);
        take(places, corner - k * (limit - SplitLimits.ROUNDING), low, high);
      }
    }
    int most = Math.max(MOST_PLACES, whole);
    for (int k = 0; k < places.size() && k < most; k++) {
      across(places.get(k), dx, dy, k < equal ? Cut.Kind.EQUAL_RUN : Cut.Kind.OTHER_RUN);
    }
  }

  private static void divide(List<Double> places, double from, double to, double limit) {
    int parts = (int) Math.min(200, StrictMath.ceil((to - from) / limit));
    for (int k = 1; k < parts; k++) {
      take(places, from + (to - from) * k / parts, from, to);
    }
  }

  private static void take(List<Double> places, double place, double low, double high) {
    boolean isNew = place > low + ONE_PLACE && place < high - ONE_PLACE
        && places.stream().noneMatch(other -> StrictMath.abs(other - place) < ONE_PLACE);
    if (isNew) {
      places.add(place);
    }
  }

  /** All stretches of floor on the line at a place, square to a direction. */
  private void across(double place, double dx, double dy, Cut.Kind kind) {
    double x = place * dx;
    double y = place * dy;
    List<Double> meetings = new ArrayList<>();
    for (int i = 0; i < shape.size(); i++) {
      int j = shape.next[i];
      double from = shape.xs[i] * dx + shape.ys[i] * dy - place;
      double to = shape.xs[j] * dx + shape.ys[j] * dy - place;
      if (StrictMath.abs(from) < RoomShape.TOUCH / 2) {
        meetings.add(shape.ys[i] * dx - shape.xs[i] * dy);
      } else if (from < 0 != to < 0 && StrictMath.abs(to) >= RoomShape.TOUCH / 2) {
        double share = from / (from - to);
        double mx = shape.xs[i] + share * (shape.xs[j] - shape.xs[i]);
        double my = shape.ys[i] + share * (shape.ys[j] - shape.ys[i]);
        meetings.add(my * dx - mx * dy);
      }
    }
    meetings.sort(Double::compare);
    for (int k = 0; k + 1 < meetings.size(); k++) {
      double from = meetings.get(k);
      double to = meetings.get(k + 1);
      double middle = (from + to) / 2;
      double probe = 3 * RoomShape.TOUCH; // a stretch along a wall is floor on one side alone
      if (to - from > RoomShape.TOUCH && shape.isFloor(x - middle * dy + probe * dx, y + middle * dx + probe * dy)
          && shape.isFloor(x - middle * dy - probe * dx, y + middle * dx - probe * dy)) {
        double[] a = end(x - from * dy, y + from * dx);
        double[] b = end(x - to * dy, y + to * dx);
        cuts.add(new Cut(a[0], a[1], b[0], b[1], kind));
      }
    }
  }

  private double[] end(double x, double y) {
    int corner = shape.cornerAt(x, y);
    return corner >= 0 ? new double[] {shape.xs[corner], shape.ys[corner]}
        : new double[] {StrictMath.rint(x), StrictMath.rint(y)};
  }
}
