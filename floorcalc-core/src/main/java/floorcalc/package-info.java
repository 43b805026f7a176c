/**
 * The arithmetic and geometry of laying wood plank floors. One idea of the trade per package; start at the
 * package whose word you need.
 */
package floorcalc;
