package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Deviations of the measured slab from chords, worked out apart from this library: exact, their mean square to 0.000001 mm. */
@Tag("reference")
class MidChordReferenceTest {
  @ParameterizedTest(name = "line {0}, chord {1} mm")
  @CsvFileSource(resources = "/reference/slac_chord_deviation_computed.csv", useHeadersInDisplayName = true)
  void deviations(int line, String chord, int count, String greatest, String least, double rootMeanSquare) {
    Calculated<MidChord> calculated = MidChord.of(Slac.line(line), Length.ofMillimetres(chord));
    MidChord found = calculated.value();
    assertThat(found.deviations()).hasSize(count);
    assertThat(found.highest().deviation()).isEqualTo(Length.ofMillimetres(greatest));
    assertThat(found.lowest().deviation()).isEqualTo(Length.ofMillimetres(least));
    assertThat(found.rootMeanSquare().toMillimetres()).isCloseTo(rootMeanSquare, within(0.0000005 + 1e-12));
    assertStepsHold(calculated);
  }
}
