package floorcalc;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Containment;
import floorcalc.outline.Direction;
import floorcalc.outline.Extent;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.trims.BarGoods;
import floorcalc.trims.TrimBar;
import floorcalc.trims.TrimOpening;
import floorcalc.trims.TrimRun;
import floorcalc.trims.TrimRuns;
import floorcalc.underlay.CoveredRoom;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RollOrder;
import floorcalc.underlay.RollStrip;
import floorcalc.underlay.StripLayout;
import floorcalc.working.Calculated;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

/** Floors of any shape under strips off rolls, and along their walls under skirting. */
class CoveredFloorsPropertyTest {
  @Provide
  Arbitrary<Outline> rooms() {
    return RandomRooms.any();
  }

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static RollGoods roll(int width, int length, int lap, int upturn) {
    return RollGoods.barrier("film", mm(width), mm(length), Lap.of(mm(lap))).withUpturn(mm(upturn));
  }

  @Property(tries = 150)
  void everyPlaceLiesUnderAStrip(@ForAll("rooms") Outline room, @ForAll @IntRange(max = 359) int degrees,
      @ForAll @IntRange(min = 300, max = 2500) int width, @ForAll @IntRange(max = 200) int lap,
      @ForAll @IntRange(max = 150) int upturn, @ForAll long seed) {
    Direction along = Direction.fromDegrees(degrees);
    StripLayout layout = StripLayout.of("room", room, along, roll(width, 25_000, lap, upturn)).value();

    Outline inFrame = along.toFrame(room);
    Extent extent = inFrame.extent();
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      Point place = Point.ofNanometres(
          extent.low().xNanometres() + (long) (random.nextDouble() * extent.width().toNanometres()),
          extent.low().yNanometres() + (long) (random.nextDouble() * extent.height().toNanometres()));
      if (inFrame.locate(place) != Containment.OUTSIDE) {
        // the place itself, and as far round it as a wall there would be turned up
        for (int[] side : new int[][] {{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}, {1, 1}, {-1, 1}, {1, -1}, {-1, -1}}) {
          Length x = place.x().plus(mm(upturn).multipliedBy(side[0]));
          Length y = place.y().plus(mm(upturn).multipliedBy(side[1]));
          assertThat(layout.strips()).as("%s, %s under a strip", x, y).anyMatch(strip -> isUnder(strip, x, y));
        }
      }
    }
    Area area = layout.strips().stream().map(strip -> strip.length().times(mm(width))).reduce(Area.ZERO, Area::plus);
    assertThat(area).isGreaterThanOrEqualTo(room.area());
    assertThat(layout.cutArea()).isGreaterThanOrEqualTo(area);
  }

  private static boolean isUnder(RollStrip strip, Length x, Length y) {
    return strip.alongFrom().compareTo(x) <= 0 && x.compareTo(strip.alongTo()) <= 0
        && strip.acrossFrom().compareTo(y) <= 0 && y.compareTo(strip.acrossTo()) <= 0;
  }

  @Property(tries = 60)
  void stripsLieAnOverlapOverOneAnother(@ForAll("rooms") Outline room, @ForAll @IntRange(min = 300, max = 2500) int width,
      @ForAll @IntRange(max = 200) int lap, @ForAll @IntRange(max = 150) int upturn) {
    StripLayout layout = StripLayout.of("room", room, Direction.ALONG_X, roll(width, 25_000, lap, upturn)).value();
    List<RollStrip> strips = layout.strips();
    for (int i = 1; i < strips.size(); i++) {
      RollStrip before = strips.get(i - 1);
      RollStrip here = strips.get(i);
      if (here.number() > before.number()) {
        Length low = before.acrossFrom().max(here.acrossFrom());
        Length high = before.acrossTo().min(here.acrossTo());
        assertThat(here.number()).isEqualTo(before.number() + 1);
        assertThat(high.minus(low)).isEqualTo(mm(lap));
      }
    }
    // one strip less would not do
    long number = strips.get(strips.size() - 1).number();
    Length reach = mm(width - lap).multipliedBy(number - 1).plus(mm(lap));
    assertThat(number == 1 || reach.compareTo(room.extent().height().plus(mm(upturn).multipliedBy(2))) < 0).isTrue();
  }

  @Property(tries = 40)
  void rollsHoldTheirStripsAndAreBounded(@ForAll("rooms") Outline one, @ForAll("rooms") Outline other,
      @ForAll @IntRange(min = 400, max = 2500) int width, @ForAll @IntRange(max = 150) int lap,
      @ForAll @IntRange(min = 2, max = 30) int metres) {
    RollGoods roll = roll(width, metres * 1000, lap, 40);
    Calculated<RollOrder> calculated = RollOrder.of(roll, List.of(CoveredRoom.bothWays("one", one, Direction.ALONG_X),
        CoveredRoom.bothWays("other", other, Direction.ALONG_X)));
    RollOrder order = calculated.value();
    assertStepsHold(calculated);

    Length sum = Length.ZERO;
    int pieces = 0;
    for (TrimBar bar : order.cutting().bars()) {
      Length taken = bar.pieces().stream().map(piece -> piece.length()).reduce(Length.ZERO, Length::plus);
      assertThat(taken).isLessThanOrEqualTo(roll.length());
      sum = sum.plus(taken);
      pieces += bar.pieces().size();
    }
    List<Length> wanted = order.layouts().stream().flatMap(layout -> layout.cutLengths().stream()).toList();
    assertThat(sum).isEqualTo(wanted.stream().reduce(Length.ZERO, Length::plus));
    assertThat(pieces).isEqualTo(wanted.size());
    assertThat(order.rollsAtLeast()).isBetween((sum.toNanometres() - 1) / roll.length().toNanometres() + 1, (long) order.rolls());
    assertThat(order.boughtArea()).isGreaterThanOrEqualTo(order.netArea());
  }

  /** True of a rectangle, whose strips are equal: more of them, or longer ones, never take fewer rolls. */
  @Property(tries = 60)
  void aLargerRectangleNeverTakesFewerRolls(@ForAll @LongRange(min = 500, max = 9000) long width,
      @ForAll @LongRange(min = 500, max = 9000) long depth, @ForAll @LongRange(max = 3000) long more,
      @ForAll @LongRange(max = 3000) long deeper) {
    RollGoods roll = roll(1000, 12_500, 100, 0);
    assertThat(rolls(roll, width + more, depth + deeper)).isGreaterThanOrEqualTo(rolls(roll, width, depth));
  }

  private static int rolls(RollGoods roll, long width, long depth) {
    Outline outline = RandomRooms.rectangle(width * RandomRooms.MM, depth * RandomRooms.MM);
    return RollOrder.of(roll, List.of(CoveredRoom.oneWay("room", outline, Direction.ALONG_X))).value().rolls();
  }

  @Property(tries = 150)
  void runsAndOpeningsAreThePerimeter(@ForAll("rooms") Outline room, @ForAll @IntRange(max = 4) int doors, @ForAll long seed) {
    Random random = new Random(seed);
    List<TrimOpening> openings = new ArrayList<>();
    for (int i = 0; i < doors; i++) {
      Ring shell = room.shell();
      int wall = random.nextInt(shell.size());
      double from = random.nextDouble();
      double to = random.nextDouble();
      openings.add(TrimOpening.of("door " + i, on(shell, wall, from), on(shell, wall, to)));
    }
    Calculated<TrimRuns> calculated = TrimRuns.of("room", room, openings, BarGoods.of("skirting", List.of(mm(2400)), mm(15)));
    TrimRuns runs = calculated.value();
    assertStepsHold(calculated);

    assertThat(runs.net().plus(runs.openings())).isEqualTo(room.perimeter());
    assertThat(runs.runs().stream().map(TrimRun::back).reduce(Length.ZERO, Length::plus)).isEqualTo(runs.net());
    assertThat(runs.runs()).allSatisfy(run -> {
      assertThat(run.back().isPositive()).isTrue();
      assertThat(run.cut()).isGreaterThanOrEqualTo(run.back()).isGreaterThanOrEqualTo(run.front());
    });
    // openings taken one by one are no less than together, and no more than they are wide, to a few micrometres at a corner
    Length widths = Length.ZERO;
    for (TrimOpening opening : openings) {
      widths = widths.plus(Ring.of(opening.from(), opening.to()).wallLength(0)).plus(Length.ofNanometres(4000));
    }
    assertThat(runs.openings()).isLessThanOrEqualTo(widths);
    assertThat(TrimRuns.of("mirrored", room.mirrored(), List.of(), BarGoods.of("skirting", List.of(mm(2400)), mm(15))).value().net())
        .isEqualTo(room.perimeter());
  }

  private static Point on(Ring ring, int wall, double share) {
    int next = (wall + 1) % ring.size();
    return Point.ofNanometres(ring.x(wall) + Math.round(share * (ring.x(next) - ring.x(wall))),
        ring.y(wall) + Math.round(share * (ring.y(next) - ring.y(wall))));
  }
}
