/**
 * The two documents as objects: {@link floorcalc.plan.FloorJob}, what is known about a floor, and
 * {@link floorcalc.plan.FloorPlan}, what was worked out.
 * <p>
 * They hold data and check their own parts, no more. Points, outlines and lengths are in room coordinates and whole
 * nanometres. The frame of a bay is the room turned by minus the bay's direction: rows then run along x, each is laid from
 * low x to high x, and row 1 has the lowest y. All types are immutable and take no null.
 */
package floorcalc.plan;
