package floorcalc.outline;

import floorcalc.outline.OutlineFault.Kind;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Turns the places where walls meet into faults: one for each crossing, one for each place where walls touch. */
final class MeetingFaults {
  /** When so many meetings are found, the sweep ends: a tangle need not be listed whole. */
  private static final int ENOUGH = 20 * OutlineCheck.MOST_FAULTS;

  private final Walls walls;
  private final List<Meeting> meetings = new ArrayList<>();

  MeetingFaults(List<Ring> rings) {
    walls = Walls.of(rings);
    walls.sweep(0, (first, second) -> {
      Meeting meeting = Meeting.of(walls, first, second);
      if (meeting != null) {
        meetings.add(meeting);
      }
      return meetings.size() < ENOUGH;
    });
  }

  void addTo(List<OutlineFault> faults) {
    Set<Spot> told = new HashSet<>(); // only asked, never walked through
    Map<Spot, TreeSet<Integer>> touches = new TreeMap<>();
    for (Meeting meeting : meetings) {
      int low = walls.ring[meeting.first()];
      int high = walls.ring[meeting.second()];
      if (meeting.kind() == Meeting.Kind.TOUCH) {
        Spot spot = new Spot(low, high, meeting.places().get(0));
        TreeSet<Integer> at = touches.computeIfAbsent(spot, s -> new TreeSet<>());
        at.add(meeting.first());
        at.add(meeting.second());
      } else {
        if (meeting.kind() != Meeting.Kind.CROSS) {
          meeting.places().forEach(place -> told.add(new Spot(low, high, place)));
        }
        faults.add(low == high ? inRing(meeting) : between(meeting.kind() == Meeting.Kind.CROSS, meeting.first(),
            meeting.second(), meeting.places().get(0)));
      }
    }
    touches.forEach((spot, at) -> {
      if (!told.contains(spot)) {
        faults.add(spot.low == spot.high ? touch(spot, at) : between(false, at.first(), at.last(), spot.place));
      }
    });
  }

  private OutlineFault inRing(Meeting meeting) {
    int ring = walls.ring[meeting.first()];
    int first = number(meeting.first());
    int second = number(meeting.second());
    Point place = meeting.places().get(0);
    return switch (meeting.kind()) {
      case CROSS -> new OutlineFault(Kind.WALLS_CROSS, ring, List.of(first, second), Optional.of(place),
          FaultText.cross(ring, first, second, place));
      case FOLD -> {
        boolean inOrder = walls.next[meeting.first()] == meeting.second();
        int after = inOrder ? second : first;
        int before = inOrder ? first : second;
        yield new OutlineFault(Kind.WALL_FOLDS_BACK, ring, List.of(after, before), Optional.of(place),
            FaultText.fold(ring, after, before, place));
      }
      default -> new OutlineFault(Kind.WALLS_OVERLAP, ring, List.of(first, second), Optional.of(place),
          FaultText.overlap(ring, first, second, place, meeting.places().get(1)));
    };
  }

  private OutlineFault touch(Spot spot, TreeSet<Integer> at) {
    List<Integer> numbers = at.stream().map(this::number).sorted().toList();
    return new OutlineFault(Kind.WALLS_TOUCH, spot.low, numbers, Optional.of(spot.place),
        FaultText.touch(spot.low, numbers, spot.place));
  }

  private OutlineFault between(boolean cross, int first, int second, Point place) {
    int low = walls.ring[first];
    int high = walls.ring[second];
    Kind kind = low == 0
        ? cross ? Kind.VOID_CROSSES_OUTLINE : Kind.VOID_TOUCHES_OUTLINE
        : cross ? Kind.VOIDS_CROSS : Kind.VOIDS_TOUCH;
    return new OutlineFault(kind, high, List.of(number(second)), Optional.of(place),
        FaultText.rings(cross ? "crosses" : "touches", high, number(second), low, number(first), place));
  }

  private int number(int wall) {
    return walls.index[wall] + 1;
  }

  /** A place where walls of two rings, or of one, touch. */
  private record Spot(int low, int high, Point place) implements Comparable<Spot> {
    @Override
    public int compareTo(Spot other) {
      int byLow = Integer.compare(low, other.low);
      int byHigh = byLow != 0 ? byLow : Integer.compare(high, other.high);
      return byHigh != 0 ? byHigh : place.compareTo(other.place);
    }
  }
}
