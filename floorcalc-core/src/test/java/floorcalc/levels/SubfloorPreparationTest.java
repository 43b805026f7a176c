package floorcalc.levels;

import static floorcalc.levels.Grids.mm;
import static floorcalc.levels.Grids.set;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.measure.Mass;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class SubfloorPreparationTest {
  /** A ridge of 4 mm across two rows, a metre apart; readings every 500 mm. */
  private static final Levels RIDGE = Grids.of(500, 1000, "0 0 4 0 0", "0 0 4 0 0");

  @Test
  void filledBesideARidge() {
    // From 0 to the ridge an edge is at 2 mm half way; 1 mm is allowed, so 1 mm is filled there, on both sides, in both rows. Each of these
    // readings stands for 500 mm by half of 1000 mm: 0.25 m2. In all 4 * 0.25 m2 * 1 mm = 1 litre.
    Calculated<SubfloorPreparation> calculated = SubfloorPreparation.of(RIDGE, set("1", "2000"), PreparationOptions.fillOnly());
    SubfloorPreparation work = calculated.value();
    assertThat(work.toFill()).extracting(spot -> spot.place() + " " + spot.fill()).hasSize(4)
        .allSatisfy(text -> assertThat(text).endsWith(" 1 mm"));
    assertThat(work.toGrind()).isEmpty();
    assertThat(work.fillerLitres()).isEqualByComparingTo("1");
    assertThat(work.leastFillerLitres()).isEqualByComparingTo("1");
    assertThat(work.area()).isEqualTo(Area.ofSquareMetres("2"));
    assertThat(work.flatnessAfter().outcome()).isEqualTo(Outcome.MET);
    // 4 mm over 2 m2 are 8 litres; the mean depth below the ridge is 3 mm (a quarter of the floor is the ridge's), 6 litres.
    assertThat(work.worstDepthTimesArea()).isEqualByComparingTo("8");
    assertThat(work.meanDepthTimesArea()).isEqualByComparingTo("6");
    assertStepsHold(calculated);
  }

  @Test
  void theRidgeGround() {
    // Ground by 2 mm it is 2 mm high, the edge is at 1 mm half way: no filler. 2 readings * 0.25 m2 * 2 mm = 1 litre of dust.
    Calculated<SubfloorPreparation> calculated =
        SubfloorPreparation.of(RIDGE, set("1", "2000"), PreparationOptions.grindingUpTo(mm("3")));
    SubfloorPreparation work = calculated.value();
    assertThat(work.toFill()).isEmpty();
    assertThat(work.toGrind()).hasSize(2).allSatisfy(spot -> assertThat(spot.grind()).isEqualTo(mm("2")));
    assertThat(work.groundLitres()).isEqualByComparingTo("1");
    assertThat(work.leastGroundLitres().orElseThrow()).isBetween(new BigDecimal("0.9998"), BigDecimal.ONE);
    assertStepsHold(calculated);
  }

  @Test
  void groundAsFarAsAllowedAndFilled() {
    // Ground by 0.5 mm the ridge is 3.5 mm high; the readings at the ends, where the edge rests too, come down to -0.5. Half way the edge
    // is at 1.5 mm, so 0.5 mm of filler at four readings: half a litre. Ground: 2 * 0.25 m2 and 4 * 0.125 m2, 0.5 mm deep: half a litre.
    SubfloorPreparation work =
        SubfloorPreparation.of(RIDGE, set("1", "2000"), PreparationOptions.grindingUpTo(mm("0.5"))).value();
    assertThat(work.fillerLitres()).isEqualByComparingTo("0.5");
    assertThat(work.groundLitres()).isEqualByComparingTo("0.5");
    assertThat(work.deepestGrinding()).isEqualTo(mm("0.5"));
    assertThat(work.deepestFilling()).isEqualTo(mm("0.5"));
  }

  @Test
  void leastWorkGrindsIfThatIsCheaper() {
    // Each mm ground off the ridge saves half a mm at each of two readings: litre for litre. So the cheaper of the two is all there is.
    PreparationOptions options = PreparationOptions.grindingUpTo(mm("3"));
    SubfloorPreparation grinds = SubfloorPreparation.of(RIDGE, set("1", "2000"),
        options.leastWork(BigDecimal.ONE, BigDecimal.valueOf(3))).value();
    assertThat(grinds.groundLitres()).isEqualByComparingTo("1");
    assertThat(grinds.fillerLitres()).isEqualByComparingTo("0");
    assertThat(grinds.work().orElseThrow()).isEqualByComparingTo("1");
    assertThat(grinds.leastWork().orElseThrow()).isBetween(new BigDecimal("0.9998"), BigDecimal.ONE);
    Calculated<SubfloorPreparation> fills = SubfloorPreparation.of(RIDGE, set("1", "2000"),
        options.leastWork(BigDecimal.valueOf(3), BigDecimal.valueOf(2)));
    assertThat(fills.value().groundLitres()).isEqualByComparingTo("0");
    assertThat(fills.value().work().orElseThrow()).isEqualByComparingTo("2");
    assertThat(fills.value().leastFillerLitres()).isEqualByComparingTo("0");
    assertStepsHold(fills);
  }

  @Test
  void aHollowIsFilledToTheTolerance() {
    // 0 -4 0: the middle must come to -3. In the middle of a 3 by 3 grid of 500 mm it stands for 0.25 m2: 0.25 litres.
    SubfloorPreparation work = SubfloorPreparation.of(Grids.of(500, 500, "0 0 0", "0 -4 0", "0 0 0"), set("3", "1000"),
        PreparationOptions.fillOnly()).value();
    assertThat(work.fillerLitres()).isEqualByComparingTo("0.25");
    assertThat(work.toFill()).singleElement().extracting(SpotWork::made).isEqualTo(mm("-3"));
  }

  @Test
  void fillingOneSpotMayAskForAnother() {
    // 2 mm under 1 m. The middles of the sides, at -4 between corners at 0, must come to -2. With them the edge over the middle of the
    // floor rises from -4 to -2, so that the middle must come from -8 to -4, where before -6 would have done.
    SubfloorPreparation work = SubfloorPreparation.of(Grids.of(500, 500, "0 -4 0", "-4 -8 -4", "0 -4 0"), set("2", "1000"),
        PreparationOptions.fillOnly()).value();
    assertThat(work.spots()).extracting(spot -> spot.made().toMillimetreString())
        .containsExactly("0", "-2", "0", "-2", "-4", "-2", "0", "-2", "0");
  }

  @Test
  void stepsAreRoundedUp() {
    // 0.25 mm must be filled: in steps of 0.1 mm that is 0.3, in steps of 1 nm exactly 0.25.
    Levels levels = Grids.of(500, 500, "0 -3.25 0", "0 0 0");
    PreparationOptions options = PreparationOptions.fillOnly();
    assertThat(SubfloorPreparation.of(levels, set("3", "1000"), options).value().deepestFilling()).isEqualTo(mm("0.3"));
    assertThat(SubfloorPreparation.of(levels, set("3", "1000"), options.inStepsOf(Length.ofNanometres(1))).value()
        .deepestFilling()).isEqualTo(mm("0.25"));
  }

  @Test
  void bagsAreWhole() {
    // One litre at 1.7 kg per litre is 1.7 kg: one bag of 20 kg; of 0.8 kg, 2.125, three bags.
    FillerGoods goods = FillerGoods.of(new BigDecimal("1.7"), new Mass(BigDecimal.valueOf(20)));
    SubfloorPreparation work = SubfloorPreparation.of(RIDGE, set("1", "2000"), PreparationOptions.fillOnly().with(goods)).value();
    assertThat(work.fillerMass().orElseThrow().kilograms()).isEqualByComparingTo("1.7");
    assertThat(work.bags()).contains(1L);
    Calculated<SubfloorPreparation> small = SubfloorPreparation.of(RIDGE, set("1", "2000"), PreparationOptions.fillOnly()
        .with(FillerGoods.of(new BigDecimal("1.7"), new Mass(new BigDecimal("0.8")))));
    assertThat(small.value().bags()).contains(3L);
    assertStepsHold(small);
  }

  @Test
  void cautionsAreSaidWhereTheyApply() {
    FillerGoods thin = FillerGoods.of(BigDecimal.ONE, new Mass(BigDecimal.TEN)).inLayers(mm("2"), mm("10"));
    assertThat(codes(PreparationOptions.fillOnly().with(thin))).containsExactly("filler-instructions", "filler-thin");
    FillerGoods thick = FillerGoods.of(BigDecimal.ONE, new Mass(BigDecimal.TEN)).inLayers(mm("0"), mm("0.5"));
    assertThat(codes(PreparationOptions.fillOnly().with(thick))).containsExactly("filler-instructions", "filler-thick");
    assertThat(codes(PreparationOptions.grindingUpTo(mm("3")))).containsExactly("grinding-dust", "asbestos", "hidden-services");
  }

  private static List<String> codes(PreparationOptions options) {
    return SubfloorPreparation.of(RIDGE, set("1", "2000"), options).findings().stream().map(Finding::code).toList();
  }

  @Test
  void aFlatFloorNeedsNothing() {
    Calculated<SubfloorPreparation> calculated = SubfloorPreparation.of(Grids.of(500, 500, "0 1 2", "1 2 3", "2 3 4"),
        set("1", "1000"), PreparationOptions.grindingUpTo(mm("2")));
    assertThat(calculated.value().toFill()).isEmpty();
    assertThat(calculated.value().toGrind()).isEmpty();
    assertThat(calculated.findings()).isEmpty();
    assertStepsHold(calculated);
  }

  @Test
  void aSpanThatCannotBeJudgedIsNamed() {
    Calculated<SubfloorPreparation> calculated =
        SubfloorPreparation.of(RIDGE, set("1", "2000", "1", "254"), PreparationOptions.fillOnly());
    assertThat(calculated.findings()).extracting(Finding::code).contains("span-not-measured");
    assertThat(calculated.value().flatnessAfter().outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThatThrownBy(() -> SubfloorPreparation.of(RIDGE, set("1", "254"), PreparationOptions.fillOnly()))
        .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("nowhere do three readings in line lie within it");
  }

  @Test
  void badOptionsAreRefused() {
    PreparationOptions options = PreparationOptions.fillOnly();
    assertThatThrownBy(() -> PreparationOptions.grindingUpTo(mm("-1"))).hasMessageContaining("must be 0 mm to 100 mm, but was -1 mm");
    assertThatThrownBy(() -> options.inStepsOf(Length.ZERO)).hasMessageContaining("more than 0 mm");
    assertThatThrownBy(() -> options.leastWork(BigDecimal.ZERO, BigDecimal.ONE)).hasMessageContaining("0.001 to 1000000");
    assertThatThrownBy(() -> SubfloorPreparation.of(RIDGE, set("1", "2000"), options.inStepsOf(mm("2"))))
        .hasMessageContaining("no more than the smallest gap allowed, 1 mm, but were 2 mm");
    Mass bag = new Mass(BigDecimal.TEN);
    assertThatThrownBy(() -> FillerGoods.of(BigDecimal.ZERO, bag)).hasMessageContaining("kilograms per litre");
    assertThatThrownBy(() -> FillerGoods.of(BigDecimal.ONE, new Mass(BigDecimal.ZERO))).hasMessageContaining("mass of a bag");
    assertThatThrownBy(() -> FillerGoods.of(BigDecimal.ONE, bag).inLayers(mm("3"), mm("3"))).hasMessageContaining("thinnest layer");
  }
}
