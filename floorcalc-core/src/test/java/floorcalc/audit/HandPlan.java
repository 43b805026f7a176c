package floorcalc.audit;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.PackContent;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Compromise;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.PieceKind;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Small plans made by hand. Rooms are drawn in the frame of the boards, in millimetres, and then turned. All have a gap
 * of 10 mm, so that a laid area from (0, 0) to (5000, 600) belongs to a room from (-10, -10) to (5010, 610). Boards are
 * 2000 mm by 200 mm and 14 mm thick, so by common practice end pieces and joint offsets are at least 300 mm, rows at
 * least 70 mm, and a saw cut takes 3 mm.
 */
final class HandPlan {
  static final BoardGoods BOARDS =
      BoardGoods.of(Length.ofMillimetres(2000), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);

  private final Direction direction;
  private final BoardGoods goods;
  private final Draft draft = new Draft();
  private final Draft.BayDraft bay = new Draft.BayDraft();
  private final List<Ring> voids = new ArrayList<>();
  private Ring room;

  private HandPlan(BoardGoods goods, double degrees) {
    this.goods = goods;
    this.direction = Direction.fromDegrees(degrees);
    bay.bay = "study-1";
    bay.room = "Study";
    bay.direction = direction;
    bay.voids = new ArrayList<>();
    draft.bays.add(bay);
  }

  /** The names of all plans, for tests that go through them. */
  static Stream<String> names() {
    return Stream.of("two boards", "bond", "bond at 90", "bond at 180", "bond at 270", "bond at 37.5", "bond at 211.3",
        "L", "L at 37.5", "ripped rows", "column", "notches", "hole in a board", "slanted wall", "slanted wall at 123.4",
        "two runs", "mixed lengths", "ten posts");
  }

  static Draft named(String name) {
    int at = name.indexOf(" at ");
    double degrees = at < 0 ? 0 : Double.parseDouble(name.substring(at + 4));
    return switch (at < 0 ? name : name.substring(0, at)) {
      case "two boards" -> twoBoards();
      case "bond" -> bond(degrees);
      case "L" -> letterL(degrees);
      case "ripped rows" -> rippedRows();
      case "column" -> column();
      case "notches" -> notches();
      case "hole in a board" -> holeInABoard();
      case "slanted wall" -> slantedWall(degrees);
      case "two runs" -> twoRuns();
      case "mixed lengths" -> mixedLengths();
      case "ten posts" -> tenPosts();
      default -> throw new IllegalArgumentException(name);
    };
  }

  /** A room of 1 m by 1 m and boards so wide that two rows fill it. */
  static Draft twoBoards() {
    BoardGoods wide =
        BoardGoods.of(Length.ofMillimetres(1200), Length.ofMillimetres(490), Length.ofMillimetres(14), 2);
    return new HandPlan(wide, 0).room(0, 0, 1000, 0, 1000, 1000, 0, 1000).laid(10, 10, 990, 10, 990, 990, 10, 990)
        .row(490).rectangle(1, PieceKind.SINGLE, 1, 0, 980, 0, 490, 10, 10)
        .row(490).rectangle(1, PieceKind.SINGLE, 2, 110, 1090, 0, 490, 10, 500)
        .done();
  }

  /** Three rows of 5 m, joints at 1000 and 3000, 1500 and 3500, then 500, 2500 and 4500. */
  static Draft bond(double degrees) {
    return new HandPlan(BOARDS, degrees).room(-10, -10, 5010, -10, 5010, 610, -10, 610)
        .laid(0, 0, 5000, 0, 5000, 600, 0, 600).firstRow(0, 200, 0).secondRow(200).thirdRow(400, 0, 200)
        .done();
  }

  private HandPlan firstRow(double y, double width, double across) {
    return row(width).rectangle(1, PieceKind.START, 1, 1000, 2000, across, across + width, 0, y)
        .rectangle(1, PieceKind.FULL, 2, 0, 2000, across, across + width, 1000, y)
        .rectangle(1, PieceKind.END, 3, 0, 2000, across, across + width, 3000, y);
  }

  private HandPlan secondRow(double y) {
    return row(200).rectangle(1, PieceKind.START, 4, 500, 2000, 0, 200, 0, y)
        .rectangle(1, PieceKind.FULL, 5, 0, 2000, 0, 200, 1500, y)
        .rectangle(1, PieceKind.END, 6, 0, 1500, 0, 200, 3500, y);
  }

  private HandPlan thirdRow(double y, double across, double width) {
    return row(width).rectangle(1, PieceKind.START, 7, 1500, 2000, across, across + width, 0, y)
        .rectangle(1, PieceKind.FULL, 8, 0, 2000, across, across + width, 500, y)
        .rectangle(1, PieceKind.FULL, 9, 0, 2000, across, across + width, 2500, y)
        .rectangle(1, PieceKind.END, 1, 0, 500, across, across + width, 4500, y);
  }

  /** Two rows of 5 m and a third of 2.5 m. */
  static Draft letterL(double degrees) {
    return new HandPlan(BOARDS, degrees).room(-10, -10, 5010, -10, 5010, 410, 2510, 410, 2510, 610, -10, 610)
        .laid(0, 0, 5000, 0, 5000, 400, 2500, 400, 2500, 600, 0, 600).firstRow(0, 200, 0).secondRow(200)
        .row(200).rectangle(1, PieceKind.START, 7, 800, 2000, 0, 200, 0, 400)
        .rectangle(1, PieceKind.END, 8, 0, 1300, 0, 200, 1200, 400)
        .done();
  }

  /** The first row ripped to 120 mm and the last to 75 mm, both from the same boards: 80 mm and 75 mm leave 5 mm. */
  static Draft rippedRows() {
    return new HandPlan(BOARDS, 0).room(-10, -10, 5010, -10, 5010, 405, -10, 405)
        .laid(0, 0, 5000, 0, 5000, 395, 0, 395).firstRow(0, 120, 80).secondRow(120)
        .row(75).rectangle(1, PieceKind.START, 1, 1500, 2000, 0, 75, 0, 320)
        .rectangle(1, PieceKind.FULL, 2, 0, 2000, 0, 75, 500, 320)
        .rectangle(1, PieceKind.FULL, 3, 0, 2000, 0, 75, 2500, 320)
        .rectangle(1, PieceKind.END, 1, 0, 500, 0, 75, 4500, 320)
        .done();
  }

  /** A column that takes a stretch out of the second row. */
  static Draft column() {
    return new HandPlan(BOARDS, 0).room(-10, -10, 5010, -10, 5010, 610, -10, 610)
        .hole(2010, 210, 2390, 210, 2390, 390, 2010, 390).laid(0, 0, 5000, 0, 5000, 600, 0, 600)
        .laidHole(2000, 200, 2400, 200, 2400, 400, 2000, 400).firstRow(0, 200, 0)
        .row(200).rectangle(1, PieceKind.FULL, 4, 0, 2000, 0, 200, 0, 200)
        .rectangle(2, PieceKind.START, 5, 900, 2000, 0, 200, 2400, 200)
        .rectangle(2, PieceKind.END, 6, 0, 1500, 0, 200, 3500, 200).thirdRow(400, 0, 200)
        .done();
  }

  /** A column that is notched out of a board of the first row and one of the second. */
  static Draft notches() {
    return new HandPlan(BOARDS, 0).room(-10, -10, 5010, -10, 5010, 610, -10, 610)
        .hole(2110, 160, 2290, 160, 2290, 340, 2110, 340).laid(0, 0, 5000, 0, 5000, 600, 0, 600)
        .laidHole(2100, 150, 2300, 150, 2300, 350, 2100, 350)
        .row(200).rectangle(1, PieceKind.START, 1, 1000, 2000, 0, 200, 0, 0)
        .shape(1, PieceKind.FULL, 2, 0, 2000, 0, 200,
            1000, 0, 3000, 0, 3000, 200, 2300, 200, 2300, 150, 2100, 150, 2100, 200, 1000, 200)
        .rectangle(1, PieceKind.END, 3, 0, 2000, 0, 200, 3000, 0)
        .row(200).rectangle(1, PieceKind.START, 4, 500, 2000, 0, 200, 0, 200)
        .shape(1, PieceKind.FULL, 5, 0, 2000, 0, 200,
            1500, 200, 2100, 200, 2100, 350, 2300, 350, 2300, 200, 3500, 200, 3500, 400, 1500, 400)
        .rectangle(1, PieceKind.END, 6, 0, 1500, 0, 200, 3500, 200).thirdRow(400, 0, 200)
        .done();
  }

  /** A post so small that it goes through the middle of one board. */
  static Draft holeInABoard() {
    HandPlan plan = new HandPlan(BOARDS, 0).room(-10, -10, 5010, -10, 5010, 610, -10, 610)
        .hole(2110, 70, 2130, 70, 2130, 90, 2110, 90).laid(0, 0, 5000, 0, 5000, 600, 0, 600)
        .laidHole(2100, 60, 2140, 60, 2140, 100, 2100, 100).firstRow(0, 200, 0).secondRow(200).thirdRow(400, 0, 200);
    plan.bay.rows.get(0).pieces.get(1).holes.add(plan.turned(2100, 60, 2140, 60, 2140, 100, 2100, 100));
    return plan.done();
  }

  /**
   * The right-hand wall leans to the left by 3 in 4. Ten millimetres square to it are 8 mm along x and 6 mm along y, so
   * the wall passes 8 mm right of and 6 mm above the laid corner (5000, 0): at y = -10 it is at x = 5000 + 8 + 16 · 3/4 =
   * 5020, and at y = 610 at x = 5000 + 8 - 604 · 3/4 = 4555. The last piece of the third row is only 200 mm long.
   */
  static Draft slantedWall(double degrees) {
    HandPlan plan = new HandPlan(BOARDS, degrees).room(-10, -10, 5020, -10, 4555, 610, -10, 610)
        .laid(0, 0, 5000, 0, 4550, 600, 0, 600)
        .row(200).rectangle(1, PieceKind.START, 1, 1000, 2000, 0, 200, 0, 0)
        .rectangle(1, PieceKind.FULL, 2, 0, 2000, 0, 200, 1000, 0)
        .shape(1, PieceKind.END, 3, 0, 2000, 0, 200, 3000, 0, 5000, 0, 4850, 200, 3000, 200)
        .row(200).rectangle(1, PieceKind.START, 4, 500, 2000, 0, 200, 0, 200)
        .rectangle(1, PieceKind.FULL, 5, 0, 2000, 0, 200, 1500, 200)
        .shape(1, PieceKind.END, 6, 0, 1350, 0, 200, 3500, 200, 4850, 200, 4700, 400, 3500, 400)
        .row(200).rectangle(1, PieceKind.START, 7, 1500, 2000, 0, 200, 0, 400)
        .rectangle(1, PieceKind.FULL, 8, 0, 2000, 0, 200, 500, 400)
        .rectangle(1, PieceKind.FULL, 9, 0, 2000, 0, 200, 2500, 400)
        .shape(1, PieceKind.END, 1, 0, 200, 0, 200, 4500, 400, 4700, 400, 4550, 600, 4500, 600);
    plan.draft.compromises.add(new Compromise("minimumEndPiece", "study-1 row 3 run 1", Length.ofMillimetres(300),
        Length.ofMillimetres(200), "the wall cuts the row short"));
    return plan.done();
  }

  /** A U: the third row is laid in the two arms only, each filled by one piece from the middle of a board. */
  static Draft twoRuns() {
    return new HandPlan(BOARDS, 0)
        .room(-10, -10, 5010, -10, 5010, 610, 3990, 610, 3990, 410, 910, 410, 910, 610, -10, 610)
        .laid(0, 0, 5000, 0, 5000, 600, 4000, 600, 4000, 400, 900, 400, 900, 600, 0, 600)
        .firstRow(0, 200, 0).secondRow(200)
        .row(200).rectangle(1, PieceKind.SINGLE, 7, 50, 950, 0, 200, 0, 400)
        .rectangle(2, PieceKind.SINGLE, 7, 953, 1953, 0, 200, 4000, 400)
        .done();
  }

  /** Two rows of one board each, and ten posts on the line between them: the rows touch on eleven stretches. */
  static Draft tenPosts() {
    HandPlan plan = new HandPlan(BOARDS, 0).room(-10, -10, 2010, -10, 2010, 410, -10, 410)
        .laid(0, 0, 2000, 0, 2000, 400, 0, 400);
    double[] lower = new double[8 + 80];
    double[] upper = new double[8 + 80];
    System.arraycopy(new double[] {0, 0, 2000, 0, 2000, 200}, 0, lower, 0, 6);
    System.arraycopy(new double[] {2000, 400, 0, 400, 0, 200}, 0, upper, 0, 6);
    for (int i = 0; i < 10; i++) {
      double x = 100 + 180 * i;
      plan.hole(x + 10, 190, x + 30, 190, x + 30, 210, x + 10, 210).laidHole(x, 180, x + 40, 180, x + 40, 220, x, 220);
      System.arraycopy(new double[] {x + 40, 200, x + 40, 180, x, 180, x, 200}, 0, lower, 6 + 8 * (9 - i), 8);
      System.arraycopy(new double[] {x, 200, x, 220, x + 40, 220, x + 40, 200}, 0, upper, 6 + 8 * i, 8);
    }
    lower[87] = 200;
    upper[86] = 2000;
    upper[87] = 200;
    return plan.row(200).shape(1, PieceKind.SINGLE, 1, 0, 2000, 0, 200, lower)
        .row(200).shape(1, PieceKind.SINGLE, 2, 0, 2000, 0, 200, upper).done();
  }

  /** Boards of 2 m and 1.5 m from packs of three and two; joints at 1500 and 3500, then 1000, 2500 and 4500. */
  static Draft mixedLengths() {
    Length longer = Length.ofMillimetres(2000);
    Length shorter = Length.ofMillimetres(1500);
    BoardGoods mixed = BoardGoods.mixed(List.of(new PackContent(longer, 3), new PackContent(shorter, 2)),
        Length.ofMillimetres(200), Length.ofMillimetres(14));
    Draft draft = new HandPlan(mixed, 0).room(-10, -10, 5010, -10, 5010, 410, -10, 410)
        .laid(0, 0, 5000, 0, 5000, 400, 0, 400)
        .row(200).rectangle(1, PieceKind.FULL, 1, 0, 1500, 0, 200, 0, 0)
        .rectangle(1, PieceKind.FULL, 2, 0, 2000, 0, 200, 1500, 0)
        .rectangle(1, PieceKind.FULL, 3, 0, 1500, 0, 200, 3500, 0)
        .row(200).rectangle(1, PieceKind.START, 4, 1000, 2000, 0, 200, 0, 200)
        .rectangle(1, PieceKind.FULL, 5, 0, 1500, 0, 200, 1000, 200)
        .rectangle(1, PieceKind.FULL, 6, 0, 2000, 0, 200, 2500, 200)
        .rectangle(1, PieceKind.END, 4, 0, 500, 0, 200, 4500, 200)
        .done();
    for (int board : new int[] {1, 3, 5}) {
      draft.boards.set(board - 1, new OpenedBoard(board, shorter, draft.boards.get(board - 1).openedInRow()));
    }
    draft.countOrder();
    draft.addUpLedger();
    return draft;
  }

  /**
   * A board of 500 mm by 200 mm cut like the sails of a mill. The floor is four niches, far apart, each a bay of one row;
   * the pieces lie a saw cut apart, but no straight cut through the board misses all of them.
   */
  static Draft pinwheel() {
    BoardGoods boards = BoardGoods.of(Length.ofMillimetres(500), Length.ofMillimetres(200), Length.ofMillimetres(14), 5);
    double[][] cuts = {{0, 300, 0, 60}, {303, 500, 0, 130}, {200, 500, 133, 200}, {0, 197, 63, 200}};
    FloorJobBuilder job = FloorJob.of("hand-made", boards).direction(DirectionChoice.of(Direction.ALONG_X));
    Draft draft = new Draft();
    for (int i = 0; i < cuts.length; i++) {
      HandPlan niche = new HandPlan(boards, 0);
      double x = 1000 * i;
      double width = cuts[i][1] - cuts[i][0];
      double height = cuts[i][3] - cuts[i][2];
      niche.bay.bay = "niche-" + (i + 1);
      niche.bay.room = "Niche " + (i + 1);
      niche.room(x - 10, -10, x + width + 10, -10, x + width + 10, height + 10, x - 10, height + 10)
          .laid(x, 0, x + width, 0, x + width, height, x, height).row(height)
          .rectangle(1, PieceKind.SINGLE, 1, cuts[i][0], cuts[i][1], cuts[i][2], cuts[i][3], x, 0);
      draft.bays.add(niche.bay);
      job.room(Room.of(niche.bay.room, Outline.of(niche.room)));
    }
    job.rules(RuleSet.COMMON_PRACTICE.forBoard(boards.thickness(), boards.coverWidth())
        .with(LayingRules.MINIMUM_ROW_WIDTH, Length.ofMillimetres(50), Source.GIVEN)
        .with(LayingRules.MINIMUM_END_PIECE, Length.ofMillimetres(100), Source.GIVEN));
    draft.job = job.build();
    draft.openBoards(boards.longest());
    draft.countOrder();
    draft.addUpLedger();
    return draft;
  }

  private HandPlan room(double... corners) {
    room = turned(corners);
    return this;
  }

  private HandPlan hole(double... corners) {
    voids.add(turned(corners));
    return this;
  }

  private HandPlan laid(double... corners) {
    bay.shell = turned(corners);
    return this;
  }

  private HandPlan laidHole(double... corners) {
    bay.voids.add(turned(corners));
    return this;
  }

  private HandPlan row(double coverWidth) {
    Draft.RowDraft row = new Draft.RowDraft();
    row.row = bay.rows.size() + 1;
    row.coverWidth = nanometres(coverWidth);
    bay.rows.add(row);
    return this;
  }

  private HandPlan rectangle(int run, PieceKind kind, int board, double alongFrom, double alongTo, double acrossFrom,
      double acrossTo, double x, double y) {
    double right = x + alongTo - alongFrom;
    double top = y + acrossTo - acrossFrom;
    return shape(run, kind, board, alongFrom, alongTo, acrossFrom, acrossTo, x, y, right, y, right, top, x, top);
  }

  private HandPlan shape(int run, PieceKind kind, int board, double alongFrom, double alongTo, double acrossFrom,
      double acrossTo, double... corners) {
    Draft.RowDraft row = bay.rows.get(bay.rows.size() - 1);
    Draft.PieceDraft piece = new Draft.PieceDraft();
    piece.name = bay.bay + "." + row.row + "." + (row.pieces.size() + 1);
    piece.run = run;
    piece.kind = kind;
    piece.outline = turned(corners);
    piece.holes = new ArrayList<>();
    piece.board = board;
    piece.alongFrom = nanometres(alongFrom);
    piece.alongTo = nanometres(alongTo);
    piece.acrossFrom = nanometres(acrossFrom);
    piece.acrossTo = nanometres(acrossTo);
    row.pieces.add(piece);
    return this;
  }

  private Draft done() {
    draft.job = FloorJob.of("hand-made", goods).direction(DirectionChoice.of(direction))
        .room(Room.of("Study", Outline.of(room, voids))).build();
    draft.openBoards(goods.longest());
    draft.countOrder();
    draft.addUpLedger();
    return draft;
  }

  private Ring turned(double... corners) {
    return direction.toRoom(ring(corners));
  }

  static Ring ring(double... corners) {
    long[] xs = new long[corners.length / 2];
    long[] ys = new long[corners.length / 2];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = nanometres(corners[2 * i]);
      ys[i] = nanometres(corners[2 * i + 1]);
    }
    return Ring.ofNanometres(xs, ys);
  }

  static long nanometres(double millimetres) {
    return Math.round(millimetres * 1e6);
  }
}
