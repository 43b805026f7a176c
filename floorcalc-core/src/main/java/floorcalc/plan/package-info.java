/**
 * The two documents as objects: {@link floorcalc.plan.FloorJob}, what is known about a floor, and
 * {@link floorcalc.plan.FloorPlan}, what was worked out.
 * <p>
 * Start at {@link floorcalc.plan.FloorJob#of}. A job is the goods, the rules, a few choices and the rooms; what is not
 * given is common practice. A plan is bays, rows and pieces, each with the {@link floorcalc.plan.Cut part of a board} that
 * it is; the boards in the order of opening; the order; and what there is to say about the floor:
 * <ul>
 * <li>a {@link floorcalc.plan.Check} holds a limit against what was found; what was not measured is never a pass;
 * <li>a {@link floorcalc.plan.Compromise} names a place where a minimum could not be kept, and why;
 * <li>a {@link floorcalc.working.Finding} is anything else that was noticed, with a code for programs;
 * <li>a caution is a sentence for those who do the work.
 * </ul>
 * A poor floor is planned and says so. A job that cannot be planned is an
 * {@link floorcalc.plan.UnsoundJobException} with all its {@link floorcalc.plan.JobFault faults}.
 * <p>
 * These types hold data and check their own parts, no more. Points, outlines and lengths are in room coordinates and whole
 * nanometres. The frame of a bay is the room turned by minus the bay's direction: rows then run along x, each is laid from
 * low x to high x, and row 1 has the lowest y. All types are immutable and thread-safe and take no null. See
 * {@code docs/plan.md}.
 * <pre>{@code
 * FloorJob job = FloorJob.of("Study floor", boards).direction(DirectionChoice.of(Direction.ALONG_X)).room(Room.of("Study", outline)).build();
 * List<JobFault> faults = FloorPlanner.faultsOf(job);   // empty: it can be planned
 * }</pre>
 */
package floorcalc.plan;
