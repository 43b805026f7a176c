package floorcalc.joints;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class JointSpreadTest {
  private static final Length BOARD = Length.ofMillimetres(2000);

  private static JointSpread spread(long... millimetres) {
    Calculated<JointSpread> calculated =
        JointSpread.of(Arrays.stream(millimetres).mapToObj(Length::ofMillimetres).toList(), BOARD);
    assertStepsHold(calculated);
    return calculated.value();
  }

  /** One joint in each quarter's middle: 1 / (2 · 4), the least there is. */
  @Test
  void evenAsCanBe() {
    JointSpread spread = spread(1250, 250, 1750, 750);
    assertThat(spread.discrepancyAsFraction()).isEqualTo("1/8");
    assertThat(spread.distances()).isEqualTo(Map.of(Length.ofMillimetres(500), 4));
  }

  /** All joints in line at the end: the whole board before them holds none. */
  @Test
  void inLineIsAsUnevenAsCanBe() {
    assertThat(spread(0, 2000, 4000).discrepancyAsFraction()).isEqualTo("1");
    assertThat(spread(0, 2000, 4000).distances()).isEqualTo(Map.of(Length.ZERO, 2, BOARD, 1));
    assertThat(spread(2000, 4000).places()).containsExactly(Length.ZERO, Length.ZERO);
  }

  /** Sorted 0, 1/8, 1/4, 1/2, 3/4 against 1/10, 3/10, 5/10, 7/10, 9/10: off by 0.1, 0.175, 0.25, 0.2, 0.15; D = 0.1 + 0.25 = 0.35. */
  @Test
  void theFirstFiveHalvings() {
    JointSpread spread = spread(0, 1000, 500, 1500, 250);
    assertThat(spread.discrepancyAsFraction()).isEqualTo("7/20");
    assertThat(spread.discrepancy()).isEqualByComparingTo("0.35");
    assertThat(spread).hasToString("5 joints, star discrepancy 7/20");
  }

  /** A third of a board: three places, each a third apart; in six rows each twice. */
  @Test
  void aPatternOfThirds() {
    JointSpread spread = JointSpread.of(JointPattern.ofFraction(1, 3), 6, Length.ofMillimetres(1200)).value();
    assertThat(spread.distances()).isEqualTo(Map.of(Length.ZERO, 3, Length.ofMillimetres(400), 3));
    assertThat(spread.discrepancyAsFraction()).isEqualTo("1/3");
  }

  @Test
  void whatCannotBeMeasuredIsRefused() {
    assertThatThrownBy(() -> JointSpread.of(List.of(), BOARD)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no joint; a spread needs at least one");
    assertThatThrownBy(() -> JointSpread.of(List.of(BOARD), Length.ZERO)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("board length must be more than 0 mm, but was 0 mm");
  }

  /** By definition: the greatest difference between the share of joints before a place and the place's share of the board. */
  @Property(tries = 300)
  void asItIsDefined(@ForAll @Size(min = 1, max = 12) List<@IntRange(min = 0, max = 6000) Integer> joints) {
    JointSpread spread = spread(joints.stream().mapToLong(Integer::longValue).toArray());
    List<Length> places = spread.places();
    double most = 0;
    for (Length place : places) {
      double share = place.toMillimetres() / 2000;
      long before = places.stream().filter(other -> other.compareTo(place) < 0).count();
      long upTo = places.stream().filter(other -> other.compareTo(place) <= 0).count();
      most = Math.max(most, Math.max(share - before / (double) places.size(), upTo / (double) places.size() - share));
    }
    assertThat(spread.discrepancy().doubleValue()).isCloseTo(most, org.assertj.core.api.Assertions.within(1e-11));
    assertThat(spread.distances().entrySet().stream().map(one -> one.getKey().multipliedBy(one.getValue())).reduce(Length.ZERO, Length::plus))
        .isEqualTo(BOARD);
  }
}
