package floorcalc.audit;

import static floorcalc.audit.Spoiling.compromise;
import static floorcalc.audit.Spoiling.half;
import static floorcalc.audit.Spoiling.move;
import static floorcalc.audit.Spoiling.name;
import static floorcalc.audit.Spoiling.raised;
import static floorcalc.audit.Spoiling.renumber;
import static floorcalc.audit.Spoiling.ruled;
import static floorcalc.audit.SpoiltCase.spoil;
import static floorcalc.audit.SpoiltCase.spoilSums;

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
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** What can be wrong with what a plan says of its floor: the order of laying, minimums and compromises, the documents, the sums. */
final class SpoiltPapers {
  private SpoiltPapers() {}

  static Stream<SpoiltCase> cases() {
    return Stream.of(order(), minimums(), documents(), sums()).flatMap(s -> s);
  }

  private static Stream<SpoiltCase> order() {
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

  private static Stream<SpoiltCase> minimums() {
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

  private static Stream<SpoiltCase> documents() {
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

  private static Stream<SpoiltCase> sums() {
    Stream<SpoiltCase> ledger = Stream.of(
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
    Stream<SpoiltCase> counts = Stream.of(
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
}
