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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class RowDivisionTest {
  private static Length len(String text) {
    return Length.parse(text);
  }

  private static Calculated<RowDivision> divide(String width, String pitch, String minimum, RowWay way) {
    return RowDivision.of(len(width), len(pitch), len(minimum), way);
  }

  @ParameterizedTest(name = "{0} in {1}, at least {2}, {3}")
  @CsvSource({
      // 3480 = 18 * 185 + 150, and 150 is wide enough
      "3480 mm, 185 mm, 70 mm, AS_NEEDED,    19, 185 mm,   150 mm,   18",
      "3480 mm, 185 mm, 70 mm, LEAST_CUT,    19, 185 mm,   150 mm,   18",
      // the outer two share 185 + 150 = 335
      "3480 mm, 185 mm, 70 mm, BALANCED,     19, 167.5 mm, 167.5 mm, 17",
      "3480 mm, 185 mm, 70 mm, WIDEST_STRIP, 19, 167.5 mm, 167.5 mm, 17",
      // 3735 = 20 * 185 + 35, and 35 is not; the outer two share 220
      "3735 mm, 185 mm, 70 mm, AS_NEEDED,    21, 110 mm,   110 mm,   19",
      "3735 mm, 185 mm, 70 mm, LEAST_CUT,    21, 150 mm,   70 mm,    19",
      "3735 mm, 185 mm, 70 mm, BALANCED,     21, 110 mm,   110 mm,   19",
      // the rest is the minimum itself: 18 * 185 + 70
      "3400 mm, 185 mm, 70 mm, AS_NEEDED,    19, 185 mm,   70 mm,    18",
      // a whole number of boards
      "3700 mm, 185 mm, 70 mm, AS_NEEDED,    20, 185 mm,   185 mm,   20",
      "3700 mm, 185 mm, 70 mm, LEAST_CUT,    20, 185 mm,   185 mm,   20",
      "3700 mm, 185 mm, 70 mm, BALANCED,     20, 185 mm,   185 mm,   20",
      // two rows, no full one between: 190 = 185 + 5
      "190 mm,  185 mm, 70 mm, AS_NEEDED,    2,  95 mm,    95 mm,    0",
      "190 mm,  185 mm, 70 mm, LEAST_CUT,    2,  120 mm,   70 mm,    0",
      // one row, and one full row
      "120 mm,  185 mm, 70 mm, AS_NEEDED,    1,  120 mm,   120 mm,   0",
      "185 mm,  185 mm, 70 mm, BALANCED,     1,  185 mm,   185 mm,   1",
      // a nanometre over two rows of 100: the odd one goes to the first row, (100.000001 + ...)
      "200.000001 mm, 100 mm, 40 mm, BALANCED, 3, 50.000001 mm, 50 mm, 1",
  })
  void rowsAndTheirWidths(String width, String pitch, String minimum, RowWay way, long rows, String first, String last,
      long full) {
    Calculated<RowDivision> division = divide(width, pitch, minimum, way);
    assertThat(division.value().rows()).isEqualTo(rows);
    assertThat(division.value().firstRow()).isEqualTo(len(first));
    assertThat(division.value().lastRow()).isEqualTo(len(last));
    assertThat(division.value().fullRows()).isEqualTo(full);
    assertStepsHold(division);
  }

  @Test
  void strip53FeetWideIn3AndAQuarterInchBoardsIs196Rows() {
    // 53 ft = 636 in; 636 / 3.25 = 195.69
    assertThat(divide("53 ft", "3 1/4\"", "0 mm", RowWay.AS_NEEDED).value().rows()).isEqualTo(196);
  }

  @Test
  void elevenBoardsAndThreeEighthsMake36AndAnEighthInches() {
    // 11 * 3 1/4 in = 35 3/4 in, and 3/8 in over
    RowDivision division = divide("36 1/8\"", "3 1/4\"", "0 mm", RowWay.AS_NEEDED).value();
    assertThat(division.rows()).isEqualTo(12);
    assertThat(division.lastRow()).isEqualTo(len("3/8\""));
  }

  @Test
  void fifteenBoardsOf182MillimetresLeaveFourOf107And5EighthsInches() {
    // 107 5/8 in = 2733.675 mm; 15 * 182 mm = 2730 mm; 3.675 mm over, 4 mm to the whole millimetre
    RowDivision division = divide("107 5/8\"", "182 mm", "0 mm", RowWay.AS_NEEDED).value();
    assertThat(division.fullRows()).isEqualTo(15);
    assertThat(division.lastRow()).isEqualTo(len("3.675 mm"));
  }

  @Test
  void hundredAndSeventySixInchesInTwelveInchSquaresIs13FullAndTwoOf10() {
    // 176 = 14 * 12 + 8; (12 + 8) / 2 = 10; 176 - 2 * 10 = 156 = 13 * 12
    RowDivision division = divide("176\"", "12\"", "6\"", RowWay.BALANCED).value();
    assertThat(division.fullRows()).isEqualTo(13);
    assertThat(division.firstRow()).isEqualTo(len("10\""));
    assertThat(division.lastRow()).isEqualTo(len("10\""));
  }

  @Test
  void boardsNarrowerThanTheMinimumAreAskedToBeFull() {
    // 580 = 10 * 57 + 10; the outer two share 67, 33.5 each
    Calculated<RowDivision> division = divide("580 mm", "57 mm", "70 mm", RowWay.LEAST_CUT);
    assertThat(division.value().minimum()).isEqualTo(len("57 mm"));
    assertThat(division.value().firstRow()).isEqualTo(len("33.5 mm"));
    assertThat(division.findings()).extracting(Finding::code)
        .containsExactly("boards-narrower-than-minimum", "row-narrower-than-minimum");
    assertStepsHold(division);
  }

  @Test
  void boardsNarrowerThanTheMinimumThatJustFitAreNoWorry() {
    Calculated<RowDivision> division = divide("570 mm", "57 mm", "70 mm", RowWay.AS_NEEDED);
    assertThat(division.value().fullRows()).isEqualTo(10);
    assertThat(division.findings()).extracting(Finding::severity).containsExactly(Severity.NOTE);
  }

  @Test
  void whatCannotBeWideEnoughIsSharedEvenlyAndSaid() {
    // 110 = 100 + 10: 110 shared cannot be twice 70
    Calculated<RowDivision> division = RowDivision.of(len("110 mm"), len("100 mm"),
        RuleSet.COMMON_PRACTICE.forBoard(len("14 mm"), len("100 mm")).get(LayingRules.MINIMUM_ROW_WIDTH), RowWay.LEAST_CUT);
    assertThat(division.value().firstRow()).isEqualTo(len("55 mm"));
    assertThat(division.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.message()).isEqualTo("the narrowest row is 55 mm, at least 70 mm is asked for; first and last"
          + " row share 110 mm however they are split; take boards of another width or turn them");
      assertThat(finding.where()).isEqualTo("row 1 and row 2");
      assertThat(finding.source().toString()).isEqualTo("common practice, no source");
    });
  }

  @Test
  void roomOfOneNarrowRowIsSaid() {
    Calculated<RowDivision> division = divide("50 mm", "185 mm", "70 mm", RowWay.AS_NEEDED);
    assertThat(division.findings()).extracting(Finding::code).containsExactly("one-row", "row-narrower-than-minimum");
    assertThat(division.findings().get(1).message()).isEqualTo(
        "the narrowest row is 50 mm, at least 70 mm is asked for; the floor is no wider; nothing can be done but to"
            + " turn the boards");
    assertStepsHold(division);
  }

  @ParameterizedTest
  @EnumSource(RowWay.class)
  void noWayCutsAWholeNumberOfBoards(RowWay way) {
    assertThat(divide("1850 mm", "185 mm", "70 mm", way).value().fullRows()).isEqualTo(10);
  }

  @Test
  void workingCanBeRedoneByHand() {
    assertThat(divide("3735 mm", "185 mm", "70 mm", RowWay.LEAST_CUT).explain()).isEqualTo("""
        number-of-rows: How many rows does the width take?
          n = ceil(W / p)
            W = 3735 mm  (laid width)
            p = 185 mm  (laid pitch)
          = 21  [definition]
        rest: How wide is the last row if all before it are full?
          r = W - (n - 1) * p
            W = 3735 mm  (laid width)
            n = 21  (number of rows)
            p = 185 mm  (laid pitch)
          = 35 mm  [definition]
        first-row: How wide is the first row? Ripped by as much as the last row needs to reach the minimum.
          w1 = p + r - m
            p = 185 mm  (laid pitch)
            r = 35 mm  (last row if the first is full)
            m = 70 mm  (narrowest row)
          = 150 mm  [definition]
        last-row: How wide is the last row?
          wn = W - w1 - (n - 2) * p
            W = 3735 mm  (laid width)
            w1 = 150 mm  (first row)
            n = 21  (number of rows)
            p = 185 mm  (laid pitch)
          = 70 mm  [definition]""");
  }

  @Test
  void lengthsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> divide("0 mm", "185 mm", "70 mm", RowWay.BALANCED))
        .isInstanceOf(IllegalArgumentException.class).hasMessage(
            "laid width must be more than 0 mm, but was 0 mm; check the room's width and the expansion gap");
    assertThatThrownBy(() -> divide("3 m", "-185 mm", "70 mm", RowWay.BALANCED))
        .hasMessage("laid pitch must be more than 0 mm, but was -185 mm; give the width that a laid board covers");
    assertThatThrownBy(() -> divide("3 m", "185 mm", "-1 mm", RowWay.BALANCED))
        .hasMessage("minimum row width must not be negative, but was -1 mm; give 0 mm for no minimum");
    assertThatThrownBy(() -> divide("3 m", "185 mm", "0 mm", null)).isInstanceOf(NullPointerException.class);
  }
}
