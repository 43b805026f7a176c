package floorcalc.joints;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class JointLayoutTest {
  private static final RuleValue<Length> OFFSET = RuleSet.COMMON_PRACTICE
      .forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185)).get(LayingRules.MINIMUM_JOINT_OFFSET);

  private static Length mm(long mm) {
    return Length.ofMillimetres(mm);
  }

  private static JointLayout rows(int[]... joints) {
    return JointLayout.of(Arrays.stream(joints)
        .map(row -> IntStream.of(row).mapToObj(JointLayoutTest::mm).toList()).toList());
  }

  private static int[] row(int... joints) {
    return joints;
  }

  private static JointPair pair(int row, int at, int otherRow, int otherAt) {
    return new JointPair(row, mm(at), otherRow, mm(otherAt));
  }

  @Test
  void smallestOffsetOfRowsThatTouch() {
    // row 1 to 2: |3000 - 2200| = 800, |4400 - 5200| = 800; row 2 to 3: |2600 - 3000| = 400 is the least
    JointLayout layout = rows(row(2200, 4400), row(800, 3000, 5200), row(400, 2600, 4800));
    assertThat(layout.smallestOffset()).contains(pair(2, 800, 3, 400));
    assertThat(layout.smallestOffset().orElseThrow().offset()).isEqualTo(mm(400));
  }

  @Test
  void rowsWithoutJointsHaveNoOffset() {
    assertThat(rows().smallestOffset()).isEmpty();
    assertThat(rows(row(2200)).smallestOffset()).isEmpty();
    assertThat(rows(row(2200), row(), row(2200)).smallestOffset()).isEmpty();
  }

  @Test
  void offsetsCloserThanTheMinimum() {
    // 2200/2000 and 4400/4500 are too close, 2200/2500 is just far enough
    JointLayout layout = rows(row(2200, 4400), row(2000, 2500, 4500));
    assertThat(layout.closerThan(mm(300))).containsExactly(pair(1, 2200, 2, 2000), pair(1, 4400, 2, 4500));
    assertThat(layout.closerThan(mm(301))).hasSize(3);
    assertThat(layout.closerThan(Length.ZERO)).isEmpty();
  }

  @Test
  void orderOfGivenJointsDoesNotMatter() {
    assertThat(rows(row(4400, 2200), row(4500, 2000, 2500)).closerThan(mm(300))).hasSize(2);
  }

  @Test
  void onlyWhereRowsTouchJointsCount() {
    long[][] joints = {{2_200_000_000L, 4_400_000_000L}, {2_300_000_000L, 4_450_000_000L}};
    long[][] touching = {{0, 2_250_000_000L, 4_000_000_000L, 5_000_000_000L}};
    // 2300 lies where a column parts the rows; 2200/4450 is the next best for 2200
    JointLayout layout = JointLayout.ofNanometres(joints, touching);
    assertThat(layout.smallestOffset()).contains(pair(1, 4400, 2, 4450));
    assertThat(layout.closerThan(mm(300))).containsExactly(pair(1, 4400, 2, 4450));
    assertThat(JointLayout.ofNanometres(joints).closerThan(mm(300))).hasSize(2);
  }

  @Test
  void endsOfTouchingBelongToIt() {
    long[][] joints = {{1_000_000_000L}, {1_100_000_000L}};
    assertThat(JointLayout.ofNanometres(joints, new long[][] {{1_000_000_000L, 1_100_000_000L}}).closerThan(mm(300)))
        .hasSize(1);
    assertThat(JointLayout.ofNanometres(joints, new long[][] {{1_000_000_001L, 1_100_000_000L}}).closerThan(mm(300)))
        .isEmpty();
  }

  @Test
  void halfABoardGivesHPatternsAndNoStairs() {
    JointLayout layout = rows(row(2200, 4400), row(1100, 3300), row(2200, 4400), row(1100, 3300), row(2200, 4400));
    assertThat(layout.inLine()).containsExactly(pair(1, 2200, 3, 2200), pair(1, 4400, 3, 4400),
        pair(2, 1100, 4, 1100), pair(2, 3300, 4, 3300), pair(3, 2200, 5, 2200), pair(3, 4400, 5, 4400));
    assertThat(layout.stairs()).isEmpty();
  }

  @Test
  void jointsWithinTwoMillimetresAreInLine() {
    assertThat(rows(row(2200), row(900), row(2202)).inLine()).containsExactly(pair(1, 2200, 3, 2202));
    assertThat(rows(row(2200), row(900), row(2203)).inLine()).isEmpty();
    assertThat(rows(row(2200), row(900), row(2203)).inLine(mm(20))).hasSize(1);
  }

  @Test
  void jointsInLineCountOnlyWhereTheRowBetweenTouchesBoth() {
    long[][] joints = {{2_200_000_000L}, {900_000_000L}, {2_200_000_000L}};
    long[] whole = {0, 5_000_000_000L};
    long[] left = {0, 2_000_000_000L};
    assertThat(JointLayout.ofNanometres(joints, new long[][] {whole, whole}).inLine()).hasSize(1);
    assertThat(JointLayout.ofNanometres(joints, new long[][] {left, whole}).inLine()).isEmpty();
    assertThat(JointLayout.ofNanometres(joints, new long[][] {whole, left}).inLine()).isEmpty();
  }

  @Test
  void thirdOfABoardGivesStairs() {
    // each row 700 further in boards of 2100, until the stair runs out at the wall and the next begins
    JointLayout layout = rows(row(700, 2800), row(1400, 3500), row(2100, 4200), row(700, 2800, 4900));
    assertThat(layout.stairs()).containsExactly(
        new JointStair(1, List.of(mm(700), mm(1400), mm(2100), mm(2800))),
        new JointStair(1, List.of(mm(2800), mm(3500), mm(4200), mm(4900))));
    assertThat(layout.stairs().get(0).step()).isEqualTo(mm(700));
    assertThat(layout.stairs().get(0).lastRow()).isEqualTo(4);
    assertThat(layout.inLine()).isEmpty();
  }

  @Test
  void stairsGoDownAsWell() {
    assertThat(rows(row(3000), row(2600), row(2201)).stairs())
        .containsExactly(new JointStair(1, List.of(mm(3000), mm(2600), mm(2201))));
  }

  @Test
  void stepsThatDifferAreNoStair() {
    assertThat(rows(row(3000), row(2600), row(2204)).stairs()).isEmpty();
    assertThat(rows(row(3000), row(2600), row(2204)).stairs(mm(5))).hasSize(1);
    assertThat(rows(row(3000), row(2600), row(3000), row(2600)).stairs()).isEmpty();
    assertThat(rows(row(3000), row(3000), row(3000)).stairs()).isEmpty();
    assertThat(rows(row(3000), row(2600)).stairs()).isEmpty();
  }

  @Test
  void twoStairsInOneAnother() {
    // 400 twice, then 250 twice: the joint in row 3 ends the one and begins the other
    assertThat(rows(row(1000), row(1400), row(1800), row(2050), row(2300)).stairs()).containsExactly(
        new JointStair(1, List.of(mm(1000), mm(1400), mm(1800))),
        new JointStair(3, List.of(mm(1800), mm(2050), mm(2300))));
  }

  @Test
  void stairStopsWhereRowsDoNotTouch() {
    long[][] joints = {{1_000_000_000L}, {1_400_000_000L}, {1_800_000_000L}};
    assertThat(JointLayout.ofNanometres(joints).stairs()).hasSize(1);
    assertThat(JointLayout.ofNanometres(joints, new long[][] {{0, 1_500_000_000L}, {0, 1_500_000_000L}}).stairs())
        .isEmpty();
  }

  @Test
  void checkNamesWhatItFinds() {
    Calculated<JointLayout> checked =
        rows(row(2200), row(2000), row(2200), row(2600), row(3000)).check("study-1", OFFSET);
    assertThat(checked.findings()).extracting(Finding::code)
        .containsExactly("joints-too-close", "joints-too-close", "joints-in-line", "joints-in-steps");
    assertThat(checked.findings()).extracting(Finding::where)
        .containsExactly("study-1 row 1", "study-1 row 2", "study-1 row 1", "study-1 row 3");
    assertThat(checked.findings().get(0).message()).isEqualTo("end joints at 2200 mm and, in row 2, at 2000 mm are"
        + " 200 mm apart, at least 300 mm is asked for; start one of the rows with another piece");
    assertThat(checked.findings().get(2).message()).isEqualTo("end joints at 2200 mm and, in row 3, at 2200 mm are in"
        + " line within 2 mm with one row between (H pattern); start one of the rows with another piece");
    assertThat(checked.findings().get(3).message()).isEqualTo("end joints of rows 3 to 5 go on in equal steps of 400 mm"
        + " from 2200 mm (stair pattern); start one of the rows with another piece");
    assertThat(checked.explain()).isEqualTo("""
        joint-offset: How far apart are the nearest end joints of rows that touch, in rows 1 and 2?
          d = abs(x2 - x1)
            x2 = 2000 mm  (joint in row 2)
            x1 = 2200 mm  (joint in row 1)
          = 200 mm  [definition]""");
    assertStepsHold(checked);
  }

  @Test
  void checkOfNoJointsFindsNothing() {
    Calculated<JointLayout> checked = rows(row(), row()).check("", OFFSET);
    assertThat(checked.findings()).isEmpty();
    assertThat(checked.steps()).isEmpty();
  }

  /** Between rows 1 and 2 the nearest are 900 and 1000, between rows 2 and 3 none is near as row 3 has no joint. */
  @Test
  void eachRowIsToldWithItsNearestOffset() {
    JointLayout joints = rows(row(2200, 900), row(1000, 3200), row());
    assertThat(joints.rows()).isEqualTo(3);
    assertThat(joints.joints(1)).containsExactly(mm(900), mm(2200));
    assertThat(joints.smallestOffset(1)).contains(new JointPair(1, mm(900), 2, mm(1000)));
    assertThat(joints.smallestOffset(2)).isEmpty();
    assertThatThrownBy(() -> joints.joints(4)).isInstanceOf(IndexOutOfBoundsException.class);
    assertThatThrownBy(() -> joints.smallestOffset(3)).isInstanceOf(IndexOutOfBoundsException.class);
  }

  @Test
  void wrongCallsAreRefused() {
    long[][] joints = {{1}, {2}};
    assertThatThrownBy(() -> JointLayout.ofNanometres(joints, new long[][] {{1, 2, 3}}))
        .hasMessage("row 1 has 3 ends of intervals in which it touches the next row; give two for each interval");
    assertThatThrownBy(() -> JointLayout.ofNanometres(joints, new long[][] {{1, 5, 3, 9}})).hasMessage("the intervals in"
        + " which row 1 touches the next row must be in order and apart, but 3 nm follows 5 nm");
    assertThatThrownBy(() -> rows().inLine(mm(-1))).hasMessage("the tolerance must not be negative, but was -1 mm");
    assertThatThrownBy(() -> rows().stairs(mm(-1))).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new JointStair(1, List.of(mm(1), mm(2))))
        .hasMessage("a stair has at least 3 joints, but was given 2");
  }
}
