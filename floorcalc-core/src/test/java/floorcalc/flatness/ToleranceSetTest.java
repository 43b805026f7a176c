package floorcalc.flatness;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ToleranceSetTest {
  private static Length mm(String millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static HeightProfile profile(String spacing, String... heights) {
    return HeightProfile.ofEqualSpacing(mm(spacing), List.of(heights).stream().map(Length::ofMillimetres).toList());
  }

  /** One metre of dip in a floor of 3 m, 1.5 mm deep, read each 100 mm: 3 m of level floor with readings 10 to 20 lower. */
  private static HeightProfile dip(String deepest) {
    long depth = mm(deepest).toNanometres();
    return HeightProfile.ofEqualSpacing(mm("100"), IntStream.rangeClosed(0, 30)
        .mapToObj(i -> Length.ofNanometres(-depth * Math.max(0, 5 - Math.abs(i - 15)) / 5)).toList());
  }

  /**
   * A dip of 1 m, 2.5 mm in its middle, in a level floor. 8 ft and 4 ft bridge it: 2.5 mm, within 3 but beyond 2. 10 in: at best
   * 127 mm of slope at either side of the middle, 2.5 · 127 / 500 = 0.635 mm.
   */
  @Test
  void severalSpansAtOnce() {
    Calculated<List<SpanCheck>> judged = ToleranceSet.COMMON_PRACTICE.judge(dip("2.5"), RestRule.WORST);
    List<SpanCheck> checks = judged.value();

    assertThat(checks).extracting(SpanCheck::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET, Outcome.MET);
    assertThat(checks).extracting(check -> check.found().orElseThrow()).containsExactly(mm("2.5"), mm("2.5"), mm("0.635"));
    assertThat(checks.get(1).where()).isEqualTo("edge from 780.8 mm, resting at 1000 mm and 2000 mm, lowest at 1500 mm");
    assertThat(checks.get(1).advice()).startsWith("grind at 1000 mm or 2000 mm, or fill at 1500 mm; grinding concrete raises"
        + " silica dust");
    assertThat(checks.get(1).judgement().isMet()).isFalse();
    assertThat(checks.get(1).judgement().limit()).isEqualTo("2 mm under 1219.2 mm");
    assertThat(checks.get(0).toString()).isEqualTo("2438.4 mm: 2.5 mm, limit 3 mm under 2438.4 mm, met");
    assertThat(judged.findings()).isEmpty();
    assertStepsHold(judged);
  }

  /** Readings 300 mm apart say nothing on 10 in; a line of 3 m nothing on 10 ft. What is not measured is no pass. */
  @Test
  void notMeasuredIsNoPass() {
    List<SpanCheck> checks = ToleranceSet.COMMON_PRACTICE.judge(
        profile("300", "0", "0", "0", "0", "0", "0", "0", "0", "0", "0"), RestRule.GRAVITY).value();
    assertThat(checks).extracting(SpanCheck::outcome).containsExactly(Outcome.MET, Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(checks.get(2).found()).isEmpty();
    assertThat(checks.get(2).advice()).isEqualTo("measure lines of at least 254 mm, with readings at most 127 mm apart, or"
        + " lay an edge of 254 mm and read the gaps (0 mm was found, but readings are up to 300 mm apart)");

    SpanCheck long10 = ToleranceSet.named("MFMA").judge(dip("1"), RestRule.WORST).value().get(0);
    assertThat(long10.outcome()).isEqualTo(Outcome.NOT_MEASURED);
    assertThat(long10.judgement().found()).isEmpty();
  }

  /** A kink of 2 · 6 mm in 300 mm: under 254 mm, 127 mm at each side, 6 · 127 / 300 = 2.54 mm, beyond 1 mm whatever lies between. */
  @Test
  void aLimitBrokenBetweenFewReadingsIsBroken() {
    SpanCheck check = ToleranceSet.COMMON_PRACTICE.judge(profile("300", "6", "0", "6"), RestRule.WORST).value().get(2);
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(check.found()).contains(mm("2.54"));
  }

  /**
   * The dip of 1 m under edges of 1 m and 2 m rests 1 m apart: DIN line 4 allows 3 mm there, so 3.4 mm is not met. Under 0.1 m edges
   * readings 100 mm apart show nothing: that length is left out.
   */
  @Test
  void aSetByContactDistance() {
    Calculated<List<SpanCheck>> judged = ToleranceSet.named("DIN 18202 line 4").judge(dip("3.4"), RestRule.WORST);
    assertThat(judged.value()).extracting(SpanCheck::span).containsExactly(mm("1000"), mm("2000"));
    assertThat(judged.value()).allSatisfy(check -> {
      assertThat(check.outcome()).isEqualTo(Outcome.NOT_MET);
      assertThat(check.found()).contains(mm("3.4"));
      assertThat(check.limit().span()).isEqualTo(mm("1000"));
      assertThat(check.limit().gap()).isEqualTo(mm("3"));
    });
    assertThat(ToleranceSet.named("DIN 18202 line 3").judge(dip("3.4"), RestRule.WORST).value())
        .extracting(SpanCheck::outcome).containsOnly(Outcome.MET);
    assertStepsHold(judged);
  }

  /**
   * Contacts 600 mm apart, 2.2 mm deep, beside contacts 900 mm apart, 2.9 mm deep. Line 4 allows 2 mm at 600 mm (2.11) and 3 mm at 900 mm (2.78):
   * the shallower of the two is the one that breaks the limit.
   */
  @Test
  void theRestFarthestBeyondItsOwnLimitDecides() {
    HeightProfile profile = profile("100", "0", "0", "-1", "-2", "-2.2", "-2", "-1", "0", "0", "-1", "-2", "-2.5", "-2.9",
        "-2.9", "-2.5", "-2", "-1", "0", "0");
    Calculated<List<SpanCheck>> judged = ToleranceSet.named("DIN 18202 line 4").judge(profile, RestRule.WORST);
    SpanCheck check = judged.value().get(0);
    assertThat(check.span()).isEqualTo(mm("1000"));
    assertThat(check.found()).contains(mm("2.2"));
    assertThat(check.limit().span()).isEqualTo(mm("600"));
    assertThat(check.limit().gap()).isEqualTo(mm("2"));
    assertThat(check.outcome()).isEqualTo(Outcome.NOT_MET);
    assertStepsHold(judged);
  }

  /** A hump of 6 mm: an edge resting on it shows no gap beyond its slopes, but on blocks at its ends it is 6 mm off. */
  @Test
  void anEdgeOnEqualBlocksSeesHumpsToo() {
    HeightProfile hump = profile("1000", "0", "6", "0");
    assertThat(Straightedge.of(mm("2000")).greatest(hump, RestRule.WORST).gap()).isEqualTo(Length.ZERO);
    Calculated<List<SpanCheck>> judged = ToleranceSet.named("NHBC 9.1.5").judge(hump, RestRule.WORST);
    assertThat(judged.value().get(0).found()).contains(mm("6"));
    assertThat(judged.value().get(0).outcome()).isEqualTo(Outcome.NOT_MET);
    assertThat(judged.value().get(0).rest()).isEmpty();
    assertStepsHold(judged);
  }

  /**
   * Ten placements of 1 m each 100 mm along 1.9 m: a dip of 4 mm at one reading is under nine of them (it is the left end of the tenth).
   * At most 1 of 10 may exceed: the ninth in order decides.
   */
  @Test
  void aShareOfThePlacements() {
    List<Length> heights = new ArrayList<>(IntStream.range(0, 20).mapToObj(i -> Length.ZERO).toList());
    heights.set(9, mm("-4"));
    HeightProfile profile = HeightProfile.ofEqualSpacing(mm("100"), heights);
    assertThat(Straightedge.of(mm("1000")).atReadings(profile)).hasSize(10);
    ToleranceSet most = ToleranceSet.of("own", "a test", List.of(new SpanLimit(mm("1000"), mm("3"), 10, Source.GIVEN),
        new SpanLimit(mm("1000"), mm("3"), 11, Source.GIVEN)));
    List<SpanCheck> checks = most.judge(profile, RestRule.WORST).value();
    assertThat(checks).extracting(SpanCheck::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
    assertThat(checks).extracting(check -> check.found().orElseThrow()).containsExactly(Length.ZERO, mm("4"));
    assertThat(most.gapAllowed(mm("1000"))).isEmpty();
  }

  @Test
  void gapsReadByHand() {
    Calculated<List<SpanCheck>> judged = ToleranceSet.COMMON_PRACTICE.judge(List.of(
        new GapReading(Length.parse("8 ft"), mm("2.5"), "by the window"),
        new GapReading(Length.parse("8 ft"), mm("3.5"), "at the door"),
        new GapReading(Length.parse("4 ft"), mm("2"), "at the door"),
        new GapReading(mm("2000"), mm("9"), "hall")));
    assertThat(judged.value()).extracting(SpanCheck::outcome)
        .containsExactly(Outcome.NOT_MET, Outcome.MET, Outcome.NOT_MEASURED);
    assertThat(judged.value().get(0).where()).isEqualTo("at the door");
    assertThat(judged.findings()).extracting(Finding::code).containsExactly("span-without-limit");
    assertThat(judged.findings().get(0).message()).isEqualTo("'common practice' has no limit for the gap of 9 mm read under"
        + " 2000 mm; give gaps read under 2438.4 mm or 1219.2 mm or 254 mm");
    assertStepsHold(judged);
  }

  /** Line 3 at 2 m: 4 + 6 · (2 − 1) / 3 = 6 mm. */
  @Test
  void gapsReadByHandAtAnyContactDistance() {
    Calculated<List<SpanCheck>> judged = ToleranceSet.named("DIN 18202 line 3").judge(List.of(
        new GapReading(mm("2000"), mm("6"), ""), new GapReading(mm("2000"), mm("6.1"), ""), new GapReading(mm("50"), mm("1"), "")));
    assertThat(judged.value()).extracting(SpanCheck::outcome).containsExactly(Outcome.MET, Outcome.NOT_MET);
    assertThat(judged.findings()).hasSize(1);
    assertThat(ToleranceSet.named("DIN 18202 line 3").judge(List.of()).value()).extracting(SpanCheck::outcome)
        .containsExactly(Outcome.NOT_MEASURED);
    assertStepsHold(judged);
  }

  /** Readings that may be off by 0.3 mm move a gap by at most 0.6 mm: 2.5 mm may be within 2 or beyond 3. */
  @Test
  void withinTheInstrumentsUncertainty() {
    Calculated<List<SpanCheck>> judged = ToleranceSet.COMMON_PRACTICE.judge(dip("2.5").withUncertainty(mm("0.3")),
        RestRule.WORST);
    assertThat(judged.findings()).extracting(Finding::code).containsExactly("within-uncertainty", "within-uncertainty",
        "within-uncertainty");
    assertThat(judged.findings().get(0).message()).startsWith("a gap of 2.5 mm is nearer to the limit of 3 mm than 0.6 mm");
    assertThat(ToleranceSet.COMMON_PRACTICE.judge(dip("2.5").withUncertainty(mm("0.1")), RestRule.WORST).findings()).isEmpty();
  }

  @Test
  void namesAreUniqueAndUnknownOnesRefused() {
    assertThat(ToleranceSet.all()).extracting(ToleranceSet::name).doesNotHaveDuplicates();
    assertThat(ToleranceSet.all()).allSatisfy(set -> {
      assertThat(ToleranceSet.named(set.name())).isSameAs(set);
      assertThat(set.floor()).isNotEmpty();
      assertThat(set.toString()).isEqualTo(set.name());
    });
    assertThatThrownBy(() -> ToleranceSet.named("flat enough")).isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("there is no tolerance set 'flat enough'; the sets are: 'common practice', 'DIN 18202 line 1'");
    assertThatThrownBy(() -> ToleranceSet.of("own", "none", List.of())).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void limitsAndReadingsOutOfRangeAreRefused() {
    assertThatThrownBy(() -> new SpanLimit(mm("1000"), mm("3"), 0, Source.GIVEN)).hasMessage(
        "a share must be 1 to 100 percent, but was 0");
    assertThatThrownBy(() -> SpanLimit.of(Length.ZERO, mm("3"), Source.GIVEN)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new GapReading(mm("8"), mm("5"), "")).hasMessageContaining("check the units");
    assertThatThrownBy(() -> new GapReading(mm("8"), mm("-1"), "")).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new GapReading(Length.ZERO, mm("0"), "")).isInstanceOf(IllegalArgumentException.class);
  }

  /** Beyond its last distance a table by contact distance goes on, below its first it is silent; it states five distances. */
  @Test
  void aTableByContactDistanceIsSilentBelowItsFirst() {
    ToleranceSet line3 = ToleranceSet.named("DIN 18202 line 3");
    assertThat(line3.gapAllowed(Length.parse("100 mm"))).isPresent();
    assertThat(line3.gapAllowed(Length.parse("99 mm"))).isEmpty();
    assertThat(ToleranceSet.all()).filteredOn(set -> set.name().startsWith("DIN"))
        .allSatisfy(set -> assertThat(set.limits()).extracting(SpanLimit::span).containsExactly(mm("100"), mm("1000"), mm("4000"), mm("10000"), mm("15000")))
        .hasSize(8);
  }

  /** How each set is known, as the tables of published figures say; where a limit is one for a share of placements it is from memory. */
  @Test
  void everySetSaysHowItIsKnown() {
    Set<String> read = Set.of("NHBC 9.1.5", "NF DTU 51.11 finished", "NF DTU 51.1", "NFCA", "MFMA");
    List<String> recalled = List.of("ASTM F710", "ACI 117-", "GB 50209");
    for (ToleranceSet set : ToleranceSet.all()) {
      Standing expected = set == ToleranceSet.COMMON_PRACTICE ? Standing.COMMON_PRACTICE : read.contains(set.name()) ? Standing.READ
          : recalled.stream().anyMatch(set.name()::startsWith) ? Standing.FROM_MEMORY : Standing.QUOTED;
      assertThat(set.limits()).as(set.name()).allSatisfy(limit -> {
        assertThat(limit.source().standing()).isEqualTo(expected);
        assertThat(limit.percent() == 100 || expected == Standing.FROM_MEMORY).isTrue();
      });
    }
    assertThat(ToleranceSet.all()).noneMatch(set -> set.name().startsWith("BS 8201"));
    assertThat(ToleranceSet.COMMON_PRACTICE.limits()).hasSize(3);
  }
}
