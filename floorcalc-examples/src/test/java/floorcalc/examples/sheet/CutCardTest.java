package floorcalc.examples.sheet;

import static floorcalc.examples.HandMade.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.examples.Demo;
import floorcalc.examples.HandMade;
import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.PieceKind;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Boards of the hand-made plan are 2200 mm by 185 mm, the saw kerf is 3 mm. */
class CutCardTest {
  private static final CutCard CARD =
      CutCard.of(HandMade.job("Hall", "Hall").job(), HandMade.plan("Hall", "Hall"));

  @Test
  void startPieceComesFromTheRightEndAndTheRestIsKept() {
    CutLine start = CARD.lines().get(0);
    assertThat(start.end()).isEqualTo("right end");
    assertThat(start.edge()).isEqualTo("both edges");
    assertThat(start.opens()).isTrue();
    assertThat(start.length()).isEqualTo(mm("1000"));
    // 1200 - 3 = 1197 mm are left of the piece; both later pieces of board 1 lie in it
    assertThat(start.rests()).containsExactly(new Rest(mm("1197"), mm("185"), List.of("hall-1.2.1", "hall-1.2.2")));
  }

  @Test
  void wholeBoardLeavesNothing() {
    CutLine full = CARD.lines().get(1);
    assertThat(full.isWholeBoard()).isTrue();
    assertThat(full.end()).isEqualTo("whole length");
    assertThat(full.rests()).isEmpty();
  }

  @Test
  void endPieceAtASlantSaysItsTwoLengths() {
    CutLine end = CARD.lines().get(2);
    assertThat(end.end()).isEqualTo("left end");
    // from x = 3210: to 5010 near, to 5000 far
    assertThat(end.shape().orElseThrow().slant().orElseThrow()).containsExactly(mm("1800"), mm("1790"));
    assertThat(end.shape().orElseThrow().taper()).isEmpty();
    // 2200 - 1800 - 3 = 397
    assertThat(end.rests()).containsExactly(new Rest(mm("397"), mm("185"), List.of()));
  }

  @Test
  void taperSaysItsTwoWidthsAndTheStripBesideItIsKept() {
    CutLine taper = CARD.lines().get(3);
    assertThat(taper.opens()).isFalse();
    assertThat(taper.edge()).isEqualTo("near edge");
    // 290 - 195 = 95 at the left, 285 - 195 = 90 at the right
    assertThat(taper.shape().orElseThrow().taper().orElseThrow()).containsExactly(mm("95"), mm("90"));
    // along: the start piece was cut before, up to 1200 - 3 = 1197, so 1197 - 1000 - 3 = 194 is left on the right;
    // across: 185 - 95 - 3 = 87
    assertThat(taper.rests()).containsExactly(
        new Rest(mm("1000"), mm("87"), List.of("hall-1.2.2")), new Rest(mm("194"), mm("185"), List.of()));
  }

  @Test
  void notchedPieceListsItsCorners() {
    CutLine notched = CARD.lines().get(4);
    // cut from the strip of 1000 by 87: 100 - 3 = 97 is left of it, 1000 - 200 - 3 = 797 to its right
    assertThat(notched.rests()).containsExactly(
        new Rest(mm("797"), mm("87"), List.of()), new Rest(mm("97"), mm("87"), List.of()));
    assertThat(notched.end()).isEqualTo("middle");
    assertThat(notched.edge()).isEqualTo("far edge");
    PieceShape shape = notched.shape().orElseThrow();
    assertThat(shape.taper()).isEmpty();
    assertThat(shape.slant()).isEmpty();
    assertThat(shape.corners()).containsExactly(Point.ofMillimetres(0, 0), Point.ofMillimetres(100, 0),
        Point.ofMillimetres(100, 95), Point.ofMillimetres(50, 95), Point.ofMillimetres(50, 55), Point.ofMillimetres(0, 55));
  }

  /** A strip that is to come reaches past the end of the first one, so the board is ripped before it is cut to length. */
  @Test
  void boardIsRippedFirstWhereALaterPieceIsLonger() {
    LaidPiece later = HandMade.piece("b-1.9.1", 1, PieceKind.END, HandMade.ring(0, 0, 1, 0, 1, 1),
        HandMade.cut(1, 0, 2000, 0, 70));
    // the strip beside the first piece: 2200 by 185 - 100 - 3 = 82; on its right: 2200 - 1500 - 3 = 697 by 100
    assertThat(new Rests(mm("2200"), mm("185"), mm("3")).cut(HandMade.cut(1, 0, 1500, 85, 185), List.of(later)))
        .containsExactly(new Rest(mm("2200"), mm("82"), List.of("b-1.9.1")), new Rest(mm("697"), mm("100"), List.of()));
  }

  @Test
  void eachPieceOfTheDemoStandsOnTheCardInLayingOrder() throws IOException {
    CutCard card = CutCard.of(Demo.job(Demo.HOUSE).job(), Demo.plan(Demo.HOUSE));
    List<LaidPiece> pieces = Demo.plan(Demo.HOUSE).bays().stream()
        .flatMap(bay -> bay.rows().stream()).flatMap(row -> row.pieces().stream()).toList();
    assertThat(card.lines().stream().map(CutLine::piece)).containsExactlyElementsOf(pieces);
  }

  /** What is kept is long and wide enough for the first piece that it is kept for. */
  @Test
  void whatIsKeptIsLargeEnough() throws IOException {
    CutCard card = CutCard.of(Demo.job(Demo.HOUSE).job(), Demo.plan(Demo.HOUSE));
    int kept = 0;
    for (CutLine line : card.lines()) {
      for (Rest rest : line.rests()) {
        for (String name : rest.keptFor()) {
          CutLine next = card.lines().stream().filter(other -> other.piece().piece().equals(name)).findFirst().orElseThrow();
          assertThat(next.length()).isLessThanOrEqualTo(rest.length());
          assertThat(next.width()).isLessThanOrEqualTo(rest.width());
          assertThat(next.opens()).isFalse();
          kept++;
        }
      }
    }
    assertThat(kept).isPositive();
  }

  @Test
  void piecesThatOverlapOnTheirBoardAreRefused() {
    Rests rests = new Rests(mm("2200"), mm("185"), mm("3"));
    rests.cut(HandMade.cut(7, 0, 1500, 0, 185), List.of());
    assertThatThrownBy(() -> rests.cut(HandMade.cut(7, 1501, 1600, 0, 185), List.of()))
        .hasMessage("board 7 has no room left for the piece at 1501 mm, or its pieces cannot be sawn apart");
  }

  /** Each piece that does not open its board was named when its board was cut before. */
  @Test
  void eachPieceFromARestWasAnnounced() throws IOException {
    for (String demo : List.of(Demo.HOUSE, Demo.LOFT, Demo.PARLOUR)) {
      CutCard card = CutCard.of(Demo.job(demo).job(), Demo.plan(demo));
      List<String> announced = card.lines().stream().flatMap(line -> line.rests().stream())
          .flatMap(rest -> rest.keptFor().stream()).distinct().toList();
      List<String> fromRests = card.lines().stream().filter(line -> !line.opens()).map(line -> line.piece().piece()).toList();
      assertThat(announced).containsExactlyInAnyOrderElementsOf(fromRests);
    }
  }

  /** A new board's pieces and what is left, with the dust, are never more than the board. */
  @Test
  void restsNeverExceedTheBoard() throws IOException {
    CutCard card = CutCard.of(Demo.job(Demo.HOUSE).job(), Demo.plan(Demo.HOUSE));
    for (CutLine line : card.lines()) {
      for (Rest rest : line.rests()) {
        assertThat(rest.length()).isLessThanOrEqualTo(line.boardLength()).isGreaterThan(Length.ZERO);
        assertThat(rest.width()).isLessThanOrEqualTo(line.boardWidth()).isGreaterThan(Length.ZERO);
      }
    }
  }
}
