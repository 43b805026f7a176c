package floorcalc.outline;

import floorcalc.outline.OutlineFault.Kind;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Checks that each void lies inside the shell and outside every other void. */
final class PlaceOfVoids {
  private final List<Ring> rings;
  private final List<OutlineFault> faults;
  private final Set<Integer> faulty = new HashSet<>(); // only asked, never walked through

  /** Takes the rings, flat ones emptied, and the faults so far: a ring that has one is not placed. */
  PlaceOfVoids(List<Ring> rings, List<OutlineFault> faults) {
    this.rings = rings;
    this.faults = faults;
    faults.stream().filter(fault -> fault.kind() != Kind.WALL_WITHOUT_LENGTH).forEach(fault -> faulty.add(fault.ring()));
  }

  void check() {
    for (int ring = 1; ring < rings.size(); ring++) {
      if (faulty.contains(ring)) {
        continue;
      }
      Point corner = rings.get(ring).corners().get(0);
      if (!faulty.contains(0) && rings.get(0).locate(corner) == Containment.OUTSIDE) {
        add(Kind.VOID_OUTSIDE, ring, corner, FaultText.outside(ring, corner));
        continue;
      }
      for (int other = 1; other < rings.size(); other++) {
        if (other != ring && !faulty.contains(other) && rings.get(other).locate(corner) == Containment.INSIDE) {
          add(Kind.VOID_WITHIN_VOID, ring, corner, FaultText.within(ring, other, corner));
          break;
        }
      }
    }
  }

  private void add(Kind kind, int ring, Point corner, String message) {
    faults.add(new OutlineFault(kind, ring, List.of(), Optional.of(corner), message));
  }
}
