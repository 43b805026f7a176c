package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class StartLineTest {
  private static final Length PITCH = mm("185");
  private static final Length MINIMUM = mm("70");

  /** Above 0, below 1900 = 10 * 185 + 50 and below 3010 = 16 * 185 + 50: full boards leave 50 at both. */
  private static final List<Stop> STEPPED =
      List.of(Stop.floorAbove("wall 1", mm("0")), Stop.floorBelow("wall 3", mm("1900")),
          Stop.floorBelow("wall 5", mm("3010")));

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Calculated<StartLine> choose(List<Stop> stops, RowWay way) {
    return StartLine.choose(stops, Length.ZERO, PITCH, MINIMUM, way);
  }

  private static List<String> widths(StartLine line) {
    return line.strips().stream().map(strip -> strip.width().toMillimetreString()).toList();
  }

  @ParameterizedTest
  @CsvSource({
      // 20 off the first row gives both last rows the 70 they need
      "LEAST_CUT,    165,   70",
      // first row and the two last ones share 185 + 50: 117.5 each
      "AS_NEEDED,    117.5, 117.5",
      "FEWEST_BOARDS, 117.5, 117.5",
      "BALANCED,     117.5, 117.5",
      "WIDEST_STRIP, 117.5, 117.5",
  })
  void stepInTheFinishingWall(RowWay way, String first, String atWalls) {
    Calculated<StartLine> line = choose(STEPPED, way);
    assertThat(line.value().firstRowWidth()).isEqualTo(mm(first));
    assertThat(widths(line.value())).containsExactly(first, atWalls, atWalls);
    assertThat(line.findings()).isEmpty();
    assertStepsHold(line);
  }

  /**
   * Strips at 0, 50 and 50 over a row line are {@code f}, and {@code 50 - f} up to 50, {@code 235 - f} beyond. At least 20 wide:
   * from 20 to 30, best at 25, and from 50, where the last rows are full, to 185, best at 117.5. At least 70: 70 to 165.
   */
  @Test
  void firstRowsWorthTryingAreTheBestAndTheEndsOfEachStretch() {
    assertThat(StartLine.worthTrying(STEPPED, Length.ZERO, PITCH, mm("20")))
        .containsExactly(mm("117.5"), mm("25"), mm("185"), mm("50"), mm("30"), mm("20"));
    assertThat(StartLine.worthTrying(STEPPED, Length.ZERO, PITCH, MINIMUM))
        .containsExactly(mm("117.5"), mm("165"), mm("70"));
  }

  /** The two last rows and the first share 185 + 50 at best: none can have 120, so the widest strips are tried. */
  @Test
  void firstRowsWorthTryingWhereTheMinimumCannotBeKept() {
    List<Length> lines = StartLine.worthTrying(STEPPED, Length.ZERO, PITCH, mm("120"));
    assertThat(lines.get(0)).isEqualTo(mm("117.5"));
    assertThat(lines).contains(mm("25"), mm("185"), mm("50"));
  }

  @Test
  void oneRowHasOneLineWorthTrying() {
    List<Stop> narrow = List.of(Stop.floorAbove("wall 1", mm("0")), Stop.floorBelow("wall 3", mm("150")));
    assertThat(StartLine.worthTrying(narrow, Length.ZERO, PITCH, MINIMUM)).containsExactly(PITCH);
  }

  @Test
  void firstRowAsAsked() {
    var minimum = RuleSet.COMMON_PRACTICE.forBoard(mm("14"), PITCH).get(LayingRules.MINIMUM_ROW_WIDTH);
    Calculated<StartLine> line = StartLine.at(STEPPED, Length.ZERO, PITCH, minimum, mm("170"));
    // 235 - 170 = 65
    assertThat(widths(line.value())).containsExactly("170", "65", "65");
    assertThat(line.findings()).extracting(Finding::code).containsExactly("strip-narrower-than-minimum",
        "strip-narrower-than-minimum");
    assertStepsHold(line);
    assertThatThrownBy(() -> StartLine.at(STEPPED, Length.ZERO, PITCH, minimum, mm("185.1")))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("185.1 mm");
  }

  @Test
  void columnHasAStripOnBothSides() {
    // above 0 and above 1300 = 7 * 185 + 5; below 1000 = 5 * 185 + 75 and below 1900 = 10 * 185 + 50
    // the strips between 5 and 50 + 185 are the worst: (235 + 5) / 2 = 120 leaves 115 on both sides
    List<Stop> stops = List.of(Stop.floorAbove("wall 1", mm("0")), Stop.floorBelow("column", mm("1000")),
        Stop.floorAbove("column", mm("1300")), Stop.floorBelow("wall 3", mm("1900")));
    Calculated<StartLine> line = choose(stops, RowWay.WIDEST_STRIP);
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("120"));
    assertThat(widths(line.value())).containsExactly("120", "140", "115", "115");
    assertThat(line.value().narrowestStrip()).isEqualTo(mm("115"));
    assertStepsHold(line);
  }

  @Test
  void fullFirstRowIsKeptWhereItServes() {
    // 1000 = 5 * 185 + 75
    Calculated<StartLine> line =
        choose(List.of(Stop.floorAbove("a", mm("0")), Stop.floorBelow("b", mm("1000"))), RowWay.AS_NEEDED);
    assertThat(line.value().firstRowWidth()).isEqualTo(PITCH);
    assertThat(line.steps().get(0).question())
        .isEqualTo("Where does the first row line lie? A full board above the lowest level.");
    assertStepsHold(line);
  }

  @Test
  void firstRowIsMeasuredFromTheLowestLevel() {
    List<Stop> moved = STEPPED.stream().map(stop -> new Stop(stop.name(), stop.side(), stop.low().plus(mm("-777.7")),
        stop.high().plus(mm("-777.7")))).toList();
    StartLine line = StartLine.choose(moved, mm("-777.7"), PITCH, MINIMUM, RowWay.LEAST_CUT).value();
    assertThat(line.firstRowWidth()).isEqualTo(mm("165"));
    assertThat(line.bayLow()).isEqualTo(mm("-777.7"));
    assertThat(widths(line)).containsExactly("165", "70", "70");
  }

  @Test
  void taperedStopBindsTheLine() {
    // the wall runs from 1850 up to 2000: of the 185 mm board at most 35 are left, with the line at 150
    Stop slanted = Stop.floorBelow("wall 3", mm("1850"), mm("2000"));
    Calculated<StartLine> line = choose(List.of(Stop.floorAbove("wall 1", mm("0")), slanted), RowWay.AS_NEEDED);
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("150"));
    assertThat(widths(line.value())).containsExactly("150", "35");
    assertThat(line.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("strip-narrower-than-minimum");
      assertThat(finding.where()).isEqualTo("wall 3");
      assertThat(finding.message()).isEqualTo("the narrowest strip there is 35 mm, at least 70 mm is asked for;"
          + " try another start line or another board width, or turn the boards");
    });
    assertStepsHold(line);
  }

  @Test
  void stopThatTapersByAPitchIsLeftOut() {
    Stop diagonal = Stop.floorAbove("wall 2", mm("100"), mm("285"));
    List<Stop> stops = new ArrayList<>(STEPPED);
    stops.add(diagonal);
    Calculated<StartLine> line = choose(stops, RowWay.LEAST_CUT);
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("165"));
    assertThat(line.value().narrowestStrip()).isEqualTo(mm("70"));
    assertThat(widths(line.value())).endsWith("0");
    assertThat(line.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("strip-comes-to-nothing");
      assertThat(finding.severity()).isEqualTo(Severity.NOTE);
      assertThat(finding.where()).isEqualTo("wall 2");
    });
  }

  @ParameterizedTest
  @EnumSource(RowWay.class)
  void bayOfSlantsAloneStartsWithAFullRow(RowWay way) {
    Calculated<StartLine> line = choose(List.of(Stop.floorAbove("a", mm("0"), mm("900")),
        Stop.floorBelow("b", mm("800"), mm("2000"))), way);
    assertThat(line.value().firstRowWidth()).isEqualTo(PITCH);
    assertThat(line.findings()).extracting(Finding::code)
        .containsExactly("strip-comes-to-nothing", "strip-comes-to-nothing");
  }

  @Test
  void whereSomeStripMustComeToNothingThereAreAsFewAsCanBe() {
    // strip above "a" only for lines at 1 .. 85, below "b" only at 100 .. 184; 85 is the best of both: the higher line
    List<Stop> stops = List.of(Stop.floorAbove("a", mm("-100"), mm("0")), Stop.floorBelow("b", mm("1850"), mm("1950")));
    Calculated<StartLine> line = choose(stops, RowWay.LEAST_CUT);
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("100"));
    assertThat(widths(line.value())).containsExactly("0", "85");
    assertThat(line.value().narrowestStrip()).isEqualTo(Length.ZERO);
    assertThat(line.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("strip-comes-to-nothing");
      assertThat(finding.severity()).isEqualTo(Severity.WARNING);
      assertThat(finding.message()).isEqualTo("the stop runs off by 100 mm across the rows and a row line meets it:"
          + " a row comes to a point there, at least 70 mm is asked for;"
          + " try another start line or another board width, or turn the boards");
    });
  }

  @ParameterizedTest
  @EnumSource(RowWay.class)
  void bayNoWiderThanABoardIsOneRow(RowWay way) {
    List<Stop> stops = List.of(Stop.floorAbove("wall 1", mm("0")), Stop.floorAbove("wall 2", mm("30")),
        Stop.floorBelow("wall 4", mm("120")), Stop.floorBelow("wall 5", mm("185")));
    StartLine line = choose(stops, way).value();
    assertThat(line.firstRowWidth()).isEqualTo(PITCH);
    assertThat(widths(line)).containsExactly("185", "155", "120", "185");
  }

  @Test
  void boardsNarrowerThanTheMinimumAreAskedToBeFull() {
    // 1000 = 17 * 57 + 31: first and last share 57 + 31
    Calculated<StartLine> line = StartLine.choose(List.of(Stop.floorAbove("a", mm("0")), Stop.floorBelow("b",
        mm("1000"))), Length.ZERO, mm("57"), MINIMUM, RowWay.LEAST_CUT);
    assertThat(line.value().minimum()).isEqualTo(mm("57"));
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("44"));
    assertThat(line.findings()).extracting(Finding::code).containsExactly("boards-narrower-than-minimum",
        "strip-narrower-than-minimum", "strip-narrower-than-minimum");
    assertStepsHold(line);
  }

  @Test
  void noMinimumLeavesTheFirstRowFull() {
    StartLine line = StartLine.choose(STEPPED, Length.ZERO, PITCH, Length.ZERO, RowWay.LEAST_CUT).value();
    assertThat(line.firstRowWidth()).isEqualTo(PITCH);
  }

  @Test
  void withoutStopsTheFirstRowIsFull() {
    for (RowWay way : RowWay.values()) {
      StartLine line = choose(List.of(), way).value();
      assertThat(line.firstRowWidth()).isEqualTo(PITCH);
      assertThat(line.narrowestStrip()).isEqualTo(PITCH);
    }
  }

  @Test
  void tenThousandStopsHaveABestLineToo() {
    Random random = new Random(20_000);
    List<Stop> stops = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      Length level = Length.ofNanometres(random.nextLong(200_000_000_000L));
      stops.add(random.nextBoolean() ? Stop.floorAbove("s", level)
          : Stop.floorBelow("s", level, level.plus(Length.ofNanometres(random.nextLong(20_000_000)))));
    }
    StartLine best = choose(stops, RowWay.WIDEST_STRIP).value();
    long narrowest = best.narrowestStrip().toNanometres();
    for (int i = 0; i < 500; i++) {
      long first = 1 + random.nextLong(PITCH.toNanometres());
      assertThat(stops.stream().mapToLong(stop -> stop.strip(first, PITCH.toNanometres())).min().getAsLong())
          .isLessThanOrEqualTo(narrowest);
    }
  }

  @Test
  void workingShowsTheStripsThatDecide() {
    assertThat(choose(STEPPED, RowWay.LEAST_CUT).explain()).isEqualTo("""
        first-row: Where does the first row line lie? As high as every strip of at least 70 mm allows.
          w1 = p - c
            p = 185 mm  (laid pitch)
            c = 20 mm  (what is ripped off the first row)
          = 165 mm  [definition]
        strip-above: How wide is the narrowest strip above a stop, at wall 1?
          s = w1 + k * p - h
            w1 = 165 mm  (first row)
            k = 0  (rows between the first row line and the row line at the strip)
            p = 185 mm  (laid pitch)
            h = 0 mm  (height of the stop over the lowest level)
          = 165 mm  [definition]
        strip-below: How wide is the narrowest strip below a stop, at wall 3?
          s = h - w1 - k * p
            w1 = 165 mm  (first row)
            k = 9  (rows between the first row line and the row line at the strip)
            p = 185 mm  (laid pitch)
            h = 1900 mm  (height of the stop over the lowest level)
          = 70 mm  [definition]""");
  }

  @Test
  void lengthsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> StartLine.choose(STEPPED, Length.ZERO, Length.ZERO, MINIMUM, RowWay.BALANCED))
        .hasMessage("laid pitch must be more than 0 mm, but was 0 mm; give the width that a laid board covers");
    assertThatThrownBy(() -> StartLine.choose(STEPPED, Length.ZERO, PITCH, mm("-1"), RowWay.BALANCED))
        .hasMessage("minimum row width must not be negative, but was -1 mm; give 0 mm for no minimum");
    assertThatThrownBy(() -> Stop.floorBelow("wall 3", mm("2"), mm("1")))
        .hasMessage("the highest level of stop 'wall 3' must not be less than its lowest, 2 mm, but was 1 mm");
  }
}
