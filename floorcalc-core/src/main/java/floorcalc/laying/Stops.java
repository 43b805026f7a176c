package floorcalc.laying;

import floorcalc.outline.Point;
import floorcalc.rows.Stop;
import java.util.ArrayList;
import java.util.List;

/**
 * The stops of a bay: the sides of its floor that run along the boards or nearly so.
 * <p>
 * A side steeper than one in two ends rows; it is no stop. Sides without height that follow one another are one stop.
 */
final class Stops {
  private Stops() {}

  /**
   * A stop with the ends of the side that it is, in the frame.
   *
   * @param stop the stop
   * @param fromX one end, nm
   * @param fromY the same
   * @param toX the other end, nm
   * @param toY the same
   */
  record Side(Stop stop, long fromX, long fromY, long toX, long toY) {}

  static List<Stop> of(List<Loop> floor) {
    return sides(floor).stream().map(Side::stop).toList();
  }

  static List<Side> sides(List<Loop> floor) {
    List<Side> stops = new ArrayList<>();
    int wall = 0;
    for (Loop loop : floor) {
      for (int i = 0; i < loop.size(); i++) {
        wall++;
        int j = i + 1 < loop.size() ? i + 1 : 0;
        long fromX = loop.x[i];
        long fromY = loop.y[i];
        long toX = loop.x[j];
        long toY = loop.y[j];
        Stop.ofSide("side " + wall, Point.ofNanometres(fromX, fromY), Point.ofNanometres(toX, toY))
            .ifPresent(stop -> stops.add(new Side(stop, fromX, fromY, toX, toY)));
      }
    }
    return stops;
  }
}
