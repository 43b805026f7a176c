package floorcalc.movement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.moisture.Percent;
import floorcalc.working.Source;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpeciesTest {
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {"white oak | White oak, commercial (Wood Handbook)",
      "Red Oak | Red oak, commercial (Wood Handbook)", "alder (red) | Alder, red (Wood Handbook)",
      "DOUGLAS-FIR COAST | Douglas-fir, coast (Wood Handbook)", "hard maple | Maple, sugar (Wood Handbook)",
      "European oak | European oak (DIN 68100)", "eiche | European oak (DIN 68100)", "sapele | sapele (DIN 68100)",
      "wenge | wenge (DIN 68100)", "jatoba | Brazilian cherry (jatoba) (trade list A200)",
      "merbau | Merbau (trade list A200)"})
  void anyOfItsNames(String name, String species) {
    assertThat(Species.named(name)).hasToString(species);
    assertThat(Species.named(name).names()).contains(Species.named(name).name());
  }

  @Test
  void unknownNamesComeWithNearOnes() {
    assertThatThrownBy(() -> Species.named("oak")).hasMessageStartingWith("there is no wood 'oak' in any table; near it are:"
        + " 'Oak, black' (Wood Handbook), 'Red oak, commercial' (Wood Handbook),").hasMessageContaining("'European oak' (DIN 68100)");
    assertThatThrownBy(() -> Species.named("wite oak")).hasMessageContaining("'White oak, commercial' (Wood Handbook)");
    assertThatThrownBy(() -> SpeciesTable.DIN_68100.species("eichr")).hasMessage(
        "there is no wood 'eichr' in DIN 68100; near it are: 'European oak'");
    assertThatThrownBy(() -> SpeciesTable.DIN_68100.species("zzzzzzz")).hasMessage(
        "there is no wood 'zzzzzzz' in DIN 68100; SpeciesTable lists them");
    assertThatThrownBy(() -> Species.named("")).hasMessageStartingWith("there is no wood ''");
    assertThatThrownBy(() -> Shrinkage.named("red oak")).hasMessageContaining("'Oak, red, northern red'");
    assertThatThrownBy(() -> SpeciesTable.named("nobody's")).hasMessageContaining("the tables are: 'Wood Handbook', ");
    assertThat(SpeciesTable.named("DIN 68100")).isSameAs(SpeciesTable.DIN_68100);
  }

  /** Ash, beech and the like grow on both sides of the ocean and move differently: the bare word is refused. */
  @ParameterizedTest
  @CsvSource({"ash", "beech", "birch", "walnut", "pine"})
  void bareWordsAreNotGuessed(String name) {
    assertThatThrownBy(() -> Species.named(name)).hasMessageContaining("near it are:");
  }

  @Test
  void grains() {
    Species oak = Species.named("red oak");
    assertThat(oak.coefficient(Grain.FLAT_SAWN)).hasToString("0.00369 of the width for 1 % (Red oak, commercial, flat-sawn)");
    assertThat(oak.coefficient(Grain.QUARTER_SAWN).share()).isEqualByComparingTo("0.00158");
    // (0.00158 + 0.00369) / 2
    assertThat(oak.coefficient(Grain.MIXED).share()).isEqualByComparingTo("0.002635");
    assertThat(oak.coefficient(Grain.MIXED).driest()).contains(Percent.of("6"));
    assertThat(oak.coefficient(Grain.MIXED).dampest()).contains(Percent.of("14"));
    assertThatThrownBy(() -> Species.named("merbau").coefficient(Grain.QUARTER_SAWN)).hasMessage(
        "trade list A200 has no figure for Merbau, quarter-sawn; take the flat-sawn one, which is larger, or another table");
    assertThat(Species.named("merbau").note()).isEqualTo("moves more in practice, as the list says");
    assertThat(oak.source()).isEqualTo(SpeciesTable.WOOD_HANDBOOK.source());
  }

  @Test
  void everyWoodIsFoundByEachOfItsNames() {
    assertThat(SpeciesTable.all()).allSatisfy(table -> assertThat(table.species()).allSatisfy(species -> {
      assertThat(species.table()).isSameAs(table);
      assertThat(species.names()).allSatisfy(name -> assertThat(table.species(name)).isSameAs(species));
      assertThat(species.coefficient(Grain.FLAT_SAWN).share()).isPositive();
      if (species.has(Grain.QUARTER_SAWN)) {
        assertThat(species.coefficient(Grain.QUARTER_SAWN).share())
            .isLessThanOrEqualTo(species.coefficient(Grain.FLAT_SAWN).share());
      }
    }));
    assertThat(Shrinkage.all()).allSatisfy(wood -> assertThat(Shrinkage.named(wood.name())).isSameAs(wood).hasToString(wood.name()));
  }

  @Test
  void aMakersFigure() {
    Coefficient own = Coefficient.ofPercent(new BigDecimal("0.040"), "engineered, as its maker says", Source.GIVEN);
    assertThat(own.share()).isEqualByComparingTo("0.0004");
    assertThat(own).isEqualTo(Coefficient.of(new BigDecimal("0.0004"), "engineered, as its maker says", Source.GIVEN))
        .isNotEqualTo(Coefficient.PLYWOOD);
    assertThat(own.hashCode())
        .isEqualTo(Coefficient.of(new BigDecimal("0.0004"), "engineered, as its maker says", Source.GIVEN).hashCode());
    assertThat(Coefficient.published()).contains(Coefficient.NF_DTU_MULTILAYER).hasSize(8);
  }
}
