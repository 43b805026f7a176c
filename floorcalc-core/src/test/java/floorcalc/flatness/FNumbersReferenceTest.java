package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** A slab measured after ASTM E1155M-96(2001); worksheet of 2003 named at the head of {@code e1155_slac_elevations.csv}. */
@Tag("reference")
class FNumbersReferenceTest {

  /** The worksheet prints 62 curvatures of lines 0 to 4 to 0.001 mm, of heights that are themselves rounded to 0.001 mm. */
  @ParameterizedTest(name = "line {0}, q{1}")
  @CsvFileSource(resources = "/reference/e1155_slac_q.csv", useHeadersInDisplayName = true)
  void curvatures(int line, int i, double published, String recalculated, double difference) {
    List<Length> curvatures = FNumbers.of(Slac.line(line)).value().curvatures();
    assertThat(curvatures.get(i - 2)).isEqualTo(Length.ofMillimetres(recalculated));
    assertThat(curvatures.get(i - 2).toMillimetres()).isCloseTo(published, within(0.0005 + 4 * 0.0005));
  }

  @Test
  void sixtyTwoCurvaturesArePublishedForFiveLines() {
    assertThat(Slac.rows("e1155_slac_q.csv").filter(row -> !row[0].equals("5"))).hasSize(62);
    assertThat(IntStream.range(0, 5).map(line -> FNumbers.of(Slac.line(line)).value().curvatures().size()).sum()).isEqualTo(62);
  }

  /** Worked out apart from this library, with the equations recalled from memory, printed to 0.000001 mm and 0.0001. */
  @ParameterizedTest(name = "line {0}")
  @CsvFileSource(resources = "/reference/e1155_slac_fnumbers_computed.csv", useHeadersInDisplayName = true)
  void numbers(String line, int points, int curvatures, Double meanQ, Double deviationQ, double ff, String ffMetric, int differences,
      Double meanZ, Double deviationZ, double fl, String flMetric, String status) {
    if (line.contains("-")) {
      List<FNumbers> lines = IntStream.rangeClosed(0, Integer.parseInt(line.substring(2)))
          .mapToObj(one -> FNumbers.of(Slac.line(one)).value()).toList();
      Calculated<FNumber> flatness = FNumber.byReadings(lines.stream().map(FNumbers::flatness).toList());
      assertNumber(flatness.value(), curvatures, ff);
      assertNumber(FNumber.byReadings(lines.stream().map(FNumbers::levelness).toList()).value(), differences, fl);
      assertStepsHold(flatness);
      return;
    }
    Calculated<FNumbers> calculated = FNumbers.of(Slac.line(Integer.parseInt(line)));
    FNumbers numbers = calculated.value();
    assertThat(numbers.curvatures()).hasSize(curvatures);
    assertThat(numbers.levelDifferences()).hasSize(differences);
    Statistics q = Statistics.of(numbers.curvatures());
    Statistics z = Statistics.of(numbers.levelDifferences());
    assertThat(q.mean().toMillimetres()).isCloseTo(meanQ, within(1e-6));
    assertThat(q.deviation().toMillimetres()).isCloseTo(deviationQ, within(1e-6));
    assertThat(z.mean().toMillimetres()).isCloseTo(meanZ, within(1e-6));
    assertThat(z.deviation().toMillimetres()).isCloseTo(deviationZ, within(1e-6));
    assertNumber(numbers.flatness(), curvatures, ff);
    assertNumber(numbers.levelness(), differences, fl);
    assertStepsHold(calculated);
  }

  /** Mean and deviation are rounded to the nanometre before the division: a digit more than half of the last one printed. */
  private static void assertNumber(FNumber number, int readings, double printed) {
    assertThat(number.readings()).isEqualTo(readings);
    assertThat(number.value()).isCloseTo(printed, within(0.00011));
  }

  /** Lines 0 and 1 together, worked out apart: 28.8406 of 12 and 20.4443 of 13 give 23.433. */
  @Test
  void twoLinesTogether() {
    FNumber joined = FNumber.byReadings(List.of(new FNumber(28.8406, 12), new FNumber(20.4443, 13))).value();
    assertThat(joined.value()).isCloseTo(23.433, within(0.0005));
    double j = 28.8406;
    double k = 20.4443;
    assertThat(joined.value()).isCloseTo(j * k * Math.sqrt(25 / (13 * j * j + 12 * k * k)), within(0.0001));
  }

  /** ACI 117-10, Table 4.8.5.1, quoted by another; the local numbers are three fifths. */
  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/aci117_fnumbers.csv", useHeadersInDisplayName = true)
  void classes(String name, double ff, double fl, double localFf, double localFl, String status) {
    FNumberClass one = FNumberClass.named(name);
    assertThat(List.of(one.leastFlatness(), one.leastLevelness(), one.leastLocalFlatness(), one.leastLocalLevelness()))
        .containsExactly(ff, fl, localFf, localFl);
    assertThat(one.judge(new FNumber(ff, 1), new FNumber(fl, 1))).allMatch(Judgement::isMet);
    assertThat(one.judge(new FNumber(ff - 0.1, 1), new FNumber(fl - 0.1, 1))).noneMatch(Judgement::isMet);
    assertThat(one.judgePart(new FNumber(localFf, 1), new FNumber(localFl - 0.1, 1), "line 1"))
        .extracting(Judgement::isMet).containsExactly(true, false);
  }
}
