package floorcalc.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;

class TapeNotationPropertyTest {

  /** A notation and the nanometres of its step. */
  record Stepped(String name, TapeNotation notation, long step) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static final List<Stepped> NOTATIONS = notations();

  private static List<Stepped> notations() {
    List<Stepped> all = new ArrayList<>(List.of(
        new Stepped("mm", TapeNotation.millimetres(), 1),
        new Stepped("cm", TapeNotation.centimetres(), 1),
        new Stepped("m", TapeNotation.metres(), 1)));
    for (int decimals = 0, step = 1_000_000; decimals <= 6; decimals++, step /= 10) {
      all.add(new Stepped("mm." + decimals, TapeNotation.millimetres(decimals), step));
      all.add(new Stepped("cm." + (decimals + 1), TapeNotation.centimetres(decimals + 1), step));
      all.add(new Stepped("m." + (decimals + 3), TapeNotation.metres(decimals + 3), step));
    }
    all.add(new Stepped("m.0", TapeNotation.metres(0), 1_000_000_000));
    for (int denominator = 1; denominator <= 64; denominator *= 2) {
      long step = 25_400_000 / denominator;
      all.add(new Stepped("in/" + denominator, TapeNotation.inches(denominator), step));
      all.add(new Stepped("ft in/" + denominator, TapeNotation.feetAndInches(denominator), step));
    }
    return all;
  }

  @Provide
  Arbitrary<Stepped> notation() {
    return Arbitraries.of(NOTATIONS);
  }

  @Property
  void whatIsOnTheStepReadsBack(@ForAll("notation") Stepped stepped,
      @ForAll @LongRange(min = -9_000_000_000L, max = 9_000_000_000L) long steps) {
    Length length = Length.ofNanometres(steps * stepped.step());
    assertThat(Length.parse(stepped.notation().format(length))).isEqualTo(length);
    assertThat(stepped.notation().withRounding(RoundingMode.UNNECESSARY).format(length))
        .isEqualTo(stepped.notation().format(length));
  }

  @Property
  void displayIsWithinHalfAStepAndATieGoesToTheEvenStep(@ForAll("notation") Stepped stepped, @ForAll int few,
      @ForAll @LongRange(min = -9_000_000_000_000_000_000L, max = 9_000_000_000_000_000_000L) long many) {
    for (long nm : new long[] {few, many, (many / stepped.step()) * stepped.step() + stepped.step() / 2}) {
      Length shown = Length.parse(stepped.notation().format(Length.ofNanometres(nm)));
      assertThat(shown.toNanometres() % stepped.step()).isZero();
      long twiceError = Math.multiplyExact(2, Math.abs(shown.toNanometres() - nm));
      assertThat(twiceError).isLessThanOrEqualTo(stepped.step());
      if (twiceError == stepped.step()) {
        assertThat(shown.toNanometres() / stepped.step() % 2).isZero();
      }
    }
  }

  @Property
  void directedRoundingGoesItsWay(@ForAll("notation") Stepped stepped,
      @ForAll @LongRange(min = -9_000_000_000_000_000_000L, max = 9_000_000_000_000_000_000L) long nm) {
    Length length = Length.ofNanometres(nm);
    Length step = Length.ofNanometres(stepped.step());
    Length floor = Length.parse(stepped.notation().withRounding(RoundingMode.FLOOR).format(length));
    Length ceiling = Length.parse(stepped.notation().withRounding(RoundingMode.CEILING).format(length));
    assertThat(floor).isEqualTo(step.multipliedBy(length.dividedBy(step)));
    assertThat(ceiling).isEqualTo(length.remainder(step).isZero() ? floor : floor.plus(step));
  }

  @Property
  void fractionsAreInLowestTermsAndCarried(@ForAll @IntRange(min = 0, max = 6) int power, @ForAll int nm) {
    String text = TapeNotation.feetAndInches(1 << power).format(Length.ofNanometres(nm));
    String fraction = "[0-9]?[13579]/(2|4|8|16|32|64)";
    assertThat(text).matches("0\"|-?" + fraction + "\""
        + "|-?([1-9][0-9]*' [0-9]|[1-9][0-9]*' 1[01]|[1-9]|1[01])( " + fraction + ")?\"");
    int slash = text.indexOf('/');
    if (slash >= 0) {
      int numerator = Integer.parseInt(text.substring(
          Math.max(text.lastIndexOf(' '), text.lastIndexOf('-')) + 1, slash));
      int denominator = Integer.parseInt(text.substring(slash + 1, text.length() - 1));
      assertThat(numerator).isLessThan(denominator).isPositive();
      assertThat(denominator).isLessThanOrEqualTo(1 << power);
    }
  }

  @Property
  void everyWayOfWritingFeetAndInchesIsTheSame(@ForAll @IntRange(min = 0, max = 99_999) int feet,
      @ForAll @IntRange(min = 0, max = 11) int inches, @ForAll @IntRange(min = 0, max = 63) int sixtyFourths,
      @ForAll("footMarks") String foot, @ForAll("inchMarks") String inch, @ForAll("joins") String join,
      @ForAll("mixes") String mix, @ForAll("signs") String sign) {
    BigInteger nm = BigInteger.valueOf(feet).multiply(BigInteger.valueOf(12)).add(BigInteger.valueOf(inches))
        .multiply(BigInteger.valueOf(64)).add(BigInteger.valueOf(sixtyFourths)).multiply(BigInteger.valueOf(396_875));
    String text = sign + feet + foot + join + inches + mix + sixtyFourths + "/64" + inch;
    assertThat(BigInteger.valueOf(Length.parse(text).toNanometres())).isEqualTo(sign.isEmpty() ? nm : nm.negate());
  }

  @Provide
  Arbitrary<String> footMarks() {
    return Arbitraries.of("'", "′", "’", " ft", "ft.", " foot ", " FEET", " '");
  }

  @Provide
  Arbitrary<String> inchMarks() {
    return Arbitraries.of("\"", "″", "”", "''", " in", "in.", " Inches ", " inch", "’’");
  }

  @Provide
  Arbitrary<String> joins() {
    return Arbitraries.of("", " ", "-", " - ", "\u00A0", "\u2009\u2009", "\u2011");
  }

  @Provide
  Arbitrary<String> mixes() {
    return Arbitraries.of(" ", "-", "\u00A0", "\u2010", "\u2009");
  }

  @Provide
  Arbitrary<String> signs() {
    return Arbitraries.of("", "-", "\u2212", "- ");
  }

  @Property(tries = 20_000)
  void anyTextIsReadOrRefusedWithItsPlace(@ForAll("nearlyLengths") String text) {
    assertReadOrRefused(text);
  }

  @Property(tries = 5_000)
  void anyUnicodeTextIsReadOrRefusedWithItsPlace(@ForAll String text) {
    assertReadOrRefused(text);
    assertReadOrRefused("5 " + text);
  }

  private static void assertReadOrRefused(String text) {
    Length length;
    try {
      length = Length.parse(text);
    } catch (TapeNotationException e) {
      assertThat(e.text()).isEqualTo(text);
      assertThat(e.position()).isBetween(0, text.length());
      assertThat(e.reason()).isNotBlank();
      assertThat(e.getMessage()).startsWith("cannot read [").endsWith(e.reason()).doesNotContain("\n", "\r");
      return;
    }
    assertThat(Length.parse(length.toString())).isEqualTo(length);
    assertThat(TapeReading.of(text).text()).isEqualTo(text);
  }

  @Provide
  Arbitrary<String> nearlyLengths() {
    return Arbitraries.of("0", "1", "7", "12", "63", "64", "128", ".", "/", "-", "\u2212", " ", "  ", "\u00A0", "'",
        "\"", "″", "’", "in", "ft", "mm", "cm", "m", "½", "⅓", "⅞", ",", "+", "e", "٣", "\n", "\uD835", "x", "' ",
        "7 5/8", "000000000000000000000").list().ofMaxSize(8).map(parts -> String.join("", parts));
  }
}
