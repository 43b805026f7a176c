package floorcalc.fittings;

import static floorcalc.fittings.PieceNotchesTest.mm;
import static floorcalc.fittings.PieceNotchesTest.notches;
import static floorcalc.fittings.PieceNotchesTest.ring;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.fittings.ThinPart.Beyond;
import floorcalc.fittings.ThinPart.Kind;
import floorcalc.fittings.ThinPart.Run;
import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class ThinPartsTest {
  private static final CutOutLimits LIMITS = CutOutLimits.COMMON_PRACTICE;

  private static Calculated<List<ThinPart>> thin(String text) {
    return ThinParts.of(notches(text).value(), LIMITS);
  }

  /** A corner out of 163 mm leaves 185 - 163 = 22 mm over 310 mm. */
  @Test
  void aTongueAlongTheBoard() {
    Calculated<List<ThinPart>> thin = thin("0,0 690,0 690,163 1000,163 1000,185 0,185");
    assertThat(thin.value()).containsExactly(new ThinPart("a-1.2.3", Kind.TONGUE, Run.ALONG, mm("22"), mm("310"), mm("690"), mm("163"),
        Optional.of(BoardSide.FAR_EDGE), Beyond.BOARD));
    assertThat(thin.steps()).singleElement().extracting(step -> step.result()).isEqualTo(mm("28")); // 50 - 22
    assertStepsHold(thin);
    assertThat(thin.findings()).singleElement().extracting(Finding::message).isEqualTo("a tongue 22 mm wide and 310 mm long along the"
        + " board, at the far edge, from 690 mm to 1000 mm from the start end may break, at least 50 mm is asked for; move the start"
        + " line by 22 mm towards the starting wall to put a row line on the notch, or by 28 mm away from it to leave 50 mm; or lay a"
        + " wider board there, or glue the part down on its own");
    assertThat(thin.findings()).extracting(Finding::code).containsExactly("thin-tongue");
  }

  /** Where the gap lies beyond, no other start line leaves more. */
  @Test
  void atTheGapTheFloorIsNoWider() {
    PieceNotches shape = notches("0,0 690,0 690,163 1000,163 1000,185 0,185").value();
    assertThat(ThinParts.of(shape, LIMITS, Set.of(BoardSide.FAR_EDGE)).findings()).singleElement().extracting(Finding::message).asString()
        .endsWith("lay the part as a piece of its own, or leave it out and cover the place");
    assertThat(ThinParts.of(shape, LIMITS, Set.of(BoardSide.START_EDGE)).value().get(0).beyond()).isEqualTo(Beyond.BOARD);
  }

  /** A notch 30 mm from the start end and 140 mm deep leaves 30 mm of short grain over 140 mm. */
  @Test
  void aTongueAcrossTheBoardAtAnEnd() {
    Calculated<List<ThinPart>> thin = thin("0,0 1000,0 1000,185 190,185 190,45 30,45 30,185 0,185");
    // along, the 45 mm that are left under the notch of 160 mm are a bridge as well: 45 < 50 and 160 > 45
    assertThat(thin.value()).containsExactly(
        new ThinPart("a-1.2.3", Kind.BRIDGE, Run.ALONG, mm("45"), mm("160"), mm("30"), mm("0"), Optional.of(BoardSide.START_EDGE), Beyond.BOARD),
        new ThinPart("a-1.2.3", Kind.TONGUE, Run.ACROSS, mm("30"), mm("140"), mm("0"), mm("45"), Optional.of(BoardSide.START_END), Beyond.BOARD));
    assertThat(thin.value().get(1).advice(mm("50"))).isEqualTo("let two pieces meet at the notch: an end joint 30 mm from the start end"
        + " of the piece, or one at least 20 mm farther from the notch");
  }

  @Test
  void aBridgeBetweenTwoNotches() {
    Calculated<List<ThinPart>> thin = thin("0,0 300,0 300,80 500,80 500,0 1000,0 1000,185 450,185 450,120 250,120 250,185 0,185");
    // 80 to 120 across where the notches lie side by side, from 300 to 450 along: 40 wide, 150 long
    assertThat(thin.value()).containsExactly(
        new ThinPart("a-1.2.3", Kind.BRIDGE, Run.ALONG, mm("40"), mm("150"), mm("300"), mm("80"), Optional.empty(), Beyond.BOARD));
    assertThat(thin.findings()).extracting(Finding::code).containsExactly("thin-bridge");
    assertThat(thin.value().get(0).inWords()).isEqualTo("a bridge 40 mm wide and 150 mm long along the board, between notches,"
        + " from 300 mm to 450 mm from the start end");
  }

  @Test
  void aBridgeBesideAHole() {
    Calculated<List<ThinPart>> thin = ThinParts.of(PieceNotches.of(new BoardPiece("a", ring("0,0 1000,0 1000,185 0,185"),
        List.of(ring("300,60 300,150 420,150 420,60")))).value(), LIMITS);
    // 185 - 150 = 35 beyond it over 120; the 60 before it are enough
    assertThat(thin.value()).singleElement().satisfies(part -> {
      assertThat(part.kind()).isEqualTo(Kind.BRIDGE);
      assertThat(part.width()).isEqualTo(mm("35"));
      assertThat(part.length()).isEqualTo(mm("120"));
    });
  }

  @Test
  void atAnArcOnlyTheThinReachCounts() {
    // between the chords (400,160) to (420,170) to (500,170): 185 - 160 = 25 wide at the least 15; thinner than 50 from y = 135 on
    Calculated<List<ThinPart>> thin = thin("0,0 300,0 340,100 400,160 420,170 580,170 600,160 660,100 700,0 1000,0 1000,185 0,185");
    // from (340,100) to (400,160) the slope is 1: y is 135 at x = 375; likewise at 625 on the other side
    assertThat(thin.value()).containsExactly(
        new ThinPart("a-1.2.3", Kind.BRIDGE, Run.ALONG, mm("15"), mm("250"), mm("375"), mm("135"), Optional.of(BoardSide.FAR_EDGE), Beyond.BOARD));
  }

  @Test
  void whatIsWideOrShortOrNoNotchIsLeftAlone() {
    // 50 wide is enough
    assertThat(thin("0,0 690,0 690,135 1000,135 1000,185 0,185").value()).isEmpty();
    // 22 wide but only 20 long
    assertThat(thin("0,0 980,0 980,163 1000,163 1000,185 0,185").value()).isEmpty();
    // a strip that is narrow from end to end is the row rule's matter
    assertThat(thin("0,0 500,0 500,10 700,10 700,0 1000,0 1000,40 0,40").value()).isEmpty();
    // a taper, a slant and a bent taper have no notch
    assertThat(thin("0,0 1000,0 1000,20 0,185").value()).isEmpty();
    assertThat(thin("0,0 1000,0 400,185 0,185").value()).isEmpty();
    assertThat(thin("0,0 1000,0 1000,20 500,40 0,185").value()).isEmpty();
  }

  @Test
  void theLimitsAreData() {
    String tongue = "0,0 690,0 690,163 1000,163 1000,185 0,185";
    assertThat(ThinParts.of(notches(tongue).value(), LIMITS.withLeastTongue(mm("22"), Source.GIVEN)).value()).isEmpty();
    assertThat(ThinParts.of(notches(tongue).value(), LIMITS.withLeastTongue(mm("23"), Source.GIVEN)).findings())
        .extracting(Finding::source).containsExactly(Source.GIVEN);
    assertThat(ThinParts.of(notches(tongue).value(), LIMITS.withLeastTongue(Length.ZERO, Source.GIVEN)).value()).isEmpty();
    assertThatThrownBy(() -> LIMITS.withLeastTongue(mm("501"), Source.GIVEN)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("narrowest tongue must be from 0 mm to 500 mm, but was 501 mm; give 0 mm for no limit");
    assertThatThrownBy(() -> LIMITS.withLeastWood(mm("-1"), Source.GIVEN)).isInstanceOf(IllegalArgumentException.class);
    assertThat(LIMITS.leastTongueSource()).isEqualTo(Source.COMMON_PRACTICE);
  }
}
