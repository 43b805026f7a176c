package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.bays.BayParts;
import floorcalc.bays.ExpansionBreak;
import floorcalc.bays.ThroughBreaks;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.lifecycle.AddLifecycleHook;

/** Rooms with breaks that the job gives: upright and level lines from wall to wall, crossing each other or not. */
@AddLifecycleHook(MoreTries.class)
class GivenBreaksPropertyTest {
  private static final BoardGoods BOARDS =
      BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);

  @Provide
  Arbitrary<Outline> rooms() {
    return RandomRooms.straight();
  }

  @Provide
  Arbitrary<Double> turns() {
    return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(2, Arbitraries.of(0.0, 90.0)),
        net.jqwik.api.Tuple.of(1, Arbitraries.of(30.0, 45.0, 7.3)));
  }

  @Property(tries = 150)
  void bayAndBreakMakeTheRoom(@ForAll("rooms") Outline outline, @ForAll @Size(min = 1, max = 3) List<@IntRange(max = 999_999) Integer> cuts,
      @ForAll("turns") double turn, @ForAll @IntRange(max = 3) int width, @ForAll ThroughBreaks through) {
    List<ExpansionBreak> breaks = new ArrayList<>();
    for (int cut : cuts) {
      chord(outline, cut).ifPresent(line -> breaks.add(line));
    }
    Length[] widths = {Length.ZERO, Length.ofMillimetres(7), Length.ofMillimetres(12), Length.ofMillimetres(30)};
    LayingRules rules = RuleSet.COMMON_PRACTICE.forBoard(BOARDS.thickness(), BOARDS.coverWidth())
        .with(LayingRules.BREAK_GAP, widths[width], Source.GIVEN);
    FloorJob job = FloorJob.of("Broken", BOARDS).rules(rules).throughBreaks(through)
        .direction(DirectionChoice.of(Direction.fromDegrees(turn)))
        .room(Room.of("Room", outline).withBreaks(breaks.stream().distinct().toList())).build();
    Assume.that(FloorPlanner.faultsOf(job).isEmpty());
    FloorPlan plan = FloorPlanner.plan(job);
    assertThat(plan.breaks()).hasSize((int) breaks.stream().distinct().count());
    Area laid = plan.bays().stream().map(bay -> bay.laid().area()).reduce(Area.ZERO, Area::plus);
    assertThat(laid.compareTo(outline.area())).isLessThan(0);
    assertThat(BayParts.of(outline, plan.breaks().stream().map(line -> line.line()).toList()).parts().size())
        .isGreaterThan(breaks.isEmpty() ? 0 : 1);
    if (through == ThroughBreaks.ONE_START_LINE && turn % 90 == 0) {
      long pitch = BOARDS.laidPitch().toNanometres();
      assertThat(plan.bays().stream().filter(bay -> bay.rows().size() > 2).map(GivenBreaksPropertyTest::secondRow)
          .filter(low -> low < Long.MAX_VALUE).map(low -> Math.floorMod(low, pitch)).distinct())
          .hasSizeLessThanOrEqualTo(1);
    }
  }

  /** Where the second row of a bay begins, across the boards: the low edge of a piece with its factory edge there. */
  private static long secondRow(Bay bay) {
    long low = Long.MAX_VALUE;
    for (LaidPiece piece : bay.rows().get(1).pieces()) {
      Ring ring = bay.direction().toFrame(piece.outline());
      for (int i = 0; i < ring.size() && piece.from().acrossFrom().isZero(); i++) {
        low = Math.min(low, ring.y(i));
      }
    }
    return low;
  }

  /** A level or upright line across the room at some share of its extent, between the first two walls that it meets. */
  private static java.util.Optional<ExpansionBreak> chord(Outline room, int cut) {
    boolean upright = cut % 2 == 0;
    long low = upright ? room.extent().low().xNanometres() : room.extent().low().yNanometres();
    long high = upright ? room.extent().high().xNanometres() : room.extent().high().yNanometres();
    long at = low + (long) ((high - low) * (0.02 + 0.96 * (cut / 1_000_000.0)));
    List<Long> meets = new ArrayList<>();
    for (Ring ring : Stream.concat(Stream.of(room.shell()), room.voids().stream()).toList()) {
      for (int i = 0; i < ring.size(); i++) {
        int j = (i + 1) % ring.size();
        long a = upright ? ring.x(i) : ring.y(i);
        long b = upright ? ring.x(j) : ring.y(j);
        if (a > at != b > at) {
          double share = (double) (at - a) / (b - a);
          long from = upright ? ring.y(i) : ring.x(i);
          long to = upright ? ring.y(j) : ring.x(j);
          meets.add(from + Math.round(share * (to - from)));
        }
      }
    }
    Collections.sort(meets);
    if (meets.size() < 2 || meets.get(0).equals(meets.get(1))) {
      return java.util.Optional.empty();
    }
    int k = cut / 2 % (meets.size() / 2) * 2;
    if (meets.get(k).equals(meets.get(k + 1))) {
      return java.util.Optional.empty();
    }
    return java.util.Optional.of(upright
        ? ExpansionBreak.given(Point.ofNanometres(at, meets.get(k)), Point.ofNanometres(at, meets.get(k + 1)))
        : ExpansionBreak.given(Point.ofNanometres(meets.get(k), at), Point.ofNanometres(meets.get(k + 1), at)));
  }
}
