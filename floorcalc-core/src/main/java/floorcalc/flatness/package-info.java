/**
 * Flat: how far a floor departs from a straight edge laid on it, whatever its slope; kept apart from level.
 * <p>
 * A {@link floorcalc.flatness.Profile} is heights along a line. A {@link floorcalc.flatness.Straightedge} laid on it rests on
 * two high points; the deviation is the greatest gap beneath it between them. Which two points these are is a matter of
 * the rest: the one that gravity chooses, or the worst that the edge can be rocked onto, see
 * {@link floorcalc.flatness.RestRule}. The worst placement is not always at a reading.
 */
package floorcalc.flatness;
