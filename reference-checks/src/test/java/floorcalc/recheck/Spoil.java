package floorcalc.recheck;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.plan.Bay;
import floorcalc.plan.Compromise;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Order;
import floorcalc.plan.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Changes one thing in a plan of one bay. */
final class Spoil {
  private final FloorPlan plan;
  private Bay bay;
  private List<OpenedBoard> boards;
  private List<Compromise> compromises;
  private Order order;

  Spoil(FloorPlan plan) {
    this.plan = plan;
    this.bay = plan.bays().get(0);
    this.boards = plan.boards();
    this.compromises = plan.compromises();
    this.order = plan.order();
  }

  Spoil laid(Outline laid) {
    bay = new Bay(bay.bay(), bay.room(), bay.direction(), laid, bay.rows());
    return this;
  }

  /** Changes the list of all pieces; each stays in the row that its name tells. */
  Spoil pieces(Consumer<List<LaidPiece>> change) {
    List<LaidPiece> pieces = new ArrayList<>();
    bay.rows().forEach(row -> pieces.addAll(row.pieces()));
    change.accept(pieces);
    List<Row> rows = bay.rows().stream().map(row -> new Row(row.row(), row.coverWidth(), pieces.stream()
        .filter(piece -> piece.piece().startsWith(bay.bay() + "." + row.row() + ".")).toList())).toList();
    bay = new Bay(bay.bay(), bay.room(), bay.direction(), bay.laid(), rows);
    return this;
  }

  Spoil coverWidth(int row, Length width) {
    List<Row> rows = new ArrayList<>(bay.rows());
    rows.set(row, new Row(rows.get(row).row(), width, rows.get(row).pieces()));
    bay = new Bay(bay.bay(), bay.room(), bay.direction(), bay.laid(), rows);
    return this;
  }

  Spoil boards(Consumer<List<OpenedBoard>> change) {
    boards = new ArrayList<>(boards);
    change.accept(boards);
    return this;
  }

  Spoil compromises(List<Compromise> others) {
    compromises = others;
    return this;
  }

  Spoil order(Order other) {
    order = other;
    return this;
  }

  FloorPlan plan() {
    return new FloorPlan(plan.title(), List.of(bay), boards, order, plan.ledger(), plan.materials(), plan.profiles(),
        plan.checks(), compromises, plan.findings(), plan.cautions(), plan.working());
  }
}
