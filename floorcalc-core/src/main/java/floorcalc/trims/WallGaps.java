package floorcalc.trims;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What openings take of the walls of a room. */
final class WallGaps {
  /** An opening lies on a wall if both its ends do to within 1 mm. */
  private static final double ON_WALL = 1_000_000;
  /** Of two walls it lies on the nearer, and on both if they are equally near to within a micrometre: on two that are in line. */
  private static final double AS_NEAR = 1_000;

  private final Outline room;
  private final List<TrimOpening> openings;
  private final double[] reach;

  WallGaps(Outline room, List<TrimOpening> openings) {
    this.room = room;
    this.openings = openings;
    this.reach = openings.stream().mapToDouble(this::nearest).toArray();
  }

  /** The openings that lie on no wall. */
  List<TrimOpening> offAllWalls() {
    List<TrimOpening> off = new ArrayList<>();
    for (int i = 0; i < reach.length; i++) {
      if (reach[i] > ON_WALL) {
        off.add(openings.get(i));
      }
    }
    return off;
  }

  /** What openings take of a wall, from its start, apart from each other. */
  record Gap(Length from, Length to) {}

  /** The stretches of a wall, from its start, apart from each other. */
  List<Gap> on(Ring ring, int wall) {
    List<Gap> gaps = new ArrayList<>();
    Length length = ring.wallLength(wall);
    for (int i = 0; i < openings.size(); i++) {
      TrimOpening opening = openings.get(i);
      if (off(ring, wall, opening) <= Math.min(reach[i] + AS_NEAR, ON_WALL)) {
        double one = along(ring, wall, opening.from());
        double other = along(ring, wall, opening.to());
        Length from = Length.ofNanometres(Math.round(Math.min(one, other))).minus(opening.beside()).max(Length.ZERO);
        Length to = Length.ofNanometres(Math.round(Math.max(one, other))).plus(opening.beside()).min(length);
        if (from.compareTo(to) < 0) {
          gaps.add(new Gap(from, to));
        }
      }
    }
    gaps.sort(Comparator.comparing(Gap::from).thenComparing(Gap::to));
    List<Gap> apart = new ArrayList<>();
    for (Gap gap : gaps) {
      Gap last = apart.isEmpty() ? null : apart.get(apart.size() - 1);
      if (last == null || gap.from.compareTo(last.to) > 0) {
        apart.add(gap);
      } else {
        apart.set(apart.size() - 1, new Gap(last.from, last.to.max(gap.to)));
      }
    }
    return apart;
  }

  /** How far off the nearest wall an opening is of which it takes a part. */
  private double nearest(TrimOpening opening) {
    List<Ring> rings = new ArrayList<>(List.of(room.shell()));
    rings.addAll(room.voids());
    double nearest = Double.POSITIVE_INFINITY;
    for (Ring ring : rings) {
      for (int wall = 0; wall < ring.size(); wall++) {
        double one = along(ring, wall, opening.from());
        double other = along(ring, wall, opening.to());
        if (Math.max(one, other) > 0 && Math.min(one, other) < ring.wallLength(wall).toNanometres()) {
          nearest = Math.min(nearest, off(ring, wall, opening));
        }
      }
    }
    return nearest;
  }

  /** How far off the line of a wall the farther end of an opening is, in nanometres. */
  private static double off(Ring ring, int wall, TrimOpening opening) {
    return Math.max(Math.abs(offWall(ring, wall, opening.from())), Math.abs(offWall(ring, wall, opening.to())));
  }

  private static double offWall(Ring ring, int wall, Point point) {
    int next = (wall + 1) % ring.size();
    double dx = ring.x(next) - ring.x(wall);
    double dy = ring.y(next) - ring.y(wall);
    return (dx * (point.yNanometres() - ring.y(wall)) - dy * (point.xNanometres() - ring.x(wall))) / Math.sqrt(dx * dx + dy * dy);
  }

  private static double along(Ring ring, int wall, Point point) {
    int next = (wall + 1) % ring.size();
    double dx = ring.x(next) - ring.x(wall);
    double dy = ring.y(next) - ring.y(wall);
    return (dx * (point.xNanometres() - ring.x(wall)) + dy * (point.yNanometres() - ring.y(wall))) / Math.sqrt(dx * dx + dy * dy);
  }
}
