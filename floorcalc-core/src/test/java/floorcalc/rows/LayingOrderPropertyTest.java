package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** Floors of squares of a metre, each square a part of its own, some left out. */
class LayingOrderPropertyTest {
  private static final int SIDE = 6;
  private static final Length PITCH = Length.ofMillimetres(185);

  /** The squares that hang together with the first one of a level, edge to edge; none if there is none. */
  private static boolean[][] floor(List<Boolean> squares, int level) {
    boolean[][] all = new boolean[SIDE][SIDE];
    for (int i = 0; i < SIDE * SIDE; i++) {
      all[i % SIDE][i / SIDE] = squares.get(i);
    }
    boolean[][] found = new boolean[SIDE][SIDE];
    for (int x = 0; x < SIDE; x++) {
      if (all[x][level]) {
        fill(all, found, x, level);
        return found;
      }
    }
    return found;
  }

  private static void fill(boolean[][] all, boolean[][] found, int x, int y) {
    if (x >= 0 && y >= 0 && x < SIDE && y < SIDE && all[x][y] && !found[x][y]) {
      found[x][y] = true;
      fill(all, found, x + 1, y);
      fill(all, found, x - 1, y);
      fill(all, found, x, y + 1);
      fill(all, found, x, y - 1);
    }
  }

  private static boolean is(boolean[][] floor, int x, int y) {
    return x >= 0 && y >= 0 && x < SIDE && y < SIDE && floor[x][y];
  }

  private static List<FloorPart> parts(boolean[][] floor) {
    List<FloorPart> parts = new ArrayList<>();
    for (int x = 0; x < SIDE; x++) {
      for (int y = 0; y < SIDE; y++) {
        if (floor[x][y]) {
          parts.add(new FloorPart("square " + x + " " + y, Outline.of(Ring.of(Point.ofMillimetres(x * 1000L, y * 1000L),
              Point.ofMillimetres(x * 1000L + 1000, y * 1000L), Point.ofMillimetres(x * 1000L + 1000, y * 1000L + 1000),
              Point.ofMillimetres(x * 1000L, y * 1000L + 1000)))));
        }
      }
    }
    return parts;
  }

  /** How many ways round there are: squares less pairs that share an edge, plus blocks of four, is one less the holes. */
  private static int holes(boolean[][] floor) {
    int squares = 0;
    int pairs = 0;
    int blocks = 0;
    for (int x = 0; x < SIDE; x++) {
      for (int y = 0; y < SIDE; y++) {
        squares += is(floor, x, y) ? 1 : 0;
        pairs += is(floor, x, y) && is(floor, x + 1, y) ? 1 : 0;
        pairs += is(floor, x, y) && is(floor, x, y + 1) ? 1 : 0;
        blocks += is(floor, x, y) && is(floor, x + 1, y) && is(floor, x, y + 1) && is(floor, x + 1, y + 1) ? 1 : 0;
      }
    }
    return 1 - (squares - pairs + blocks);
  }

  /** Each way round an obstacle is closed once, whatever the floor and wherever it is begun. */
  @Property
  void armsMeetAsOftenAsThereAreWaysRound(@ForAll @Size(SIDE * SIDE) List<Boolean> squares, @ForAll @IntRange(max = SIDE - 1) int level) {
    boolean[][] floor = floor(squares, level);
    List<FloorPart> parts = parts(floor);
    if (parts.isEmpty()) {
      return;
    }
    Calculated<LayingOrder> order = LayingOrder.of(parts,
        ControlLine.through(Point.ofMillimetres(0, level * 1000L), Direction.ALONG_X), PITCH);
    assertThat(order.findings()).extracting(Finding::code).doesNotContain("not-reached");
    assertThat(order.value().meetings()).hasSize(holes(floor));
    assertStepsHold(order);
  }

  /** A floor that is nowhere reached from above only is laid without turning back; else as often as squares have no way up to them. */
  @Property
  void nothingIsLaidBackWhereEverySquareCanBeReachedGoingUp(@ForAll @Size(SIDE * SIDE) List<Boolean> squares) {
    boolean[][] floor = floor(squares, 0);
    List<FloorPart> parts = parts(floor);
    if (parts.isEmpty()) {
      return;
    }
    boolean[][] upwards = new boolean[SIDE][SIDE];
    int start = 0;
    while (!floor[start][0]) {
      start++;
    }
    for (int x = start; x < SIDE && floor[x][0]; x++) {
      upwards[x][0] = true;
    }
    for (int y = 1; y < SIDE; y++) {
      for (int x = 0; x < SIDE; x++) {
        if (floor[x][y] && upwards[x][y - 1]) {
          for (int left = x; is(floor, left, y); left--) {
            upwards[left][y] = true;
          }
          for (int right = x; is(floor, right, y); right++) {
            upwards[right][y] = true;
          }
        }
      }
    }
    boolean all = IntStream.range(0, SIDE * SIDE).allMatch(i -> floor[i % SIDE][i / SIDE] == upwards[i % SIDE][i / SIDE]);
    LayingOrder order = LayingOrder.of(parts, ControlLine.through(Point.ofMillimetres(0, 0), Direction.ALONG_X), PITCH).value();
    assertThat(order.turns().isEmpty()).isEqualTo(all);
    assertThat(order.tongueAtLine()).isEqualTo(Length.ZERO);
    assertThat(order.turns()).allSatisfy(turn -> assertThat(turn.tongue()).isGreaterThanOrEqualTo(Length.ofMillimetres(1000)));
  }
}
