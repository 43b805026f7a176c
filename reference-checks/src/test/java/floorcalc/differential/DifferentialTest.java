package floorcalc.differential;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Runs every comparison with another library, and shows that each can fail. {@code -Dfloorcalc.cases=20} compares twenty times
 * as many cases.
 */
class DifferentialTest {
  private static final double FACTOR = Double.parseDouble(System.getProperty("floorcalc.cases", "1"));

  @TestFactory
  Stream<DynamicTest> bothSidesAgree() {
    return Differentials.all().stream().map(differential -> DynamicTest.dynamicTest(differential.toString(), () -> {
      DifferentialResult result = FACTOR == 1 ? DifferentialRuns.of(differential) : differential.run(FACTOR);
      assertThat(result.holds()).as(() -> differential + ": " + result).isTrue();
      assertThat(result.cases()).isPositive();
    }));
  }

  @TestFactory
  Stream<DynamicTest> aPlantedFaultIsSeen() {
    return Differentials.all().stream().map(differential -> DynamicTest.dynamicTest(differential.toString(),
        () -> assertThat(differential.runWithFault().holds()).isFalse()));
  }

  @Test
  void eachSaysWhatItCompares() {
    assertThat(Differentials.all()).extracting(Object::toString).doesNotHaveDuplicates();
    assertThat(Differentials.all()).allSatisfy(differential -> {
      assertThat(differential.underTest()).isNotEmpty().allMatch(type -> type.getName().startsWith("floorcalc."));
      assertThat(differential.argument()).isNotBlank();
      assertThat(differential.unit()).isNotBlank();
    });
  }

  @Test
  void theLargestDifferenceIsRoundedUp() {
    assertThat(roundedUp(0)).isEqualTo("0");
    assertThat(roundedUp(1)).isEqualTo("1");
    assertThat(roundedUp(0.43)).isEqualTo("1");
    assertThat(roundedUp(2.3e-6)).isEqualTo("1e-5");
    assertThat(roundedUp(30)).isEqualTo("1e2");
    assertThat(new DifferentialResult(1, 0.49, "", 0.5, List.of()).worstRoundedUp()).isEqualTo("0.5");
    assertThat(new DifferentialResult(1, 4.4e-7, "", 5e-7, List.of()).worstRoundedUp()).isEqualTo("5e-7");
    assertThat(new DifferentialResult(1, 0.6, "", 0.5, List.of()).worstRoundedUp()).isEqualTo("1");
    assertThat(roundedUp(Double.NaN)).isEqualTo("no number");
    assertThat(new DifferentialResult(1, Double.NaN, "", 1, List.of()).holds()).isFalse();
  }

  private static String roundedUp(double worst) {
    return new DifferentialResult(1, worst, "", 1, List.of()).worstRoundedUp();
  }
}
