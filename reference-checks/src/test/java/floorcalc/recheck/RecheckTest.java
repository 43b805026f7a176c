package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import floorcalc.FloorPlanner;
import floorcalc.audit.PlanAudit;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.outline.Wkt;
import floorcalc.plan.Compromise;
import floorcalc.plan.Cut;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Plans spoilt by hand: the second check finds each spoil by the rule that it breaks, and so does the library's audit. */
class RecheckTest {
  private static final Length MM = Length.ofMillimetres(1);
  /** An L with a column, out of square, with a strip so short that its pieces cannot all be long enough. */
  private static final FloorJob JOB = FloorJob.of("Invented floor",
      BoardGoods.of(Length.ofMillimetres(1200), Length.ofMillimetres(190), Length.ofMillimetres(15), 8))
      .direction(DirectionChoice.of(Direction.ALONG_X))
      .room(Room.of("Room", Wkt.parse("POLYGON ((0 0, 5210 0, 5205 2400, 3100 2410, 3100 3770, 0 3760, 0 0), "
          + "(1400 1100, 1800 1100, 1800 1500, 1400 1500, 1400 1100))")).withBreaks(List.of())).build();
  private static final FloorPlan PLAN = FloorPlanner.plan(JOB);

  @Test
  void theSoundPlanPasses() {
    assertThat(Recheck.of(JOB, PLAN)).isEmpty();
    assertThat(PlanAudit.of(JOB, PLAN).breaches()).isEmpty();
    assertThat(PLAN.compromises()).as("one compromise is needed to leave out").isNotEmpty();
  }

  @TestFactory
  Stream<DynamicTest> everySpoilIsFound() {
    Map<String, FloorPlan> spoilt = new LinkedHashMap<>();
    spoilt.put("rule 1: hole", withPieces(pieces -> pieces.remove(piece(pieces, PieceKind.FULL))));
    spoilt.put("rule 1: overlap", change(PieceKind.FULL, piece -> shaped(piece, piece.outline().moved(MM.multipliedBy(2),
        Length.ZERO))));
    spoilt.put("rule 1: room-1 comes as near", new Spoil(PLAN).laid(PLAN.bays().get(0).laid().moved(MM,
        Length.ZERO)).plan());
    spoilt.put("rule 1: outside", change(PieceKind.END, piece -> shaped(piece, piece.outline().moved(MM, Length.ZERO))));
    spoilt.put("rule 1: Room less its gap", new Spoil(PLAN).laid(Outline.of(PLAN.bays().get(0).laid().shell(), List.of())).plan());
    spoilt.put("rule 2: room-1", change(PieceKind.START, piece -> cut(piece, along(piece, 1, 0))));
    spoilt.put("rule 2: the rectangle", change(PieceKind.END, piece -> cut(piece, along(piece, -1, -1))));
    spoilt.put("lie", twoFromOnePlace());
    spoilt.put("rule 2: piece", change(PieceKind.END, piece -> cut(piece, new Cut(10_000, piece.from().alongFrom(),
        piece.from().alongTo(), piece.from().acrossFrom(), piece.from().acrossTo()))));
    spoilt.put("is sawn", change(PieceKind.START, piece -> cut(piece, along(piece, -5, -5))));
    spoilt.put("the edge at high y", firstRowRippedOnTheOtherSide());
    spoilt.put("rule 4", new Spoil(PLAN).boards(boards -> boards.set(0, new OpenedBoard(1, boards.get(0).length(),
        "room-1.5"))).plan());
    spoilt.put("rule 5: minimum", new Spoil(PLAN).compromises(List.of()).plan());
    spoilt.put("and no compromise says so", new Spoil(PLAN).compromises(PLAN.compromises().stream().map(c ->
        new Compromise(c.rule(), c.where(), c.required(), c.found().plus(MM), c.because())).toList()).plan());
    spoilt.put("is called", change(PieceKind.START, piece -> new LaidPiece(piece.piece(), piece.run(), PieceKind.END,
        piece.outline(), piece.holes(), piece.from())));
    spoilt.put("rows: row 2", new Spoil(PLAN).coverWidth(1, MM.multipliedBy(189)).plan());
    spoilt.put("rule 6: board 1", new Spoil(PLAN).boards(boards -> boards.set(0, new OpenedBoard(1,
        boards.get(0).length().plus(MM), boards.get(0).openedInRow()))).plan());
    Order order = PLAN.order();
    spoilt.put("rule 6: " + PLAN.boards().size(), new Spoil(PLAN).order(new Order(order.boardsUsed() + 1,
        order.boardsAtLeast(), order.spare(), order.packs(), order.boardsInPacks())).plan());
    spoilt.put("but the order says", new Spoil(PLAN).order(new Order(order.boardsUsed(), order.boardsUsed() + 1,
        order.spare(), order.packs(), order.boardsInPacks())).plan());
    return spoilt.entrySet().stream().map(spoil -> dynamicTest(spoil.getKey(), () -> {
      assertThat(String.join("\n", Recheck.of(JOB, spoil.getValue()))).contains(spoil.getKey());
      assertThat(PlanAudit.of(JOB, spoil.getValue()).isClean()).as("the audit finds it too").isFalse();
    }));
  }

  private static FloorPlan withPieces(java.util.function.Consumer<List<LaidPiece>> change) {
    return new Spoil(PLAN).pieces(change).plan();
  }

  private static FloorPlan change(PieceKind kind, UnaryOperator<LaidPiece> change) {
    return withPieces(pieces -> {
      int at = piece(pieces, kind);
      pieces.set(at, change.apply(pieces.get(at)));
    });
  }

  /** The second piece of a kind, so that the first row is left as it is. */
  private static int piece(List<LaidPiece> pieces, PieceKind kind) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).kind() == kind) {
        found.add(i);
      }
    }
    return found.get(1);
  }

  private static LaidPiece shaped(LaidPiece piece, Ring outline) {
    return new LaidPiece(piece.piece(), piece.run(), piece.kind(), outline, piece.holes(), piece.from());
  }

  private static LaidPiece cut(LaidPiece piece, Cut from) {
    return new LaidPiece(piece.piece(), piece.run(), piece.kind(), piece.outline(), piece.holes(), from);
  }

  private static Cut along(LaidPiece piece, long fromMm, long toMm) {
    Cut cut = piece.from();
    return new Cut(cut.board(), cut.alongFrom().plus(MM.multipliedBy(fromMm)), cut.alongTo().plus(MM.multipliedBy(toMm)),
        cut.acrossFrom(), cut.acrossTo());
  }

  /** Two pieces that share a board, the second cut where the first one is. */
  private static FloorPlan twoFromOnePlace() {
    return withPieces(pieces -> {
      for (int i = 0; i < pieces.size(); i++) {
        for (int j = i + 1; j < pieces.size(); j++) {
          Cut first = pieces.get(i).from();
          Cut second = pieces.get(j).from();
          if (first.board() == second.board()) {
            pieces.set(j, cut(pieces.get(j), new Cut(second.board(), first.alongFrom(),
                first.alongFrom().plus(second.length()), second.acrossFrom(), second.acrossTo())));
            return;
          }
        }
      }
    });
  }

  private static FloorPlan firstRowRippedOnTheOtherSide() {
    return withPieces(pieces -> pieces.replaceAll(piece -> {
      Cut cut = piece.from();
      boolean ripped = piece.piece().startsWith("room-1.1.") && cut.acrossFrom().isPositive();
      return ripped ? cut(piece, new Cut(cut.board(), cut.alongFrom(), cut.alongTo(), Length.ZERO, cut.width())) : piece;
    }));
  }
}
