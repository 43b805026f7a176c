package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class SurveyReportTest {
  /** Each length off by 2 mm whatever it is, so that all weigh the same in sums by hand. */
  private static final SurveyUncertainty EVEN =
      new SurveyUncertainty(Length.ofMillimetres(2), Length.ZERO, 0.5);

  private static Survey walls(long... lengths) {
    return Survey.of(Arrays.stream(lengths).mapToObj(mm -> SurveyWall.of(Length.ofMillimetres(mm))).toList())
        .withUncertainty(EVEN);
  }

  private static Tie tie(int from, int to, long mm) {
    return new Tie(from, to, Length.ofMillimetres(mm));
  }

  /** Opposite walls of a rectangle are measured alike: 5028 and 5006, 3996 and 3987; their means are 5017 and 3991.5. */
  @Test
  void aRectangleIsTheMeanOfItsOppositeWalls() {
    Calculated<SurveyReport> report = SurveyReport.of(walls(5028, 3996, 5006, 3987).withCorners(Survey.Corners.RIGHT_ANGLES));
    SurveyedRoom room = report.value().room().orElseThrow();
    long right = 5_017_000_000L;
    long up = 3_991_500_000L;
    assertThat(room.corners()).containsExactly(Point.ofNanometres(0, 0), Point.ofNanometres(right, 0),
        Point.ofNanometres(right, up), Point.ofNanometres(0, up));
    assertThat(room.redundancy()).isEqualTo(2);
    // v = -11, -4.5, 11, 4.5 mm with s = 2 mm: sum = (2 * 121 + 2 * 20.25) / 4 = 70.625, s0 = sqrt(70.625 / 2)
    assertThat(room.fixed().squares()).isCloseTo(70.625, within(1e-9));
    assertThat(room.factor()).isCloseTo(5.9424, within(0.00005));
    // The mean of two lengths of 2 mm has 2 / sqrt(2) mm; area: sqrt((3991.5^2 + 5017^2) * 2) mm2 = 9066.682 mm2
    assertThat(room.fixed().points().get(1).deviationX()).isCloseTo(1.41421, within(0.000005));
    assertThat(room.areaDeviation()).isCloseTo(0.009066682, within(5e-10));
    assertThat(room.deviationFromWall(1, 3)).isCloseTo(1.41421, within(0.000005));
    // The walk ends 5028 - 5006 = 22 mm to the right and 3996 - 3987 = 9 mm up: sqrt(22^2 + 9^2) = 23.7697 of 18017 mm, 1 in 757
    assertThat(report.value().walk().orElseThrow().closingError().toMillimetres()).isCloseTo(23.7697, within(0.00005));
    assertThat(report.value().walk().orElseThrow().ratio()).hasValue(757);
    // w = v / (s * sqrt(r)), r = 1/2: 11 / (2 * 0.70711) = 7.7782 for the long walls
    assertThat(report.value().misfits()).hasSize(1);
    assertThat(report.value().misfits().get(0).oneOf()).extracting(one -> one.measured().name())
        .containsExactly("wall 1", "wall 3");
    assertThat(report.value().misfits().get(0).first().normalisedResidual()).isCloseTo(-7.7782, within(0.00005));
    assertThat(report.findings()).extracting(Finding::code).contains("survey-misfit", "survey-right-angles", "survey-closes-badly");
  }

  /** A triangle of 3, 4 and 5 m has one shape, a right angle, and nothing that checks it. */
  @Test
  void aTriangleIsFixedByItsSidesAndCheckedByNothing() {
    Calculated<SurveyReport> report = SurveyReport.of(walls(3000, 4000, 5000));
    SurveyedRoom room = report.value().room().orElseThrow();
    assertThat(room.corners()).containsExactly(Point.ofMillimetres(0, 0), Point.ofMillimetres(3000, 0),
        Point.ofMillimetres(3000, 4000));
    assertThat(room.area()).isEqualTo(Area.ofSquareMetres("6"));
    assertThat(room.redundancy()).isZero();
    assertThat(room.factor()).isEqualTo(1);
    assertThat(report.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("survey-not-checked");
      assertThat(finding.where()).isEqualTo("wall 1, wall 2, wall 3");
    });
  }

  @Test
  void fourWallsWithoutADiagonalFixNoShape() {
    Calculated<SurveyReport> report = SurveyReport.of(walls(5028, 3996, 5006, 3987));
    assertThat(report.value().room()).isEmpty();
    assertThat(report.value().sketch()).isPresent();
    assertThat(report.value().toMeasure()).singleElement().satisfies(tie -> {
      assertThat(tie.why()).isEqualTo(ToMeasure.Why.FIX_SHAPE);
      assertThat(List.of(tie.from(), tie.to())).isIn(List.of(1, 3), List.of(2, 4));
    });
    assertThat(report.findings()).extracting(Finding::code).containsExactly("survey-shape-not-fixed");
    // Brahmagupta: s = 9008.5, sqrt(3980.5 * 5012.5 * 4002.5 * 5021.5) mm2 = 20.025272 m2, rounded up
    assertThat(report.value().areas().orElseThrow().greatest().toSquareMillimetres() / 1e6)
        .isCloseTo(20.025272, within(0.0000015));
    assertThat(report.findings().get(0).message()).contains("anywhere from 1.08 m² to 20.03 m²")
        .contains("if no corner is more than 2° off square anywhere from 20.02 m² to 20.03 m²");
  }

  /** A rectangle of 4 by 3 m with a half circle of 1 m over wall 1 and a chimney breast of 0.9 by 0.35 m on wall 3. */
  @Test
  void arcsAndOffsetsShapeTheWalls() {
    List<SurveyWall> walls = List.of(
        new SurveyWall(Length.ofMillimetres(4000), Turn.LEFT, Length.ofMillimetres(2000)),
        SurveyWall.of(Length.ofMillimetres(3000)), SurveyWall.of(Length.ofMillimetres(4000)),
        SurveyWall.of(Length.ofMillimetres(3000)));
    SurveyedRoom room = SurveyReport.of(Survey.of(walls).withUncertainty(EVEN).withCorners(Survey.Corners.RIGHT_ANGLES)
        .withOffsets(List.of(offset(1200, 0), offset(1200, 350), offset(2100, 350), offset(2100, 0)))).value().room()
        .orElseThrow();
    // 4 * 3 + pi * 2^2 / 2 - 0.9 * 0.35 = 12 + 6.283185 - 0.315; the chain of the arc leaves out at most 2/3 * 0.5 mm * pi * 2 m
    assertThat(room.area().toSquareMillimetres() / 1e6).isBetween(17.968185 - 0.0021, 17.968185);
    assertThat(room.outline().shell().corners()).contains(Point.ofMillimetres(2800, 3000), Point.ofMillimetres(2800, 2650),
        Point.ofMillimetres(1900, 2650), Point.ofMillimetres(1900, 3000));
    // The chain of the arc, wall 2, the five faces of wall 3, wall 4
    assertThat(room.wallNumbers()).hasSize(room.outline().shell().size()).endsWith(1, 2, 3, 3, 3, 3, 3, 4);
    assertThat(room.outline().shell().corners().get(room.wallNumbers().indexOf(3))).isEqualTo(Point.ofMillimetres(4000, 3000));
  }

  private static WallOffset offset(long at, long distance) {
    return new WallOffset(3, Length.ofMillimetres(at), Length.ofMillimetres(distance));
  }

  /** 12 ft 7 5/8 in, 151.625 * 25.4 = 3851.275 mm, read as 13 ft 7 5/8 in. */
  @Test
  void aFootTooMuchIsSeenOnATapeOfFeet() {
    List<SurveyWall> walls = List.of(SurveyWall.of(Length.parse("12' 7 5/8\"")), SurveyWall.of(Length.parse("10' 3\"")),
        SurveyWall.of(Length.parse("13' 7 5/8\"")), SurveyWall.of(Length.parse("10' 3\"")));
    SurveyReport report = SurveyReport.of(Survey.of(walls).withUncertainty(EVEN).withCorners(Survey.Corners.RIGHT_ANGLES))
        .value();
    assertThat(report.misfits().get(0).oneOf()).extracting(Suspect::slip).containsExactly(
        "read 1 ft too short: meant 4156.075 mm", "read 1 ft too long: meant 3851.275 mm");
  }

  /** A polygon of n corners has n - 3 ways to move on its n walls: an L of six needs three ties, each as proposed. */
  @Test
  void theProposedTiesFixTheShape() {
    Survey survey = walls(6200, 2610, 2790, 2190, 3410, 4800);
    SurveyReport first = SurveyReport.of(survey).value();
    assertThat(first.toMeasure()).hasSize(3);
    Survey more = survey.withTies(first.toMeasure().stream().map(one -> new Tie(one.from(), one.to(), one.about())).toList());
    SurveyReport second = SurveyReport.of(more).value();
    assertThat(second.toMeasure()).noneMatch(one -> one.why() == ToMeasure.Why.FIX_SHAPE);
    assertThat(second.room().isPresent() || !second.possible().isEmpty()).isTrue();
  }

  /**
   * Corners (0, 0), (5, 0), (5, 4) and (1, 3) m: with the diagonal 1-3 the last one may as well lie at its mirror image within
   * the triangle, (129/41, 13/41) = (3.146, 0.317) m, a room with a corner that juts in.
   */
  private static Survey kiteOrDart() {
    return Survey.of(List.of(SurveyWall.of(Length.ofMillimetres(5000)), SurveyWall.of(Length.ofMillimetres(4000)),
        SurveyWall.of(Length.parse("4123.105626 mm")), SurveyWall.of(Length.parse("3162.277660 mm"))))
        .withUncertainty(EVEN).withTies(List.of(new Tie(1, 3, Length.parse("6403.124237 mm"))));
  }

  @Test
  void mirrorImagesAreAskedAbout() {
    SurveyReport report = SurveyReport.of(kiteOrDart()).value();
    assertThat(report.room()).isEmpty();
    assertThat(report.possible()).hasSize(2);
    // 5-4 triangle 10 m2 and the other triangle of 1/2 |5 * 3 - 4 * 1| = 5.5 m2: together or less it
    assertThat(report.possible()).extracting(one -> Math.round(one.area().toSquareMillimetres() / 1000) / 1000.0)
        .containsExactlyInAnyOrder(15.5, 4.5);
    assertThat(report.toMeasure()).singleElement().satisfies(tie -> {
      assertThat(tie.why()).isEqualTo(ToMeasure.Why.TELL_APART);
      assertThat(List.of(tie.from(), tie.to())).containsExactly(2, 4);
      assertThat(tie.text()).contains("5.000 m").contains("1.881 m").contains("left or right at corner 4");
    });
  }

  @Test
  void aSideTellsMirrorImagesApart() {
    Survey survey = kiteOrDart();
    List<SurveyWall> walls = new ArrayList<>(survey.walls());
    walls.set(2, walls.get(2).then(Turn.RIGHT));
    SurveyedRoom dart = SurveyReport.of(Survey.of(walls).withTies(survey.ties())).value().room().orElseThrow();
    assertThat(dart.corners().get(3).x().toMillimetres()).isCloseTo(129_000 / 41.0, within(0.00001));
    assertThat(dart.corners().get(3).y().toMillimetres()).isCloseTo(13_000 / 41.0, within(0.00001));
    walls.set(2, walls.get(2).then(Turn.LEFT));
    SurveyedRoom kite = SurveyReport.of(Survey.of(walls).withTies(survey.ties())).value().room().orElseThrow();
    assertThat(kite.corners().get(3).x().toMillimetres()).isCloseTo(1000, within(0.00001));
    assertThat(kite.corners().get(3).y().toMillimetres()).isCloseTo(3000, within(0.00001));
  }

  /** The L of the constructed tape rooms, with one tie read 100 mm too long. */
  @Test
  void aTieThatDoesNotFitIsNamed() {
    Survey survey = walls(6202, 2610, 2787, 2209, 3411, 4800).withTies(List.of(tie(1, 3, 6717), tie(1, 4, 4384),
        tie(2, 4, 3815), tie(4, 6, 4062), tie(1, 5, 5891), tie(3, 6, 6576)));
    Calculated<SurveyReport> report = SurveyReport.of(survey);
    assertThat(report.value().misfits()).singleElement().satisfies(misfit -> {
      assertThat(misfit.oneOf()).singleElement().satisfies(suspect -> {
        assertThat(suspect.measured().name()).isEqualTo("tie 1-4");
        assertThat(suspect.expected()).isCloseTo(4284, within(3 * suspect.expectedDeviation()));
        assertThat(suspect.slip()).isEqualTo("read 100 mm too long: meant 4284 mm");
      });
    });
    assertThat(report.value().room()).isPresent();
    assertThat(report.findings()).filteredOn(finding -> finding.code().equals("survey-misfit")).singleElement()
        .satisfies(finding -> assertThat(finding.where()).isEqualTo("tie 1-4"));
  }

  @Test
  void rightAnglesMayBeLeftOpen() {
    SurveyedRoom room = SurveyReport.of(walls(6200, 2600, 2800, 2200, 3400, 4800).withCorners(Survey.Corners.RIGHT_ANGLES))
        .value().room().orElseThrow();
    assertThat(room.corners()).containsExactly(Point.ofMillimetres(0, 0), Point.ofMillimetres(6200, 0),
        Point.ofMillimetres(6200, 2600), Point.ofMillimetres(3400, 2600), Point.ofMillimetres(3400, 4800),
        Point.ofMillimetres(0, 4800));
    assertThat(room.redundancy()).isEqualTo(2);
  }

  @Test
  void wallsThatNeverGoRoundHaveNoShape() {
    Calculated<SurveyReport> report = SurveyReport.of(Survey.of(List.of(
        SurveyWall.of(Length.ofMillimetres(4000)).then(Turn.LEFT), SurveyWall.of(Length.ofMillimetres(3000)).then(Turn.RIGHT),
        SurveyWall.of(Length.ofMillimetres(4000)).then(Turn.LEFT), SurveyWall.of(Length.ofMillimetres(3000)).then(Turn.LEFT)))
        .withCorners(Survey.Corners.RIGHT_ANGLES));
    assertThat(report.value().room()).isEmpty();
    assertThat(report.value().sketch()).isEmpty();
    assertThat(report.findings()).extracting(Finding::code).containsExactly("survey-no-shape");
  }

  /** From corner 1 by corner 3 to corner 2 it is 5 m and 3 m; wall 1 cannot be 12 m. */
  @Test
  void lengthsThatCannotReachHaveNoShape() {
    Calculated<SurveyReport> report = SurveyReport.of(walls(12000, 3000, 4000, 3000).withTies(List.of(tie(1, 3, 5000))));
    assertThat(report.value().room()).isEmpty();
    assertThat(report.value().sketch()).isEmpty();
    assertThat(report.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("survey-no-shape");
      assertThat(finding.where()).contains("wall 1").doesNotContain("wall 4");
      assertThat(finding.message()).contains("and not 12000 mm");
    });
  }

  /** 24 corners on a ring of 10 m with each one's ties to the next but one: each could be mirrored, and only one is a room. */
  @Test
  void manyCornersAreOneRoom() {
    double[] place = new double[48];
    for (int i = 0; i < 24; i++) {
      double radius = i % 2 == 0 ? 10_000 : 9_800;
      place[2 * i] = radius * Math.cos(2 * Math.PI * i / 24);
      place[2 * i + 1] = radius * Math.sin(2 * Math.PI * i / 24);
    }
    Layout ring = new Layout(place, 0);
    List<SurveyWall> walls = new ArrayList<>();
    List<Tie> ties = new ArrayList<>();
    for (int i = 0; i < 24; i++) {
      walls.add(SurveyWall.of(rounded(ring.distance(i, (i + 1) % 24))).then(ring.turn((i + 1) % 24) > 0 ? Turn.LEFT : Turn.RIGHT));
      ties.add(new Tie(i + 1, (i + 2) % 24 + 1, rounded(ring.distance(i, (i + 2) % 24))));
    }
    SurveyedRoom room = SurveyReport.of(Survey.of(walls).withTies(ties)).value().room().orElseThrow();
    // 24 triangles from the middle: 24 * 1/2 * 10 * 9.8 * sin 15 deg = 304.3711 m2; lengths are rounded to a millimetre
    assertThat(room.area().toSquareMillimetres() / 1e6).isCloseTo(304.37, within(0.1));
    assertThat(room.redundancy()).isEqualTo(48 - 45);
  }

  private static Length rounded(double millimetres) {
    return Length.ofMillimetres(Math.round(millimetres));
  }

  @Test
  void badInputIsRefused() {
    assertThatThrownBy(() -> walls(4000, 3000)).hasMessage("a survey needs from 3 to 60 walls, but has 2");
    assertThatThrownBy(() -> walls(4000, 3000, 4000, 3000).withTies(List.of(tie(1, 5, 4000))))
        .hasMessage("a tie runs from corner 1 to corner 5, but the room has corners 1 to 4");
    assertThatThrownBy(() -> tie(2, 2, 4000))
        .hasMessage("a tie runs between two different corners counted from 1, but was from 2 to 2");
    assertThatThrownBy(() -> Turn.ofDegrees(180)).hasMessageStartingWith("a turn must be between -180 and 180 degrees");
    long[] many = new long[20];
    Arrays.fill(many, 1000);
    assertThatThrownBy(() -> SurveyReport.of(walls(many).withCorners(Survey.Corners.RIGHT_ANGLES)))
        .hasMessageStartingWith("the survey leaves open at 20 corners");
  }

  /** 6037 + 1819 = 7856 mm, just the third wall, or a millimetre beside it: with deviations of some 3 mm each nobody can tell that there is floor. */
  @Test
  void wallsThatLieOnOneLineAreNoRoom() {
    for (long third : new long[] {7855, 7856, 7857}) {
      Survey survey = Survey.of(Stream.of(6037L, third, 1819L).map(length -> SurveyWall.of(Length.ofMillimetres(length))).toList())
          .withTies(List.of(new Tie(1, 3, Length.ofMillimetres(1817))));
      assertThat(SurveyReport.of(survey).value().room()).isEmpty();
      assertThat(SurveyReport.of(survey).findings()).singleElement().satisfies(finding -> {
        assertThat(finding.code()).isEqualTo("survey-no-shape");
        assertThat(finding.where()).isEqualTo("wall 2");
        assertThat(finding.message()).startsWith("it is as long as the other walls together");
      });
    }
  }

  /** The same of walls that no tie holds: 2000 + 3000 + 1000 = 6000 mm. */
  @Test
  void fourWallsOnOneLineAreNoRoom() {
    Survey survey = Survey.of(Stream.of(2000L, 3000L, 1000L, 6000L).map(length -> SurveyWall.of(Length.ofMillimetres(length))).toList());
    assertThat(SurveyReport.of(survey).findings()).singleElement().extracting(Finding::code).isEqualTo("survey-no-shape");
  }
}
