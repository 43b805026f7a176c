package floorcalc.joints;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JointPatternTest {
  private static final Length BOARD = Length.ofMillimetres(2200);

  private static Length mm(long mm) {
    return Length.ofMillimetres(mm);
  }

  private static List<Length> shifts(JointPattern pattern, Length board, int rows) {
    List<Length> shifts = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      shifts.add(pattern.shift(row, board));
    }
    return shifts;
  }

  @Test
  void halfABoard() {
    JointPattern half = JointPattern.ofFraction(1, 2);
    assertThat(shifts(half, BOARD, 4)).containsExactly(mm(0), mm(1100), mm(0), mm(1100));
    assertThat(half.neighbourOffset(BOARD)).contains(mm(1100));
    assertThat(half.repeatsAfter(BOARD)).hasValue(2);
    assertThat(half).hasToString("each row shifted by 1/2 of a board");
  }

  @Test
  void thirdOfABoardThatIsNoWholeNanometreIsRoundedDownInEachRowAnew() {
    // 2200 mm / 3 = 733.333333|3 mm, 4400 / 3 = 1466.666666|7
    JointPattern third = JointPattern.ofFraction(1, 3);
    assertThat(shifts(third, BOARD, 4)).containsExactly(mm(0), Length.ofMillimetres("733.333333"),
        Length.ofMillimetres("1466.666666"), mm(0));
    assertThat(third.repeatsAfter(BOARD)).hasValue(3);
  }

  @Test
  void fractionIsTakenInLowestTermsWhenItComesRound() {
    assertThat(JointPattern.ofFraction(2, 6).repeatsAfter(BOARD)).hasValue(3);
    assertThat(JointPattern.ofFraction(3, 4).neighbourOffset(BOARD)).contains(mm(550));
  }

  @Test
  void fixedStep() {
    // 900, 1800, 2700 - 2200 = 500, 1400; gcd(900, 2200) = 100, so 22 rows
    JointPattern step = JointPattern.ofStep(mm(900));
    assertThat(shifts(step, BOARD, 5)).containsExactly(mm(0), mm(900), mm(1800), mm(500), mm(1400));
    assertThat(step.neighbourOffset(BOARD)).contains(mm(900));
    assertThat(step.repeatsAfter(BOARD)).hasValue(22);
    assertThat(step).hasToString("each row shifted by 900 mm");
  }

  @Test
  void stepOfMoreThanHalfABoardComesNearFromTheOtherSide() {
    assertThat(JointPattern.ofStep(mm(1500)).neighbourOffset(BOARD)).contains(mm(700));
    assertThat(JointPattern.ofStep(BOARD).neighbourOffset(BOARD)).contains(Length.ZERO);
    assertThat(JointPattern.ofStep(BOARD).repeatsAfter(BOARD)).hasValue(1);
  }

  @Test
  void manyRowsDoNotOverflow() {
    assertThat(JointPattern.ofStep(Length.ofNanometres(Long.MAX_VALUE)).shift(Integer.MAX_VALUE, mm(1)).toNanometres())
        .isBetween(0L, 999_999L);
    assertThat(JointPattern.ofFraction(Integer.MAX_VALUE - 1, Integer.MAX_VALUE).shift(Integer.MAX_VALUE - 1, BOARD))
        .isLessThan(BOARD);
  }

  @Test
  void freePatternHasNoShift() {
    assertThat(JointPattern.FREE.shift(7, BOARD)).isEqualTo(Length.ZERO);
    assertThat(JointPattern.FREE.neighbourOffset(BOARD)).isEmpty();
    assertThat(JointPattern.FREE.repeatsAfter(BOARD)).isEmpty();
    assertThat(JointPattern.FREE).hasToString("free");
    assertThat(JointPattern.FREE.kind()).isEqualTo(JointPattern.Kind.FREE);
  }

  @Test
  void equalByWhatTheyDo() {
    assertThat(JointPattern.ofFraction(1, 3)).isEqualTo(JointPattern.ofFraction(1, 3))
        .hasSameHashCodeAs(JointPattern.ofFraction(1, 3)).isNotEqualTo(JointPattern.ofFraction(1, 2))
        .isNotEqualTo(JointPattern.ofFraction(2, 3)).isNotEqualTo(JointPattern.FREE);
    assertThat(JointPattern.ofStep(mm(5))).isEqualTo(JointPattern.ofStep(mm(5))).isNotEqualTo(JointPattern.ofStep(mm(6)));
  }

  @Test
  void valuesOutOfRangeAreRefused() {
    assertThatThrownBy(() -> JointPattern.ofFraction(2, 2))
        .hasMessage("a shift must be a fraction between 0 and 1, but was 2/2");
    assertThatThrownBy(() -> JointPattern.ofFraction(0, 2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> JointPattern.ofStep(Length.ZERO)).hasMessage("a shift must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> JointPattern.FREE.shift(-1, BOARD)).hasMessage("a row is counted from 0, but was -1");
    assertThatThrownBy(() -> JointPattern.FREE.shift(1, Length.ZERO))
        .hasMessage("board length must be more than 0 mm, but was 0 mm");
  }
}
