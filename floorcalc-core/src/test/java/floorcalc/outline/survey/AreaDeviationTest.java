package floorcalc.outline.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/**
 * Standard deviations of areas whose every coordinate errs, against rows A2 and A3 of {@code tolerance_and_monte_carlo.csv}, worked there by the
 * first-order formula for areas by coordinates (Chrisman and Yandell 1988, citation from memory). No public calculation takes such coordinates.
 */
class AreaDeviationTest {

  @Test
  void anLByItsCoordinates() throws IOException {
    assertThat(row("A2")).contains("0.02179449 m2");
    assertThat(byCoordinates(5, 0, 0, 4000, 0, 4000, 2000, 2000, 2000, 2000, 3000, 0, 3000))
        .isCloseTo(0.02179449, within(0.000000005));
  }

  @Test
  void aSquareByItsCoordinates() throws IOException {
    assertThat(row("A3")).contains("0.02828427 m2");
    assertThat(byCoordinates(5, 0, 0, 4000, 0, 4000, 4000, 0, 4000)).isCloseTo(0.02828427, within(0.000000005));
  }

  /** Square metres, every coordinate off by itself by so many millimetres. */
  private static double byCoordinates(double deviation, double... place) {
    double squares = Arrays.stream(Slopes.ofArea(new Layout(place, 0))).map(slope -> slope * slope).sum();
    return deviation * Math.sqrt(squares) / 1e6;
  }

  private static String row(String id) throws IOException {
    try (InputStream in = Objects.requireNonNull(
        AreaDeviationTest.class.getResourceAsStream("/reference/tolerance_and_monte_carlo.csv"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> line.startsWith(id + ","))
          .findFirst().orElseThrow();
    }
  }
}
