package floorcalc.recheck;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/**
 * What a job asks for, as far as a plan can be held against it. Lengths are nanometres, coordinates millimetres.
 *
 * @param title its title
 * @param pitch the cover width of a board
 * @param pack how many boards of each length a pack holds, the longest first
 * @param gap the expansion gap
 * @param breakGap the gap of an expansion break in all
 * @param leastRow the minimum row width
 * @param leastPiece the minimum end piece
 * @param leastOffset the minimum joint offset
 * @param kerf the saw kerf
 * @param spareShare the share of spare boards
 * @param direction which way the boards run
 * @param inLayingOrder whether a piece must come from a board opened in its own or an earlier row
 * @param keptBack packs that are kept back
 * @param rooms its rooms
 */
record AskedJob(String title, long pitch, Map<Long, Integer> pack, long gap, long breakGap, long leastRow, long leastPiece,
    long leastOffset, long kerf, BigDecimal spareShare, Way direction, boolean inLayingOrder, int keptBack, List<Room> rooms) {

  /** How the direction is chosen: by degrees, or by a word. */
  record Way(OptionalDouble degrees, String word) {}

  /**
   * A room.
   *
   * @param name its name
   * @param walls the floor between its walls and voids, empty if it was surveyed
   * @param doors its doors
   * @param breaks its breaks if the job gives them
   */
  record Room(String name, Optional<Polygon> walls, List<Door> doors, Optional<List<Segment>> breaks) {}

  /** A door; its place is empty where the walls are not known. */
  record Door(String name, Optional<Segment> place) {}

  /** A straight line from one point to another. */
  record Segment(Coordinate from, Coordinate to) {

    /** Whether another line has the same ends, one way round or the other, within a distance. */
    boolean isAt(Segment other, double within) {
      return from.distance(other.from) <= within && to.distance(other.to) <= within
          || from.distance(other.to) <= within && to.distance(other.from) <= within;
    }

    @Override
    public String toString() {
      return Faults.at(from) + " to " + Faults.at(to);
    }
  }

  Optional<Room> room(String name) {
    return rooms.stream().filter(room -> room.name.equals(name)).findFirst();
  }

  long longest() {
    return pack.keySet().stream().mapToLong(Long::longValue).max().orElse(0);
  }
}
