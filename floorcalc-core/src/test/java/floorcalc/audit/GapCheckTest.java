package floorcalc.audit;

import static floorcalc.audit.HandPlan.ring;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Room;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The laid area is the room less the gap: by hand for shapes with whole corners, and for what the gap makes of others. */
class GapCheckTest {

  static Set<String> check(Outline room, double gap, Outline... laid) {
    Breaches breaches = new Breaches();
    List<Bay> bays = new ArrayList<>();
    for (Outline part : laid) {
      bays.add(new Bay("b-" + (bays.size() + 1), "Room", Direction.ALONG_X, part, List.of()));
    }
    boolean missing = GapCheck.check(Room.of("Room", room), List.of(), bays, gap * 1e6, breaches);
    Set<String> codes = breaches.found().stream().map(Finding::code).collect(Collectors.toCollection(TreeSet::new));
    if (bays.isEmpty() && missing) {
      codes.add("missing");
    }
    return codes;
  }

  /** Walls that lean by 3 in 4: moved by 10 mm, they pass a point 8 mm along x and 6 mm along y from where they were. */
  @Test
  void aTriangleWithWholeCorners() {
    // Legs 300 and 400, hypotenuse 500: the inscribed circle has a radius of 100, so a gap of 10 leaves nine tenths.
    Outline room = Outline.of(ring(0, 0, 300, 0, 0, 400));
    Outline laid = Outline.of(ring(10, 10, 280, 10, 10, 370));
    assertThat(check(room, 10, laid)).isEmpty();
    assertThat(check(room, 10.0001, laid)).contains("laid-too-near");
    assertThat(check(room, 9.9999, laid)).contains("laid-astray");
    assertThat(check(room, 100.001)).isEmpty();
    assertThat(check(room, 99)).containsExactly("missing");
  }

  @Test
  void roundAColumnTheCornersAreMitred() {
    Outline room = Outline.of(ring(0, 0, 1000, 0, 1000, 1000, 0, 1000), List.of(ring(400, 400, 600, 400, 600, 600, 400, 600)));
    Ring shell = ring(10, 10, 990, 10, 990, 990, 10, 990);
    assertThat(check(room, 10, Outline.of(shell, List.of(ring(390, 390, 610, 390, 610, 610, 390, 610))))).isEmpty();
    // Cut off at the corner: nowhere nearer than 10 mm (5·√2 + 5·√2 = 14.1 mm), but no mitre.
    assertThat(check(room, 10, Outline.of(shell, List.of(
        ring(395, 390, 610, 390, 610, 610, 390, 610, 390, 395))))).containsExactly("laid-astray");
    // Too large a hole.
    assertThat(check(room, 10, Outline.of(shell, List.of(ring(389, 390, 610, 390, 610, 610, 389, 610)))))
        .contains("laid-astray", "laid-missing");
    // No hole at all.
    assertThat(check(room, 10, Outline.of(shell))).contains("laid-too-near");
  }

  /** A needle of 2 · atan(1/40) = 2.9 degrees: its tip is cut off square at ten gaps, 100 mm above it. */
  @Test
  void theTipOfANeedleIsCutOffSquare() {
    Outline room = Outline.of(ring(0, 0, 1000, 0, 1000, 1000, 0, 1000), List.of(ring(490, 200, 510, 200, 500, 600)));
    List<Outline> laid = ExpansionGap.inset(room, Length.ofMillimetres(10)).value().laid();
    assertThat(laid).hasSize(1);
    Ring hole = laid.get(0).voids().get(0);
    assertThat(hole.size()).isEqualTo(4);
    assertThat(hole.corners()).filteredOn(corner -> corner.yNanometres() > 600_000_000)
        .hasSize(2).allSatisfy(corner -> assertThat(corner.yNanometres()).isEqualTo(700_000_000));
    assertThat(check(room, 10, laid.get(0))).isEmpty();
    // Cut off half as far.
    long[] xs = new long[4];
    long[] ys = new long[4];
    for (int i = 0; i < 4; i++) {
      xs[i] = hole.x(i);
      ys[i] = Math.min(hole.y(i), 650_000_000);
    }
    assertThat(check(room, 10, Outline.of(laid.get(0).shell(), List.of(Ring.ofNanometres(xs, ys)))))
        .contains("laid-astray");
  }

  @Test
  void aNeckThatTheGapClosesLeavesTwoParts() {
    Outline room = Outline.of(ring(0, 0, 1000, 0, 1000, 490, 1200, 490, 1200, 0, 2200, 0,
        2200, 1000, 1200, 1000, 1200, 509, 1000, 509, 1000, 1000, 0, 1000));
    Outline left = Outline.of(ring(10, 10, 990, 10, 990, 990, 10, 990));
    Outline right = Outline.of(ring(1210, 10, 2190, 10, 2190, 990, 1210, 990));
    assertThat(check(room, 10, left, right)).isEmpty();
    assertThat(check(room, 10, left)).containsExactly("laid-missing");
    assertThat(check(room, 10, right)).containsExactly("laid-missing");
    assertThat(check(room, 10, left, right, left)).containsExactly("bays-overlap");
    assertThat(check(room, 10)).containsExactly("missing");
    // A gap of 9 mm leaves 1 mm in the neck.
    assertThat(check(room, 9, left, right)).contains("laid-astray", "laid-missing");
  }

  @Test
  void withoutAGapTheRoomItselfIsLaid() {
    Outline room = Outline.of(ring(0, 0, 1000, 0, 1000, 1000, 0, 1000), List.of(ring(400, 400, 600, 400, 600, 600)));
    assertThat(check(room, 0, room)).isEmpty();
    assertThat(check(room, 0, Outline.of(room.shell()))).containsExactly("laid-missing");
    assertThat(check(room, 0, Outline.of(ring(0, 0, 1000, 0, 1000, 999, 0, 999), room.voids())))
        .contains("laid-astray", "laid-missing");
  }

  @Test
  void wallsInOneLineAreOneWall() {
    Outline room = Outline.of(ring(0, 0, 300, 0, 301, 0, 1000, 0, 1000, 1000, 0, 1000));
    assertThat(check(room, 10, Outline.of(ring(10, 10, 990, 10, 990, 990, 10, 990)))).isEmpty();
    assertThat(check(room, 10, Outline.of(ring(10, 10, 300, 10, 990, 10, 990, 990, 10, 990)))).isEmpty();
  }
}
