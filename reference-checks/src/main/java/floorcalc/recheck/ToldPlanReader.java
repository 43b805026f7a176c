package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Segment;
import floorcalc.recheck.ToldPlan.Bay;
import floorcalc.recheck.ToldPlan.Board;
import floorcalc.recheck.ToldPlan.Compromise;
import floorcalc.recheck.ToldPlan.Cut;
import floorcalc.recheck.ToldPlan.Material;
import floorcalc.recheck.ToldPlan.Order;
import floorcalc.recheck.ToldPlan.Piece;
import floorcalc.recheck.ToldPlan.Profile;
import floorcalc.recheck.ToldPlan.Row;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Reads a plan in the format {@code floorcalc-plan/1}: every field must be there, none may be added. */
final class ToldPlanReader {
  private static final Set<String> PLAN = Set.of("format", "title", "bays", "boards", "order", "materials", "profiles", "checks",
      "compromises", "cautions");
  private static final Set<String> BAY = Set.of("bay", "room", "directionDegrees", "laid", "rows");
  private static final Set<String> LAID = Set.of("shell", "holes");
  private static final Set<String> ROW = Set.of("row", "coverWidth", "pieces");
  private static final Set<String> PIECE = Set.of("piece", "run", "kind", "outline", "holes", "from");
  private static final Set<String> FROM = Set.of("board", "along", "across");
  private static final Set<String> BOARD = Set.of("board", "length", "openedInRow");
  private static final Set<String> ORDER =
      Set.of("boardsUsed", "boardsAtLeast", "provenFewest", "spare", "packs", "boardsInPacks");
  private static final Set<String> MATERIAL = Set.of("item", "net", "quantity", "unit", "working");
  private static final Set<String> PROFILE = Set.of("kind", "from", "to", "length", "because");
  private static final Set<String> CHECK = Set.of("check", "found", "limit", "met", "source");
  private static final Set<String> COMPROMISE = Set.of("rule", "where", "required", "found", "because");
  private static final Set<String> KINDS = Set.of("start", "full", "end", "single", "");

  private final Tally tally;

  private ToldPlanReader(Tally tally) {
    this.tally = tally;
  }

  static ToldPlan read(Cursor plan, Tally tally) {
    return new ToldPlanReader(tally).plan(plan);
  }

  private ToldPlan plan(Cursor plan) {
    plan.only(PLAN);
    String format = plan.get("format").text();
    if (!format.isEmpty() && !format.equals("floorcalc-plan/1")) {
      plan.get("format").fault(Rule.FORMAT, format, "must be floorcalc-plan/1");
    }
    plan.get("checks").items().forEach(this::check);
    plan.get("cautions").items().forEach(Cursor::text);
    return new ToldPlan(plan, plan.get("title").text(), plan.get("bays").items().stream().map(this::bay).toList(),
        plan.get("boards").items().stream().map(this::board).toList(), order(plan.get("order")),
        plan.get("materials").items().stream().map(this::material).toList(),
        plan.get("profiles").items().stream().map(this::profile).toList(),
        plan.get("compromises").items().stream().map(this::compromise).toList());
  }

  private Bay bay(Cursor bay) {
    bay.only(BAY);
    Cursor laid = bay.get("laid").only(LAID);
    BigDecimal degrees = bay.get("directionDegrees").number();
    if (degrees.signum() < 0 || degrees.compareTo(BigDecimal.valueOf(360)) >= 0) {
      bay.get("directionDegrees").fault(Rule.FORMAT, degrees.toString(), "must be from 0 up to, but not including, 360");
    }
    return new Bay(bay, bay.get("bay").text(), bay.get("room").text(), degrees, polygon(laid.get("shell"), laid.get("holes")),
        bay.get("rows").items().stream().map(this::row).toList());
  }

  private Row row(Cursor row) {
    row.only(ROW);
    List<Piece> pieces = row.get("pieces").items().stream().map(this::piece).toList();
    if (pieces.isEmpty() && row.get("pieces").isThere()) {
      row.get("pieces").fault(Rule.FORMAT, "no piece", "a row has one piece or more");
    }
    return new Row(row, row.get("row").whole(1), size(row.get("coverWidth")), pieces);
  }

  private Piece piece(Cursor piece) {
    piece.only(PIECE);
    String kind = piece.get("kind").text();
    if (!KINDS.contains(kind)) {
      piece.get("kind").fault(Rule.FORMAT, kind, "must be start, full, end or single");
    }
    Cursor from = piece.get("from").only(FROM);
    long[] along = interval(from.get("along"));
    long[] across = interval(from.get("across"));
    return new Piece(piece.get("piece").text(), piece.get("run").whole(1), kind,
        polygon(piece.get("outline"), piece.get("holes")),
        new Cut(from.get("board").whole(1), along[0], along[1], across[0], across[1]));
  }

  private Polygon polygon(Cursor shell, Cursor holes) {
    return Shapes.polygon(Shapes.corners(shell, this::point),
        holes.items().stream().map(hole -> Shapes.corners(hole, this::point)).toList());
  }

  private Coordinate point(Cursor point) {
    tally.lengths += 2;
    return point.point();
  }

  private long[] interval(Cursor interval) {
    List<Cursor> ends = interval.items(2);
    tally.lengths += ends.size();
    return ends.isEmpty() ? new long[2] : new long[] {ends.get(0).millimetres(), ends.get(1).millimetres()};
  }

  private long size(Cursor length) {
    tally.lengths++;
    long found = length.millimetres();
    if (length.isThere() && length.isNumber() && found <= 0) {
      length.fault(Rule.FORMAT, Faults.mm(found), "must be more than 0 mm");
    }
    return found;
  }

  private Board board(Cursor board) {
    board.only(BOARD);
    return new Board(board, board.get("board").whole(1), size(board.get("length")), board.get("openedInRow").text());
  }

  private Order order(Cursor order) {
    order.only(ORDER);
    return new Order(order, order.get("boardsUsed").whole(0), order.get("boardsAtLeast").whole(0),
        order.get("provenFewest").yes(), order.get("spare").whole(0), order.get("packs").whole(0),
        order.get("boardsInPacks").whole(0));
  }

  private Material material(Cursor material) {
    material.only(MATERIAL);
    material.get("net").textOrEmpty();
    material.get("working").items();
    BigDecimal quantity = material.get("quantity").number();
    if (quantity.signum() < 0) {
      material.get("quantity").fault(Rule.FORMAT, quantity.toString(), "must be 0 or more");
    }
    return new Material(material, material.get("item").text(), quantity, material.get("unit").text());
  }

  private Profile profile(Cursor profile) {
    profile.only(PROFILE);
    Segment line = new Segment(point(profile.get("from")), point(profile.get("to")));
    return new Profile(profile, profile.get("kind").text(), line, size(profile.get("length")), profile.get("because").text());
  }

  /** A check whose outcome is not known must say what to measure. */
  private void check(Cursor check) {
    check.only(CHECK);
    tally.checks++;
    check.get("check").text();
    check.get("source").text();
    String found = check.get("found").textOrEmpty();
    String limit = check.get("limit").textOrEmpty();
    Cursor met = check.get("met");
    if (!met.isNull()) {
      met.yes();
    }
    if (met.isNull() && limit.isBlank()) {
      check.get("limit").fault(Rule.FORMAT, "an empty text beside met null", "it must say what is to be measured");
    }
    if (!met.isNull() && found.isBlank() && check.get("found").isThere()) {
      check.get("found").fault(Rule.FORMAT, "an empty text beside a verdict", "it must say what was found");
    }
  }

  private Compromise compromise(Cursor compromise) {
    compromise.only(COMPROMISE);
    compromise.get("because").text();
    tally.lengths += 2;
    return new Compromise(compromise, compromise.get("rule").text(), compromise.get("where").text(),
        compromise.get("required").millimetres(), compromise.get("found").millimetres());
  }
}
