/**
 * The front door: {@link floorcalc.FloorPlanner} takes a {@link floorcalc.plan.FloorJob} and gives a
 * {@link floorcalc.plan.FloorPlan}, audited.
 * <p>
 * Each package below is one idea of the trade and can be used alone, with a call of one line:
 * {@link floorcalc.measure} for lengths and tape notation, {@link floorcalc.outline} for rooms and the expansion gap,
 * {@code rules} for named sets of rules with their sources, {@code rows} for a width divided into rows,
 * {@code joints} for end joints, {@code boards} for cutting, {@code materials} for packs and waste,
 * {@code audit} for checking a plan, {@code drawing} for a plan as a picture.
 * <p>
 * Lengths are exact to the nanometre. The same job gives the same plan on every machine. Nothing here logs, reads or
 * writes. All types are immutable and thread-safe, and accept no null, unless they say otherwise.
 */
package floorcalc;
