package floorcalc.audit;

import static floorcalc.audit.HandPlan.nanometres;
import static floorcalc.audit.HandPlan.ring;
import static floorcalc.audit.Spoiling.copy;
import static floorcalc.audit.Spoiling.moved;
import static floorcalc.audit.Spoiling.name;
import static floorcalc.audit.Spoiling.rectangle;
import static floorcalc.audit.Spoiling.removePiece;
import static floorcalc.audit.Spoiling.removeRow;
import static floorcalc.audit.Spoiling.renumber;
import static floorcalc.audit.Spoiling.ruled;
import static floorcalc.audit.Spoiling.swapBoards;
import static floorcalc.audit.SpoiltCase.spoil;
import static floorcalc.audit.SpoiltCase.spoilSums;

import floorcalc.audit.Draft.PieceDraft;
import floorcalc.audit.Draft.RowDraft;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.util.stream.Stream;

/** What can be wrong with a floor: its cover, its pieces, the boards that they are cut from, their ends. */
final class SpoiltFloors {
  private SpoiltFloors() {}

  static Stream<SpoiltCase> cases() {
    return Stream.of(cover(), laid(), boards(), ends()).flatMap(s -> s);
  }

  private static Stream<SpoiltCase> cover() {
    return Stream.of(
        spoil("a piece is left out", "bond", d -> removePiece(d, 2, 2), Code.HOLE, Code.RUN_NUMBER, Code.PIECE_KIND),
        spoil("the last row is left out", "bond", d -> removeRow(d, 3), Code.HOLE),
        spoil("the first row is left out", "ripped rows", d -> removeRow(d, 1), Code.HOLE, Code.ROW_NUMBER,
            Code.PIECE_NAME),
        spoil("a piece is there twice", "two boards", d -> {
          d.row(2).pieces.add(copy(d.piece(2, 1), "study-1.2.2", 2, 3));
          d.openBoards(Length.ofMillimetres(1200));
        }, Code.OVERLAP),
        spoil("a gap of 1 nm between two pieces", "bond", d -> {
          d.piece(1, 1).outline = rectangle(0, 0, nanometres(1000) - 1, nanometres(200));
          d.piece(1, 1).alongTo -= 1;
        }, Code.HOLE, Code.RUN_NUMBER, Code.PIECE_KIND),
        spoil("two pieces overlap by 1 nm", "bond", d -> {
          d.piece(1, 1).outline = rectangle(0, 0, nanometres(1000) + 1, nanometres(200));
          d.piece(1, 1).alongFrom -= 1;
        }, Code.OVERLAP, Code.RUN_NUMBER, Code.PIECE_KIND),
        spoil("an overlap of 1 µm by 1 µm", "bond", d -> d.piece(1, 1).outline = ring(0, 0, 1000, 0, 1000, 100,
            1000.001, 100, 1000.001, 100.001, 1000, 100.001, 1000, 200, 0, 200), Code.OVERLAP, Code.RECTANGLE,
            Code.SAWN_END, Code.LEDGER_NEGATIVE),
        spoil("an overlap of 2 mm²", "bond", d -> d.piece(1, 1).outline = ring(0, 0, 1000, 0, 1000, 100,
            1001, 100, 1001, 102, 1000, 102, 1000, 200, 0, 200), Code.OVERLAP, Code.RECTANGLE, Code.SAWN_END,
            Code.LEDGER_NEGATIVE),
        spoil("a hole of 1 µm by 1 µm", "bond", d -> d.piece(2, 2).outline = ring(1500, 200, 3500, 200, 3500, 400,
            2000.001, 400, 2000.001, 399.999, 2000, 399.999, 2000, 400, 1500, 400), Code.HOLE),
        spoil("a hole of 1 µm by 1 µm in a turned room", "bond at 37.5", d -> d.piece(2, 2).outline =
            Direction.fromDegrees(37.5).toRoom(ring(1500, 200, 3500, 200, 3500, 400, 2000.001, 400, 2000.001, 399.999,
            2000, 399.999, 2000, 400, 1500, 400)), Code.HOLE),
        spoil("a hole inside a piece", "bond", d -> d.piece(2, 2).holes.add(ring(2000, 300, 2001, 300, 2001, 301)),
            Code.HOLE),
        spoil("the hole for the post is forgotten", "hole in a board", d -> d.piece(1, 2).holes.clear(), Code.OUTSIDE),
        spoil("a piece runs 1 nm into the gap", "bond", d -> {
          d.piece(2, 3).outline = rectangle(nanometres(3500), nanometres(200), nanometres(5000) + 1, nanometres(400));
          d.piece(2, 3).alongTo += 1;
        }, Code.OUTSIDE),
        spoil("a piece runs into the gap at a slanted wall", "slanted wall", d -> d.piece(1, 3).outline =
            ring(3000, 0, 5000, 0, 4850.00001, 200, 3000, 200), Code.OUTSIDE),
        spoil("a piece runs into the gap at a slanted wall of a turned room", "slanted wall at 123.4",
            d -> d.piece(1, 3).outline = Direction.fromDegrees(123.4).toRoom(
                ring(3000, 0, 5000, 0, 4850.00001, 200, 3000, 200)), Code.OUTSIDE),
        spoil("a piece is not notched for the column", "notches",
            d -> d.piece(2, 2).outline = ring(1500, 200, 3500, 200, 3500, 400, 1500, 400), Code.OUTSIDE),
        spoil("an outline crosses itself", "bond",
            d -> d.piece(2, 2).outline = ring(1500, 200, 3500, 200, 3500, 400, 2000, 300, 2600, 300, 2200, 400, 1500, 400),
            Code.PIECE_OUTLINE, Code.HOLE),
        spoil("an outline is a bow tie", "bond",
            d -> d.piece(2, 2).outline = ring(1500, 200, 3500, 200, 1500, 400, 3500, 400),
            Code.PIECE_OUTLINE, Code.HOLE, Code.PIECE_KIND),
        spoil("an outline goes round twice", "bond", d -> d.piece(2, 2).outline =
            ring(1500, 200, 3500, 200, 3500, 400, 1500, 400, 1500, 200, 3500, 200, 3500, 400, 1500, 400),
            Code.PIECE_OUTLINE, Code.LEDGER_NEGATIVE),
        spoil("an outline has two corners", "two boards", d -> d.piece(1, 1).outline = ring(10, 10, 990, 500),
            Code.PIECE_OUTLINE, Code.HOLE),
        spoil("an outline has no area", "two boards", d -> d.piece(1, 1).outline = ring(10, 10, 990, 500, 500, 255),
            Code.PIECE_OUTLINE, Code.HOLE),
        spoilSums("an outline lies beyond all measure", "two boards", d -> d.piece(1, 1).outline =
            Ring.ofNanometres(new long[] {Long.MIN_VALUE, Long.MAX_VALUE, 0}, new long[] {0, 5, Long.MAX_VALUE}),
            Code.PIECE_OUTLINE, Code.HOLE),
        spoil("a piece lies in the strip of another row", "two boards", d -> {
          RowDraft first = d.row(1);
          d.row(2).pieces.add(0, first.pieces.remove(0));
          name(d);
          d.piece(2, 2).run = 2;
          d.openBoards(Length.ofMillimetres(1200));
        }, Code.HOLE, Code.OUTSIDE_ROW, Code.SAWN_END),
        spoil("a joint is out of square by 1 nm", "bond", d -> {
          d.piece(2, 1).outline = Ring.ofNanometres(
              new long[] {0, nanometres(1500), nanometres(1500) + 1, 0},
              new long[] {nanometres(200), nanometres(200), nanometres(400), nanometres(400)});
          d.piece(2, 1).alongFrom -= 1;
        }, Code.AREA, Code.RUN_NUMBER, Code.PIECE_KIND));
  }

  private static Stream<SpoiltCase> laid() {
    return Stream.of(
        spoil("the laid area reaches 1 mm into the gap", "two boards", d -> {
          d.bays.get(0).shell = ring(10, 10, 991, 10, 991, 990, 10, 990);
        }, Code.LAID_TOO_NEAR, Code.LAID_ASTRAY, Code.LAID_MISSING, Code.HOLE),
        spoil("a corner of the laid area is 20 nm astray", "two boards", d -> d.bays.get(0).shell =
            Ring.ofNanometres(new long[] {10_000_000, 990_000_020, 990_000_000, 10_000_000},
                new long[] {10_000_000, 10_000_000, 990_000_000, 990_000_000}),
            Code.LAID_TOO_NEAR, Code.LAID_ASTRAY, Code.LAID_MISSING, Code.HOLE),
        spoil("the laid area stops short of a wall", "bond", d -> {
          d.bays.get(0).shell = ring(0, 0, 4999, 0, 4999, 600, 0, 600);
        }, Code.LAID_ASTRAY, Code.LAID_MISSING, Code.OUTSIDE),
        spoil("the short arm of the L is not laid", "L", d -> {
          d.bays.get(0).shell = ring(0, 0, 5000, 0, 5000, 400, 0, 400);
          removeRow(d, 3);
        }, Code.LAID_ASTRAY, Code.LAID_MISSING),
        spoil("the laid area goes over the column", "column", d -> d.bays.get(0).voids.clear(),
            Code.LAID_TOO_NEAR, Code.LAID_MISSING, Code.HOLE),
        spoil("the laid area leaves out a column that is not there", "bond", d -> {
          d.bays.get(0).voids.add(ring(2000, 200, 2000, 400, 2400, 400, 2400, 200));
        }, Code.LAID_ASTRAY, Code.OUTSIDE),
        spoil("the laid area lies outside the room", "two boards", d -> {
          d.bays.get(0).shell = moved(d.bays.get(0).shell, 5000);
          d.pieces().forEach(p -> p.outline = moved(p.outline, 5000));
        }, Code.LAID_TOO_NEAR, Code.LAID_ASTRAY, Code.LAID_MISSING),
        spoil("the laid area has two corners", "two boards", d -> d.bays.get(0).shell = ring(10, 10, 990, 990),
            Code.LAID_OUTLINE, Code.LAID_MISSING),
        spoil("the laid area has a spike", "two boards", d -> d.bays.get(0).shell =
            ring(10, 10, 990, 10, 990, 990, 500, 990, 500, 1500, 500, 990, 10, 990),
            Code.LAID_OUTLINE, Code.LAID_ASTRAY),
        spoil("the laid area crosses itself", "two boards", d -> d.bays.get(0).shell =
            ring(10, 10, 990, 10, 990, 990, 300, 990, 300, 600, 700, 600, 700, 800, 10, 800), Code.LAID_OUTLINE,
            Code.LAID_ASTRAY, Code.LAID_MISSING, Code.OUTSIDE),
        spoil("a bay is there twice", "two boards", d -> {
          Draft twin = HandPlan.twoBoards();
          Draft.BayDraft bay = twin.bays.get(0);
          bay.bay = "study-2";
          bay.rows.forEach(row -> row.pieces.forEach(piece -> {
            piece.name = piece.name.replace("study-1", "study-2");
            piece.board += 2;
          }));
          d.bays.add(bay);
          d.openBoards(Length.ofMillimetres(1200));
        }, Code.BAYS_OVERLAP),
        spoil("a room has no bay", "bond", d -> {
          d.job = HandJob.of(d.job).room(Room.of("Hall", Outline.of(ring(0, 0, 900, 0, 900, 900, 0, 900)))).build();
        }, Code.ROOM_WITHOUT_BAY),
        spoil("a room is swallowed and nothing says so", "bond", d -> {
          d.job = HandJob.of(d.job).room(Room.of("Niche", Outline.of(ring(0, 0, 900, 0, 900, 20, 0, 20)))).build();
        }, Code.ROOM_WITHOUT_BAY),
        spoil("a room is swallowed and a finding says so", "bond", d -> {
          d.job = HandJob.of(d.job).room(Room.of("Niche", Outline.of(ring(0, 0, 900, 0, 900, 20, 0, 20)))).build();
          d.findings.add(new Finding("gap-swallows-floor", floorcalc.working.Severity.SERIOUS, "Niche", "", Source.GIVEN));
        }),
        spoil("a finding says that a room is swallowed that is not", "bond", d -> {
          d.job = HandJob.of(d.job).room(Room.of("Hall", Outline.of(ring(0, 0, 900, 0, 900, 900, 0, 900)))).build();
          d.findings.add(new Finding("gap-swallows-floor", floorcalc.working.Severity.SERIOUS, "Hall", "", Source.GIVEN));
        }, Code.ROOM_WITHOUT_BAY),
        spoil("the gap asked for is wider", "bond", d -> d.job = ruled(d.job, LayingRules.EXPANSION_GAP, 10.001),
            Code.LAID_TOO_NEAR, Code.LAID_ASTRAY, Code.LAID_MISSING),
        spoil("the gap asked for is narrower", "bond", d -> d.job = ruled(d.job, LayingRules.EXPANSION_GAP, 9.999),
            Code.LAID_ASTRAY, Code.LAID_MISSING));
  }

  private static Stream<SpoiltCase> boards() {
    return Stream.of(
        spoil("a rectangle is 1 nm too long", "bond", d -> d.piece(2, 1).alongFrom -= 1, Code.RECTANGLE),
        spoil("a rectangle is 1 nm too short", "bond", d -> d.piece(2, 1).alongFrom += 1, Code.RECTANGLE,
            Code.LEDGER_NEGATIVE),
        spoil("a rectangle is too short by more than rounding", "bond at 37.5", d -> d.piece(2, 1).alongFrom += 10,
            Code.RECTANGLE),
        spoil("a rectangle is 1 nm too wide", "ripped rows", d -> d.piece(3, 1).acrossTo += 1, Code.RECTANGLE),
        spoil("a rectangle is too narrow", "two boards", d -> d.piece(2, 1).acrossTo -= 1000, Code.RECTANGLE,
            Code.LEDGER_NEGATIVE),
        spoil("a rectangle lies beyond the end of the board", "two boards", d -> {
          d.piece(2, 1).alongFrom += nanometres(200);
          d.piece(2, 1).alongTo += nanometres(200);
        }, Code.OUTSIDE_BOARD),
        spoil("a rectangle lies beyond the edge of the board", "ripped rows", d -> {
          d.piece(1, 2).acrossFrom += 1;
          d.piece(1, 2).acrossTo += 1;
        }, Code.OUTSIDE_BOARD, Code.SAWN_EDGE),
        spoil("a rectangle begins before the board", "two boards", d -> {
          d.piece(1, 1).alongFrom = -1;
          d.piece(1, 1).alongTo -= 1;
        }, Code.OUTSIDE_BOARD),
        spoil("a rectangle is turned over", "two boards", d -> {
          d.piece(1, 1).alongFrom = nanometres(980);
          d.piece(1, 1).alongTo = 0;
        }, Code.OUTSIDE_BOARD, Code.RECTANGLE, Code.END_PIECE_TOO_SHORT, Code.LEDGER_NEGATIVE),
        spoil("lengths beyond all measure", "two boards", d -> {
          d.piece(1, 1).alongFrom = Long.MIN_VALUE;
          d.piece(1, 1).alongTo = Long.MAX_VALUE;
          d.sumsAreSpoilt = true;
        }, Code.OUTSIDE_BOARD, Code.RECTANGLE, Code.LEDGER_TRIMMED, Code.LEDGER_CUT),
        spoil("a board that is not listed", "bond", d -> d.piece(2, 2).board = 99, Code.BOARD_UNKNOWN,
            Code.BOARD_UNUSED),
        spoil("board 0", "two boards", d -> d.piece(1, 1).board = 0, Code.BOARD_UNKNOWN, Code.BOARD_UNUSED),
        spoil("a piece from a board that another piece fills", "bond", d -> d.piece(2, 2).board = 2,
            Code.KERF, Code.BOARD_UNUSED),
        spoil("two pieces swap their boards", "bond", d -> swapBoards(d.piece(1, 1), d.piece(2, 1)),
            Code.OPENED_LATE, Code.OPENED_ELSEWHERE, Code.KERF),
        spoil("a board of a length that is not sold", "two boards",
            d -> d.boards.set(0, new OpenedBoard(1, Length.ofMillimetres(1300), "study-1.1")), Code.BOARD_LENGTH),
        spoil("a board of another length that is sold", "mixed lengths",
            d -> d.boards.set(0, new OpenedBoard(1, Length.ofMillimetres(2000), "study-1.1")),
            Code.SAWN_END, Code.PIECE_KIND),
        spoil("a saw cut of 2.999999 mm", "two runs", d -> {
          d.piece(3, 2).alongFrom -= 1;
          d.piece(3, 2).alongTo -= 1;
        }, Code.KERF),
        spoil("no room for the saw across", "ripped rows", d -> d.job = ruled(d.job, LayingRules.SAW_KERF, 5.000001),
            Code.KERF),
        spoil("the saw asked for is thicker", "two runs", d -> d.job = ruled(d.job, LayingRules.SAW_KERF, 3.000001),
            Code.KERF),
        spoil("pieces that no straight cut frees", "two runs", Spoiling::pinwheel, Code.NOT_CUTTABLE),
        spoil("a start piece that is called an end piece", "bond", d -> d.piece(2, 1).kind = PieceKind.END,
            Code.PIECE_KIND),
        spoil("an end piece that is called full", "bond", d -> d.piece(2, 3).kind = PieceKind.FULL, Code.PIECE_KIND),
        spoil("a full board that is called single", "bond", d -> d.piece(2, 2).kind = PieceKind.SINGLE, Code.PIECE_KIND),
        spoil("a single piece that is called a start piece", "two boards", d -> d.piece(2, 1).kind = PieceKind.START,
            Code.PIECE_KIND));
  }

  private static Stream<SpoiltCase> ends() {
    return Stream.of(
        spoil("the joint of a start piece is sawn", "bond", d -> {
          d.piece(2, 1).alongFrom -= nanometres(1);
          d.piece(2, 1).alongTo -= nanometres(1);
        }, Code.SAWN_END),
        spoil("the joint of an end piece is sawn", "bond", d -> {
          d.piece(2, 3).alongFrom += 1;
          d.piece(2, 3).alongTo += 1;
        }, Code.SAWN_END),
        spoil("a full board meets both ends shorter", "bond", d -> {
          d.piece(2, 3).alongFrom = nanometres(500);
          d.piece(2, 3).alongTo = nanometres(2000);
        }, Code.SAWN_END),
        spoil("a joint is moved by 1 mm", "bond", d -> {
          d.piece(2, 1).outline = ring(0, 200, 1501, 200, 1501, 400, 0, 400);
          d.piece(2, 1).alongFrom -= nanometres(1);
          d.piece(2, 2).outline = ring(1501, 200, 3500, 200, 3500, 400, 1501, 400);
          d.piece(2, 2).alongFrom += nanometres(1);
        }, Code.SAWN_END),
        spoil("a joint that is sawn aslant", "bond", d -> {
          d.piece(2, 1).outline = ring(0, 200, 1500, 200, 1510, 400, 0, 400);
          d.piece(2, 2).outline = ring(1500, 200, 3500, 200, 3500, 400, 1510, 400);
        }, Code.SAWN_END, Code.RECTANGLE, Code.RUN_NUMBER, Code.PIECE_KIND),
        spoil("a first row whose rip is turned over", "ripped rows", d -> {
          d.row(1).pieces.forEach(p -> {
            p.acrossFrom -= nanometres(80);
            p.acrossTo -= nanometres(80);
            p.board += 20;
          });
          d.openBoards(Length.ofMillimetres(2000));
        }, Code.SAWN_EDGE),
        spoil("one rip of the last row is turned over", "ripped rows", d -> {
          d.piece(3, 2).acrossFrom += nanometres(125);
          d.piece(3, 2).acrossTo += nanometres(125);
          d.piece(3, 2).board = 7;
          d.boards.add(new OpenedBoard(7, Length.ofMillimetres(2000), "study-1.3"));
        }, Code.SAWN_EDGE),
        spoil("a full row that is cut in two lengthwise", "two boards", d -> {
          d.piece(1, 1).outline = ring(10, 10, 990, 10, 990, 200, 10, 200);
          d.piece(1, 1).acrossTo = nanometres(190);
          PieceDraft upper = copy(d.piece(1, 1), "study-1.1.2", 2, 3);
          upper.outline = ring(10, 200, 990, 200, 990, 500, 10, 500);
          upper.acrossFrom = nanometres(190);
          upper.acrossTo = nanometres(490);
          d.row(1).pieces.add(upper);
          d.row(1).coverWidth = nanometres(300);
          d.boards.add(1, new OpenedBoard(3, Length.ofMillimetres(1200), "study-1.1"));
          renumber(d);
        }, Code.SAWN_END));
  }
}
