package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FNumbersTest {
  private static final Length SPACING = Length.ofMillimetres(300);

  private static HeightProfile heights(int readings, IntToLongFunction micrometres) {
    return HeightProfile.ofEqualSpacing(SPACING, IntStream.range(0, readings)
        .mapToObj(i -> Length.ofNanometres(1000 * micrometres.applyAsLong(i))).toList());
  }

  /**
   * A zigzag of 1 mm: q is +2 and -2 mm in turn. Of 14 readings there are 12, mean 0, S = sqrt(48 / 11) = 2.088932 mm;
   * FF = 116.078 / (3 · 2.088932) = 18.5227. z is 0: level without end.
   */
  @Test
  void zigzag() {
    Calculated<FNumbers> numbers = FNumbers.of(heights(14, i -> i % 2 * 1000));
    assertThat(numbers.value().curvatures().get(0)).isEqualTo(Length.ofMillimetres(-2));
    assertThat(numbers.value().flatness().value()).isEqualTo(18.5227);
    assertThat(numbers.value().levelness().value()).isInfinite();
    assertThat(numbers.value()).hasToString("FF 18.5, FL infinite");
    assertStepsHold(numbers);
  }

  /** A bowl: every q is 0.5 mm, S = 0, FF = 116.078 / 0.5 = 232.156. */
  @Test
  void bowl() {
    assertThat(FNumbers.of(heights(20, i -> 250L * i * i)).value().flatness().value()).isEqualTo(232.156);
  }

  @Test
  void otherReadingsAreRefused() {
    assertThatThrownBy(() -> FNumbers.of(heights(11, i -> i))).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("F-numbers need at least 12 readings on a line, but it has 11");
    List<Length> flat = Collections.nCopies(12, Length.ZERO);
    assertThatThrownBy(() -> FNumbers.of(HeightProfile.ofEqualSpacing(Length.ofMillimetres(305), flat)))
        .hasMessage("readings for F-numbers must be 304.8 mm or 300 mm apart, but the first two are 305 mm apart");
    List<ProfilePoint> uneven = IntStream.range(0, 12).mapToObj(i -> new ProfilePoint(
        Length.ofMillimetres(i == 7 ? 2101 : 300L * i), Length.ZERO)).toList();
    assertThatThrownBy(() -> FNumbers.of(HeightProfile.of(uneven))).hasMessageContaining("reading 8 is 301 mm from the one before");
    assertThat(FNumbers.of(HeightProfile.ofEqualSpacing(Length.parse("1 ft"), flat)).value()).hasToString("FF infinite, FL infinite");
  }

  /** 30 m² of FF 20 and 10 m² of FF 40: (600 + 400) / 40 = 25. */
  @Test
  void joinedByArea() {
    List<FNumber> sections = List.of(new FNumber(20, 100), new FNumber(40, 30));
    Calculated<FNumber> joined = FNumber.byArea(sections, List.of(Area.ofSquareMetres("30"), Area.ofSquareMetres("10")));
    assertThat(joined.value()).isEqualTo(new FNumber(25, 130));
    assertStepsHold(joined);
    assertThatThrownBy(() -> FNumber.byArea(sections, List.of(Area.ofSquareMetres("30"))))
        .hasMessage("each of 2 sections needs an area, but there are 1");
    assertThatThrownBy(() -> FNumber.byArea(sections, List.of(Area.ofSquareMetres("30"), Area.ZERO)))
        .hasMessageContaining("area of section 2");
    assertThat(FNumber.byArea(List.of(new FNumber(Double.POSITIVE_INFINITY, 2)), List.of(Area.ofSquareMetres("1"))).value()
        .value()).isInfinite();
  }

  /** A line without any curvature adds readings and no spread: sqrt(20 / (10 / 400)) = 28.2843. */
  @Test
  void joinedWithALineThatIsFlatWithoutEnd() {
    FNumber endless = new FNumber(Double.POSITIVE_INFINITY, 10);
    assertThat(FNumber.byReadings(List.of(new FNumber(20, 10), endless)).value()).isEqualTo(new FNumber(28.2843, 20));
    assertThat(FNumber.byReadings(List.of(endless)).value().value()).isInfinite();
    assertThatThrownBy(() -> FNumber.byReadings(List.of())).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new FNumber(0, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new FNumber(20, 0)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void manyLinesAreStatedWithoutTheirTerms() {
    Calculated<FNumber> joined = FNumber.byReadings(Collections.nCopies(50, new FNumber(30, 12)));
    assertThat(joined.value()).isEqualTo(new FNumber(30, 600));
    assertStepsHold(joined);
  }

  @Test
  void unknownClassesAreRefused() {
    assertThatThrownBy(() -> FNumberClass.named("flattish")).hasMessage("there is no class 'flattish'; the classes are:"
        + " 'conventional', 'moderately flat', 'flat', 'very flat', 'superflat'");
  }

  /** Two lines: Fj Fk sqrt((rj + rk) / (rk Fj² + rj Fk²)) is the same as the sum over lines. */
  @Test
  void twoLinesTogether() {
    Calculated<FNumber> joined = FNumber.byReadings(List.of(new FNumber(28.8406, 12), new FNumber(20.4443, 13)));
    double j = 28.8406;
    double k = 20.4443;
    assertThat(joined.value().value()).isCloseTo(j * k * Math.sqrt(25 / (13 * j * j + 12 * k * k)), within(0.0001));
    assertStepsHold(joined);
  }

  @Test
  void aClassIsKeptByItsOwnNumbers() {
    for (FNumberClass one : FNumberClass.all()) {
      double ff = one.leastFlatness();
      double fl = one.leastLevelness();
      assertThat(one.judge(new FNumber(ff, 1), new FNumber(fl, 1))).allMatch(Judgement::isMet);
      assertThat(one.judge(new FNumber(ff - 0.1, 1), new FNumber(fl - 0.1, 1))).noneMatch(Judgement::isMet);
      assertThat(one.judgePart(new FNumber(one.leastLocalFlatness(), 1), new FNumber(one.leastLocalLevelness() - 0.1, 1), "line 1"))
          .extracting(Judgement::isMet).containsExactly(true, false);
    }
  }
}
