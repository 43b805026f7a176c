package floorcalc.audit;

import floorcalc.measure.Area;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Row;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Checks a plan against its job from first principles: covered and nothing overlaps, cuttable from the boards listed, only
 * factory ends and edges meet, laid in order, the three minimums kept or the breach named, order and ledger right.
 * <p>
 * Lengths and areas are compared in whole nanometres; 3 nm across an edge are allowed where corners had to be rounded, at
 * slanting walls and in turned bays. The work grows with the number of pieces. Stateless and thread-safe.
 * <pre>{@code
 * AuditReport report = PlanAudit.of(job, plan);
 * System.out.println(report.summary());   // clean: 1 bay, 2 rows, 2 pieces, 2 boards and 0 end joints checked
 * }</pre>
 *
 * @since 0.1
 */
public final class PlanAudit {
  private PlanAudit() {
  }

  /**
   * Checks a plan. It may come from this library, from other code, or be made by hand; whatever is wrong with it is a
   * breach in the report and never an exception.
   *
   * @param job what was asked for, not null
   * @param plan what was worked out, not null
   * @return what was found, not null
   */
  public static AuditReport of(FloorJob job, FloorPlan plan) {
    Objects.requireNonNull(job, "job");
    Objects.requireNonNull(plan, "plan");
    Breaches breaches = new Breaches();
    Tally tally = new Tally();
    List<Step> steps = new ArrayList<>();
    BoardBook book = BoardBook.of(job, plan, breaches);
    tally.boards = book.size();
    Compromises compromises = Compromises.of(plan, breaches);
    CutList cuts = new CutList(countPieces(plan));
    RoomCheck.check(job, plan, breaches);
    BayCheck bays = new BayCheck(job, book, cuts, compromises, breaches, tally);
    for (Bay bay : plan.bays()) {
      bays.check(bay);
    }
    compromises.noteTheRest(job.rules());
    BoardCheck.check(job, cuts, book, RowIndex.of(plan), breaches);
    OrderCheck.check(job, plan, book, trivialBound(job, tally), breaches);
    steps.add(coverage(tally));
    LedgerCheck.check(job, plan, book, cuts, tally, breaches, steps);
    return new AuditReport(breaches, steps, tally);
  }

  private static Step coverage(Tally tally) {
    Area pieces = Area.ofHalfSquareNanometres(tally.pieceArea.value());
    Area laid = Area.ofHalfSquareNanometres(tally.laidArea.value());
    return new Step("audit-area", "Do the pieces together have the area that is to be laid?", "difference = pieces - laid",
        List.of(Term.of("pieces", "the sum over all pieces, each by its own corners", pieces),
            Term.of("laid", "the sum over all bays, each by the corners of its laid area", laid)),
        pieces.minus(laid), Source.DEFINITION);
  }

  private static int countPieces(FloorPlan plan) {
    int pieces = 0;
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        pieces += row.pieces().size();
      }
    }
    return pieces;
  }

  /** So many boards at least are filled by the laid area, were nothing lost, without what rounding and tips may take from it. */
  private static long trivialBound(FloorJob job, Tally tally) {
    BigInteger board = BigInteger.valueOf(job.board().lengths().get(0).toNanometres())
        .multiply(BigInteger.valueOf(job.board().laidPitch().toNanometres())).shiftLeft(1);
    BigInteger rounding = new BigDecimal(2 * tally.areaRounding).setScale(0, RoundingMode.CEILING).toBigInteger();
    BigInteger[] parts = tally.laidArea.value().subtract(rounding).max(BigInteger.ZERO).divideAndRemainder(board);
    return parts[0].add(BigInteger.valueOf(parts[1].signum())).min(BigInteger.valueOf(Long.MAX_VALUE)).longValue();
  }
}
