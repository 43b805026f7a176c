package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RowDriftTest {
  private static Length len(String text) {
    return Length.parse(text);
  }

  @ParameterizedTest
  @CsvSource({
      // ten boards measure 1853 mm, not 1850: 0.3 mm a row, 6 mm in 20 rows
      "185 mm, 185.3 mm,  20, 6 mm",
      // a joint of 1 mm in each of 30 rows
      "120 mm, 121 mm,    30, 30 mm",
      // 0.025 in lost in each of the 80 rows of 4.95 in that 33 ft hold: 33 * 12 / 4.95 = 80
      "4.975 in, 4.95 in, 80, -2 in",
      // 1/64 in on each of 78 planks: 78 / 64 = 1 7/32
      "3 1/4 in, 3 17/64 in, 78, 1 7/32 in",
      "185 mm, 185 mm,    99, 0 mm",
      "185 mm, 186 mm,    0,  0 mm",
  })
  void driftIsTheDifferenceInEveryRow(String nominal, String laid, long rows, String drift) {
    Calculated<RowDrift> calculated = RowDrift.of(len(nominal), len(laid), rows);
    assertThat(calculated.value().drift()).isEqualTo(len(drift));
    assertThat(calculated.value().lastRowAsLaid()).isEmpty();
    assertStepsHold(calculated);
  }

  private static Calculated<RowDrift> last(String width, String laid) {
    return RowDrift.of(RowDivision.of(len(width), len("185 mm"), len("70 mm"), RowWay.AS_NEEDED).value(), len(laid));
  }

  @Test
  void lastRowIsLeftWithoutTheDriftOfTheRowsBeforeIt() {
    // 3480 mm: 19 rows, last 150 mm; 18 rows at 0.3 mm are 5.4 mm; 150 - 5.4 = 144.6
    Calculated<RowDrift> drift = last("3480 mm", "185.3 mm");
    assertThat(drift.value().lastRowAsLaid()).contains(len("144.6 mm"));
    assertThat(drift.findings()).isEmpty();
    assertStepsHold(drift);
  }

  @Test
  void lastRowNarrowerThanTheDriftIsWarnedOf() {
    // 3700 = 20 * 185 at full width, but 19 rows at 10 mm are 190 mm
    Calculated<RowDrift> drift = last("3700 mm", "195 mm");
    assertThat(drift.value().lastRowAsLaid()).contains(len("-5 mm"));
    assertThat(drift.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("last-row-narrower-than-drift");
      assertThat(finding.where()).isEqualTo("row 20");
      assertThat(finding.message()).isEqualTo("the last row, 185 mm, is narrower than the drift of 190 mm;"
          + " divide the width again with the pitch as laid");
    });
  }

  @Test
  void exactFitThatFallsShortNeedsAnotherRow() {
    // 19 rows lose 0.1 mm each: 185 + 1.9 = 186.9, more than a board of 184.9
    Calculated<RowDrift> drift = last("3700 mm", "184.9 mm");
    assertThat(drift.value().lastRowAsLaid()).contains(len("186.9 mm"));
    assertThat(drift.findings()).extracting(Finding::code).containsExactly("drift-adds-row");
  }

  @Test
  void lastRowThatDriftsBelowTheMinimumIsWarnedOf() {
    // 3400 = 18 * 185 + 70; 18 rows at 0.3 mm leave 64.6
    Calculated<RowDrift> drift = last("3400 mm", "185.3 mm");
    assertThat(drift.value().lastRowAsLaid()).contains(len("64.6 mm"));
    assertThat(drift.findings()).extracting(Finding::code).containsExactly("drift-narrows-last-row");
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    assertThatThrownBy(() -> RowDrift.of(len("0 mm"), len("185 mm"), 3))
        .hasMessage("nominal pitch must be more than 0 mm, but was 0 mm; give the cover width of a board");
    assertThatThrownBy(() -> RowDrift.of(len("185 mm"), len("0 mm"), 3)).hasMessageStartingWith("laid pitch must be");
    assertThatThrownBy(() -> RowDrift.of(len("185 mm"), len("185 mm"), -1))
        .hasMessage("the number of rows must not be negative, but was -1");
  }
}
