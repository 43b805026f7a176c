package floorcalc.audit;

import static floorcalc.audit.HandPlan.nanometres;
import static floorcalc.audit.HandPlan.ring;
import static floorcalc.audit.Spoiling.compromise;
import static floorcalc.audit.Spoiling.copy;
import static floorcalc.audit.Spoiling.half;
import static floorcalc.audit.Spoiling.move;
import static floorcalc.audit.Spoiling.moved;
import static floorcalc.audit.Spoiling.name;
import static floorcalc.audit.Spoiling.raised;
import static floorcalc.audit.Spoiling.rectangle;
import static floorcalc.audit.Spoiling.removePiece;
import static floorcalc.audit.Spoiling.removeRow;
import static floorcalc.audit.Spoiling.renumber;
import static floorcalc.audit.Spoiling.ruled;
import static floorcalc.audit.Spoiling.swapBoards;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.audit.Draft.PieceDraft;
import floorcalc.audit.Draft.RowDraft;
import floorcalc.bays.ExpansionBreak;
import floorcalc.boards.OffcutUse;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Clean plans spoilt in one place each. The audit must report the codes that follow from the spoilt place, and no other.
 * Unless the sums themselves are spoilt, order and ledger are made right again afterwards.
 */
class SpoiltPlanTest {

  /** One way to spoil a plan: what is done, to which plan, and what must be reported. */
  private record Case(String what, String plan, Consumer<Draft> spoil, Set<String> codes) {
    @Override
    public String toString() {
      return what + " (" + plan + "): " + codes;
    }
  }

  private static Case spoil(String what, String plan, Consumer<Draft> spoil, Code... codes) {
    return new Case(what, plan, spoil, Stream.of(codes).map(Code::text).collect(Collectors.toCollection(TreeSet::new)));
  }

  private static Case spoilSums(String what, String plan, Consumer<Draft> spoil, Code... codes) {
    return spoil(what, plan, spoil.andThen(d -> d.sumsAreSpoilt = true), codes);
  }

  static Stream<Case> cases() {
    return Stream.of(cover(), laid(), boards(), ends(), order(), minimums(), documents(), sums()).flatMap(s -> s);
  }

  private static Stream<Case> cover() {
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

  private static Stream<Case> laid() {
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

  private static Stream<Case> boards() {
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

  private static Stream<Case> ends() {
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

  private static Stream<Case> order() {
    return Stream.of(
        spoil("a board is opened a row too late", "bond",
            d -> d.boards.set(3, new OpenedBoard(4, Length.ofMillimetres(2000), "study-1.3")), Code.OPENED_LATE),
        spoil("the first board is opened in the last row", "bond",
            d -> d.boards.set(0, new OpenedBoard(1, Length.ofMillimetres(2000), "study-1.3")), Code.OPENED_LATE),
        spoil("a board is opened in the second row for the first", "two boards",
            d -> d.boards.set(0, new OpenedBoard(1, Length.ofMillimetres(1200), "study-1.2")), Code.OPENED_LATE),
        spoil("the same when all is cut ahead", "bond", d -> {
          d.job = HandJob.of(d.job).offcuts(OffcutUse.CUT_AHEAD).build();
          d.boards.add(d.boards.remove(0));
          d.boards.set(8, new OpenedBoard(1, Length.ofMillimetres(2000), "study-1.3"));
          renumber(d);
        }),
        spoil("cut ahead in a row that has no piece of the board", "bond", d -> {
          d.job = HandJob.of(d.job).offcuts(OffcutUse.CUT_AHEAD).build();
          d.boards.set(3, new OpenedBoard(4, Length.ofMillimetres(2000), "study-1.3"));
        }, Code.OPENED_ELSEWHERE),
        spoil("a board is opened before it is needed", "bond",
            d -> d.boards.set(3, new OpenedBoard(4, Length.ofMillimetres(2000), "study-1.1")), Code.OPENED_ELSEWHERE),
        spoil("a board is opened in a row that does not exist", "bond",
            d -> d.boards.set(3, new OpenedBoard(4, Length.ofMillimetres(2000), "study-1.4")), Code.OPENED_ELSEWHERE),
        spoil("boards are not numbered in the order of opening", "bond", d -> {
          Collections.swap(d.boards, 2, 3);
          renumber(d);
        }, Code.BOARD_NUMBER),
        spoil("a number is left out", "two boards", d -> {
          d.boards.set(1, new OpenedBoard(3, Length.ofMillimetres(1200), "study-1.2"));
          d.piece(2, 1).board = 3;
        }, Code.BOARD_NUMBER),
        spoil("a number is there twice", "bond",
            d -> d.boards.set(1, new OpenedBoard(1, Length.ofMillimetres(2000), "study-1.1")),
            Code.BOARD_NUMBER, Code.BOARD_UNKNOWN, Code.BOARD_UNUSED),
        spoil("a board that nothing is cut from", "bond",
            d -> d.boards.add(new OpenedBoard(10, Length.ofMillimetres(2000), "study-1.3")), Code.BOARD_UNUSED));
  }

  private static Stream<Case> minimums() {
    return Stream.of(
        spoil("a row is narrower than asked", "ripped rows", d -> d.job = ruled(d.job, LayingRules.MINIMUM_ROW_WIDTH, 75.000001),
            Code.ROW_TOO_NARROW),
        spoil("the same with a compromise", "ripped rows", d -> {
          d.job = ruled(d.job, LayingRules.MINIMUM_ROW_WIDTH, 80);
          d.compromises.add(compromise("minimumRowWidth", "study-1 row 3", 80, 75));
        }),
        spoil("the same with a compromise at another row", "ripped rows", d -> {
          d.job = ruled(d.job, LayingRules.MINIMUM_ROW_WIDTH, 80);
          d.compromises.add(compromise("minimumRowWidth", "study-1 row 33", 80, 75));
        }, Code.ROW_TOO_NARROW),
        spoil("the same with a compromise on another rule", "ripped rows", d -> {
          d.job = ruled(d.job, LayingRules.MINIMUM_ROW_WIDTH, 80);
          d.compromises.add(compromise("minimumEndPiece", "study-1 row 3", 80, 75));
        }, Code.ROW_TOO_NARROW),
        spoil("a row shows more than it does", "bond", d -> d.row(2).coverWidth += 1, Code.ROW_WIDTH),
        spoil("a row shows less than it does", "bond at 37.5", d -> d.row(2).coverWidth -= 10, Code.ROW_WIDTH),
        spoil("a row shows nothing", "bond", d -> d.row(1).coverWidth = 0, Code.ROW_WIDTH),
        spoil("a short end piece is not listed", "slanted wall", d -> d.compromises.clear(), Code.END_PIECE_TOO_SHORT),
        spoil("a short end piece is listed at another run", "slanted wall", d -> d.compromises.set(0,
            compromise("minimumEndPiece", "study-1 row 3 run 2", 300, 200)), Code.END_PIECE_TOO_SHORT),
        spoil("a short end piece is listed at another bay", "slanted wall", d -> d.compromises.set(0,
            compromise("minimumEndPiece", "study-2 row 3 run 1", 300, 200)), Code.END_PIECE_TOO_SHORT),
        spoil("a compromise may say more about the place", "slanted wall", d -> d.compromises.set(0,
            compromise("minimumEndPiece", "study-1 row 3 run 1, at the window", 300, 200))),
        spoil("a compromise says that less is required", "slanted wall", d -> d.compromises.set(0,
            compromise("minimumEndPiece", "study-1 row 3 run 1", 250, 200)), Code.COMPROMISE),
        spoil("a compromise says that more was found", "slanted wall", d -> d.compromises.set(0,
            compromise("minimumEndPiece", "study-1 row 3 run 1", 300, 290)), Code.COMPROMISE),
        spoil("single pieces are shorter than asked", "two runs",
            d -> d.job = ruled(d.job, LayingRules.MINIMUM_END_PIECE, 950), Code.END_PIECE_TOO_SHORT),
        spoil("joints are closer than asked", "bond", d -> d.job = ruled(d.job, LayingRules.MINIMUM_JOINT_OFFSET, 500.000001),
            Code.JOINTS_TOO_CLOSE),
        spoil("joints of a turned bay are closer than asked", "bond at 211.3",
            d -> d.job = ruled(d.job, LayingRules.MINIMUM_JOINT_OFFSET, 500.00001), Code.JOINTS_TOO_CLOSE),
        spoil("the same with a compromise", "bond", d -> {
          d.job = ruled(d.job, LayingRules.MINIMUM_JOINT_OFFSET, 600);
          d.compromises.add(compromise("minimumJointOffset", "study-1 row 2", 600, 500));
        }),
        spoil("a joint in line with that of the row below", "bond", d -> {
          d.row(2).pieces.clear();
          d.row(2).pieces.addAll(HandPlan.bond(0).row(1).pieces);
          d.row(2).pieces.forEach(p -> {
            p.outline = raised(p.outline, 200);
            p.board += 3;
          });
          d.row(2).pieces.forEach(p -> p.name = p.name.replace("study-1.1.", "study-1.2."));
        }, Code.JOINTS_TOO_CLOSE));
  }

  private static Stream<Case> documents() {
    return Stream.of(
        spoil("a bay of a room that does not exist", "bond", d -> d.bays.get(0).room = "Attic",
            Code.ROOM_UNKNOWN, Code.ROOM_WITHOUT_BAY),
        spoil("a bay without a name", "two boards", d -> {
          d.bays.get(0).bay = " ";
          name(d);
          d.openBoards(Length.ofMillimetres(1200));
        }, Code.BAY_NAME),
        spoil("a bay runs another way than asked", "bond", d -> d.job = HandJob.of(d.job)
            .direction(DirectionChoice.of(Direction.fromDegrees(180))).build(), Code.DIRECTION),
        spoil("a row number is left out", "bond", d -> d.row(2).row = 3, Code.ROW_NUMBER),
        spoil("a row number is 0", "two boards", d -> d.row(1).row = 0, Code.ROW_NUMBER),
        spoil("two pieces share a name", "bond", d -> d.piece(2, 2).name = "study-1.2.1", Code.PIECE_NAME),
        spoil("a name of another bay", "bond", d -> d.piece(2, 2).name = "study-2.2.2", Code.PIECE_NAME),
        spoil("a name with a leading zero", "bond", d -> d.piece(2, 2).name = "study-1.2.02", Code.PIECE_NAME),
        spoil("pieces are listed from the right", "bond", d -> {
          Collections.reverse(d.row(2).pieces);
          name(d);
        }, Code.PIECE_ORDER),
        spoil("run 2 comes after run 0", "two boards", d -> d.piece(1, 1).run = 0, Code.RUN_NUMBER),
        spoil("two runs have one number", "two runs", d -> d.piece(3, 2).run = 1, Code.RUN_NUMBER),
        spoil("one run has two numbers", "bond", d -> d.piece(1, 3).run = 2, Code.RUN_NUMBER),
        spoil("a break that the job gives is left out", "bond", d -> d.job = d.job.withRooms(List.of(
            d.job.rooms().get(0).withBreaks(List.of(ExpansionBreak.given(Point.ofMillimetres(0, 1), Point.ofMillimetres(9, 1)))))),
            Code.BREAKS_GIVEN),
        spoil("a room beyond all measure", "bond", d -> d.job = HandJob.of(d.job).room(Room.of("Far", Outline.of(
            Ring.ofNanometres(new long[] {0, Long.MAX_VALUE, 0}, new long[] {0, 0, Long.MAX_VALUE})))).build(),
            Code.OUT_OF_RANGE));
  }

  private static Stream<Case> sums() {
    Stream<Case> ledger = Stream.of(
        spoilSums("what was bought is off by half a square nanometre", "bond", d -> half(d, 0), Code.LEDGER_OPEN,
            Code.LEDGER_BOUGHT),
        spoilSums("laid is off by half a square nanometre", "bond", d -> half(d, 1), Code.LEDGER_OPEN,
            Code.LEDGER_LAID, Code.LEDGER_TRIMMED),
        spoilSums("trimmed is off by half a square nanometre", "slanted wall", d -> half(d, 2), Code.LEDGER_OPEN,
            Code.LEDGER_TRIMMED),
        spoilSums("kerf is off by half a square nanometre", "bond", d -> half(d, 3), Code.LEDGER_OPEN, Code.LEDGER_CUT),
        spoilSums("usable offcuts are off by half a square nanometre", "bond", d -> half(d, 4), Code.LEDGER_OPEN,
            Code.LEDGER_CUT),
        spoilSums("short offcuts are off by half a square nanometre", "bond", d -> half(d, 5), Code.LEDGER_OPEN,
            Code.LEDGER_CUT),
        spoilSums("spare is off by half a square nanometre", "bond", d -> half(d, 6), Code.LEDGER_OPEN,
            Code.LEDGER_SPARE),
        spoilSums("pack rounding is off by half a square nanometre", "two boards", d -> half(d, 7), Code.LEDGER_OPEN),
        spoilSums("laid and trimmed change places", "slanted wall", d -> move(d, 1, 2, Area.ofSquareMillimetres(1)),
            Code.LEDGER_LAID),
        spoilSums("laid and trimmed change places in a turned room", "slanted wall at 123.4",
            d -> move(d, 1, 2, Area.ofSquareMillimetres(1)), Code.LEDGER_LAID),
        spoilSums("offcuts are called kerf, and more", "bond", d -> move(d, 5, 4, Area.ofSquareMetres("10")),
            Code.LEDGER_NEGATIVE),
        spoilSums("spare boards are called pack rounding", "bond", d -> move(d, 6, 7, Area.ofSquareMillimetres(1)),
            Code.LEDGER_SPARE));
    Stream<Case> counts = Stream.of(
        spoilSums("one board too many is counted", "bond", d -> d.boardsUsed++, Code.BOARDS_USED),
        spoilSums("one board too few is counted", "bond", d -> d.boardsUsed--, Code.BOARDS_USED),
        spoilSums("a negative count", "bond", d -> d.boardsUsed = -d.boardsUsed, Code.BOARDS_USED),
        spoilSums("a bound above what the plan uses", "bond", d -> d.boardsAtLeast++, Code.BOUND_TOO_HIGH),
        spoilSums("a bound far above", "two boards", d -> d.boardsAtLeast = Integer.MAX_VALUE, Code.BOUND_TOO_HIGH),
        spoilSums("a bound above boards that were miscounted too", "two boards", d -> {
          d.boardsUsed = 3;
          d.boardsAtLeast = 3;
        }, Code.BOARDS_USED, Code.BOUND_TOO_HIGH),
        spoilSums("no spare board", "bond", d -> {
          d.spare = 0;
          d.addUpLedger();
        }, Code.SPARE),
        spoilSums("too many spare boards", "two boards", d -> {
          d.spare = 2;
          d.addUpLedger();
        }, Code.SPARE),
        spoilSums("a larger share is asked for", "bond", d -> d.job = HandJob.of(d.job).rules(d.job.rules()
            .with(LayingRules.SPARE_SHARE, new BigDecimal("0.12"), Source.GIVEN)).build(), Code.SPARE),
        spoilSums("one board more in the packs", "bond", d -> d.boardsInPacks++, Code.BOARDS_IN_PACKS),
        spoilSums("boards in packs are packs", "bond", d -> d.boardsInPacks = d.packs, Code.BOARDS_IN_PACKS),
        spoilSums("one pack too few", "bond", d -> {
          d.packs--;
          d.boardsInPacks -= 5;
          d.addUpLedger();
        }, Code.PACKS_TOO_FEW, Code.LEDGER_NEGATIVE),
        spoilSums("no packs at all", "two boards", d -> {
          d.packs = 0;
          d.boardsInPacks = 0;
          d.addUpLedger();
        }, Code.PACKS_TOO_FEW, Code.LEDGER_NEGATIVE),
        spoilSums("one mixed pack too few", "mixed lengths", d -> {
          d.packs = 1;
          d.boardsInPacks = 5;
          d.addUpLedger();
        }, Code.PACKS_TOO_FEW, Code.LEDGER_NEGATIVE),
        spoilSums("one mixed pack too many", "mixed lengths", d -> {
          d.packs++;
          d.boardsInPacks += 5;
          d.addUpLedger();
        }, Code.PACKS_TOO_MANY),
        spoilSums("one pack too many", "bond", d -> {
          d.packs++;
          d.boardsInPacks += 5;
          d.addUpLedger();
        }, Code.PACKS_TOO_MANY));
    return Stream.concat(ledger, counts);
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isReportedAndNothingElse(Case spoilt) {
    Draft draft = HandPlan.named(spoilt.plan);
    assertThat(PlanAudit.of(draft.job, draft.plan()).isClean()).as("the plan before it is spoilt").isTrue();
    spoilt.spoil.accept(draft);
    if (!draft.sumsAreSpoilt) {
      draft.countOrder();
      draft.addUpLedger();
    }
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(codes(report)).as(report.toString()).isEqualTo(spoilt.codes);
    assertThat(report.breaches()).allSatisfy(breach -> {
      assertThat(breach.where()).isNotBlank();
      assertThat(breach.message()).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
    });
  }

  /** Each code is reported by at least one case here; the four that are notes have tests of their own below. */
  @Test
  void everyCodeHasACase() {
    Set<String> reported = cases().flatMap(c -> c.codes.stream()).collect(Collectors.toCollection(TreeSet::new));
    Set<String> all = Stream.of(Code.values())
        .filter(code -> code != Code.BOUND_WEAK && code != Code.COMPROMISE_NOT_NEEDED && code != Code.CRUMBS
            && code != Code.SPUR && code != Code.BREAK_GAP)
        .map(Code::text).collect(Collectors.toCollection(TreeSet::new));
    assertThat(reported).isEqualTo(all);
  }

  @Test
  void aCompromiseThatIsNotNeededIsNoted() {
    Draft draft = HandPlan.bond(0);
    draft.compromises.add(compromise("minimumJointOffset", "study-1 row 2", 300, 290));
    draft.compromises.add(compromise("minimumJointOffset", "the landing", 300, 290));
    draft.compromises.add(compromise("of the customer's own", "study-1 row 2", 300, 290));
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.isClean()).isTrue();
    assertThat(report.notes()).extracting(Finding::code, Finding::where).containsExactly(
        org.assertj.core.groups.Tuple.tuple("compromise-not-needed", "study-1 row 2"),
        org.assertj.core.groups.Tuple.tuple("compromise-not-needed", "the landing"));
  }

  @Test
  void aBoundBelowTheAreaIsNoted() {
    Draft draft = HandPlan.bond(0);
    // 3 m² of floor from boards of 0.4 m²: at least 8 boards.
    draft.boardsAtLeast = 8;
    assertThat(PlanAudit.of(draft.job, draft.plan()).notes()).isEmpty();
    draft.boardsAtLeast = 7;
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.isClean()).isTrue();
    assertThat(report.notes()).singleElement().extracting(Finding::message)
        .isEqualTo("boardsAtLeast is 7, but the laid area alone fills 8 boards");
  }

  private static Set<String> codes(AuditReport report) {
    return report.breaches().stream().map(Finding::code).collect(Collectors.toCollection(TreeSet::new));
  }
}
