package floorcalc.audit;

import floorcalc.boards.PackContent;
import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.Compromise;
import floorcalc.plan.Cut;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.PieceKind;
import floorcalc.plan.RoomBreak;
import floorcalc.plan.Row;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plan that can be changed, so that tests can spoil it in one place. Lengths are nanometres. */
final class Draft {
  static final class PieceDraft {
    String name;
    int run;
    PieceKind kind;
    Ring outline;
    List<Ring> holes;
    int board;
    long alongFrom;
    long alongTo;
    long acrossFrom;
    long acrossTo;

    Area area() {
      Area area = outline.signedArea().abs();
      for (Ring hole : holes) {
        area = area.minus(hole.signedArea().abs());
      }
      return area;
    }

    Area rectangle() {
      return Length.ofNanometres(alongTo - alongFrom).times(Length.ofNanometres(acrossTo - acrossFrom));
    }
  }

  static final class RowDraft {
    int row;
    long coverWidth;
    List<PieceDraft> pieces = new ArrayList<>();
  }

  static final class BayDraft {
    String bay;
    String room;
    Direction direction;
    Ring shell;
    List<Ring> voids;
    List<RowDraft> rows = new ArrayList<>();
  }

  FloorJob job;
  List<BayDraft> bays = new ArrayList<>();
  List<OpenedBoard> boards = new ArrayList<>();
  int boardsUsed;
  int boardsAtLeast;
  int spare;
  int packs;
  int boardsInPacks;
  Area[] ledger = new Area[8];
  List<Compromise> compromises = new ArrayList<>();
  List<Finding> findings = new ArrayList<>();
  List<RoomBreak> breaks = new ArrayList<>();
  /** Set by a change that spoils the sums themselves, so that they are not made right again afterwards. */
  boolean sumsAreSpoilt;

  static Draft of(FloorJob job, FloorPlan plan) {
    Draft draft = new Draft();
    draft.job = job;
    for (Bay bay : plan.bays()) {
      BayDraft b = new BayDraft();
      b.bay = bay.bay();
      b.room = bay.room();
      b.direction = bay.direction();
      b.shell = bay.laid().shell();
      b.voids = new ArrayList<>(bay.laid().voids());
      for (Row row : bay.rows()) {
        RowDraft r = new RowDraft();
        r.row = row.row();
        r.coverWidth = row.coverWidth().toNanometres();
        row.pieces().forEach(piece -> r.pieces.add(of(piece)));
        b.rows.add(r);
      }
      draft.bays.add(b);
    }
    draft.boards.addAll(plan.boards());
    draft.boardsUsed = plan.order().boardsUsed();
    draft.boardsAtLeast = plan.order().boardsAtLeast();
    draft.spare = plan.order().spare();
    draft.packs = plan.order().packs();
    draft.boardsInPacks = plan.order().boardsInPacks();
    WasteLedger sums = plan.ledger();
    draft.ledger = new Area[] {sums.bought(), sums.laid(), sums.trimmedToShape(), sums.sawKerf(), sums.usableOffcuts(),
        sums.shortOffcuts(), sums.spare(), sums.packRounding()};
    draft.compromises.addAll(plan.compromises());
    draft.findings.addAll(plan.findings());
    draft.breaks.addAll(plan.breaks());
    return draft;
  }

  private static PieceDraft of(LaidPiece piece) {
    PieceDraft p = new PieceDraft();
    p.name = piece.piece();
    p.run = piece.run();
    p.kind = piece.kind();
    p.outline = piece.outline();
    p.holes = new ArrayList<>(piece.holes());
    p.board = piece.from().board();
    p.alongFrom = piece.from().alongFrom().toNanometres();
    p.alongTo = piece.from().alongTo().toNanometres();
    p.acrossFrom = piece.from().acrossFrom().toNanometres();
    p.acrossTo = piece.from().acrossTo().toNanometres();
    return p;
  }

  FloorPlan plan() {
    return new FloorPlan("hand-made", bays.stream().map(Draft::bay).toList(), boards,
        new Order(boardsUsed, boardsAtLeast, spare, packs, boardsInPacks),
        new WasteLedger(ledger[0], ledger[1], ledger[2], ledger[3], ledger[4], ledger[5], ledger[6], ledger[7]),
        List.of(), List.of(), List.of(), compromises, findings, List.of(), List.of()).withBreaks(breaks);
  }

  private static Bay bay(BayDraft b) {
    return new Bay(b.bay, b.room, b.direction, Outline.of(b.shell, b.voids),
        b.rows.stream().map(r -> new Row(r.row, Length.ofNanometres(r.coverWidth),
            r.pieces.stream().map(Draft::piece).toList())).toList());
  }

  private static LaidPiece piece(PieceDraft p) {
    return new LaidPiece(p.name, p.run, p.kind, p.outline, p.holes, new Cut(p.board, Length.ofNanometres(p.alongFrom),
        Length.ofNanometres(p.alongTo), Length.ofNanometres(p.acrossFrom), Length.ofNanometres(p.acrossTo)));
  }

  List<PieceDraft> pieces() {
    return bays.stream().flatMap(b -> b.rows.stream()).flatMap(r -> r.pieces.stream()).toList();
  }

  /** The piece at a place: row and place in the row of the first bay, both from 1. */
  PieceDraft piece(int row, int number) {
    return bays.get(0).rows.get(row - 1).pieces.get(number - 1);
  }

  RowDraft row(int row) {
    return bays.get(0).rows.get(row - 1);
  }

  /** Opens the boards that the pieces ask for, each in the first row that has a piece of it, and numbers them so. */
  void openBoards(Length length) {
    boards.clear();
    Map<Integer, Integer> numbers = new LinkedHashMap<>();
    for (BayDraft bay : bays) {
      for (int r = 0; r < bay.rows.size(); r++) {
        for (PieceDraft piece : bay.rows.get(r).pieces) {
          if (numbers.putIfAbsent(piece.board, numbers.size() + 1) == null) {
            boards.add(new OpenedBoard(numbers.size(), length, bay.bay + "." + (r + 1)));
          }
          piece.board = numbers.get(piece.board);
        }
      }
    }
  }

  /** Counts the order anew, with the bound that the area alone gives. */
  void countOrder() {
    int perPack = 0;
    int least = 0;
    for (PackContent content : job.board().pack()) {
      perPack += content.perPack();
      int used = (int) boards.stream().filter(board -> board.length().equals(content.length())).count();
      least = Math.max(least, (used + content.perPack() - 1) / content.perPack());
    }
    boardsUsed = boards.size();
    boardsAtLeast = boards.size();
    spare = (2 * boards.size() + 99) / 100;
    packs = Math.max(least, (boards.size() + spare + perPack - 1) / perPack);
    boardsInPacks = packs * perPack;
  }

  /** Adds up the ledger anew: what is sawn off is all called short offcuts. */
  void addUpLedger() {
    Area laid = Area.ZERO;
    Area rectangles = Area.ZERO;
    for (PieceDraft piece : pieces()) {
      laid = laid.plus(piece.area());
      rectangles = rectangles.plus(piece.rectangle());
    }
    Length pitch = job.board().laidPitch();
    Area used = Area.ZERO;
    for (OpenedBoard board : boards) {
      used = used.plus(board.length().times(pitch));
    }
    Area bought = Area.ZERO;
    for (PackContent content : job.board().pack()) {
      bought = bought.plus(content.length().times(pitch).multipliedBy((long) content.perPack() * packs));
    }
    Area spares = job.board().longest().times(pitch).multipliedBy(spare);
    ledger = new Area[] {bought, laid, rectangles.minus(laid), Area.ZERO, Area.ZERO, used.minus(rectangles), spares,
        bought.minus(used).minus(spares)};
  }
}
