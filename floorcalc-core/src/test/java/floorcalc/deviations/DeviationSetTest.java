package floorcalc.deviations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.boards.PackContent;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.StepChecks;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DeviationSetTest {
  private static final BoardGoods NARROW = BoardGoods.of(Length.parse("4 ft"), Length.parse("2 1/4 in"), Length.parse("3/4 in"), 20);
  private static final BoardGoods WIDE = BoardGoods.of(Length.parse("6 ft"), Length.parse("5 in"), Length.parse("3/4 in"), 10);

  private static List<Length> mm(String... values) {
    return Stream.of(values).map(Length::ofMillimetres).toList();
  }

  private static List<Length> of(int number, String value, int others, String other) {
    List<Length> all = new ArrayList<>(Collections.nCopies(number, Length.ofMillimetres(value)));
    all.addAll(Collections.nCopies(others, Length.ofMillimetres(other)));
    return all;
  }

  private static Judgement judged(String set, DeviationReadings readings, Deviation deviation) {
    Calculated<List<Judgement>> all = DeviationSet.named(set).judge(readings);
    StepChecks.assertStepsHold(all);
    return all.value().stream().filter(one -> one.code().equals("deviation-" + deviation.code())).findFirst().orElseThrow();
  }

  /** 2 1/4 in is 57.15 mm; .005 in is 0.127 mm; 57.277 mm is just within. */
  @Test
  void widthsAreHeldAgainstTheNominalWidth() {
    DeviationReadings within = DeviationReadings.of(NARROW).with(Deviation.WIDTH, mm("57.023", "57.277"));
    assertThat(judged("NWFA/NOFMA factory finished", within, Deviation.WIDTH).outcome()).isEqualTo(Outcome.MET);
    DeviationReadings off = DeviationReadings.of(NARROW).with(Deviation.WIDTH, mm("57.15", "57.022999"));
    Judgement judgement = judged("NWFA/NOFMA factory finished", off, Deviation.WIDTH);
    assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judgement.found()).isEqualTo("farthest off 57.022999 mm, by 0.127001 mm of 2, 1 beyond");
    assertThat(judgement.advice()).contains("do not lay");
    assertThat(judged("NWFA/NOFMA unfinished", off, Deviation.WIDTH).outcome()).as(".010 in when unfinished").isEqualTo(Outcome.MET);
  }

  /** Over 3 1/4 in: 0.5 % of 127 mm is 0.635 mm for all but 5 %, 1 % is 1.27 mm for all but 2 %. Of 40 boards two may be beyond, of 19 none. */
  @Test
  void aShareOfTheBoardsMayBeOutOfSquare() {
    String set = "NWFA/NOFMA factory finished";
    List<Judgement> two = outOfSquare(set, of(38, "0.6", 2, "0.7"));
    assertThat(two).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.MET);
    assertThat(outOfSquare(set, of(37, "0.6", 3, "0.7"))).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
    assertThat(outOfSquare(set, of(39, "0.6", 1, "1.28"))).extracting(Judgement::outcome).containsExactly(Outcome.NOT_MET, Outcome.MET);
    assertThat(outOfSquare(set, of(49, "0.6", 1, "1.28"))).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.MET);
    assertThat(outOfSquare(set, of(18, "0.6", 1, "0.7"))).extracting(Judgement::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
  }

  private static List<Judgement> outOfSquare(String set, List<Length> values) {
    Calculated<List<Judgement>> all = DeviationSet.named(set).judge(DeviationReadings.of(WIDE).with(Deviation.OUT_OF_SQUARE, values));
    StepChecks.assertStepsHold(all);
    return all.value().stream().filter(one -> one.code().equals("deviation-out-of-square")).toList();
  }

  /** .003 to .016 in is 0.0762 mm to 0.4064 mm. */
  @Test
  void tongueAndGrooveNeedPlay() {
    assertThat(judged("NWFA/NOFMA unfinished", DeviationReadings.of(NARROW).with(Deviation.TONGUE_FIT, mm("0.0762", "0.4064")),
        Deviation.TONGUE_FIT).outcome()).isEqualTo(Outcome.MET);
    Judgement tight = judged("NWFA/NOFMA unfinished", DeviationReadings.of(NARROW).with(Deviation.TONGUE_FIT, mm("0.07", "0.2")),
        Deviation.TONGUE_FIT);
    assertThat(tight.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(tight.found()).isEqualTo("0.07 mm to 0.2 mm of 2, 1 beyond");
  }

  /** 2 % of 90 mm is 1.8 mm, of 120 mm 2.4 mm but at most 2 mm. */
  @Test
  void aJointGrowsWithTheBoardUpToABound() {
    DeviationReadings narrow = DeviationReadings.ofWidth(Length.ofMillimetres(90));
    assertThat(judged("NF DTU 51.1", narrow.with(Deviation.JOINT, mm("0.4", "1.8")), Deviation.JOINT).outcome()).isEqualTo(Outcome.MET);
    Judgement open = judged("NF DTU 51.1", narrow.with(Deviation.JOINT, mm("0.4", "1.9")), Deviation.JOINT);
    assertThat(open.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(open.limit()).isEqualTo("2 % of the width, at most 2 mm (1.8 mm at 90 mm)");
    assertThat(open.advice()).contains("dry air");
    assertThat(judged("NF DTU 51.1", DeviationReadings.ofWidth(Length.ofMillimetres(120)).with(Deviation.JOINT, mm("2.1")), Deviation.JOINT)
        .outcome()).isEqualTo(Outcome.NOT_MET);
  }

  /** Boards of 100 mm: 2 mm for 95 of 100, none beyond 4 mm. */
  @Test
  void gluedParquetKeepsItsLimitInNinetyFiveOfAHundred() {
    DeviationReadings boards = DeviationReadings.ofWidth(Length.ofMillimetres(100));
    assertThat(joint(boards, of(19, "1.5", 1, "4"))).isEqualTo(Outcome.MET);
    assertThat(joint(boards, of(18, "1.5", 2, "2.1"))).as("two of twenty").isEqualTo(Outcome.NOT_MET);
    assertThat(joint(boards, of(19, "1.5", 1, "4.01"))).as("beyond twice").isEqualTo(Outcome.NOT_MET);
    assertThat(joint(boards, of(18, "1.5", 1, "2.1"))).as("5 % of 19 are none").isEqualTo(Outcome.NOT_MET);
    assertThat(joint(DeviationReadings.ofWidth(Length.ofMillimetres(160)), mm("3"))).as("wider than 140 mm").isEqualTo(Outcome.MET);
  }

  private static Outcome joint(DeviationReadings boards, List<Length> joints) {
    return judged("NF DTU 51.2", boards.with(Deviation.JOINT, joints), Deviation.JOINT).outcome();
  }

  /** Strips of 20 mm: the mean of five in a row at most 0.4 mm, one at most 0.8 mm. 0.2 + 0.2 + 0.8 + 0.4 + 0.4 = 2.0, the mean 0.4. */
  @Test
  void jointsOfStripsAreTakenFiveInARow() {
    DeviationReadings strips = DeviationReadings.ofWidth(Length.ofMillimetres(20));
    DeviationSet set = DeviationSet.named("NF DTU 51.2");
    assertThat(set.judge(strips.with(Deviation.JOINT, mm("0.2", "0.2", "0.8", "0.4", "0.4"))).value()).extracting(Judgement::outcome)
        .containsExactly(Outcome.MET, Outcome.MET);
    Calculated<List<Judgement>> later = set.judge(strips.with(Deviation.JOINT, mm("0.1", "0.2", "0.2", "0.8", "0.4", "0.5")));
    assertThat(later.value()).as("0.2 + 0.2 + 0.8 + 0.4 + 0.5 = 2.1, the mean 0.42").extracting(Judgement::outcome)
        .containsExactly(Outcome.NOT_MET, Outcome.MET);
    StepChecks.assertStepsHold(later);
    assertThat(set.judge(strips.with(Deviation.JOINT, mm("0.9", "0", "0", "0", "0"))).value()).extracting(Judgement::outcome)
        .as("one alone too wide").containsExactly(Outcome.MET, Outcome.NOT_MET);
    assertThat(set.judge(strips.with(Deviation.JOINT, mm("0.2", "0.2"))).value()).extracting(Judgement::outcome).as("too few for a mean")
        .containsExactly(Outcome.NOT_MEASURED, Outcome.MET);
  }

  @Test
  void whatWasNotMeasuredIsNeverAPass() {
    assertThat(DeviationSet.named("NF DTU 51.11").judge(DeviationReadings.ofWidth(Length.ofMillimetres(185))).value())
        .hasSize(7).allSatisfy(judgement -> assertThat(judgement.outcome()).isEqualTo(Outcome.NOT_MEASURED));
  }

  @Test
  void aSetThatIsSilentSaysWhichOneIsNot() {
    Judgement silent = DeviationSet.named("EN 13489").judge(DeviationReadings.of(WIDE).with(Deviation.WIDTH, mm("127"))).value().get(1);
    assertThat(silent.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(silent.advice()).contains("goods' papers", "'NWFA/NOFMA unfinished', 'NWFA/NOFMA factory finished'");
    Judgement thickness = DeviationSet.named("EN 13489").judge(DeviationReadings.of(WIDE).with(Deviation.THICKNESS, mm("19"))).value().get(1);
    assertThat(thickness.advice()).contains("none of the library's sets");
  }

  /** 0.5 % of 400 mm is 2 mm. */
  @Test
  void aJointRoundPanelsGoesByThePanel() {
    DeviationReadings panels = DeviationReadings.ofWidth(Length.ofMillimetres(90)).with(Deviation.PANEL_JOINT, mm("2"));
    assertThat(judged("NF DTU 51.1", panels.withPanel(Length.ofMillimetres(400)), Deviation.PANEL_JOINT).outcome()).isEqualTo(Outcome.MET);
    assertThat(judged("NF DTU 51.1", panels.withPanel(Length.ofMillimetres(399)), Deviation.PANEL_JOINT).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(DeviationSet.named("NF DTU 51.1").judge(panels).value()).filteredOn(one -> one.code().equals("deviation-panel-joint"))
        .singleElement().satisfies(one -> assertThat(one.advice()).isEqualTo("say how large the panels are"));
  }

  /** 5 for each 70 m2 begun: 5 for 70 m2, 10 for a little more. */
  @Test
  void aSourceMayAskForANumberOfReadings() {
    DeviationSet set = DeviationSet.named("SNiP 3.04.01");
    DeviationReadings five = DeviationReadings.ofWidth(Length.ofMillimetres(90)).with(Deviation.JOINT, mm("0.1", "0.2", "0.3", "0.4", "0.5"));
    assertThat(set.judge(five.over(Area.ofSquareMetres("70"))).findings()).isEmpty();
    assertThat(set.judge(five.over(Area.ofSquareMetres("70.01"))).findings()).singleElement()
        .satisfies(finding -> assertThat(finding.message()).contains("at least 10 readings", "there are 5"));
    assertThat(set.judge(five).value().get(0).outcome()).isEqualTo(Outcome.MET);
  }

  @Test
  void woodIsMeasuredAtItsMoisture() {
    DeviationSet set = DeviationSet.named("NWFA/NOFMA factory finished");
    DeviationReadings wide = DeviationReadings.of(WIDE.withConstruction(Construction.SOLID)).with(Deviation.WIDTH, mm("127"));
    assertThat(set.judge(wide.atMoisture(BigDecimal.TEN)).findings()).isEmpty();
    assertThat(set.judge(wide.atMoisture(new BigDecimal("10.1"))).findings()).singleElement()
        .satisfies(finding -> assertThat(finding.code()).isEqualTo("measured-at-other-moisture"));
  }

  @Test
  void ofMixedLengthsTheNearestCounts() {
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(Length.ofMillimetres(1800), 3), new PackContent(Length.ofMillimetres(1200), 2)),
        Length.ofMillimetres(150), Length.ofMillimetres(14));
    DeviationSet papers = DeviationSet.of("papers", "these boards", Stage.GOODS,
        List.of(DeviationLimit.atMost(Deviation.LENGTH, Length.ofMillimetres(1), Source.GIVEN)));
    Calculated<List<Judgement>> judged = papers.judge(DeviationReadings.of(mixed).with(Deviation.LENGTH, mm("1801", "1198.5", "1200")));
    assertThat(judged.value().get(0).found()).isEqualTo("farthest off 1198.5 mm, by 1.5 mm of 3, 1 beyond");
    StepChecks.assertStepsHold(judged);
  }

  @Test
  void aReadingInAnotherUnitIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> DeviationReadings.of(WIDE).with(Deviation.WIDTH, mm("127", "12.7")))
        .withMessage("reading 2 of the width of the boards is 12.7 mm, but they should have 127 mm; is the unit right?");
    assertThatIllegalArgumentException().isThrownBy(() -> DeviationReadings.of(WIDE).with(Deviation.JOINT, mm("-0.1")))
        .withMessageContaining("from 0 mm to 50 mm, but was -0.1 mm");
    assertThatIllegalArgumentException().isThrownBy(() -> DeviationReadings.ofWidth(Length.ofMillimetres(90)).with(Deviation.THICKNESS, mm("9")))
        .withMessageContaining("nominal thickness of the boards is not known");
    assertThatIllegalArgumentException().isThrownBy(() -> DeviationReadings.ofWidth(Length.ZERO)).withMessageContaining("more than 0 mm");
  }

  @Test
  void aSetForOtherBoardsIsNamed() {
    DeviationReadings engineered = DeviationReadings.of(WIDE).with(Deviation.WIDTH, mm("127"));
    assertThat(DeviationSet.named("NWFA/NOFMA unfinished").judge(engineered).findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("set-for-other-boards");
      assertThat(finding.message()).contains("is for unfinished solid boards", "these boards are engineered");
    });
    assertThat(DeviationSet.named("NWFA/NOFMA unfinished").judge(DeviationReadings.of(WIDE.withConstruction(Construction.SOLID))
        .with(Deviation.WIDTH, mm("127"))).findings()).isEmpty();
  }

  /** 1 of 4 is beyond where 5 % may be: 20 readings with no other beyond would keep it. 3 beyond where 2 % may be: 150. */
  @Test
  void fewReadingsAreSaidToBeFew() {
    DeviationReadings boards = DeviationReadings.ofWidth(Length.ofMillimetres(100));
    assertThat(judged("NF DTU 51.2", boards.with(Deviation.JOINT, mm("0.4", "1.9", "2.2", "0.4")), Deviation.JOINT).advice())
        .startsWith("measure more: with 1 beyond, 20 readings and more would keep it; read the air");
    assertThat(judged("NF DTU 51.2", boards.with(Deviation.JOINT, mm("0.4", "4.2")), Deviation.JOINT).advice()).startsWith("read the air");
    assertThat(outOfSquare("NWFA/NOFMA factory finished", of(10, "0.1", 3, "1.3")).get(0).advice())
        .startsWith("measure more: with 3 beyond, 150 readings and more would keep it; do not lay");
  }

  @Test
  void readingsAreEqualIfAllOfThemAre() {
    DeviationReadings one = DeviationReadings.of(WIDE).with(Deviation.WIDTH, mm("127")).atMoisture(BigDecimal.TEN);
    DeviationReadings other = DeviationReadings.of(WIDE).atMoisture(BigDecimal.TEN).with(Deviation.WIDTH, mm("127"));
    assertThat(one).isEqualTo(other).hasSameHashCodeAs(other).hasToString("1 reading of 1 kind, boards 127 mm wide");
    assertThat(one).isNotEqualTo(other.with(Deviation.WIDTH, mm("127.1"))).isNotEqualTo(other.over(Area.ofSquareMetres("1")))
        .isNotEqualTo(other.withPanel(Length.ofMillimetres(400))).isNotEqualTo(DeviationReadings.of(NARROW));
    assertThat(one.with(Deviation.WIDTH, List.of()).all()).isEmpty();
  }

  @Test
  void eachSetHasANameOfItsOwnAndASource() {
    assertThat(DeviationSet.all()).extracting(DeviationSet::name).doesNotHaveDuplicates();
    assertThat(DeviationSet.all()).allSatisfy(set -> {
      assertThat(DeviationSet.named(set.name())).isSameAs(set);
      assertThat(set.limits()).allSatisfy(limit -> assertThat(limit.source().title()).isNotEmpty());
    });
    assertThat(DeviationSet.all(Stage.GOODS)).hasSize(3);
    assertThatIllegalArgumentException().isThrownBy(() -> DeviationSet.named("x")).withMessageContaining("'NF DTU 51.11'");
  }
}
