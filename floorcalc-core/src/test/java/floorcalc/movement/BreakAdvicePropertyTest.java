package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.outline.Direction;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class BreakAdvicePropertyTest {
  /** Rooms in line, each with an opening to the next. */
  record Row(long[] rooms, long[] openings) {
    ContinuousFloor floor() {
      List<JoinedRoom> all = new ArrayList<>();
      List<JoinedOpening> doors = new ArrayList<>();
      long y = 0;
      for (int i = 0; i < rooms.length; i++) {
        all.add(BreakAdviceTest.room("room " + i, 0, y, 3000 + 100 * i, rooms[i]));
        y += rooms[i];
        if (i < openings.length) {
          doors.add(BreakAdviceTest.opening("door " + i, "room " + i, "room " + (i + 1), 500, y, 900, openings[i]));
          y += openings[i];
        }
      }
      return ContinuousFloor.of(all, doors, Direction.ALONG_X);
    }

    /**
     * Going from room to room: a bay takes the next room if, with the opening after that room, it is no wider than allowed. An opening
     * with a break counts on both sides of it.
     */
    int breaksByGoingAlong(long widest) {
      int breaks = 0;
      long width = rooms[0];
      for (int i = 0; i < openings.length; i++) {
        long onwards = openings[i] + rooms[i + 1];
        long after = i + 1 < openings.length ? openings[i + 1] : 0;
        if (width + onwards + after <= widest) {
          width += onwards;
        } else {
          breaks++;
          width = onwards;
        }
      }
      return breaks;
    }
  }

  @Provide
  Arbitrary<Row> rows() {
    return Arbitraries.randomValue(BreakAdvicePropertyTest::row);
  }

  private static Row row(Random random) {
    int n = 1 + random.nextInt(6);
    long[] rooms = new long[n];
    long[] openings = new long[n - 1];
    for (int i = 0; i < n; i++) {
      rooms[i] = 900 + random.nextInt(5000);
      if (i > 0) {
        openings[i - 1] = 50 + random.nextInt(400);
      }
    }
    return new Row(rooms, openings);
  }

  private static MovementForecast forecast(int tenths) {
    return MovementForecast.of(Percent.of("8"), Percent.of("7"), Percent.of("8").plus(Percent.of(Integer.toString(tenths))),
        Coefficient.NF_DTU_SOLID);
  }

  private static LayingRules rules(long gap, long run) {
    return RuleSet.COMMON_PRACTICE.forBoard(BreakAdviceTest.mm(14), BreakAdviceTest.mm(185))
        .with(LayingRules.EXPANSION_GAP, BreakAdviceTest.mm(gap), Source.GIVEN)
        .with(LayingRules.MAXIMUM_RUN_ACROSS, BreakAdviceTest.mm(run), Source.GIVEN);
  }

  /** Rooms in line across the boards are as wide as all of them and their openings, and no less than the widest of them. */
  @Property(tries = 200)
  void roomsInLineAreTheirSum(@ForAll("rows") Row row, @ForAll @IntRange(min = 1, max = 4) int rise) {
    ContinuousFloor floor = row.floor();
    ContinuousBay bay = floor.bays().get(0);
    List<Length> parts = new ArrayList<>();
    for (int i = 0; i < row.rooms().length; i++) {
      parts.add(BreakAdviceTest.mm(row.rooms()[i]));
      if (i < row.openings().length) {
        parts.add(BreakAdviceTest.mm(row.openings()[i]));
      }
    }
    assertThat(bay.across()).isEqualTo(MovementForecast.through(parts).value());
    Calculated<BreakAdvice> advice = BreakAdvice.of(forecast(rise), floor, rules(10, 8000));
    assertStepsHold(advice);
    BayMovement asOne = advice.value().asOne().get(0);
    for (JoinedRoom room : floor.rooms()) {
      BayMovement alone = BreakAdvice.of(forecast(rise), ContinuousFloor.of(List.of(room), List.of(), Direction.ALONG_X),
          rules(10, 8000)).value().asOne().get(0);
      assertThat(asOne.needed()).isGreaterThanOrEqualTo(alone.needed());
      assertThat(asOne.swelling()).isGreaterThanOrEqualTo(alone.swelling());
    }
    // the gap at the wall that moves most is the one that is asked for
    Length most = GapChecks.judge(forecast(rise), bay.points(BreakAdviceTest.mm(10)), Pinning.notLookedAt()).value().places().stream()
        .map(GapChecks.Place::closes).reduce(Length.ZERO, Length::max);
    assertThat(most.minus(asOne.needed()).abs()).isLessThanOrEqualTo(Length.ofNanometres(1));
  }

  /** The fewest breaks are as many as by going from room to room; after them every bay of several rooms fits. */
  @Property(tries = 300)
  void noFewerBreaksDo(@ForAll("rows") Row row, @ForAll @IntRange(min = 2000, max = 12_000) int run) {
    BreakAdvice advice = BreakAdvice.of(forecast(1), row.floor(), rules(100, run)).value();
    // 100 mm on each side take 200 / 0.0025 = 80 m: the run decides
    assertThat(advice.breaks()).hasSize(row.breaksByGoingAlong(run));
    assertThat(advice.withBreaks()).hasSize(advice.breaks().size() + 1);
    assertThat(advice.withBreaks()).allMatch(bay -> bay.fits() || bay.bay().rooms().size() == 1);
  }

  /** Turned by a quarter, boards and all, the floor needs the same. */
  @Property(tries = 100)
  void turnedRoomsAreTheSame(@ForAll("rows") Row row, @ForAll @IntRange(min = 1, max = 3) int quarters) {
    Direction turn = Direction.ALONG_X.plusQuarterTurns(quarters);
    ContinuousFloor floor = row.floor();
    ContinuousFloor turned = ContinuousFloor.of(
        floor.rooms().stream().map(room -> new JoinedRoom(room.name(), turn.toRoom(room.outline()))).toList(),
        floor.openings().stream().map(opening -> new JoinedOpening(opening.name(), opening.one(), opening.other(),
            turn.toRoom(opening.floor()))).toList(), turn);
    BreakAdvice straight = BreakAdvice.of(forecast(2), floor, rules(10, 8000)).value();
    BreakAdvice other = BreakAdvice.of(forecast(2), turned, rules(10, 8000)).value();
    assertThat(other.breaks()).extracting(at -> at.opening().name() + " " + at.width())
        .isEqualTo(straight.breaks().stream().map(at -> at.opening().name() + " " + at.width()).toList());
    assertThat(other.withBreaks()).extracting(BayMovement::toString)
        .isEqualTo(straight.withBreaks().stream().map(BayMovement::toString).toList());
  }
}
