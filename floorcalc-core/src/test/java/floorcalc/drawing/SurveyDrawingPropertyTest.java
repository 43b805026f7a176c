package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.RandomRooms;
import floorcalc.outline.Ring;
import floorcalc.outline.survey.Survey;
import floorcalc.outline.survey.SurveyReport;
import floorcalc.outline.survey.SurveyWall;
import floorcalc.outline.survey.Tie;
import floorcalc.outline.survey.Turn;
import floorcalc.outline.survey.WallOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class SurveyDrawingPropertyTest {

  /** Rooms of all sorts, with some ties or all, sides of the corners said or not, sometimes a slip, arcs and offsets. */
  @Property(tries = 150)
  void textsKeepApart(@ForAll("rooms") Outline room, @ForAll long seed, @ForAll @IntRange(max = 3) int ties, @ForAll Measures measures) {
    Survey survey = survey(room, new Random(seed), ties);
    SurveyDrawing drawing = SurveyDrawing.of(SurveyReport.of(survey).value()).titled("Room " + seed).in(measures);
    String svg = drawing.toSvg();
    SvgPage page = SvgPage.parse(svg);
    DrawingChecks.textsKeepApart(page);
    DrawingChecks.textsLieOnTheSheet(page);
    assertThat(drawing.toSvg()).as("same bytes again").isEqualTo(svg);
  }

  /** Every reading stands at its wall or tie, or in the note of those without room. */
  @Property(tries = 60)
  void noReadingIsLost(@ForAll("rooms") Outline room, @ForAll long seed) {
    Survey survey = survey(room, new Random(seed), 2);
    SvgPage page = SvgPage.parse(SurveyDrawing.of(SurveyReport.of(survey).value()).toSvg());
    String all = String.join(" ", page.words());
    if (!all.contains("More notes than the sheet has room for") && !all.contains(" more.") && survey.size() <= 12) {
      for (SurveyWall wall : survey.walls()) {
        assertThat(all).contains(Words.tenths(wall.length()));
      }
    }
  }

  @Provide
  Arbitrary<Outline> rooms() {
    return Arbitraries.oneOf(RandomRooms.rectangles(), RandomRooms.stars(), RandomRooms.combs())
        .filter(room -> room.shell().size() <= 12);
  }

  private static Survey survey(Outline room, Random random, int ties) {
    Ring ring = room.shell();
    int n = ring.size();
    boolean sides = random.nextBoolean() || n > 8;
    List<SurveyWall> walls = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      SurveyWall wall = SurveyWall.of(read(ring, i, i + 1, random));
      double turn = turn(ring, i + 1);
      walls.add(!sides ? wall : random.nextInt(6) == 0 ? wall.then(Turn.ofDegrees(turn + random.nextGaussian() * 0.4))
          : wall.then(turn > 0 ? Turn.LEFT : Turn.RIGHT));
    }
    List<Tie> measured = new ArrayList<>();
    for (int a = 0; a < n; a++) {
      for (int b = a + 2; b < n; b++) {
        if (b - a < n - 1 && random.nextInt(3) < ties) {
          measured.add(new Tie(a + 1, b + 1, read(ring, a, b, random)));
        }
      }
    }
    if (!measured.isEmpty() && random.nextInt(3) == 0) {
      Tie tie = measured.get(0);
      measured.set(0, new Tie(tie.from(), tie.to(), tie.length().plus(Length.ofMillimetres(100))));
    }
    Survey survey = Survey.of(walls).withTies(measured);
    if (random.nextInt(4) == 0) {
      Length half = walls.get(0).length().dividedBy(2, java.math.RoundingMode.DOWN);
      survey = survey.withOffsets(List.of(new WallOffset(1, half, Length.ofMillimetres(20))));
    }
    return survey;
  }

  private static Length read(Ring ring, int a, int b, Random random) {
    int to = b % ring.size();
    double exact = Math.hypot((double) ring.x(to) - ring.x(a), (double) ring.y(to) - ring.y(a)) / 1e6;
    return Length.ofMillimetres(Math.max(1, Math.round(exact + 2 * random.nextGaussian())));
  }

  private static double turn(Ring ring, int corner) {
    int n = ring.size();
    int a = Math.floorMod(corner - 1, n);
    int b = corner % n;
    int c = (corner + 1) % n;
    double in = Math.atan2((double) ring.y(b) - ring.y(a), (double) ring.x(b) - ring.x(a));
    double on = Math.atan2((double) ring.y(c) - ring.y(b), (double) ring.x(c) - ring.x(b));
    return Math.toDegrees(Math.IEEEremainder(on - in, 2 * Math.PI));
  }
}
