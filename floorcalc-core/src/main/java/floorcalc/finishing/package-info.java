/**
 * What a laid floor needs besides its boards, worked out from a job and a plan of it: profiles over its edges and breaks, what is cut out of
 * boards, what else to buy, and what it comes to.
 * <p>
 * {@link floorcalc.finishing.Transitions} goes through the doors of a job and the breaks of its plan: which profile lies there, what becomes
 * of casings, whether door leaves clear the floor.
 * <p>
 * {@link floorcalc.finishing.OrderList} makes one order list, each line with its working. {@link floorcalc.finishing.CutOuts} finds for each
 * pipe its boards and their cuts, for each piece that is no rectangle its notches, and what may break beside them. All types are immutable and
 * accept no null.
 * <pre>{@code
 * OrderList order = OrderList.of(job, plan);
 * FloorPlan complete = order.addedTo(plan);
 * }</pre>
 */
package floorcalc.finishing;
