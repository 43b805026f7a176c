package floorcalc.levels;

import static floorcalc.levels.Grids.mm;
import static floorcalc.levels.Grids.set;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.ToleranceSet;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Outcome;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class GridFlatnessTest {
  @Test
  void aHollowInARow() {
    // Along row 1 the edge of 1 m rests on 0 and 0 with 4 mm beneath; along row 2 on -1 and 1 the line
    // is at 0 in the middle, where the floor is at -2: 2 mm.
    Calculated<GridFlatness> calculated = GridFlatness.of(Grids.of(500, 500, "0 -4 0", "-1 -2 1"), set("3", "1000"));
    GridFlatness flatness = calculated.value();
    assertThat(flatness.gaps()).singleElement().satisfies(gap -> {
      assertThat(gap.way()).isEqualTo(LineWay.ROW);
      assertThat(gap.line()).isEqualTo(1);
      assertThat(gap.gap()).isEqualTo(mm("4"));
      assertThat(gap.allowed()).isEqualTo(mm("3"));
      assertThat(gap.lowSpot()).isEqualTo(Point.ofMillimetres(500, 0));
      assertThat(gap.from()).isEqualTo(Point.ofMillimetres(0, 0));
      assertThat(gap.to()).isEqualTo(Point.ofMillimetres(1000, 0));
      assertThat(gap).hasToString("4 mm under 1000 mm along row 1, at x = 500 mm, y = 0 mm");
    });
    assertThat(flatness.outcome()).isEqualTo(Outcome.NOT_MET);
    assertStepsHold(calculated);
  }

  @Test
  void aHumpShowsAsGapsBesideIt() {
    // 0 0 4 0 0 mm every 500 mm: an edge of 2 m rests on the first reading and on the hump; half way it is at 2 mm.
    GridFlatness flatness = GridFlatness.of(Grids.of(500, 1000, "0 0 4 0 0", "0 0 0 0 0"), set("3", "2000")).value();
    assertThat(flatness.gaps()).singleElement().extracting(GridGap::gap).isEqualTo(mm("2"));
    assertThat(flatness.outcome()).isEqualTo(Outcome.MET);
  }

  @Test
  void anEdgeMayEndBetweenReadings() {
    // 0 -4 0 0 mm every 400 mm, edge of 1 m: from reading 1 it ends at 1000 mm, height 0: gap 4. With the dip seen from further right: from
    // 200 mm, height -2, to 1200 mm, height 0: at 400 mm the line is at -1.6, gap 2.4. So 4 mm at reading 2.
    // An edge of 700 mm cannot hold three readings: it shows nothing.
    Levels levels = Grids.of(400, 400, "0 -4 0 0", "0 0 0 0");
    assertThat(GridFlatness.of(levels, set("3", "1000")).value().gaps()).singleElement()
        .extracting(GridGap::gap).isEqualTo(mm("4"));
    GridFlatness short700 = GridFlatness.of(levels, set("1", "700")).value();
    assertThat(short700.gaps()).isEmpty();
    assertThat(short700.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(short700.judgements()).singleElement().satisfies(judgement -> {
      assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MEASURED);
      assertThat(judgement.advice()).contains("no three readings in line lie within 700 mm");
    });
  }

  @Test
  void theWorstPlaceOfAnEdgeMayBeBetweenReadings() {
    // 6 0 0 6 mm every 1 m under 2.5 m, which holds three readings. The chord from a to a + 2500 over the reading at 1000 (0 mm), with a in 0..500: ends at
    // 6 (1 - a / 1000) and 6 (a + 500) / 1000 mm. Its height at 1000 is, with a in m,
    // (6 (1 - a) (1.5 + a) + 6 (a + 0.5) (1 - a)) / 2.5 = 6 (1 - a) (2 + 2 a) / 2.5 = 4.8 (1 - a^2): 4.8 mm at a = 0.
    // By symmetry the same over the other. Node to node, 2 m from 6 mm to 0 mm, gives only 3 mm.
    GridFlatness flatness = GridFlatness.of(Grids.of(1000, 1000, "6 0 0 6", "0 0 0 0"), set("3", "2500")).value();
    assertThat(flatness.gaps()).singleElement().satisfies(gap -> {
      assertThat(gap.gap()).isEqualTo(mm("4.8"));
      assertThat(gap.to()).isEqualTo(Point.ofMillimetres(2500, 0));
    });
    // A dip of unequal sides: 0 0 -9 0 6 mm every 1 m under 2.2 m. Over the reading at 2000, a in 0.8..1 at 0 mm, the far end at
    // a + 2.2 between 3.0 and 3.2, at 6 (a - 0.8) mm: height 6 (a - 0.8) (2 - a) / 2.2 grows up to a = 1: 0.5454... mm; a in 1..1.8 from 0 down
    // at -9 (a - 1), far end 6 (a - 0.8): (-9 (a - 1) (a + 0.2) + 6 (a - 0.8) (2 - a)) / 2.2 = (-15 a^2 + 24 a - 7.8) / 2.2, greatest
    // at a = 0.8, before this part. So at a = 1: 1.2 / 2.2 = 0.545454 mm above 0, gap 9.545455 mm (rounded to the nanometre).
    flatness = GridFlatness.of(Grids.of(1000, 1000, "0 0 -9 0 6", "0 0 0 0 0"), set("3", "2200")).value();
    assertThat(flatness.gaps().get(0).gap()).isEqualTo(mm("9.545455"));
    assertThat(flatness.gaps().get(0).from()).isEqualTo(Point.ofMillimetres(1000, 0));
  }

  @Test
  void diagonalsAreLookedAlong() {
    // Only the diagonal shows this hollow between two high corners: rows 5 0 0 / 0 0 0 / 0 0 5; the middle lies 5 mm below the diagonal.
    GridFlatness flatness = GridFlatness.of(Grids.of(500, 500, "5 0 0", "0 0 0", "0 0 5"), set("4", "1500")).value();
    assertThat(flatness.gaps()).extracting(gap -> gap.way() + " " + gap.gap()).containsExactly("ROW 2.5 mm",
        "COLUMN 2.5 mm", "RISING_DIAGONAL 5 mm", "FALLING_DIAGONAL 0 mm");
    assertThat(flatness.outcome()).isEqualTo(Outcome.NOT_MET);
  }

  @Test
  void rowsJudgeWhatDiagonalsCannot() {
    // The diagonal steps of 707 mm are too long for an edge of 1 m; rows and columns are judged.
    GridFlatness flatness = GridFlatness.of(Grids.of(500, 500, "5 0 0", "0 0 0", "0 0 5"), set("4", "1000")).value();
    assertThat(flatness.gaps()).extracting(GridGap::way).containsExactly(LineWay.ROW, LineWay.COLUMN);
    assertThat(flatness.outcome()).isEqualTo(Outcome.MET);
  }

  @Test
  void aLimitByDistanceTakesReadingsAsContacts() {
    // DIN 18202 line 3: 4 mm at 1 m, 10 mm at 4 m, 6 mm at 2 m. 0 -5 0 mm every 500 mm: 5 mm over contacts 1 m apart is too much;
    // every 1 m, over contacts 2 m apart, it is not.
    ToleranceSet din = ToleranceSet.named("DIN 18202 line 3");
    GridFlatness close = GridFlatness.of(Grids.of(500, 500, "0 -5 0", "0 0 0"), din).value();
    assertThat(close.gaps().get(0).allowed()).isEqualTo(mm("4"));
    assertThat(close.outcome()).isEqualTo(Outcome.NOT_MET);
    GridFlatness far = GridFlatness.of(Grids.of(1000, 500, "0 -5 0", "0 0 0"), din).value();
    assertThat(far.gaps().get(0).allowed()).isEqualTo(mm("6"));
    assertThat(far.outcome()).isEqualTo(Outcome.MET);
  }

  @Test
  void everyStepOfAStaircaseIsThatOfTheSet() {
    for (ToleranceSet set : ToleranceSet.all()) {
      if (set.method() == EdgeMethod.CONTACT_DISTANCE) {
        Limit limit = Limits.of(set).limits().get(0);
        for (long distance = 100; distance <= 15_000; distance += 5) {
          assertThat(limit.at(distance * 1e6)).isEqualTo((double) set.gapAllowed(mm(Long.toString(distance))).orElseThrow()
              .toNanometres());
        }
        assertThat(limit.at(99e6)).isInfinite();
      }
    }
  }

  @Test
  void setsThatAreNotOfGapsUnderAnEdgeAreRefused() {
    assertThatThrownBy(() -> GridFlatness.of(Grids.of(500, 500, "0 0 0", "0 0 0"), ToleranceSet.named("NHBC 9.1.5")))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("two equal blocks");
  }

  @Test
  void missingReadingsAreSaid() {
    List<SpotLevel> spots = new ArrayList<>(Grids.of(500, 500, "0 0 0", "0 0 0", "0 0 0").spots());
    spots.remove(8);
    assertThat(GridFlatness.of(Levels.of(spots), set("3", "1000")).findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("grid-with-gaps");
      assertThat(finding.message()).startsWith("1 place of the grid of 3 by 3 readings was not read");
    });
  }
}
