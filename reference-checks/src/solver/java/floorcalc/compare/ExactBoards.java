package floorcalc.compare;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;

/**
 * The fewest boards as an exact model for a general-purpose constraint solver (CP-SAT). It shares nothing with the library:
 * a row is its start piece, neighbours keep their joints apart, and pieces that share a board are matched one by one.
 */
final class ExactBoards {
  /** More of them slow the solver down, without any it proves less. */
  private static final int THRESHOLDS = 4;

  private final BoardCase given;
  private final CpModel model = new CpModel();
  private final List<RowModel> rows = new ArrayList<>();

  private ExactBoards(BoardCase given) {
    if (given.rows().stream().anyMatch(length -> 2 * length + given.kerf() <= given.board())) {
      throw new IllegalArgumentException("two rows of one piece must not fit into one board, but do in " + given);
    }
    this.given = given;
  }

  /**
   * Solves a case.
   *
   * @param given the case
   * @param workers threads of the solver
   * @param seconds its time limit
   * @return what it found and proved
   */
  static SolvedBoards solve(BoardCase given, int workers, double seconds) {
    Loader.loadNativeLibraries();
    ExactBoards exact = new ExactBoards(given);
    exact.build();
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(workers).setMaxTimeInSeconds(seconds).setRandomSeed(1);
    CpSolverStatus status = solver.solve(exact.model);
    boolean found = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
    return new SolvedBoards(given.number(), found ? (int) Math.round(solver.objectiveValue()) : 0,
        (int) Math.ceil(solver.bestObjectiveBound() - 1e-6), status.name(), solver.wallTime());
  }

  private void build() {
    for (int length : given.rows()) {
      rows.add(RowModel.of(model, given, length));
    }
    for (int k = 1; k < rows.size(); k++) {
      keepApart(rows.get(k - 1), rows.get(k), given.contact(k));
    }
    LinearExprBuilder boards = LinearExpr.newBuilder();
    rows.forEach(row -> row.addPiecesTo(boards));
    share(boards);
    IntVar total = model.newIntVar(0, 2L * rows.size() + rows.stream().mapToInt(row -> row.length / given.board()).sum(),
        "boards");
    model.addEquality(total, boards);
    addLengthBound(total);
    addThresholds(total);
    model.minimize(total);
  }

  /**
   * Joints at s, s + P ... of one row and t, t + P ... of the other, as far as the rows touch. The first joint of each lies where
   * they touch. Suppose s + d <= t. The second joint of the first row is the next one up; it must be as far from t, unless it
   * is not in the row or not where the rows touch. Later joints repeat these two.
   */
  private void keepApart(RowModel one, RowModel other, int contact) {
    if (one.single || other.single || given.offset() == 0) {
      return;
    }
    Literal oneFirst = model.newBoolVar("first");
    keepApart(one, other, contact, oneFirst);
    keepApart(other, one, contact, oneFirst.not());
  }

  private void keepApart(RowModel first, RowModel second, int contact, Literal when) {
    model.addGreaterOrEqual(LinearExpr.newBuilder().add(second.start).addTerm(first.start, -1), given.offset())
        .onlyEnforceIf(when);
    LinearExpr up = LinearExpr.newBuilder().add(second.start).addTerm(first.start, -1).build();
    // The last place of a joint that counts: inside its row, and no further than the contact.
    int last = Math.min(first.length - 1, contact) - given.board();
    if (last >= given.board()) {
      model.addLessOrEqual(up, given.board() - given.offset()).onlyEnforceIf(when);
    } else if (last >= given.minimum()) {
      Literal counts = model.newBoolVar("counts");
      model.addLessOrEqual(first.start, last).onlyEnforceIf(counts);
      model.addGreaterThan(first.start, last).onlyEnforceIf(counts.not());
      model.addLessOrEqual(up, given.board() - given.offset()).onlyEnforceIf(new Literal[] {when, counts});
    }
  }

  /** Every pair that comes from one board saves one: end piece with start piece, single piece with an end and a start piece. */
  private void share(LinearExprBuilder boards) {
    List<List<Literal>> uses = new ArrayList<>();
    rows.forEach(row -> uses.add(new ArrayList<>()));
    List<List<Literal>> starts = new ArrayList<>();
    rows.forEach(row -> starts.add(new ArrayList<>()));
    for (int i = 0; i < rows.size(); i++) {
      for (int j = 0; j < rows.size(); j++) {
        RowModel end = rows.get(i);
        RowModel start = rows.get(j);
        if (!end.single && !start.single) {
          Literal pair = model.newBoolVar("pair");
          model.addLessOrEqual(LinearExpr.newBuilder().add(end.end).add(start.start), given.board() - given.kerf())
              .onlyEnforceIf(pair);
          model.addImplication(pair, end.hasEnd);
          uses.get(i).add(pair);
          starts.get(j).add(pair);
          boards.addTerm(pair, -1);
        }
      }
    }
    for (RowModel single : rows) {
      if (single.single && single.length < given.board()) {
        shareWithSingle(single, uses, starts, boards);
      }
    }
    uses.forEach(model::addAtMostOne);
    starts.forEach(model::addAtMostOne);
  }

  /** A single piece may lie between an end piece and a start piece. Two single pieces never fit into one board here. */
  private void shareWithSingle(RowModel single, List<List<Literal>> ends, List<List<Literal>> starts,
      LinearExprBuilder boards) {
    int rest = given.board() - single.length;
    IntVar left = model.newIntVar(0, rest, "left");
    IntVar right = model.newIntVar(0, rest, "right");
    model.addLessOrEqual(LinearExpr.newBuilder().add(left).add(right), rest);
    List<Literal> onLeft = new ArrayList<>();
    List<Literal> onRight = new ArrayList<>();
    for (int k = 0; k < rows.size(); k++) {
      RowModel row = rows.get(k);
      if (row.single) {
        continue;
      }
      Literal end = model.newBoolVar("beside");
      model.addLessOrEqual(LinearExpr.newBuilder().add(row.end).addTerm(left, -1), -given.kerf()).onlyEnforceIf(end);
      model.addImplication(end, row.hasEnd);
      ends.get(k).add(end);
      onLeft.add(end);
      Literal start = model.newBoolVar("beside");
      model.addLessOrEqual(LinearExpr.newBuilder().add(row.start).addTerm(right, -1), -given.kerf()).onlyEnforceIf(start);
      starts.get(k).add(start);
      onRight.add(start);
      boards.addTerm(end, -1).addTerm(start, -1);
    }
    model.addAtMostOne(onLeft);
    model.addAtMostOne(onRight);
  }

  /** Redundant, and a great help: pieces lengthened by a kerf fill boards lengthened by a kerf. */
  private void addLengthBound(IntVar total) {
    LinearExprBuilder slack = LinearExpr.newBuilder().addTerm(total, given.board() + given.kerf());
    long length = 0;
    for (RowModel row : rows) {
      row.addKerfsTo(slack, -given.kerf());
      length += row.length;
    }
    model.addGreaterOrEqual(slack, length);
  }

  /**
   * Redundant too: at any threshold, end pieces above it and start pieces that leave no room beside them for one up to it,
   * take a board each, and no two of them the same.
   */
  private void addThresholds(IntVar total) {
    int low = given.minimum() - 1;
    int high = given.board() - given.kerf() - given.minimum();
    for (int part = 0; part <= THRESHOLDS; part++) {
      int threshold = low + (high - low) * part / THRESHOLDS;
      LinearExprBuilder count = LinearExpr.newBuilder();
      for (RowModel row : rows) {
        row.addThresholdTo(count, model, threshold, given);
      }
      model.addGreaterOrEqual(total, count);
    }
  }
}
