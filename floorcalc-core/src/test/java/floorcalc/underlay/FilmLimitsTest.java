package floorcalc.underlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Films held against the limits, and what is refused; the published figures themselves are held against the library in the reference suite. */
class FilmLimitsTest {
  private static final RollGoods FILM = RollGoods.barrier("film", Length.ofMillimetres(2000), Length.ofMillimetres(25_000), Lap.NBS_K21);

  @ParameterizedTest
  @CsvSource({"0.2, 0.1, MET, MET", "0.1523, 0.1500001, NOT_MET, NOT_MET", "0.1524, 0.15, MET, MET"})
  void aFilmOverConcrete(String thickness, BigDecimal permeance, Outcome thick, Outcome tight) {
    assertThat(FilmLimits.NWFA_CONCRETE.judge(FILM.withThickness(Length.ofMillimetres(thickness)).withPermeance(permeance)))
        .extracting(Judgement::outcome).containsExactly(thick, tight);
  }

  @ParameterizedTest
  @CsvSource({"0.69, NOT_MET", "0.7, MET", "10, MET", "10.1, NOT_MET"})
  void aRetarderOverWoodLetsItDry(BigDecimal permeance, Outcome outcome) {
    assertThat(FilmLimits.NWFA_WOOD.judge(FILM.withPermeance(permeance))).extracting(Judgement::outcome).containsExactly(outcome);
  }

  @Test
  void whatTheGoodsDoNotStateIsNotMeasured() {
    assertThat(FilmLimits.NWFA_CONCRETE.judge(FILM)).extracting(Judgement::outcome).containsOnly(Outcome.NOT_MEASURED);
    assertThat(FilmLimits.NOFMA_SLAB.judge(FILM)).extracting(Judgement::advice).isEqualTo(List.of("ask the maker for its thickness"));
  }

  @Test
  void names() {
    assertThat(FilmLimits.named("NOFMA on a slab")).isSameAs(FilmLimits.NOFMA_SLAB);
    assertThatThrownBy(() -> FilmLimits.named("ours")).hasMessage(
        "there are no limits named 'ours'; there are NWFA over concrete, NWFA over wood, NOFMA on a slab");
    assertThat(Lap.named("NBS K21")).isSameAs(Lap.NBS_K21);
    assertThatThrownBy(() -> Lap.named("ours")).hasMessageStartingWith("there is no lap named 'ours'; there are butt joints, ");
  }

  @Test
  void classesOfVapourRetarders() {
    assertThat(VapourClass.of(BigDecimal.ZERO).words()).isEqualTo("Class I");
    assertThat(VapourClass.of(new BigDecimal("10.1")).words()).isEqualTo("no vapour retarder");
    assertThatThrownBy(() -> VapourClass.of(new BigDecimal("-0.1"))).hasMessage("permeance must be 0 perm or more, but was -0.1");
  }
}
