package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripRiskTest {
  private static final Length PITCH = mm("185");

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  /** A stop below which the strip is as wide as asked for, eight rows above the first row line. */
  private static Calculated<StripRisk> risk(Stop.Side side, String strip, String pitch, String minimum, String taper,
      String deviation) {
    Length p = mm(pitch);
    Length first = mm("40").min(p);
    Length tightest = side == Stop.Side.FLOOR_BELOW ? first.plus(p.multipliedBy(8)).plus(mm(strip))
        : first.plus(p.multipliedBy(8)).minus(mm(strip));
    Stop stop = side == Stop.Side.FLOOR_BELOW ? Stop.floorBelow("wall 3", tightest, tightest.plus(mm(taper)))
        : Stop.floorAbove("wall 3", tightest.minus(mm(taper)), tightest);
    StartLine line = new StartLine(List.of(stop), Length.ZERO, p, mm(minimum), Source.GIVEN, first);
    return StripRisk.at(line, stop, mm(deviation));
  }

  /** Chances worked out apart are held against in {@code reference-checks}; here the working of some. */
  @ParameterizedTest
  @CsvSource({"75, 1000, 70, 0, 5", "185, 185, 70, 0, 3", "100, 185, 70, 0, 100", "140, 185, 30, 20, 6", "90, 185, 50, 60, 55", "181.5, 185, 12.7, 0, 2.5",
      "5, 90, 60, 0, 0.001"})
  void eitherSideOfTheStopIsTheSame(String strip, String pitch, String minimum, String taper, String deviation) {
    Calculated<StripRisk> below = risk(Stop.Side.FLOOR_BELOW, strip, pitch, minimum, taper, deviation);
    Calculated<StripRisk> above = risk(Stop.Side.FLOOR_ABOVE, strip, pitch, minimum, taper, deviation);
    assertThat(below.value().probability()).isEqualTo(above.value().probability());
    assertThat(below.value().strip()).isEqualTo(mm(strip)).isEqualTo(above.value().strip());
    assertStepsHold(below);
    assertStepsHold(above);
  }

  /** The stop thrown about by a seeded generator, its strip measured as any start line measures it: four standard errors. */
  @ParameterizedTest
  @CsvSource({"80, 185, 70, 0, 5", "185, 185, 70, 0, 3", "150, 185, 70, 0, 20", "160, 185, 30, 20, 6", "90, 185, 50, 60, 55",
      "100, 185, 70, 0, 400"})
  void chanceIsThatOfManyThrows(String strip, String pitch, String minimum, String taper, String deviation) {
    double chance = risk(Stop.Side.FLOOR_BELOW, strip, pitch, minimum, taper, deviation).value().probability();
    Random random = new Random(19_35);
    int throwsMade = 400_000;
    int narrow = 0;
    double spread = mm(deviation).toNanometres();
    for (int i = 0; i < throwsMade; i++) {
      long low = mm(strip).toNanometres() + Math.round(spread * random.nextGaussian());
      Stop stop = Stop.floorBelow("s", Length.ofNanometres(low), Length.ofNanometres(low).plus(mm(taper)));
      narrow += stop.strip(0, mm(pitch).toNanometres()) < mm(minimum).toNanometres() ? 1 : 0;
    }
    double standardError = StrictMath.sqrt(chance * (1 - chance) / throwsMade);
    assertThat((double) narrow / throwsMade).isCloseTo(chance, within(4 * standardError));
  }

  @Test
  void exactFitIsATossUp() {
    // a full board that just fits: half of all errors leave less than a board, half a sliver; 23 standard deviations to 70
    assertThat(StripRisk.of(PITCH, PITCH, mm("70"), mm("3")).value().probability()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void workingShowsBothRowsThatTheStripMayComeTo() {
    assertThat(StripRisk.of(mm("180"), PITCH, mm("70"), mm("5")).explain()).isEqualTo("""
        chance-too-narrow: How likely is the strip narrower than the minimum? Phi is the share of the normal distribution \
        below a value.
          P = Phi((m - s) / d) - Phi((0 - s) / d) + Phi((m + 1 * p - s) / d) - Phi((0 + 1 * p - s) / d), rounded to six decimals
            m = 70 mm  (narrowest strip asked for)
            p = 185 mm  (laid pitch)
            s = 180 mm  (strip as measured)
            d = 5 mm  (standard deviation of the place of the stop)
          = 0.158655  [definition]""");
  }

  @Test
  void knownExactlyItIsOrItIsNot() {
    for (String[] c : new String[][] {{"69", "70", "0", "1"}, {"70", "70", "0", "0"}, {"185", "70", "0", "0"},
        {"165", "30", "20", "0"}, {"166", "30", "20", "1"}, {"29", "30", "20", "1"}}) {
      Calculated<StripRisk> risk = risk(Stop.Side.FLOOR_ABOVE, c[0], "185", c[1], c[2], "0");
      assertThat(risk.value().probability()).isEqualTo(Double.parseDouble(c[3]));
      assertStepsHold(risk);
    }
  }

  @Test
  void withoutAMinimumNothingIsTooNarrow() {
    Calculated<StripRisk> risk = StripRisk.of(mm("2"), PITCH, Length.ZERO, mm("3"));
    assertThat(risk.value().probability()).isZero();
    assertThat(risk.value().standardDeviation()).isEqualTo(mm("3"));
    assertStepsHold(risk);
    assertThat(risk(Stop.Side.FLOOR_ABOVE, "2", "185", "0", "30", "3").value().probability()).isZero();
  }

  @Test
  void boardsNarrowerThanTheMinimumAreNeverWideEnough() {
    Calculated<StripRisk> risk = StripRisk.of(mm("57"), mm("57"), mm("70"), mm("3"));
    assertThat(risk.value().probability()).isEqualTo(1);
    assertThat(risk.findings()).extracting(Finding::code).containsExactly("boards-narrower-than-minimum");
    assertStepsHold(risk);
  }

  @Test
  void driftAddsToTheError() {
    // 20 rows, each 0.2 mm unsure together: 4 mm; with 3 mm of the width a triangle of 3, 4 and 5
    Calculated<Length> together = StripRisk.withDrift(mm("3"), 20, mm("0.2"));
    assertThat(together.value()).isEqualTo(mm("5"));
    assertStepsHold(together);
    // sqrt(2) = 1.414213562... rounded up at the sixth decimal
    assertThat(StripRisk.withDrift(mm("1"), 1, mm("1")).value()).isEqualTo(mm("1.414214"));
    assertThat(StripRisk.withDrift(mm("2"), 0, mm("1")).value()).isEqualTo(mm("2"));
  }

  @Test
  void lengthsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> StripRisk.of(mm("186"), PITCH, mm("70"), mm("1")))
        .hasMessage("the strip must not be wider than the laid pitch, 185 mm, but was 186 mm");
    assertThatThrownBy(() -> StripRisk.of(Length.ZERO, PITCH, mm("70"), mm("1")))
        .hasMessage("strip must be more than 0 mm, but was 0 mm; a strip that just fits is a full board");
    assertThatThrownBy(() -> StripRisk.of(mm("100"), PITCH, mm("70"), mm("-1")))
        .hasMessage("standard deviation must not be negative, but was -1 mm; give its size");
    assertThatThrownBy(() -> StripRisk.withDrift(mm("1"), -1, mm("1")))
        .hasMessage("the number of rows must not be negative, but was -1");
  }
}
