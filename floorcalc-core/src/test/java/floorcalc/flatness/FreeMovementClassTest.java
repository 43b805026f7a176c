package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Standing;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How the classes judge; their published limits are held against in {@code reference-checks}. */
class FreeMovementClassTest {
  @Test
  void aLimitIsKeptUpToItself() {
    for (FreeMovementClass each : FreeMovementClass.all()) {
      assertThat(each.judgeLevelness(List.of(each.levelness().negated())).isMet()).isTrue();
      assertThat(each.judgeLevelness(List.of(each.levelness().plus(Length.ofNanometres(1)))).isMet()).isFalse();
      assertThat(each.judgeLevelness(List.of(Length.ZERO)).source().standing()).isEqualTo(Standing.QUOTED);
    }
  }

  @Test
  void allClasses() {
    assertThat(FreeMovementClass.all()).extracting(FreeMovementClass::name).containsExactly("FM1", "FM2", "FM3", "FM4");
    assertThatThrownBy(() -> FreeMovementClass.named("FM5")).hasMessageContaining("the classes are: 'FM1'");
  }

  /** Of 20 values 19 are 95 %: one beyond the limit is let pass, two are not. */
  @Test
  void nineteenOfTwenty() {
    FreeMovementClass class2 = FreeMovementClass.named("FM2");
    List<Length> values = new ArrayList<>(Collections.nCopies(19, Length.ofMillimetres("6.5")));
    values.add(Length.ofMillimetres(30));
    assertThat(class2.judgeLevelness(values).isMet()).isTrue();
    values.set(0, Length.ofMillimetres("-6.6"));
    assertThat(class2.judgeLevelness(values).isMet()).isFalse();
    assertThat(class2.judgeLevelness(values).found()).isEqualTo("95 % keep within 6.6 mm");
  }

  @Test
  void wrongReadingsAreRefused() {
    FreeMovementClass class1 = FreeMovementClass.named("FM1");
    List<Length> three = List.of(Length.ZERO, Length.ofMillimetres(1), Length.ZERO);
    assertThat(class1.judgeFlatness(List.of(HeightProfile.ofEqualSpacing(Length.ofMillimetres(300), three))).found())
        .isEqualTo("95 % keep within 2 mm");
    assertThatThrownBy(() -> class1.judgeFlatness(List.of(HeightProfile.ofEqualSpacing(Length.ofMillimetres(200), three))))
        .hasMessage("readings for TR34 must be 300 mm apart, but readings 1 and 2 are 200 mm apart; read again at that spacing");
    assertThatThrownBy(() -> class1.judgeFlatness(List.of(HeightProfile.ofEqualSpacing(Length.ofMillimetres(300), three.subList(0, 2)))))
        .hasMessage("a line for TR34 needs at least 3 readings, but has 2");
    assertThatThrownBy(() -> class1.judgeFlatness(List.of())).hasMessageContaining("nothing to judge");
  }
}
