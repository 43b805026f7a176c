package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The least-squares line through each line of a measured slab ({@code e1155_slac_elevations.csv}), worked out apart from this
 * library ({@code slac_line_fit_computed.csv}). A line read twice, a metre apart, has the plane of the line.
 */
class LineFitReferenceTest {
  @TestFactory
  List<DynamicTest> slopeAndResiduals() {
    List<String[]> heights = rows("e1155_slac_elevations.csv");
    List<DynamicTest> tests = new ArrayList<>();
    for (String[] row : rows("slac_line_fit_computed.csv")) {
      tests.add(DynamicTest.dynamicTest("line " + row[0], () -> {
        List<SpotLevel> spots = new ArrayList<>();
        for (String[] reading : heights) {
          if (reading[0].equals(row[0])) {
            for (long y = 0; y <= 1000; y += 1000) {
              spots.add(SpotLevel.of(Length.ofMillimetres(reading[2]), Length.ofMillimetres(y),
                  Length.ofMillimetres(reading[3])));
            }
          }
        }
        assertThat(spots).hasSize(2 * Integer.parseInt(row[1]));
        Levels levels = Levels.of(spots);
        LevelPlane plane = levels.plane().value();
        // Half of the last digit printed, and as much again because six decimals are kept here too.
        assertThat(plane.slopeAlongX().doubleValue()).isCloseTo(Double.parseDouble(row[2]), within(1e-6));
        assertThat(plane.slopeAlongY()).isEqualByComparingTo("0");
        assertThat(plane.residual(plane.highestAbove()).toMillimetres())
            .isCloseTo(Double.parseDouble(row[3]), within(0.5e-4));
        assertThat(plane.residual(plane.deepestBelow()).toMillimetres())
            .isCloseTo(Double.parseDouble(row[4]), within(0.5e-4));
        assertThat(levels.highest().height().minus(levels.lowest().height())).isEqualTo(Length.ofMillimetres(row[5]));
      }));
    }
    assertThat(tests).hasSize(6);
    return tests;
  }

  private static List<String[]> rows(String file) {
    try (InputStream in = LineFitReferenceTest.class.getResourceAsStream("/reference/" + file)) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines()
          .filter(line -> !line.startsWith("#")).toList();
      return lines.subList(1, lines.size()).stream().map(line -> line.split(",")).toList();
    } catch (IOException e) {
      throw new AssertionError(file, e);
    }
  }
}
