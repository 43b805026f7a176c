package floorcalc.movement;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.moisture.Percent;
import floorcalc.working.Calculated;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Every figure of every wood against the published tables; their sources stand at the head of each file. */
@Tag("reference")
class SpeciesReferenceTest {

  /**
   * Table 13-5, all 128 woods, and each coefficient again from a shrinkage with one decimal: 255 of the 256 printed ones
   * follow from the formula; sycamore, tangential, is 0.00296 in print and 0.00297 by formula.
   */
  @ParameterizedTest(name = "{1}")
  @CsvFileSource(resources = "/reference/dimensional_change_table_13_5.csv", useHeadersInDisplayName = true)
  void woodHandbook(String group, String name, BigDecimal radial, BigDecimal tangential, String start,
      String shrinkageRadial, String shrinkageTangential, String status) {
    Species species = SpeciesTable.WOOD_HANDBOOK.species(name);
    assertThat(species.name()).isEqualTo(name);
    assertThat(species.coefficient(Grain.QUARTER_SAWN).share()).isEqualByComparingTo(radial);
    assertThat(species.coefficient(Grain.FLAT_SAWN).share()).isEqualByComparingTo(tangential);
    assertThat(species.note().isEmpty()).isNotEqualTo(status.contains("doubtful"));
    assertThat(fromShrinkage(shrinkageRadial, start)).isEqualByComparingTo(radial);
    assertThat(fromShrinkage(shrinkageTangential, start)).isEqualByComparingTo(
        name.equals("Sycamore, American") ? new BigDecimal("0.00297") : tangential);
  }

  private static BigDecimal fromShrinkage(String shrinkage, String start) {
    Calculated<BigDecimal> calculated = Shrinkage.coefficient(Percent.of(shrinkage), Percent.of(start));
    assertStepsHold(calculated);
    return calculated.value();
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/differential_shrinkage_european.csv", useHeadersInDisplayName = true)
  void din(String german, String english, String radial, String tangential) {
    Species species = SpeciesTable.DIN_68100.species(german);
    // A range is taken at its larger end.
    assertThat(species.coefficient(Grain.QUARTER_SAWN).share().movePointRight(2)).isEqualByComparingTo(end(radial));
    assertThat(species.coefficient(Grain.FLAT_SAWN).share().movePointRight(2)).isEqualByComparingTo(end(tangential));
    assertThat(species.note().contains("doubtful")).isEqualTo(english.equals("wenge"));
    String[] words = english.split(" ");
    assertThat(species.name()).contains(words[words.length > 2 ? 0 : words.length - 1].replaceAll("[()]", ""));
  }

  private static String end(String range) {
    return range.substring(range.indexOf('-') + 1);
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/dimensional_change_trade_list_a200.csv", useHeadersInDisplayName = true)
  void tradeList(String name, BigDecimal tangential) {
    Species species = SpeciesTable.TRADE_LIST_A200.species(name);
    assertThat(species.coefficient(Grain.FLAT_SAWN).share()).isEqualByComparingTo(tangential);
    assertThat(species.has(Grain.QUARTER_SAWN)).isFalse();
  }

  @ParameterizedTest(name = "{1}")
  @CsvFileSource(resources = "/reference/shrinkage_table_4_3_domestic.csv", useHeadersInDisplayName = true)
  void domesticShrinkage(String group, String name, String radial, String tangential, String volumetric, String status,
      String check) {
    Shrinkage shrinkage = Shrinkage.named(name);
    assertFigures(shrinkage, radial, tangential, volumetric);
    assertThat(shrinkage.source().standing())
        .isEqualTo(status.equals("memory") ? Standing.FROM_MEMORY : Standing.QUOTED);
    if ("agrees".equals(check)) {
      // The same wood in table 13-5, under the name that it has there.
      String there = name.replace("eastern redcedar", "eastern red").replace("western redcedar", "western red")
          .replace("young growth", "second growth").replace("Oak, white, live", "White oak, live")
          .replace("Oak, white, overcup", "White oak, overcup");
      Species species = SpeciesTable.WOOD_HANDBOOK.species(there);
      assertThat(Shrinkage.coefficient(shrinkage.radial(), shrinkage.start()).value())
          .isEqualByComparingTo(species.coefficient(Grain.QUARTER_SAWN).share());
      assertThat(Shrinkage.coefficient(shrinkage.tangential().orElseThrow(), shrinkage.start()).value())
          .isEqualByComparingTo(species.coefficient(Grain.FLAT_SAWN).share());
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/reference/shrinkage_table_4_4_imported.csv", useHeadersInDisplayName = true)
  void importedShrinkage(String name, String botanical, String radial, String tangential, String volumetric) {
    assertFigures(Shrinkage.named(name), radial, tangential, volumetric);
    if (!botanical.endsWith("spp.")) {
      assertThat(Shrinkage.named(botanical)).isSameAs(Shrinkage.named(name));
    }
  }

  private static void assertFigures(Shrinkage shrinkage, String radial, String tangential, String volumetric) {
    assertThat(shrinkage.radial()).isEqualTo(Percent.of(radial));
    assertThat(shrinkage.tangential().map(Percent::toString)).isEqualTo(
        java.util.Optional.ofNullable(tangential).map(figure -> Percent.of(figure).toString()));
    assertThat(shrinkage.byVolume()).isEqualTo(Percent.of(volumetric));
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/wood_movement_rules.csv", useHeadersInDisplayName = true)
  void rates(String source, String appliesTo, BigDecimal percent, String note, String status) {
    Coefficient coefficient = Coefficient.named(switch (appliesTo) {
      case "softwoods, width and thickness" -> "NF DTU softwood";
      case "hardwoods, width and thickness" -> "NF DTU hardwood";
      case "solid wood" -> "NF DTU solid";
      case "multilayer" -> "NF DTU multilayer";
      case "mixed grain mean" -> "Danish mixed grain";
      default -> "Danish " + appliesTo;
    });
    assertThat(coefficient.share().movePointRight(2)).isEqualByComparingTo(percent);
    assertThat(coefficient.source().standing()).isEqualTo(status.equals("verified") ? Standing.READ : Standing.QUOTED);
  }

  @ParameterizedTest(name = "{0}, {1}")
  @CsvFileSource(resources = "/reference/panel_movement.csv", useHeadersInDisplayName = true)
  void panels(String product, String quantity, BigDecimal value) {
    if (product.startsWith("plywood")) {
      assertThat(Coefficient.PLYWOOD.share()).isEqualByComparingTo(value);
    }
  }

  @Test
  void asManyWoodsAsTheTables() {
    assertThat(SpeciesTable.WOOD_HANDBOOK.species()).hasSize(128);
    assertThat(SpeciesTable.DIN_68100.species()).hasSize(30);
    assertThat(SpeciesTable.TRADE_LIST_A200.species()).hasSize(23);
    assertThat(Shrinkage.all()).hasSize(115 + 64);
  }
}
