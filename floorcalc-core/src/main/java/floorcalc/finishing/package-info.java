/**
 * What a laid floor needs besides its boards: what else to buy, and what it comes to.
 * <p>
 * {@link floorcalc.finishing.OrderList} takes a job and a plan of it and makes one order list, each line with its working. All types are
 * immutable and accept no null.
 */
package floorcalc.finishing;
