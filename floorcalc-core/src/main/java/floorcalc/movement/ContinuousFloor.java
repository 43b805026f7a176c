package floorcalc.movement;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The rooms of a floor and the openings through which it may run on from room to room. Rooms that are joined without a break
 * are one {@link ContinuousBay} and move as one.
 * <p>
 * All outlines are in the same coordinates. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class ContinuousFloor {
  /** How far the floor of an opening may be from the walls of a room that it leads to: what a plan is drawn to. */
  private static final Length NEAR = Length.ofMillimetres(1);
  private static final int MOST_OPENINGS = 12;

  private final List<JoinedRoom> rooms;
  private final List<JoinedOpening> openings;
  private final Direction boards;

  private ContinuousFloor(List<JoinedRoom> rooms, List<JoinedOpening> openings, Direction boards) {
    this.rooms = List.copyOf(rooms);
    this.openings = List.copyOf(openings);
    this.boards = Objects.requireNonNull(boards, "boards");
  }

  /**
   * Returns the floor of some rooms.
   *
   * @param rooms the rooms, not empty, no two of one name, not null
   * @param openings the openings that the floor runs through or might, at most 12, no two of one name, may be empty, not
   *     null
   * @param boards the way that the boards run in all of it, not null
   * @return the floor, not null
   * @throws IllegalArgumentException if there is no room, a name comes twice, an opening names a room that there is not
   *     or is farther than 1 mm from one of its rooms, or there are more than 12 openings
   */
  public static ContinuousFloor of(List<JoinedRoom> rooms, List<JoinedOpening> openings, Direction boards) {
    if (rooms.isEmpty()) {
      throw new IllegalArgumentException("a floor needs at least one room");
    }
    if (openings.size() > MOST_OPENINGS) {
      throw new IllegalArgumentException("a floor may have at most " + MOST_OPENINGS + " openings, but has "
          + openings.size() + "; leave out those that have a break already");
    }
    Set<String> seen = new HashSet<>();
    rooms.forEach(room -> requireNew(seen, "room", room.name()));
    seen.clear();
    openings.forEach(opening -> requireNew(seen, "opening", opening.name()));
    ContinuousFloor floor = new ContinuousFloor(rooms, openings, boards);
    for (JoinedOpening opening : openings) {
      floor.requireReach(opening, floor.room(opening, opening.one()));
      floor.requireReach(opening, floor.room(opening, opening.other()));
    }
    return floor;
  }

  private static void requireNew(Set<String> seen, String what, String name) {
    if (!seen.add(name)) {
      throw new IllegalArgumentException("there are two " + what + "s named '" + name + "'; give each a name of its own");
    }
  }

  private JoinedRoom room(JoinedOpening opening, String name) {
    return rooms.stream().filter(room -> room.name().equals(name)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("opening '" + opening.name() + "' leads to '" + name
            + "', but the rooms are: " + rooms.stream().map(JoinedRoom::name).collect(Collectors.joining(", "))));
  }

  private void requireReach(JoinedOpening opening, JoinedRoom room) {
    Ring strip = opening.floor().shell();
    boolean reaches = false;
    for (int i = 0; i < strip.size() && !reaches; i++) {
      reaches = isIn(room.outline(), strip.x(i), strip.y(i));
    }
    if (!reaches) {
      throw new IllegalArgumentException("the floor of opening '" + opening.name() + "' is more than 1 mm from room '"
          + room.name() + "'; give both in the same coordinates and let it reach from room to room");
    }
  }

  /** Whether a point is in a room, on its walls or within a millimetre of them. */
  static boolean isIn(Outline room, double x, double y) {
    return room.isNear(Point.ofNanometres(Math.round(x), Math.round(y)), NEAR);
  }

  /**
   * Returns the bays of the floor if it is laid through all its openings.
   *
   * @return the bays in the order of their first rooms, one if all rooms are joined; not null
   */
  public List<ContinuousBay> bays() {
    return bays(List.of());
  }

  /**
   * Returns the bays of the floor with breaks at some openings. The floor of an opening with a break is counted with the
   * bays on both sides, since the break may be at either end of it.
   *
   * @param breaks the names of the openings with a break, not null
   * @return the bays in the order of their first rooms, not null
   * @throws IllegalArgumentException if there is no opening of a name
   */
  public List<ContinuousBay> bays(List<String> breaks) {
    for (String name : breaks) {
      if (openings.stream().noneMatch(opening -> opening.name().equals(name))) {
        throw new IllegalArgumentException("there is no opening '" + name + "'; the openings are: "
            + openings.stream().map(JoinedOpening::name).collect(Collectors.joining(", ")));
      }
    }
    List<ContinuousBay> bays = new ArrayList<>();
    Set<String> done = new HashSet<>();
    for (JoinedRoom room : rooms) {
      if (!done.contains(room.name())) {
        Set<String> reached = reachedFrom(room.name(), breaks);
        done.addAll(reached);
        bays.add(new ContinuousBay(rooms.stream().filter(other -> reached.contains(other.name())).toList(),
            openings.stream().filter(opening -> reached.contains(opening.one()) && reached.contains(opening.other())
                && !breaks.contains(opening.name())).toList(),
            openings.stream().filter(opening -> breaks.contains(opening.name())
                && (reached.contains(opening.one()) || reached.contains(opening.other()))).toList(), boards));
      }
    }
    return List.copyOf(bays);
  }

  private Set<String> reachedFrom(String room, List<String> breaks) {
    Set<String> reached = new HashSet<>(Set.of(room));
    boolean more = true;
    while (more) {
      more = false;
      for (JoinedOpening opening : openings) {
        if (!breaks.contains(opening.name()) && (reached.contains(opening.one()) || reached.contains(opening.other()))) {
          more |= reached.add(opening.one()) | reached.add(opening.other());
        }
      }
    }
    return reached;
  }

  /**
   * Returns the rooms.
   *
   * @return an unmodifiable list in the order given, not null
   */
  public List<JoinedRoom> rooms() {
    return rooms;
  }

  /**
   * Returns the openings.
   *
   * @return an unmodifiable list in the order given, not null
   */
  public List<JoinedOpening> openings() {
    return openings;
  }

  /**
   * Returns the way that the boards run.
   *
   * @return the direction, not null
   */
  public Direction boards() {
    return boards;
  }
}
