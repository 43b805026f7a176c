/**
 * The front door: {@link floorcalc.FloorPlanner} takes a {@link floorcalc.plan.FloorJob} and gives a
 * {@link floorcalc.plan.FloorPlan}, audited.
 * <p>
 * Each package below is one idea of the trade and can be used alone, with a call of one line:
 * {@link floorcalc.measure} for lengths and tape notation, {@link floorcalc.working} for results that show how they came
 * about, {@link floorcalc.rules} for named sets of rules with their sources, {@link floorcalc.outline} for rooms and the
 * expansion gap, {@link floorcalc.rows} for a width divided into rows, {@link floorcalc.joints} for end joints,
 * {@link floorcalc.boards} for cutting, {@link floorcalc.materials} for packs and waste, {@link floorcalc.plan} for the
 * job and the plan, {@link floorcalc.audit} for checking a plan, {@link floorcalc.drawing} for a plan as a picture.
 * <p>
 * Lengths are exact to the nanometre. The same job gives the same plan on every machine. Nothing here logs, reads or
 * writes. All types are immutable and thread-safe, and accept no null, unless they say otherwise.
 * <pre>{@code
 * FloorJob job = FloorJob.of("Study floor", boards).room(Room.of("Study", outline)).build();
 * FloorPlan plan = FloorPlanner.plan(job);
 * int packs = plan.order().packs();
 * }</pre>
 */
package floorcalc;
