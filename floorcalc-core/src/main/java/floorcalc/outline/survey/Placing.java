package floorcalc.outline.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Places corners one after the other, each by a measured turn or by two lengths to corners that are placed already, which
 * puts it on one side of their line or on the other: both are followed, those that fit the other lengths best are kept.
 * A corner that nothing fixes is guessed at a right angle.
 */
final class Placing {
  private static final int KEPT = 96;
  private static final int RESULTS = 24;
  /** A length that is off by more than this many standard deviations counts no more: one slip must not decide. */
  private static final double MOST_OFF = 30;

  private final Survey survey;
  private final KnownLengths lengths;
  private final int n;

  private Placing(Survey survey) {
    this.survey = survey;
    this.lengths = new KnownLengths(survey);
    this.n = survey.size();
  }

  private record State(double[] place, long placed, double misfit) {
    boolean has(int corner) {
      return (placed >> corner & 1) == 1;
    }
  }

  /** The shapes that the lengths allow, the best fitting first, corners 1 and 2 on the x axis; they may cross themselves. */
  static List<Layout> layouts(Survey survey) {
    return new Placing(survey).search();
  }

  private List<Layout> search() {
    double[] start = new double[2 * n];
    start[2] = lengths.get(0, 1);
    List<State> states = List.of(new State(start, 0b11, 0));
    for (int step = 2; step < n; step++) {
      List<State> next = new ArrayList<>();
      for (State state : states) {
        expand(state, next);
      }
      next.sort(Comparator.comparingDouble(State::misfit));
      states = next.size() <= KEPT ? next : List.copyOf(next.subList(0, KEPT));
    }
    return states.stream().limit(RESULTS).map(state -> new Layout(state.place(), state.misfit())).toList();
  }

  private void expand(State state, List<State> next) {
    int corner = byTurn(state, next);
    if (corner >= 0) {
      return;
    }
    int best = -1;
    int most = 1;
    for (int c = 0; c < n; c++) {
      int known = state.has(c) ? 0 : known(state, c);
      if (known > most) {
        most = known;
        best = c;
      }
    }
    if (best >= 0) {
      byLengths(state, best, next);
    } else {
      guess(state, next);
    }
  }

  private int known(State state, int corner) {
    int known = 0;
    for (int a = 0; a < n; a++) {
      known += state.has(a) && lengths.has(a, corner) ? 1 : 0;
    }
    return known;
  }

  /** Places a corner at the end of a wall whose turn against the wall before it was measured; -1 if there is none. */
  private int byTurn(State state, List<State> next) {
    for (int c = 0; c < n; c++) {
      if (state.has(c)) {
        continue;
      }
      for (int way = -1; way <= 1; way += 2) {
        int at = Math.floorMod(c + way, n);
        int before = Math.floorMod(c + 2 * way, n);
        Turn turn = survey.walls().get(Math.floorMod(at - 1, n)).turn();
        if (turn.isMeasured() && state.has(at) && state.has(before)) {
          next.add(along(state, c, at, before, -way * turn.degrees().orElseThrow()));
          return c;
        }
      }
    }
    return -1;
  }

  private State along(State state, int corner, int at, int before, double degrees) {
    double heading = StrictMath.toDegrees(StrictMath.atan2(state.place()[2 * at + 1] - state.place()[2 * before + 1],
        state.place()[2 * at] - state.place()[2 * before])) + degrees;
    double length = lengths.get(at, corner);
    return placed(state, corner, state.place()[2 * at] + length * Walk.cos(heading),
        state.place()[2 * at + 1] + length * Walk.sin(heading));
  }

  private void guess(State state, List<State> next) {
    for (int c = 0; c < n; c++) {
      if (state.has(c)) {
        continue;
      }
      for (int way = -1; way <= 1; way += 2) {
        int at = Math.floorMod(c + way, n);
        int before = Math.floorMod(c + 2 * way, n);
        if (state.has(at) && state.has(before)) {
          Turn.Side side = survey.walls().get(Math.floorMod(at - 1, n)).turn().side();
          if (side != Turn.Side.RIGHT) {
            next.add(along(state, c, at, before, -way * 90));
          }
          if (side != Turn.Side.LEFT) {
            next.add(along(state, c, at, before, way * 90));
          }
          return;
        }
      }
    }
  }

  /** Both places at their distances from the two corners that see the new one most nearly at a right angle. */
  private void byLengths(State state, int corner, List<State> next) {
    Cut best = null;
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        if (state.has(a) && state.has(b) && lengths.has(a, corner) && lengths.has(b, corner)) {
          Cut cut = new Cut(state.place(), a, b, lengths.get(a, corner), lengths.get(b, corner));
          best = best == null || cut.quality > best.quality ? cut : best;
        }
      }
    }
    next.add(placed(state, corner, best.x(1), best.y(1)));
    if (best.height > 0) {
      next.add(placed(state, corner, best.x(-1), best.y(-1)));
    }
  }

  /** Where two circles cut, or nearly do. */
  private static final class Cut {
    private final double x;
    private final double y;
    private final double along;
    private final double height;
    private final double dx;
    private final double dy;
    private final double quality;

    Cut(double[] place, int a, int b, double toA, double toB) {
      x = place[2 * a];
      y = place[2 * a + 1];
      double base = StrictMath.hypot(place[2 * b] - x, place[2 * b + 1] - y);
      dx = base == 0 ? 1 : (place[2 * b] - x) / base;
      dy = base == 0 ? 0 : (place[2 * b + 1] - y) / base;
      along = base == 0 ? toA : (toA * toA - toB * toB + base * base) / (2 * base);
      double square = toA * toA - along * along;
      height = square > 0 ? StrictMath.sqrt(square) : 0;
      quality = square <= 0 ? square / (toA * toA) : height * base / (toA * toB);
    }

    double x(int side) {
      return x + along * dx - side * height * dy;
    }

    double y(int side) {
      return y + along * dy + side * height * dx;
    }
  }

  private State placed(State state, int corner, double x, double y) {
    double[] place = state.place().clone();
    place[2 * corner] = x;
    place[2 * corner + 1] = y;
    double misfit = state.misfit();
    for (int a = 0; a < n; a++) {
      if (state.has(a) && lengths.has(a, corner)) {
        double off = StrictMath.hypot(x - place[2 * a], y - place[2 * a + 1]) - lengths.get(a, corner);
        double many = Math.min(MOST_OFF, StrictMath.abs(off) / survey.uncertainty().length().toMillimetres());
        misfit += many * many;
      }
    }
    return new State(place, state.placed() | 1L << corner, misfit);
  }
}
