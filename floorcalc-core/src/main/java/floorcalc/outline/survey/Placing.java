package floorcalc.outline.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Places corners one after the other, each by a measured turn or by two lengths to corners that are placed already, which
 * puts it on one side of their line or on the other: both are followed, those that fit the other lengths best are kept.
 * A corner that nothing fixes is guessed at the turns that rooms have. A new corner across the line of two lengths from each
 * other lies on either side of it.
 */
final class Placing {
  private static final int KEPT = 300;
  /** How many are handed on, if each corner follows from what was measured and if some were guessed. */
  private static final int RESULTS = 24;
  private static final int RESULTS_GUESSED = 120;
  /** Of rooms with more corners than this fewer are handed on: to fit one takes a time that grows with their cube. */
  private static final int MANY_CORNERS = 12;
  private static final int FEWEST_RESULTS = 8;
  /** Turns that are tried where nothing fixes a corner: rooms have these more than others. */
  private static final int[] GUESSES = {90, 45, 135};
  /** A length that is off by more than this many standard deviations counts no more: one slip must not decide. */
  private static final double MOST_OFF = 30;
  /** What a guess other than a right angle counts: most corners are right angles. */
  private static final double ODD = 2 * MOST_OFF * MOST_OFF;
  /** What a wall that crosses another or turns the wrong way counts: as much as a few lengths that are off. */
  private static final double WRONG = 4 * MOST_OFF * MOST_OFF;

  private final Survey survey;
  private final KnownLengths lengths;
  private final int n;

  private Placing(Survey survey, int leftOut) {
    this.survey = survey;
    this.lengths = new KnownLengths(survey, leftOut);
    this.n = survey.size();
  }

  private record State(double[] place, long placed, double misfit, int guesses) {
    boolean has(int corner) {
      return (placed >> corner & 1) == 1;
    }
  }

  /** The shapes that the lengths allow, the best fitting first, corners 1 and 2 on the x axis; they may cross themselves. */
  static List<Layout> layouts(Survey survey) {
    return new Placing(survey, -1).search();
  }

  /** The same without one of the lengths, walls first, then ties. */
  static List<Layout> layoutsWithout(Survey survey, int length) {
    return new Placing(survey, length).search();
  }

  private List<Layout> search() {
    int first = lengths.has(0, 1) ? 0 : 1;
    double[] start = new double[2 * n];
    start[2 * first + 2] = lengths.get(first, first + 1);
    List<State> states = List.of(new State(start, 0b11L << first, 0, 0));
    for (int step = 2; step < n; step++) {
      List<State> next = new ArrayList<>();
      for (State state : states) {
        expand(state, next);
      }
      next.sort(Comparator.comparingDouble(State::misfit));
      states = next.size() <= KEPT ? next : List.copyOf(next.subList(0, KEPT));
    }
    boolean guessed = states.stream().anyMatch(state -> state.guesses() > 0);
    return states.stream().limit(handedOn(guessed ? RESULTS_GUESSED : RESULTS)).map(Placing::layout).toList();
  }

  private int handedOn(int most) {
    return n <= MANY_CORNERS ? most : Math.max(FEWEST_RESULTS, most * MANY_CORNERS * MANY_CORNERS / (n * n));
  }

  /** With corner 1 at the origin and corner 2 on the x axis. */
  private static Layout layout(State state) {
    double[] place = state.place().clone();
    for (int i = 0; i < place.length; i++) {
      place[i] -= state.place()[i % 2];
    }
    return new Layout(state.place()[0] == 0 && state.place()[1] == 0 && state.place()[3] == 0 ? place : Walk.turned(place),
        state.misfit());
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
      known += state.has(a) && lengths.tells(a, corner) ? 1 : 0;
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
        if (turn.isMeasured() && state.has(at) && state.has(before) && lengths.has(at, c)) {
          next.add(along(state, c, at, before, -way * turn.degrees().orElseThrow(), state.guesses()));
          return c;
        }
      }
    }
    return -1;
  }

  private State along(State state, int corner, int at, int before, double degrees, int guesses) {
    double heading = StrictMath.toDegrees(StrictMath.atan2(state.place()[2 * at + 1] - state.place()[2 * before + 1],
        state.place()[2 * at] - state.place()[2 * before])) + degrees;
    double length = lengths.get(at, corner);
    return placed(state, corner, state.place()[2 * at] + length * Walk.cos(heading),
        state.place()[2 * at + 1] + length * Walk.sin(heading), guesses);
  }

  private void guess(State state, List<State> next) {
    for (int c = 0; c < n; c++) {
      if (state.has(c)) {
        continue;
      }
      for (int way = -1; way <= 1; way += 2) {
        int at = Math.floorMod(c + way, n);
        int before = Math.floorMod(c + 2 * way, n);
        if (state.has(at) && state.has(before) && lengths.has(at, c)) {
          Turn.Side side = survey.walls().get(Math.floorMod(at - 1, n)).turn().side();
          for (int degrees : GUESSES) {
            if (side != Turn.Side.RIGHT) {
              next.add(odd(degrees, along(state, c, at, before, -way * degrees, state.guesses() + 1)));
            }
            if (side != Turn.Side.LEFT) {
              next.add(odd(degrees, along(state, c, at, before, way * degrees, state.guesses() + 1)));
            }
          }
          return;
        }
      }
    }
  }

  private static State odd(int degrees, State state) {
    return degrees == 90 ? state : new State(state.place(), state.placed(), state.misfit() + ODD, state.guesses());
  }

  /** Both places at their distances from the two corners that see the new one most nearly at a right angle. */
  private void byLengths(State state, int corner, List<State> next) {
    Cut best = null;
    for (int a = 0; a < n; a++) {
      for (int b = a + 1; b < n; b++) {
        if (state.has(a) && state.has(b) && lengths.tells(a, corner) && lengths.tells(b, corner)) {
          Cut cut = new Cut(state.place(), a, b, lengths.get(a, corner), lengths.get(b, corner));
          best = best == null || cut.quality > best.quality ? cut : best;
        }
      }
    }
    next.add(placed(state, corner, best.x(1), best.y(1), state.guesses()));
    if (best.height > 0) {
      next.add(placed(state, corner, best.x(-1), best.y(-1), state.guesses()));
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

  private State placed(State state, int corner, double x, double y, int guesses) {
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
    State next = new State(place, state.placed() | 1L << corner, 0, guesses);
    return new State(place, next.placed(), misfit + WRONG * wrong(next, corner), guesses);
  }

  /** How many walls at a new corner cross others that stand already, and how many turns there are not as was said. */
  private int wrong(State state, int corner) {
    Layout layout = new Layout(state.place(), 0);
    int wrong = 0;
    for (int at = corner - 1; at <= corner + 1; at++) {
      int c = Math.floorMod(at, n);
      boolean both = state.has(Math.floorMod(c - 1, n)) && state.has(c) && state.has((c + 1) % n);
      wrong += both && layout.turnsOtherwise(c, survey) ? 1 : 0;
    }
    for (int wall : new int[] {Math.floorMod(corner - 1, n), corner}) {
      for (int other = 0; other < n && state.has(wall) && state.has((wall + 1) % n); other++) {
        boolean apart = (other + 1) % n != wall && other != wall && (wall + 1) % n != other;
        wrong += apart && state.has(other) && state.has((other + 1) % n) && layout.meet(wall, other) ? 1 : 0;
      }
    }
    return wrong;
  }
}
