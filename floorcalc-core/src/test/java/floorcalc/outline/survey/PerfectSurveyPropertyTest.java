package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Measurements without an error give the outline back. */
class PerfectSurveyPropertyTest {
  /** What lengths rounded by half a nanometre can move a corner: wall 1 is short beside the room, and turns it all. */
  private static final long NEAR = 10;

  /** Stairs of right angles: to the right and up, then back along the far walls. */
  @Provide
  Arbitrary<Outline> squareRooms() {
    Arbitrary<Long> size = Arbitraries.longs().between(300_000_000L, 3_000_000_000L);
    return Combinators.combine(size, size).as((w, h) -> new long[] {w, h}).list().ofMinSize(1).ofMaxSize(5).map(steps -> {
      List<Point> corners = new ArrayList<>(List.of(Point.ofNanometres(0, 0)));
      long x = steps.stream().mapToLong(step -> step[0]).sum();
      long y = 0;
      corners.add(Point.ofNanometres(x, 0));
      for (long[] step : steps) {
        y += step[1];
        corners.add(Point.ofNanometres(x, y));
        x -= step[0];
        corners.add(Point.ofNanometres(x, y));
      }
      return Outline.of(Ring.of(corners));
    });
  }

  @Property(tries = 300)
  void squareRoomsComeBackToTheNanometre(@ForAll("squareRooms") Outline room) {
    Survey survey = PerfectSurveys.sided(room).withCorners(Survey.Corners.RIGHT_ANGLES);
    assertThat(SurveyReport.of(survey).value().room().orElseThrow().corners()).isEqualTo(room.shell().corners());
  }

  @Provide
  Arbitrary<Outline> fairRooms() {
    Arbitrary<Long> radius = Arbitraries.longs().between(1_800_000_000L, 5_000_000_000L);
    Arbitrary<Double> jitter = Arbitraries.doubles().between(-0.25, 0.25);
    return Combinators.combine(radius, jitter).as((r, j) -> new double[] {r, j}).list().ofMinSize(3).ofMaxSize(10)
        .map(PerfectSurveyPropertyTest::star);
  }

  /** Corners round a middle, none far from its neighbours. */
  private static Outline star(List<double[]> spokes) {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < spokes.size(); i++) {
      double angle = 2 * StrictMath.PI * (i + spokes.get(i)[1]) / spokes.size();
      corners.add(Point.ofNanometres(StrictMath.round(spokes.get(i)[0] * StrictMath.cos(angle)),
          StrictMath.round(spokes.get(i)[0] * StrictMath.sin(angle))));
    }
    return Outline.of(Ring.of(corners));
  }

  @Property(tries = 200)
  void roomsWithAllTheirTiesComeBack(@ForAll("fairRooms") Outline room) {
    Survey survey = PerfectSurveys.sided(room).withTies(PerfectSurveys.allTies(room));
    SurveyedRoom found = SurveyReport.of(survey).value().room().orElseThrow();
    List<Point> expected = PerfectSurveys.laidDown(room);
    for (int i = 0; i < expected.size(); i++) {
      assertThat(found.corners().get(i).xNanometres()).as("x of corner " + (i + 1))
          .isCloseTo(expected.get(i).xNanometres(), within(NEAR));
      assertThat(found.corners().get(i).yNanometres()).as("y of corner " + (i + 1))
          .isCloseTo(expected.get(i).yNanometres(), within(NEAR));
    }
    assertThat(found.fixed().squares()).isLessThan(1e-9);
  }

  /** The same room, begun at another corner and its ties listed in another order: same lengths, area, deviations. */
  @Property(tries = 100)
  void neitherTheStartNorTheOrderOfTiesMatters(@ForAll("fairRooms") Outline room, @ForAll Random random) {
    int n = room.shell().size();
    Assume.that(n > 3);
    int start = random.nextInt(n);
    Survey one = noisy(room, random);
    List<SurveyWall> walls = new ArrayList<>(one.walls());
    Collections.rotate(walls, -start);
    List<Tie> ties = new ArrayList<>(one.ties().stream()
        .map(tie -> new Tie((tie.from() - 1 - start + n) % n + 1, (tie.to() - 1 - start + n) % n + 1, tie.length())).toList());
    Collections.shuffle(ties, random);
    SurveyedRoom first = SurveyReport.of(one).value().room().orElseThrow();
    SurveyedRoom second = SurveyReport.of(Survey.of(walls).withTies(ties)).value().room().orElseThrow();
    assertThat(second.fixed().squares()).isCloseTo(first.fixed().squares(), within(1e-6 * (1 + first.fixed().squares())));
    assertThat(second.area().toSquareMillimetres()).isCloseTo(first.area().toSquareMillimetres(), within(0.1));
    assertThat(second.areaDeviation()).isCloseTo(first.areaDeviation(), within(1e-7));
    for (int i = 0; i < n; i++) {
      assertThat(second.measurements().get(i).adjusted())
          .isCloseTo(first.measurements().get((i + start) % n).adjusted(), within(0.00001));
    }
  }

  /** A perfect survey with errors of a normal tape. */
  private static Survey noisy(Outline room, Random random) {
    Survey perfect = PerfectSurveys.sided(room);
    List<SurveyWall> walls = perfect.walls().stream()
        .map(wall -> SurveyWall.of(off(wall.length(), random)).then(wall.turn())).toList();
    return Survey.of(walls).withTies(PerfectSurveys.allTies(room).stream()
        .map(tie -> new Tie(tie.from(), tie.to(), off(tie.length(), random))).toList());
  }

  private static Length off(Length length, Random random) {
    long error = Math.round(random.nextGaussian() * 2_000_000);
    return length.plus(Length.ofNanometres(error));
  }
}
