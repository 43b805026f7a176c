package floorcalc.outline;

import floorcalc.measure.Length;
import floorcalc.outline.OutlineFault.Kind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds everything that keeps a set of rings from being a floor: all faults in one list, each with its place.
 * <p>
 * Decided by exact arithmetic on whole nanometres, so a wall that misses another by one nanometre does not touch it.
 * Rings may be given clockwise or counter-clockwise; walls and corners are numbered as given.
 *
 * @since 0.1
 */
public final class OutlineCheck {
  /** The most corners that the rings of an outline may have together. */
  public static final int MOST_CORNERS = 10_000;

  /** The furthest that a coordinate may be from zero, either way: 10 km. */
  public static final Length FURTHEST = Length.ofMillimetres(10_000_000);

  /** The most faults that are listed; a last one says that there are more. */
  public static final int MOST_FAULTS = 100;

  private OutlineCheck() {}

  /**
   * Returns the faults of an outline, its walls numbered as {@link Outline#shell()} and {@link Outline#voids()} list them.
   *
   * @param outline the outline, not null
   * @return the faults, the shell's first; empty if the outline is sound
   */
  public static List<OutlineFault> faultsOf(Outline outline) {
    return faultsOf(outline.shell(), outline.voids());
  }

  /**
   * Returns the faults of rings as they were given.
   *
   * @param shell the ring of walls, not null
   * @param voids the fixed things inside, not null
   * @return the faults by ring, then by wall; empty if the rings make a sound outline
   */
  public static List<OutlineFault> faultsOf(Ring shell, List<Ring> voids) {
    Objects.requireNonNull(shell, "shell");
    List<Ring> rings = Stream.concat(Stream.of(shell), voids.stream()).toList();
    List<OutlineFault> faults = new ArrayList<>();
    int corners = rings.stream().mapToInt(Ring::size).reduce(0, Math::addExact);
    if (corners > MOST_CORNERS) {
      faults.add(new OutlineFault(Kind.TOO_MANY_CORNERS, 0, List.of(), Optional.empty(), FaultText.tooMany(corners)));
      return List.copyOf(faults);
    }
    for (int ring = 0; ring < rings.size(); ring++) {
      checkLimits(rings.get(ring), ring, faults);
    }
    if (faults.isEmpty()) {
      boolean[] flat = new boolean[rings.size()];
      for (int ring = 0; ring < rings.size(); ring++) {
        flat[ring] = checkCorners(rings.get(ring), ring, faults);
      }
      List<Ring> full = new ArrayList<>();
      for (int ring = 0; ring < rings.size(); ring++) {
        full.add(flat[ring] ? Ring.of() : rings.get(ring));
      }
      new MeetingFaults(full).addTo(faults);
      new PlaceOfVoids(full, faults).check();
    }
    return inOrder(faults);
  }

  /** Tells whether no wall of any ring crosses, touches or folds back on another: quicker than listing all faults. */
  static boolean isApart(List<Ring> rings) {
    Walls walls = Walls.of(rings);
    boolean[] met = new boolean[1];
    walls.sweep(0, (first, second) -> {
      met[0] = Meeting.of(walls, first, second) != null;
      return !met[0];
    });
    return !met[0];
  }

  private static List<OutlineFault> inOrder(List<OutlineFault> faults) {
    faults.sort(Comparator.comparingInt(OutlineFault::ring)
        .thenComparingInt(fault -> fault.walls().isEmpty() ? 0 : fault.walls().get(0))
        .thenComparing(OutlineFault::kind));
    if (faults.size() <= MOST_FAULTS) {
      return List.copyOf(faults);
    }
    List<OutlineFault> first = new ArrayList<>(faults.subList(0, MOST_FAULTS));
    first.add(new OutlineFault(Kind.MORE_FAULTS, 0, List.of(), Optional.empty(), FaultText.more()));
    return List.copyOf(first);
  }

  private static void checkLimits(Ring ring, int number, List<OutlineFault> faults) {
    if (ring.size() < 3) {
      faults.add(new OutlineFault(
          Kind.TOO_FEW_CORNERS, number, List.of(), Optional.empty(), FaultText.tooFew(number, ring.size())));
    }
    for (int i = 0; i < ring.size(); i++) {
      long most = FURTHEST.toNanometres();
      if (ring.x(i) > most || ring.x(i) < -most || ring.y(i) > most || ring.y(i) < -most) {
        Point corner = Point.ofNanometres(ring.x(i), ring.y(i));
        faults.add(new OutlineFault(Kind.CORNER_BEYOND_LIMIT, number, List.of(i + 1), Optional.of(corner),
            FaultText.beyond(number, i + 1, corner)));
      }
    }
  }

  /** Adds walls without length; tells whether all corners lie on one line. */
  private static boolean checkCorners(Ring ring, int number, List<OutlineFault> faults) {
    int n = ring.size();
    int apart = -1;
    boolean flat = true;
    for (int i = 0; i < n; i++) {
      int next = i + 1 == n ? 0 : i + 1;
      boolean same = ring.x(i) == ring.x(next) && ring.y(i) == ring.y(next);
      if (same) {
        Point corner = Point.ofNanometres(ring.x(i), ring.y(i));
        faults.add(new OutlineFault(Kind.WALL_WITHOUT_LENGTH, number, List.of(i + 1), Optional.of(corner),
            FaultText.withoutLength(number, i + 1, next + 1, corner)));
      }
      if (apart < 0 && (ring.x(i) != ring.x(0) || ring.y(i) != ring.y(0))) {
        apart = i;
      }
      flat &= apart < 0
          || Exact.side(ring.x(0), ring.y(0), ring.x(apart), ring.y(apart), ring.x(i), ring.y(i)) == 0;
    }
    if (flat) {
      faults.add(new OutlineFault(Kind.NO_AREA, number, List.of(),
          Optional.of(Point.ofNanometres(ring.x(0), ring.y(0))), FaultText.noArea(number)));
    }
    return flat;
  }
}
