/**
 * A second pair of eyes: checks a plan against its job and shares no arithmetic with what made it.
 * <p>
 * Start at {@link floorcalc.audit.PlanAudit}.
 */
package floorcalc.audit;
