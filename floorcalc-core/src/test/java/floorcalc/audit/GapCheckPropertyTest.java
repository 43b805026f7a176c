package floorcalc.audit;

import static floorcalc.audit.GapCheckTest.check;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What the gap leaves of random rooms is accepted; less or other is not. */
class GapCheckPropertyTest {

  @Property(tries = 300)
  void whatTheGapLeavesIsAccepted(@ForAll Random random) {
    Outline room = RandomJobs.outline(random);
    if (!OutlineCheck.faultsOf(room).isEmpty()) {
      return;
    }
    long gap = random.nextInt(10) == 0 ? 0 : (long) (random.nextDouble() * 60e6);
    List<Outline> laid = ExpansionGap.inset(room, Length.ofNanometres(gap)).value().laid();
    assertThat(check(room, gap / 1e6, laid.toArray(Outline[]::new))).isEmpty();
    if (!laid.isEmpty()) {
      Outline[] fewer = laid.subList(1, laid.size()).toArray(Outline[]::new);
      double size = laid.get(0).area().toSquareMillimetres();
      if (size > 1000) {
        assertThat(check(room, gap / 1e6, fewer)).as("%s mm² left out", size)
            .contains(fewer.length == 0 ? "missing" : "laid-missing");
      }
    }
  }

  @Property(tries = 200)
  void aCornerOutOfPlaceIsFound(@ForAll Random random) {
    Outline room = RandomJobs.outline(random);
    if (!OutlineCheck.faultsOf(room).isEmpty()) {
      return;
    }
    List<Outline> laid = new ArrayList<>(ExpansionGap.inset(room, Length.ofMillimetres(10)).value().laid());
    if (laid.isEmpty()) {
      return;
    }
    Ring shell = laid.get(0).shell();
    int corner = random.nextInt(shell.size());
    long[] xs = new long[shell.size()];
    long[] ys = new long[shell.size()];
    double angle = random.nextDouble() * 2 * Math.PI;
    // A tenth of a millimetre and more: a corner moved by a few nanometres along its wall is no fault.
    double by = 100_000 + Math.pow(10, random.nextDouble() * 8);
    for (int i = 0; i < xs.length; i++) {
      xs[i] = shell.x(i) + (i == corner ? Math.round(by * Math.cos(angle)) : 0);
      ys[i] = shell.y(i) + (i == corner ? Math.round(by * Math.sin(angle)) : 0);
    }
    laid.set(0, Outline.of(Ring.ofNanometres(xs, ys), laid.get(0).voids()));
    assertThat(check(room, 10, laid.toArray(Outline[]::new))).isNotEmpty();
  }
}
