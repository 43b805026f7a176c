package floorcalc.fittings;

import static floorcalc.fittings.PieceNotchesTest.mm;
import static floorcalc.fittings.PieceNotchesTest.ring;
import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import floorcalc.fittings.HoleCut.Way;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Three rows of 185 mm, the first from a wall at y = -10: 1000 + 1200, 600 + 1600, 2200 long, from x = 0 with a gap beyond. */
class PipeHolesTest {
  private static final List<BoardPiece> FLOOR = List.of(BoardPiece.of("1.1", ring("0,0 1000,0 1000,185 0,185")),
      BoardPiece.of("1.2", ring("1000,0 2200,0 2200,185 1000,185")), BoardPiece.of("2.1", ring("0,185 600,185 600,370 0,370")),
      BoardPiece.of("2.2", ring("600,185 2200,185 2200,370 600,370")), BoardPiece.of("3.1", ring("0,370 2200,370 2200,555 0,555")));

  private static PipeAt pipe(String name, String x, String y, String diameter) {
    return new PipeAt(name, Point.of(mm(x), mm(y)), mm(diameter));
  }

  private static Calculated<List<HoleCut>> holes(PipeAt... pipes) {
    return PipeHoles.of(List.of(pipes), FLOOR, PipeAllowance.TWENTY_WIDER, CutOutLimits.COMMON_PRACTICE);
  }

  private static HoleCut hole(String x, String y, String diameter) {
    Calculated<List<HoleCut>> cuts = holes(pipe("pipe 1", x, y, diameter));
    assertStepsHold(cuts);
    return cuts.value().get(0);
  }

  @Test
  void theEndBehindThePipeIsGluedBack() {
    Calculated<List<HoleCut>> cuts = holes(pipe("pipe 1", "70", "92.5", "22"));
    HoleCut cut = cuts.value().get(0);
    assertThat(cut.way()).isEqualTo(Way.HOLE);
    assertThat(cut.width()).isEqualTo(mm("42")); // 22 + 20
    assertThat(cut.wood()).contains(mm("49")); // to the start end: 70 - 21
    assertThat(cut.parts()).singleElement().satisfies(part -> {
      assertThat(part.piece()).isEqualTo("1.1");
      assertThat(part.fromStartEnd()).isEqualTo(mm("70"));
      assertThat(part.fromStartEdge()).isEqualTo(mm("92.5"));
    });
    assertThat(cut.glued()).contains(new GluedPart("1.1", BoardSide.START_END, mm("70"), mm("70"), mm("70")));
    assertThat(cut.inWords()).isEqualTo("1.1: hole 42 mm wide, its middle 70 mm from the start end and 92.5 mm from the start edge; saw"
        + " square across through the middle of the hole, 70 mm from the start end; glue the part at the start end, 70 mm long, back"
        + " behind the pipe");
    assertThat(cuts.findings()).extracting(Finding::code).containsExactly("pipe-hole", "pipe-joint-helps");
    assertThat(cuts.findings().get(0).source().standing()).isEqualTo(Standing.FROM_MEMORY);
    assertStepsHold(cuts);
  }

  @Test
  void theFarEndToo() {
    assertThat(hole("2120", "277.5", "15").glued())
        .contains(new GluedPart("2.2", BoardSide.FAR_END, mm("1520"), mm("1520"), mm("80"))); // 2120 - 600, 2200 - 2120
  }

  @Test
  void byTheWallAlongTheBoardsABlockIsGluedBack() {
    HoleCut cut = hole("500", "60", "22");
    // 500 - 21 to 500 + 21, 60 deep to the wall's edge
    assertThat(cut.glued()).contains(new GluedPart("1.1", BoardSide.START_EDGE, mm("479"), mm("521"), mm("60")));
    assertThat(cut.glued().orElseThrow().inWords(Length::toMillimetreString)).isEqualTo("saw from both sides of the hole square to the"
        + " start edge, at 479 and 521 from the start end; glue the block, 42 long and 60 deep to the middle of the hole, back behind the"
        + " pipe");
  }

  @Test
  void inTheMiddleOfTheFloorTheNearestSideIsTaken() {
    // 300 from the start end, 277.5 - 185 = 92.5 from both edges, of which the start edge comes first; no side with a gap within 185
    assertThat(hole("300", "270", "22").glued().orElseThrow().side()).isEqualTo(BoardSide.START_EDGE);
  }

  @Test
  void aHoleOverTheEdgeOfTheFloorIsAnOpenNotch() {
    HoleCut cut = hole("500", "15", "22");
    assertThat(cut.way()).isEqualTo(Way.OPEN_NOTCH); // 15 - 21 = 6 mm past the edge
    assertThat(cut.glued()).isEmpty();
    assertThat(cut.parts().get(0).open()).contains(BoardSide.START_EDGE);
    // 42 x 15 straight to the edge and a half circle of radius 21: 630 + 692.7 = 1322.7 mm2
    double area = cut.parts().get(0).sawn().stream().mapToDouble(r -> r.area().toSquareMetres() * 1e6).sum();
    assertThat(area).isCloseTo(630 + Math.PI * 21 * 21 / 2, within(1.0));
  }

  @Test
  void tooLittleWoodToTheWallIsAnOpenNotchToo() {
    HoleCut cut = hole("500", "40", "22"); // 40 - 21 = 19 < 20
    assertThat(cut.way()).isEqualTo(Way.OPEN_NOTCH);
    assertThat(cut.wood()).contains(mm("19"));
    assertThat(hole("500", "41", "22").way()).isEqualTo(Way.HOLE); // 20 is enough
  }

  @Test
  void tooLittleWoodToARowEdgeIsOpenedToIt() {
    HoleCut cut = hole("500", "150", "22"); // 185 - 150 - 21 = 14 to row 2
    assertThat(cut.way()).isEqualTo(Way.OPEN_TO_JOINT);
    assertThat(cut.parts().get(0).open()).contains(BoardSide.FAR_EDGE);
    assertThat(cut.inWords()).endsWith("slide the board on from that side, nothing is glued back");
  }

  @Test
  void inTheGapNothingIsCut() {
    HoleCut cut = hole("500", "-30", "15");
    assertThat(cut.way()).isEqualTo(Way.IN_THE_GAP); // 30 > 17.5
    assertThat(cut.parts()).isEmpty();
    assertThat(cut.inWords()).isEqualTo("it stands clear of the laid boards: nothing is cut");
  }

  @Test
  void onARowLineTwoBoardsHaveHalfAHoleEach() {
    HoleCut cut = hole("300", "185", "22");
    assertThat(cut.way()).isEqualTo(Way.SHARED);
    assertThat(cut.glued()).isEmpty();
    assertThat(cut.parts()).extracting(HoleInPiece::piece).containsExactly("1.1", "2.1");
    assertThat(cut.parts()).extracting(HoleInPiece::fromStartEdge).containsExactly(mm("185"), mm("0"));
    for (HoleInPiece part : cut.parts()) {
      assertThat(part.open()).isEmpty();
      assertThat(part.sawn().get(0).area().toSquareMetres() * 1e6).isCloseTo(Math.PI * 21 * 21 / 2, within(1.0));
    }
  }

  @Test
  void aJointBesideTheMiddleIsReachedByStraightSides() {
    HoleCut cut = hole("990", "92.5", "22");
    assertThat(cut.way()).isEqualTo(Way.SHARED);
    assertThat(cut.parts().get(0).open()).contains(BoardSide.FAR_END);
    assertThat(cut.parts().get(1).open()).isEmpty();
    assertThat(cut.parts().get(1).inWords(Length::toMillimetreString))
        .isEqualTo("part of a hole 42 wide, its middle 10 outside the start end and 92.5 from the start edge");
    assertThat(cut.parts().get(1).fromStartEnd()).isEqualTo(mm("-10"));
  }

  @Test
  void radiatorPipesFiftyApartShareASlot() {
    Calculated<List<HoleCut>> cuts = holes(pipe("flow", "100", "60", "15"), pipe("return", "150", "60", "15"));
    // 50 - (35 + 35) / 2 = 15 mm of wood, less than 20
    assertThat(cuts.value()).singleElement().satisfies(cut -> {
      assertThat(cut.name()).isEqualTo("flow and return");
      assertThat(cut.width()).isEqualTo(mm("35"));
      assertThat(cut.parts().get(0).isSlot()).isTrue();
      assertThat(cut.parts().get(0).inWords(Length::toMillimetreString)).isEqualTo("slot 35 wide, from (100, 60) to (150, 60)");
      // the middle of the slot is 125 from the end and 60 from the wall's edge: a block of 50 + 35 = 85
      assertThat(cut.glued()).contains(new GluedPart("1.1", BoardSide.START_EDGE, mm("82.5"), mm("167.5"), mm("60")));
    });
    assertThat(cuts.steps()).filteredOn(step -> step.id().equals("wood-between")).singleElement()
        .extracting(step -> step.result()).isEqualTo(mm("15"));
    assertThat(cuts.findings()).extracting(Finding::code).contains("pipe-slot");
    assertStepsHold(cuts);
  }

  /** The joint at 1000 runs through the slot: it is opened to that joint, though the far edge is nearer to its middle. */
  @Test
  void aSlotOverAJointIsOpenedToThatJoint() {
    List<HoleCut> cuts = holes(pipe("flow", "1010", "125", "15"), pipe("return", "1060", "125", "15")).value();
    assertThat(cuts).singleElement().satisfies(cut -> {
      assertThat(cut.way()).isEqualTo(Way.SHARED);
      assertThat(cut.parts().get(1).piece()).isEqualTo("1.2");
      assertThat(cut.parts().get(1).open()).contains(BoardSide.START_END);
    });
  }

  @Test
  void fartherApartTheyHaveTwoHoles() {
    // 55 - 35 = 20 mm of wood
    assertThat(holes(pipe("flow", "100", "92.5", "15"), pipe("return", "155", "92.5", "15")).value()).hasSize(2);
    assertThat(PipeHoles.of(List.of(pipe("flow", "100", "92.5", "15"), pipe("return", "150", "92.5", "15")), FLOOR,
        PipeAllowance.TWENTY_WIDER, CutOutLimits.COMMON_PRACTICE.withLeastWood(mm("15"), Source.GIVEN)).value()).hasSize(2);
  }

  @Test
  void threeInATriangleAreOneSlotWideEnoughForAll() {
    Calculated<List<HoleCut>> cuts = holes(pipe("a", "300", "80", "15"), pipe("b", "325", "90", "15"), pipe("c", "350", "80", "15"));
    // b lies 10 off the line from a to c: 35 + 2 * 10
    assertThat(cuts.value()).singleElement().satisfies(cut -> assertThat(cut.width()).isEqualTo(mm("55")));
  }

  @Test
  void otherAllowances() {
    // NF DTU 51.11 clause 8.2: 0.15 %, at least 8 mm: 12 m ask for 18 mm, 4 m for 8 mm
    Length board = mm("14");
    PipeAllowance large = PipeAllowance.ofGap(RuleSet.NF_DTU_51_11.forBoardAndRoom(board, mm("185"), mm("12000"))
        .get(LayingRules.EXPANSION_GAP));
    assertThat(large.hole(mm("22")).value()).isEqualTo(mm("58"));
    PipeAllowance small = PipeAllowance.ofGap(RuleSet.NF_DTU_51_11.forBoardAndRoom(board, mm("185"), mm("4000"))
        .get(LayingRules.EXPANSION_GAP));
    assertThat(small.hole(mm("22")).value()).isEqualTo(mm("38"));
    assertThat(small.source().standing()).isEqualTo(Standing.READ);
    assertStepsHold(small.hole(mm("22")));
    assertThat(PipeAllowance.of(mm("6"), Source.GIVEN).hole(mm("22")).value()).isEqualTo(mm("34"));
    assertThatThrownBy(() -> PipeAllowance.of(mm("-6"), Source.GIVEN)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> PipeAllowance.TWENTY_WIDER.hole(Length.ZERO)).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("the diameter of a pipe must be more than 0 mm and at most 1000 mm, but was 0 mm; give the outer diameter");
  }

  @Test
  void aCollarCoversTheHoleWhenTheFloorHasMoved() {
    // pipe 22, hole 42: pushed over, the far side of the hole is 42 - 11 = 31 from the middle of the pipe; a collar of 60 reaches 30
    Calculated<Length> overlap = PipeAllowance.TWENTY_WIDER.collarOverlap(mm("22"), mm("60"));
    assertThat(overlap.value()).isEqualTo(mm("-1"));
    assertThat(PipeAllowance.TWENTY_WIDER.collarOverlap(mm("22"), mm("70")).value()).isEqualTo(mm("4"));
    assertStepsHold(overlap);
  }

  @Test
  void aPipeInACutOutOfItsBoardIsInTheGap() {
    BoardPiece notched = new BoardPiece("1.1", ring("0,0 1000,0 1000,185 0,185"), List.of(ring("300,40 300,140 420,140 420,40")));
    Calculated<List<HoleCut>> cuts = PipeHoles.of(List.of(pipe("pipe", "360", "90", "15")), List.of(notched),
        PipeAllowance.TWENTY_WIDER, CutOutLimits.COMMON_PRACTICE);
    assertThat(cuts.value().get(0).way()).isEqualTo(Way.IN_THE_GAP);
    assertThat(cuts.value().get(0).wood()).isEqualTo(Optional.empty());
  }
}
