package floorcalc.materials;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Each published figure on films against the table of published figures; sources stand in each row and at the head of the file. Figures
 * are exact. A row from memory is in a set that says so, and its figure is not tested.
 */
@Tag("reference")
class FilmLimitsReferenceTest {

  @ParameterizedTest(name = "{0}: {1}")
  @CsvFileSource(resources = "/reference/membranes_and_underlays.csv", useHeadersInDisplayName = true)
  void figures(String source, String item, String value, String unit, String status, String seen) {
    switch (source + ": " + item) {
      case "NWFA magazine (Feb 2017): overlap of vapour retarder seams over wood subfloor, at least" ->
          lap(Lap.NWFA_MAGAZINE, value, status);
      case "NBS K21: overlap of vapour control layer joints, taped, at least" -> lap(Lap.NBS_K21, value, status);
      case "Chinese laying practice: overlap of moisture film" -> lap(Lap.CHINESE_PRACTICE, value, status);
      case "German/European laying guidance: overlap of 0.2 mm PE film" -> {
        assertThat(status).isEqualTo("memory");
        assertThat(Lap.GERMAN_PRACTICE.source().standing()).isEqualTo(Standing.FROM_MEMORY);
      }
      case "NWFA guidelines: polyethylene film over concrete, at least" -> {
        assertThat(FilmLimits.NWFA_CONCRETE.thinnest()).contains(Length.ofMillimetres(value));
        standing(FilmLimits.NWFA_CONCRETE.source(), status);
      }
      case "NWFA guidelines: permeance of film over concrete, at most" -> {
        assertThat(FilmLimits.NWFA_CONCRETE.mostPermeance().orElseThrow()).isEqualByComparingTo(value);
        standing(FilmLimits.NWFA_CONCRETE.source(), status);
      }
      case "NWFA guidelines: permeance of retarder over wood subfloor, at least" -> {
        assertThat(FilmLimits.NWFA_WOOD.leastPermeance().orElseThrow()).isEqualByComparingTo(value);
        standing(FilmLimits.NWFA_WOOD.source(), status);
      }
      case "NWFA guidelines: permeance of retarder over wood subfloor, at most" ->
          assertThat(FilmLimits.NWFA_WOOD.mostPermeance().orElseThrow()).isEqualByComparingTo(value);
      case "IRC classes: Class I at most" -> bound(VapourClass.CLASS_I, VapourClass.CLASS_II, value, status);
      case "IRC classes: Class II above 0.1 up to" -> bound(VapourClass.CLASS_II, VapourClass.CLASS_III, value, status);
      case "IRC classes: Class III above 1.0 up to" -> bound(VapourClass.CLASS_III, VapourClass.OPEN, value, status);
      case "NOFMA: polyethylene on slab" -> {
        // "4 or 6" mil of 0.0254 mm: the set takes the lesser figure
        assertThat(value + " " + unit).isEqualTo("4 or 6 mil");
        assertThat(FilmLimits.NOFMA_SLAB.thinnest()).contains(Length.ofMillimetres("0.0254").multipliedBy(4));
        standing(FilmLimits.NOFMA_SLAB.source(), status);
      }
      default -> throw new AssertionError("a row that no set stands for: " + source + ": " + item);
    }
  }

  private static void lap(Lap lap, String value, String status) {
    assertThat(lap.overlap()).isEqualTo(Length.ofMillimetres(value));
    standing(lap.source(), status);
  }

  private static void bound(VapourClass upTo, VapourClass beyond, String value, String status) {
    assertThat(VapourClass.of(new BigDecimal(value))).isEqualTo(upTo);
    assertThat(VapourClass.of(new BigDecimal(value).add(new BigDecimal("0.000001")))).isEqualTo(beyond);
    standing(VapourClass.SOURCE, status);
  }

  private static void standing(Source source, String status) {
    assertThat(source.standing()).isEqualTo(switch (status) {
      case "verified" -> Standing.READ;
      case "verified-secondary" -> Standing.QUOTED;
      default -> throw new AssertionError("a row of status " + status + " stands behind no tested set");
    });
  }
}
