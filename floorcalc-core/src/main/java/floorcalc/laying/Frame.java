package floorcalc.laying;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.LongUnaryOperator;

/**
 * The laid area turned so that the boards run along x.
 * <p>
 * Turning by an odd angle rounds every corner to the nanometre, which leaves walls that are parallel or square to the
 * boards a nanometre or two out. They are put back in line, and a floor that is then no more than a few nanometres wider
 * than a whole number of rows is trimmed by those.
 */
final class Frame {
  /** Places this near to their neighbour are taken as one: what rounding a corner twice can do. */
  private static final long NEAR = 2;
  private static final long WIDEST_GROUP = 3;
  private static final long TRIM = 4;

  final Direction direction;
  final List<Loop> floor;
  final Outline laid;

  private Frame(Direction direction, List<Loop> floor, Outline laid) {
    this.direction = direction;
    this.floor = floor;
    this.laid = laid;
  }

  static Frame of(Outline laid, Direction direction, long pitch) {
    List<Ring> rings = new ArrayList<>();
    rings.add(direction.toFrame(laid.shell()));
    laid.voids().forEach(ring -> rings.add(direction.toFrame(ring)));
    if (direction.isAlongAxis()) {
      return new Frame(direction, rings.stream().map(Loop::of).toList(), laid);
    }
    LongUnaryOperator levelX = inLine(rings, true, 0);
    LongUnaryOperator levelY = inLine(rings, false, pitch);
    List<Loop> straight = rings.stream().map(ring -> moved(ring, levelX, levelY)).filter(Objects::nonNull).toList();
    List<Ring> back = straight.stream().map(loop -> direction.toRoom(loop.toRing())).toList();
    return new Frame(direction, straight, Outline.of(back.get(0), back.subList(1, back.size())));
  }

  private static Loop moved(Ring ring, LongUnaryOperator levelX, LongUnaryOperator levelY) {
    long[] xs = new long[ring.size()];
    long[] ys = new long[ring.size()];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = levelX.applyAsLong(ring.x(i));
      ys[i] = levelY.applyAsLong(ring.y(i));
    }
    return Loop.tidy(xs, ys, xs.length);
  }

  /** Moves each place to the lowest of its group; the topmost group down to a whole number of pitches if that is a trifle. */
  private static LongUnaryOperator inLine(List<Ring> rings, boolean alongX, long pitch) {
    long[] places = rings.stream().flatMapToLong(ring -> {
      long[] all = new long[ring.size()];
      for (int i = 0; i < all.length; i++) {
        all[i] = alongX ? ring.x(i) : ring.y(i);
      }
      return Arrays.stream(all);
    }).sorted().distinct().toArray();
    long[] moved = places.clone();
    int start = 0;
    for (int i = 1; i < places.length; i++) {
      if (places[i] - places[i - 1] > NEAR || places[i] - places[start] > WIDEST_GROUP) {
        start = i;
      }
      moved[i] = places[start];
    }
    if (pitch > 0) {
      long top = moved[moved.length - 1];
      long over = Math.floorMod(top - moved[0], pitch);
      if (over > 0 && over <= TRIM && top - moved[0] > pitch) {
        for (int i = moved.length - 1; i >= 0 && moved[i] > top - over; i--) {
          moved[i] = top - over;
        }
      }
    }
    return place -> moved[Arrays.binarySearch(places, place)];
  }

  long low() {
    return floor.get(0).minY;
  }

  long high() {
    return floor.get(0).maxY;
  }
}
