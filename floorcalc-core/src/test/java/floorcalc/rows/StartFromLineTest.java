package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.rows.RowsBothWays.Joint;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Rows from the middle both ways, and right angles set out with a tape. */
class StartFromLineTest {
  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Length in(long inches) {
    return Length.ofInches(inches, 0, 1);
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }

  @Test
  void fromTheMiddleAShiftOfHalfABoardSparesSlivers() {
    // 176 in in squares of 12 in: 88 = 7 * 12 + 4 leaves 4 at both walls; half a square on, 82 = 6 * 12 + 10: 13 full and two of 10 in
    Calculated<RowsBothWays> rows = RowsBothWays.fromMiddle(in(176), in(12), in(6));
    assertThat(rows.value().joint()).isEqualTo(Joint.ROW_ON_LINE);
    assertThat(rows.value().stripBefore()).isEqualTo(in(10));
    assertThat(rows.value().stripBeyond()).isEqualTo(in(10));
    assertThat(rows.value().rows()).isEqualTo(15);
    assertThat(rows.value().rowsBefore()).isEqualTo(7);
    assertThat(rows.value().rowsBeyond()).isEqualTo(7);
    assertThat(rows.findings()).isEmpty();
    assertStepsHold(rows);
  }

  @Test
  void rowLineStaysOnTheMiddleWhereItServes() {
    // 4000 / 2 = 2000 = 10 * 185 + 150
    Calculated<RowsBothWays> rows = RowsBothWays.fromMiddle(mm("4000"), mm("185"), mm("70"));
    assertThat(rows.value().joint()).isEqualTo(Joint.ROW_LINE_ON_LINE);
    assertThat(rows.value().stripBefore()).isEqualTo(mm("150"));
    assertThat(rows.value().rows()).isEqualTo(22);
    assertStepsHold(rows);
    // 3700 = 2 * 10 * 185: full boards to both walls
    assertThat(RowsBothWays.fromMiddle(mm("3700"), mm("185"), mm("70")).value().stripBeyond()).isEqualTo(mm("185"));
  }

  @Test
  void lineOffTheMiddleIsTakenAsItLies() {
    // 1000 = 5 * 185 + 75 and 1895 = 10 * 185 + 45: with a row on the line 907.5 = 4 * 185 + 167.5 and 1802.5 = 9 * 185 + 137.5
    Calculated<RowsBothWays> rows = RowsBothWays.from(mm("1000"), mm("1895"), mm("185"), mm("70"));
    assertThat(rows.value().joint()).isEqualTo(Joint.ROW_ON_LINE);
    assertThat(rows.value().stripBefore()).isEqualTo(mm("167.5"));
    assertThat(rows.value().stripBeyond()).isEqualTo(mm("137.5"));
    assertStepsHold(rows);
    // along a wall there is nothing before the line
    Calculated<RowsBothWays> wall = RowsBothWays.from(Length.ZERO, mm("1895"), mm("185"), mm("70"));
    assertThat(wall.value().rowsBefore()).isZero();
    assertThat(wall.value().stripBefore()).isEqualTo(Length.ZERO);
    assertThat(wall.value().stripBeyond()).isEqualTo(mm("45"));
    assertThat(wall.findings()).extracting(Finding::code).containsExactly("strip-narrower-than-minimum");
    assertStepsHold(wall);
  }

  @Test
  void widthsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> RowsBothWays.fromMiddle(Length.ZERO, mm("185"), mm("70"))).hasMessageContaining("laid width");
    assertThatThrownBy(() -> RowsBothWays.from(mm("-1"), mm("9"), mm("185"), mm("70"))).hasMessageContaining("before the line");
    assertThatThrownBy(() -> RowsBothWays.from(Length.ZERO, Length.ZERO, mm("185"), mm("70"))).hasMessageContaining("laid width");
  }

  /** Rows and strips close on the width; and the better of the two ways leaves outer strips of a quarter of a board at least. */
  @Property
  void rowsCloseOnTheWidth(@ForAll @IntRange(min = 1, max = 5000) int width, @ForAll @IntRange(min = 2, max = 80) int pitch,
      @ForAll @IntRange(max = 90) int minimum) {
    Calculated<RowsBothWays> rows = RowsBothWays.fromMiddle(nm(width), nm(pitch), nm(minimum));
    assertStepsHold(rows);
    RowsBothWays both = rows.value();
    long full = both.rows() - (both.rowsBefore() > 0 ? 1 : 0) - (both.rowsBeyond() > 0 ? 1 : 0);
    assertThat(full * pitch + both.stripBefore().toNanometres() + both.stripBeyond().toNanometres()).isEqualTo(width);
    if (minimum >= pitch && width >= 2 * pitch) {
      // both strips together lie between nothing and two boards; half a board moves each by half: a quarter is left, less rounding
      assertThat(both.stripBefore().min(both.stripBeyond()).toNanometres()).isGreaterThanOrEqualTo(pitch / 4 - 1);
    }
  }

  @Test
  void largestThreeFourFiveThatFits() {
    // 4.21 by 3.62 m in steps of 100 mm: 3 * 12 = 36 along and 4 * 9 = 36 square: k = min(14, 9) = 9; 4 along: min(10, 12) = 10
    Calculated<RightAngle> angle = RightAngle.largest(mm("4210"), mm("3620"), mm("100"));
    assertThat(angle.value().along()).isEqualTo(mm("4000"));
    assertThat(angle.value().square()).isEqualTo(mm("3000"));
    assertThat(angle.value().diagonal()).isEqualTo(mm("5000"));
    assertStepsHold(angle);
    // 10 by 13 ft: 3 ft along three times, 4 ft square three times: 9, 12 and 15 ft
    Calculated<RightAngle> feet = RightAngle.largest(in(120), in(156), in(12));
    assertThat(feet.value().along()).isEqualTo(in(108));
    assertThat(feet.value().square()).isEqualTo(in(144));
    assertThat(feet.value().diagonal()).isEqualTo(in(180));
    assertStepsHold(feet);
    assertThatThrownBy(() -> RightAngle.largest(mm("350"), mm("350"), mm("100"))).hasMessage("not even 3, 4 and 5 times 100 mm fit"
        + " into 350 mm by 350 mm; take a smaller unit");
  }

  @Test
  void whatTheDiagonalMustMeasureAndWhatItSays() {
    // 5, 12, 13
    Calculated<Length> diagonal = RightAngle.diagonalOf(mm("5000"), mm("12000"));
    assertThat(diagonal.value()).isEqualTo(mm("13000"));
    assertStepsHold(diagonal);
    // sqrt(2) m = 1414.213562 mm
    assertThat(RightAngle.diagonalOf(mm("1000"), mm("1000")).value()).isEqualTo(mm("1414.213562"));
    // 3 and 4 m, 5010 in place of 5000: (25.1001 - 25) / 6 = 0.01668333... m
    Calculated<Length> off = RightAngle.offSquare(mm("3000"), mm("4000"), mm("5010"));
    assertThat(off.value()).isEqualTo(mm("16.683333"));
    assertStepsHold(off);
    assertThat(RightAngle.offSquare(mm("3000"), mm("4000"), mm("5000")).value()).isEqualTo(Length.ZERO);
    assertThat(RightAngle.offSquare(mm("3000"), mm("4000"), mm("4990")).value().isNegative()).isTrue();
    assertThatThrownBy(() -> RightAngle.offSquare(mm("3000"), mm("4000"), mm("7000"))).hasMessage("legs of 3000 mm and 4000 mm cannot"
        + " have a diagonal of 7000 mm; measure again");
  }
}
