package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.survey.Slip.Marks;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class SlipTest {
  private static List<String> slips(String read, Marks marks, String expected) {
    return Slip.of(Length.parse(read), marks, Length.parse(expected), Length.parse("2 mm")).stream().map(Slip::toString).toList();
  }

  @Test
  void metric() {
    assertThat(slips("5421 mm", Marks.METRIC, "5323 mm")).containsExactly("read 100 mm too long: meant 5321 mm");
    assertThat(slips("4321 mm", Marks.METRIC, "5323 mm")).containsExactly("read 1000 mm too short: meant 5321 mm");
    assertThat(slips("5311 mm", Marks.METRIC, "5321 mm")).containsExactly("read 10 mm too short: meant 5321 mm");
    assertThat(slips("5231.5 mm", Marks.METRIC, "5320 mm")).containsExactly("digits 2 and 3 exchanged: meant 5321.5 mm");
    assertThat(slips("5921 mm", Marks.METRIC, "5621 mm")).containsExactly("a 6 taken for a 9: meant 5621 mm");
    assertThat(slips("532 mm", Marks.METRIC, "5321 mm")).containsExactly("centimetres taken for millimetres: meant 5320 mm");
    assertThat(slips("53210 mm", Marks.METRIC, "5321 mm")).containsExactly("millimetres taken for centimetres: meant 5321 mm");
    assertThat(slips("5366 mm", Marks.METRIC, "5321 mm")).isEmpty();
  }

  @Test
  void feetAndInches() {
    assertThat(slips("12' 8 5/8\"", Marks.FEET_AND_INCHES, "12' 7 5/8\"")).containsExactly("read 1 in too long: meant 3851.275 mm");
    assertThat(slips("11' 7 5/8\"", Marks.FEET_AND_INCHES, "12' 7 5/8\"")).containsExactly("read 1 ft too short: meant 3851.275 mm");
    assertThat(slips("21' 7 5/8\"", Marks.FEET_AND_INCHES, "12' 7 5/8\""))
        .containsExactly("digits 2 and 1 of the feet exchanged: meant 3851.275 mm");
    assertThat(slips("115 5/8\"", Marks.FEET_AND_INCHES, "151 5/8\""))
        .containsExactly("digits 1 and 5 of the inches exchanged: meant 3851.275 mm");
    // 12' 7" read where 12.7 ft was meant, 152.4 in: 3870.96 mm; and the other way round
    assertThat(slips("12' 7\"", Marks.FEET_AND_INCHES, "3871 mm"))
        .containsExactly("decimal feet taken for feet and inches: meant 3870.96 mm");
    assertThat(slips("12.7 ft", Marks.FEET_AND_INCHES, "12' 7\""))
        .containsExactly("feet and inches taken for decimal feet: meant 3835.4 mm");
    assertThat(slips("9' 7\"", Marks.FEET_AND_INCHES, "6' 7\"")).containsExactly("a 6 of the feet taken for a 9: meant 2006.6 mm");
  }

  /** 5321 read as 5312 is 9 mm less: digits exchanged, and 10 mm within a millimetre. The nearer comes first. */
  @Test
  void nearestFirst() {
    assertThat(slips("5312 mm", Marks.METRIC, "5321 mm"))
        .containsExactly("digits 1 and 2 exchanged: meant 5321 mm", "read 10 mm too short: meant 5322 mm");
  }

  /** The slips of a reading, each with a length of its own. A number does not begin with a nought: 05 is no reading. */
  @Test
  void allOfAReading() {
    assertThat(Slip.of(Length.parse("50 mm"), Marks.METRIC)).extracting(Slip::toString).containsExactly(
        "read 10 mm too long: meant 40 mm", "read 10 mm too short: meant 60 mm", "read 100 mm too short: meant 150 mm",
        "read 1000 mm too short: meant 1050 mm", "centimetres taken for millimetres: meant 500 mm",
        "millimetres taken for centimetres: meant 5 mm");
    // 660 in is 55 ft: the first digit read upside down makes 960 in or 80 ft; feet have no digit to exchange
    assertThat(Slip.of(Length.parse("660 in"), Marks.FEET_AND_INCHES)).extracting(Slip::text).contains("a 9 of the inches taken for a 6")
        .doesNotContain("digits 5 and 5 of the feet exchanged");
  }

  /** With 3 mm a difference of 10 mm cannot be told from chance: no mistake of 10 mm is named, one of 100 mm is. */
  @Test
  void whatCannotBeToldIsNotNamed() {
    Length three = Length.parse("3 mm");
    assertThat(Slip.of(Length.parse("5311 mm"), Marks.METRIC, Length.parse("5321 mm"), three)).isEmpty();
    assertThat(Slip.of(Length.parse("5221 mm"), Marks.METRIC, Length.parse("5321 mm"), three)).hasSize(1);
    assertThat(Slip.of(Length.parse("5330 mm"), Marks.METRIC, Length.parse("5321 mm"), three)).isEmpty();
  }

  /** How often a random error of up to half a metre is explained by chance: regression values, one in twenty as the page says. */
  @Test
  void explainedByChance() {
    Random random = new Random(1);
    int[] explained = new int[Marks.values().length];
    for (int i = 0; i < 4000; i++) {
      Length expected = Length.ofMillimetres(1000 + random.nextInt(8000));
      Length read = expected.plus(Length.ofMillimetres(random.nextInt(1001) - 500));
      for (Marks marks : Marks.values()) {
        explained[marks.ordinal()] += Slip.of(read, marks, expected, Length.ofMillimetres(2)).isEmpty() ? 0 : 1;
      }
    }
    assertThat(explained).containsExactly(216, 219);
  }

  @Test
  void refuses() {
    assertThatThrownBy(() -> slips("0 mm", Marks.METRIC, "1 m")).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a reading must be more than 0 mm, but was 0 mm");
    assertThatThrownBy(() -> Slip.of(Length.parse("1 m"), Marks.METRIC, Length.parse("1 m"), Length.ZERO))
        .hasMessage("the standard deviation of a reading must be more than 0 mm, but was 0 mm");
  }

  /** Whatever the reading: what a slip says was meant is within the bound, and the nearest is first. */
  @Property(tries = 500)
  void meantIsNear(@ForAll @LongRange(min = 100, max = 20_000) long read, @ForAll @LongRange(min = 100, max = 20_000) long expected) {
    for (Marks marks : Marks.values()) {
      List<Slip> slips = Slip.of(Length.ofMillimetres(read), marks, Length.ofMillimetres(expected), Length.ofMillimetres(2));
      List<Length> off = slips.stream().map(slip -> slip.corrected().minus(Length.ofMillimetres(expected)).abs()).toList();
      assertThat(off).isSorted().allSatisfy(length -> assertThat(length).isLessThanOrEqualTo(Length.ofMillimetres(4)));
      assertThat(slips).allSatisfy(slip -> assertThat(slip.corrected()).isNotEqualTo(Length.ofMillimetres(read)));
    }
  }
}
