package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HeightProfileTest {
  private static ProfilePoint point(String place, String height) {
    return new ProfilePoint(Length.ofMillimetres(place), Length.ofMillimetres(height));
  }

  private static HeightProfile wavy(int readings, int slipped, String by) {
    List<Length> heights = new ArrayList<>(IntStream.range(0, readings)
        .mapToObj(i -> Length.ofNanometres(250_000L * (i % 3 + (i % 5 == 0 ? 2 : 0)))).toList());
    heights.set(slipped, heights.get(slipped).plus(Length.ofMillimetres(by)));
    return HeightProfile.ofEqualSpacing(Length.ofMillimetres(300), heights);
  }

  @Test
  void heightsBetweenReadingsLieOnTheStraightLine() {
    HeightProfile profile = HeightProfile.of(List.of(point("100", "3"), point("400", "6"), point("500", "0")));
    assertThat(profile.heightAt(Length.ofMillimetres(250))).isEqualTo(Length.ofMillimetres("4.5"));
    assertThat(profile.heightAt(Length.ofMillimetres(400))).isEqualTo(Length.ofMillimetres(6));
    assertThat(profile.heightAt(Length.ofMillimetres(475))).isEqualTo(Length.ofMillimetres("1.5"));
    assertThat(profile.length()).isEqualTo(Length.ofMillimetres(400));
    assertThat(profile.widestSpacing()).isEqualTo(Length.ofMillimetres(300));
    assertThat(profile).hasToString("3 readings over 400 mm");
    assertThatThrownBy(() -> profile.heightAt(Length.ofMillimetres(99)))
        .hasMessage("place must be from 100 mm to 500 mm, but was 99 mm");
  }

  @Test
  void mirroredProfileKeepsItsEnds() {
    HeightProfile mirrored = HeightProfile.of(List.of(point("100", "3"), point("400", "6"), point("500", "0"))).mirrored();
    assertThat(mirrored.readings()).containsExactly(point("100", "0"), point("200", "6"), point("500", "3"));
  }

  @Test
  void wrongReadingsAreRefused() {
    assertThatThrownBy(() -> HeightProfile.of(List.of(point("0", "0")))).hasMessage(
        "a profile needs at least 2 readings, but has 1; three or more show a gap under an edge");
    assertThatThrownBy(() -> HeightProfile.of(List.of(point("0", "0"), point("300", "1"), point("0", "4")))).hasMessage(
        "reading 3 at 0 mm has the place of reading 1; heights there are 0 mm and 4 mm: keep one of them");
    assertThatThrownBy(() -> HeightProfile.of(List.of(point("0", "0"), point("300", "1"), point("200", "4")))).hasMessage(
        "reading 3 at 200 mm lies before reading 2 at 300 mm; list the readings in the order of the line");
    assertThatThrownBy(() -> HeightProfile.of(List.of(point("0", "0"), point("10000001", "1")))).hasMessage(
        "place of reading 2 must be at most 10000000 mm from zero, but was 10000001 mm; check the unit");
    assertThatThrownBy(() -> HeightProfile.ofEqualSpacing(Length.ZERO, List.of(Length.ZERO, Length.ZERO)))
        .hasMessage("spacing of readings must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> wavy(5, 0, "0").withUncertainty(Length.ofMillimetres(-1)))
        .hasMessage("uncertainty of a height must be 0 mm to 1000 mm, but was -1 mm");
  }

  /** A decimetre or an inch misread at any one of a dozen readings, the first and the last included. */
  @ParameterizedTest
  @CsvSource({"100, 100 mm too high", "-100, 100 mm too low", "98, 100 mm too high", "25.4, 25.4 mm too high",
      "-25.4, 25.4 mm too low"})
  void oneReadingOffByASlipIsNamed(String by, String words) {
    for (int slipped = 0; slipped < 12; slipped++) {
      List<Finding> doubts = wavy(12, slipped, by).doubts();
      assertThat(doubts).as("reading %d", slipped + 1).filteredOn(doubt -> doubt.code().equals("reading-slip")).singleElement()
          .satisfies(doubt -> assertThat(doubt.message()).contains(words).contains("read it again"));
      assertThat(doubts.get(0).where()).isEqualTo("reading " + (slipped + 1) + " at " + 300 * slipped + " mm");
    }
  }

  /** 10 mm is a poor floor, 60 mm a step or a slip of another kind: neither is taken for a decimetre or an inch. */
  @ParameterizedTest
  @ValueSource(strings = {"0", "10", "-10", "60", "40"})
  void otherReadingsAreNotCalledSlips(String by) {
    assertThat(wavy(12, 5, by).doubts()).isEmpty();
  }

  /** Inches taken for millimetres along the line, or millimetres for metres up: steeper than 1 in 10 is no floor. */
  @Test
  void unitsThatNoFloorHasAreDoubted() {
    List<Length> heights = IntStream.range(0, 12).mapToObj(i -> Length.ofMillimetres(i % 3 * 2)).toList();
    assertThat(HeightProfile.ofEqualSpacing(Length.ofMillimetres(300), heights).doubts()).isEmpty();
    assertThat(HeightProfile.ofEqualSpacing(Length.ofMillimetres("0.3"), heights).doubts()).extracting(Finding::code)
        .containsExactly("unit-doubtful", "unit-doubtful");
    assertThat(HeightProfile.ofEqualSpacing(Length.ofMillimetres(12), heights.stream().map(h -> h.multipliedBy(10)).toList())
        .doubts()).extracting(Finding::message).contains("the heights range over 40 mm in a line of 132 mm, more than 1 in"
            + " 10; check the units of heights and places");
    assertThat(HeightProfile.ofEqualSpacing(Length.ofMillimetres(300_000), heights).doubts()).extracting(Finding::code)
        .containsExactly("unit-doubtful");
  }

  @Test
  void equalProfiles() {
    HeightProfile one = wavy(6, 2, "1");
    assertThat(HeightProfile.of(one.readings())).isEqualTo(one).hasSameHashCodeAs(one).isNotEqualTo(wavy(6, 2, "2"))
        .isNotEqualTo(one.withUncertainty(Length.ofMillimetres(1)));
    assertThat(one.withUncertainty(Length.ofMillimetres(1)).uncertainty()).contains(Length.ofMillimetres(1));
  }
}
