package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.EquilibriumMoisture;
import floorcalc.moisture.Percent;
import floorcalc.moisture.Temperature;
import floorcalc.working.Calculated;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Published worked examples on movement, W01 to W37 of the file, each to half of its last printed digit. W15 does not
 * follow from its own formula and is left out; W31 and W32 are measured widths without a formula; W05 and W33 to W35 are on
 * moisture and tested there.
 */
@Tag("reference")
class WoodWorkedExamplesReferenceTest {

  @ParameterizedTest(name = "{0} {1}")
  @CsvFileSource(resources = "/reference/wood_worked_examples.csv", useHeadersInDisplayName = true)
  void example(String id, String topic, String inputs, String published, String unit, String recomputed) {
    BigDecimal result = switch (id) {
      case "W01" -> of("232 mm", wood("white fir"), "8", "11", unit);
      case "W02" -> new BigDecimal("232").add(of("232 mm", wood("white fir"), "8", "11", unit));
      case "W03" -> of("9.15 in", wood("white fir"), "8", "11", unit);
      case "W04" -> new BigDecimal("9.15").add(of("9.15 in", wood("white fir"), "8", "11", unit));
      case "W06" -> of("5 in", wood("red oak"), "6.2", "11", unit);
      case "W07" -> of("50 in", wood("red oak"), "6.2", "11", unit).setScale(2, RoundingMode.DOWN);
      case "W08" -> of("120 in", wood("red oak"), "6.2", "11", unit);
      case "W09" -> of("5 in", trade("white oak"), "6", "9", unit);
      case "W10" -> of("5 in", trade("mesquite"), "6", "9", unit);
      case "W11" -> of("5 in", trade("red oak"), "6", "9", unit);
      case "W12" -> of("2.25 in", percent(new BigDecimal("8.6").divide(BigDecimal.valueOf(28), 20, RoundingMode.HALF_EVEN)),
          "8", "5", unit).negate();
      case "W13" -> of("13.25 in", percent(new BigDecimal("0.2")), "19", "10", unit).negate();
      case "W14" -> new BigDecimal("13.25").add(of("13.25 in", percent(new BigDecimal("0.2")), "19", "10", unit));
      case "W16" -> of("1 m", percent(new BigDecimal("0.25")), "10", "6", unit).negate();
      case "W17" -> joints(percent(new BigDecimal("0.25")));
      case "W18" -> european("European beech", unit);
      case "W19" -> european("European birch", unit);
      case "W20" -> european("Norway spruce", unit);
      case "W21" -> european("European ash", unit);
      case "W22" -> european("European oak", unit);
      case "W23" -> european("Scots pine", unit);
      case "W24" -> european("European poplar", unit);
      case "W25" -> european("European walnut", unit);
      case "W26" -> of("600 mm", wood("American beech"), "7", "12", unit);
      case "W27" -> of("8 in", Coefficient.of(new BigDecimal("0.0026"), "rounded", Source.GIVEN), "6", "12", unit);
      case "W28" -> of("2.25 in", wood("white oak"), "8", "9", unit);
      case "W29" -> of("2.25 in", wood("white oak"), "8", "12", unit);
      case "W30" -> of("2.25 in", wood("white oak"), "6", "14", unit);
      case "W36" -> Shrinkage.coefficient(Percent.of("10.3"), Percent.of("30")).value();
      case "W37" -> Shrinkage.coefficient(Percent.of("4.0"), Percent.of("22")).value();
      default -> {
        assertThat(id).isIn("W05", "W15", "W31", "W32", "W33", "W34", "W35");
        yield null;
      }
    };
    if (id.equals("W08")) {
      assertThat(published).isEqualTo("more than 2");
      assertThat(result).isGreaterThan(BigDecimal.valueOf(2));
    } else if (result != null) {
      BigDecimal printed = new BigDecimal(published);
      assertThat(result).isCloseTo(printed, within(BigDecimal.valueOf(5, printed.scale() + 1)));
    }
    if (result != null && !id.equals("W07")) {
      BigDecimal other = new BigDecimal(recomputed);
      assertThat(result).as("worked out apart from this library")
          .isCloseTo(other, within(BigDecimal.valueOf(6, other.scale() + 1).max(new BigDecimal("0.00001"))));
    }
  }

  private static Coefficient wood(String name) {
    return SpeciesTable.WOOD_HANDBOOK.species(name).coefficient(Grain.FLAT_SAWN);
  }

  private static Coefficient trade(String name) {
    return SpeciesTable.TRADE_LIST_A200.species(name).coefficient(Grain.FLAT_SAWN);
  }

  private static Coefficient percent(BigDecimal percent) {
    return Coefficient.ofPercent(percent, "as printed", Source.GIVEN);
  }

  private static BigDecimal european(String name, String unit) {
    return of("600 mm", SpeciesTable.DIN_68100.species(name).coefficient(Grain.FLAT_SAWN), "7", "12", unit);
  }

  private static BigDecimal of(String width, Coefficient coefficient, String from, String to, String unit) {
    Calculated<Length> change = WidthChange.of(Length.parse(width), coefficient, Percent.of(from), Percent.of(to));
    assertStepsHold(change);
    return in(change.value(), unit);
  }

  private static BigDecimal in(Length length, String unit) {
    long one = switch (unit) {
      case "mm" -> 1_000_000L;
      case "cm" -> 10_000_000L;
      case "in" -> 25_400_000L;
      default -> throw new AssertionError(unit);
    };
    return BigDecimal.valueOf(length.toNanometres()).divide(BigDecimal.valueOf(one), 12, RoundingMode.HALF_EVEN);
  }

  /** A metre of boards of 25 cm: 1 cm over four joints. */
  private static BigDecimal joints(Coefficient coefficient) {
    Calculated<Length> joint = MovementForecast.of(Percent.of("10"), Percent.of("6"), Percent.of("10"), coefficient)
        .jointOpening(Length.parse("1 m"), 4);
    assertStepsHold(joint);
    return in(joint.value(), "mm");
  }

  /**
   * Equations 13-2 and 13-3 for 100 mm of sugar maple (S 9.9 %), worked out by other code: they differ, and the tests keep
   * them apart. From 8 % to 11 % the second gives 100 * 3 / (3000 / 9.9 - 30 + 8) = 300 / 281.0303 = 1.0675.
   */
  @ParameterizedTest
  @CsvSource({"8, 11, 1.059, 1.0675", "6, 14, 2.824, 2.867", "12, 8, -1.412, -1.403"})
  void bothEquations(String from, String to, BigDecimal linear, BigDecimal wide) {
    Length width = Length.ofMillimetres(100);
    assertThat(in(WidthChange.of(width, wood("hard maple"), Percent.of(from), Percent.of(to)).value(), "mm"))
        .isCloseTo(linear, within(new BigDecimal("0.0005")));
    Calculated<Length> change = WidthChange.byShrinkage(width, Percent.of("9.9"), Shrinkage.FIBRE_SATURATION,
        Percent.of(from), Percent.of(to));
    assertStepsHold(change);
    assertThat(in(change.value(), "mm")).isCloseTo(wide, within(new BigDecimal("0.0005")));
  }

  /** Equation 4-9: northern red oak, tangential 8.6 %, at 8 %: 8.6 * 22 / 30 = 6.3067. */
  @ParameterizedTest
  @CsvSource({"8, 6.3067", "0, 8.6", "30, 0", "60, 0"})
  void shrunkDownTo(String moisture, BigDecimal shrunk) {
    Calculated<Percent> calculated = Shrinkage.downTo(Shrinkage.named("northern red oak").tangential().orElseThrow(),
        Shrinkage.FIBRE_SATURATION, Percent.of(moisture));
    assertStepsHold(calculated);
    assertThat(calculated.value().number()).isEqualByComparingTo(shrunk);
  }

  /** NF DTU 51.2, as the reference data have it: a hardwood board of 140 mm from 9 % to 7 %: 0.924 mm; softwood 0.7 mm. */
  @ParameterizedTest
  @CsvSource({"NF DTU hardwood, 0.924", "NF DTU softwood, 0.7", "NF DTU multilayer, 0.084"})
  void dtu(String name, BigDecimal shrunk) {
    List<Percent> moisture = List.of(Percent.of("9"), Percent.of("7"));
    assertThat(in(WidthChange.of(Length.ofMillimetres(140), Coefficient.named(name), moisture.get(0), moisture.get(1))
        .value().negated(), "mm")).isEqualByComparingTo(shrunk);
  }

  /**
   * Timber Queensland, data sheet 11: cover width of a board of 80 mm at 8, 11 and 16 %. No formula is given; the change for each per cent, worked
   * out apart, is 0.4167 % of the width below 11 % and 0.375 % above.
   */
  @ParameterizedTest(name = "{1} %")
  @CsvFileSource(resources = "/reference/timber_queensland_cover_width.csv", useHeadersInDisplayName = true)
  void measuredCoverWidths(String humidity, String moisture, BigDecimal width, BigDecimal rate) {
    if (rate == null) {
      assertThat(width).isEqualByComparingTo("80.0");
      return;
    }
    BigDecimal change = of("80 mm", percent(rate), "11", moisture, "mm");
    assertThat(change.add(BigDecimal.valueOf(80))).isCloseTo(width, within(new BigDecimal("0.05")));
    // The air of the figure gives the moisture content of the figure to a whole per cent; 22 °C are taken here.
    assertThat(EquilibriumMoisture.of(AirClimate.of(
        Temperature.celsius("22"), Percent.of(humidity))).value().number())
        .isCloseTo(new BigDecimal(moisture), within(new BigDecimal("0.5")));
  }
}
