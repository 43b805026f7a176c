/**
 * A second pair of eyes: checks a plan against its job, from first principles, and shares no arithmetic with what made it.
 * <p>
 * Start at {@link floorcalc.audit.PlanAudit}: {@code PlanAudit.of(job, plan)} gives an {@link floorcalc.audit.AuditReport}
 * that lists every promise the plan breaks. A plan may come from this library, from another program or from a pencil; a bad
 * one is a list of findings, never an exception.
 * <p>
 * Why twice? A program that cuts a floor into pieces and then adds them up with the same functions agrees with itself,
 * right or wrong. So the audit asks other questions. It does not cut a floor: it sweeps a line over each row and counts
 * layers, one wherever floor is laid and none elsewhere. It does not move walls inward: it asks of each edge of the laid area
 * which wall it runs along, and of each wall where its edge is. It does not keep track of offcuts: it takes each board and
 * asks whether straight cuts free the pieces. Where two answers must be the same number (areas, boards, packs, the ledger)
 * both are whole numbers and are compared without tolerance.
 * <p>
 * The compromise is rounding. Corners are whole nanometres, so a slanting wall or a turned bay cannot be met exactly; three
 * nanometres across an edge are allowed there, and none where all edges are straight. The opposite compromise is never made: no
 * area is small enough to be forgiven for its size alone, other than a tip that a row line cuts off and no saw could make.
 * <p>
 * What other packages hold is read (corners, lengths, goods, the ledger's lines), what they can work out is not called; a test
 * sees to it. The page {@code docs/audit.md} lists all codes. All types are immutable, thread-safe and accept no null.
 * <pre>{@code
 * AuditReport report = PlanAudit.of(job, plan);
 * List<Finding> breaches = report.breaches();   // empty if report.isClean()
 * }</pre>
 */
package floorcalc.audit;
