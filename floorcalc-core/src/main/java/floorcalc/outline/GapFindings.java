package floorcalc.outline;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What the expansion gap does to a room beyond making it smaller. */
final class GapFindings {
  /** A laid edge may lie so many nanometres beside the moved wall that it belongs to. */
  private static final double ROUNDING = 2;
  private static final int MOST_LISTED = 10;

  private GapFindings() {}

  /** Returns the findings of a gap that did more than move every wall. */
  static List<Finding> of(Outline room, Length gap, List<Outline> laid) {
    List<Finding> findings = new ArrayList<>();
    if (laid.isEmpty()) {
      findings.add(finding("gap-swallows-floor", Severity.SERIOUS, "a gap of " + gap
          + " at every wall leaves no floor: the room is nowhere wider than twice the gap; check the measurements"));
      return findings;
    }
    if (laid.size() > 1) {
      findings.add(finding("gap-splits-floor", Severity.WARNING, "a gap of " + gap + " at every wall leaves "
          + laid.size() + " pieces of floor: between them the room is nowhere wider than twice the gap; "
          + "lay each as a floor of its own"));
    }
    List<String> bare = bareWalls(room, gap.toNanometres(), laid);
    if (!bare.isEmpty()) {
      String more = bare.size() > MOST_LISTED ? " and " + (bare.size() - MOST_LISTED) + " more" : "";
      findings.add(finding("gap-hides-wall", Severity.NOTE, "no floor lies along the wall from "
          + bare.stream().limit(MOST_LISTED).collect(Collectors.joining(", from ")) + more
          + ": there the gap of " + gap + " runs into the gap of another wall"));
    }
    return findings;
  }

  private static Finding finding(String code, Severity severity, String message) {
    return new Finding(code, severity, "", message, Source.GIVEN);
  }

  /** Returns the walls, by their ends, that have no edge of the floor along them at the distance of the gap. */
  private static List<String> bareWalls(Outline room, long gap, List<Outline> laid) {
    List<Ring> own = room.rings();
    List<Ring> edges = laid.stream().flatMap(piece -> piece.rings().stream()).toList();
    Walls walls = Walls.of(Stream.concat(own.stream(), edges.stream()).toList());
    boolean[] reached = new boolean[walls.count];
    walls.sweep(gap, (first, second) -> {
      if (walls.ring[first] < own.size() && walls.ring[second] >= own.size() && liesAlong(walls, first, second, gap)) {
        reached[first] = true;
      }
      return true;
    });
    List<String> bare = new ArrayList<>();
    for (int wall = 0; wall < walls.count && walls.ring[wall] < own.size(); wall++) {
      if (!reached[wall]) {
        bare.add(Point.ofNanometres(walls.ax[wall], walls.ay[wall]) + " to "
            + Point.ofNanometres(walls.bx[wall], walls.by[wall]));
      }
    }
    return bare;
  }

  private static boolean liesAlong(Walls walls, int wall, int edge, long gap) {
    long dx = walls.bx[wall] - walls.ax[wall];
    long dy = walls.by[wall] - walls.ay[wall];
    boolean sameWay = Exact.compareProducts(
        dx, walls.bx[edge] - walls.ax[edge], -dy, walls.by[edge] - walls.ay[edge]) > 0;
    double length = Math.sqrt((double) dx * dx + (double) dy * dy);
    double start = Exact.differenceOfProducts(dx, walls.ay[edge] - walls.ay[wall], dy, walls.ax[edge] - walls.ax[wall]);
    double end = Exact.differenceOfProducts(dx, walls.by[edge] - walls.ay[wall], dy, walls.bx[edge] - walls.ax[wall]);
    return sameWay && Math.abs(start / length - gap) <= ROUNDING && Math.abs(end / length - gap) <= ROUNDING;
  }
}
