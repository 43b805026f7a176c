package floorcalc.underlay;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.moisture.Heating;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class UnderlayAdviceTest {
  private static final RollGoods FOAM = RollGoods.underlay("foam", Length.ofMillimetres(1000), Length.ofMillimetres(15_000));
  private static final RollGoods FILM = RollGoods.barrier("film", Length.ofMillimetres(2000), Length.ofMillimetres(25_000), Lap.NBS_K21);

  private static UnderlayAdvice advice(Base base, RollGoods... layers) {
    return UnderlayAdvice.of("Study", base, Heating.NOT_STATED, RoomUse.DRY, List.of(layers));
  }

  private static Judgement judged(UnderlayAdvice advice, String code) {
    return advice.judgements().stream().filter(one -> one.code().equals(code)).findFirst().orElseThrow();
  }

  @Test
  void mineralSubfloorsWantABarrier() {
    UnderlayAdvice without = advice(Base.MINERAL, FOAM);
    assertThat(without.lay()).isEqualTo("a moisture barrier below and an underlay above it, or one product that is both");
    assertThat(judged(without, "moisture-barrier").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged(without, "moisture-barrier").advice()).startsWith("lay a moisture barrier");
    assertThat(judged(advice(Base.MINERAL, FILM, FOAM), "moisture-barrier").outcome()).isEqualTo(Outcome.MET);
    assertThat(judged(advice(Base.MINERAL, FOAM.as(RollGoods.Layer.COMBINED)), "moisture-barrier").isMet()).isTrue();
    assertThat(judged(advice(Base.MINERAL), "moisture-barrier").found()).isEqualTo("none");
  }

  @Test
  void aFilmOverConcreteIsHeldAgainstItsLimits() {
    // 6 mil = 0.1524 mm and 0.15 perm at most; what is not stated is not a pass
    UnderlayAdvice open = advice(Base.MINERAL, FILM);
    assertThat(judged(open, "film-thickness").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(judged(open, "film-thickness").advice()).isEqualTo("ask the maker for its thickness");
    UnderlayAdvice sound = advice(Base.MINERAL, FILM.withThickness(Length.ofMillimetres("0.2")).withPermeance(new BigDecimal("0.15")));
    assertThat(judged(sound, "film-thickness").isMet()).isTrue();
    assertThat(judged(sound, "film-permeance").isMet()).isTrue();
    assertThat(judged(sound, "film-permeance").found()).isEqualTo("0.15 perm, Class II");
    UnderlayAdvice poor = advice(Base.MINERAL, FILM.withThickness(Length.ofMillimetres("0.1523")).withPermeance(new BigDecimal("0.16")));
    assertThat(judged(poor, "film-thickness").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged(poor, "film-permeance").advice()).isEqualTo("take a tighter film");
  }

  @Test
  void woodIsLeftToBreathe() {
    assertThat(judged(advice(Base.WOOD, FOAM), "moisture-barrier").isMet()).isTrue();
    UnderlayAdvice tight = advice(Base.WOOD, FILM.withPermeance(new BigDecimal("0.1")));
    assertThat(judged(tight, "moisture-barrier").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(judged(tight, "film-permeance").outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged(advice(Base.WOOD, FILM.withPermeance(BigDecimal.TEN)), "film-permeance").isMet()).isTrue();
  }

  @Test
  void oldFloorsAndSubfloorsThatAreNotStated() {
    assertThat(judged(advice(Base.OLD_FLOOR), "moisture-barrier").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(judged(advice(Base.OLD_FLOOR, FOAM), "moisture-barrier").isMet()).isTrue();
    assertThat(judged(advice(Base.NOT_STATED, FILM, FOAM), "moisture-barrier").outcome()).isEqualTo(Outcome.NOT_MEASURED);
  }

  @Test
  void oneSoftLayer() {
    assertThat(judged(advice(Base.MINERAL, FILM, FOAM), "one-soft-layer").isMet()).isTrue();
    Judgement two = judged(advice(Base.MINERAL, FOAM.as(RollGoods.Layer.COMBINED), FOAM), "one-soft-layer");
    assertThat(two.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(two.found()).isEqualTo("2: foam, foam");
    assertThat(advice(Base.MINERAL, FILM).judgements()).extracting(Judgement::code).doesNotContain("one-soft-layer");
  }

  @Test
  void wetRoomsAreRefused() {
    UnderlayAdvice wet = UnderlayAdvice.of("Bath", Base.MINERAL, Heating.HEATED, RoomUse.WET, List.of(FILM, FOAM));
    assertThat(wet.lay()).isEqualTo("no wood floor");
    assertThat(wet.findings()).extracting(Finding::code).containsExactly("wet-room");
    assertThat(wet.judgements()).extracting(Judgement::code).containsExactly("wet-room");
    assertThat(wet.cautions()).singleElement().asString().startsWith("Wet rooms");
  }

  @Test
  void heatedFloorsAskTheMakers() {
    UnderlayAdvice heated = UnderlayAdvice.of("Study", Base.MINERAL, Heating.HEATED, RoomUse.DRY, List.of(FILM, FOAM));
    assertThat(judged(heated, "thermal-resistance").outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(judged(heated, "thermal-resistance").advice()).startsWith("ask the makers");
    assertThat(heated.cautions()).hasSize(1);
    assertThat(advice(Base.MINERAL, FILM).cautions()).isEmpty();
  }
}
