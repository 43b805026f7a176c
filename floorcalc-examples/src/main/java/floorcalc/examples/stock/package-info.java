/**
 * A stock of rooms too large for one plan: an invented housing stock in which a room follows from its number alone, planned
 * room by room and added up.
 * <p>
 * The unit of work is a number. Whoever has it can make the room, plan it and keep a row of figures, with nothing shared and
 * nothing remembered: {@link floorcalc.examples.stock.StockRow#of}. Rows add up in any order and in any grouping to the same
 * {@link floorcalc.examples.stock.StockTotals}. So a loop, a parallel stream and an engine that spreads work over many machines give
 * the same totals and the same digest.
 */
package floorcalc.examples.stock;
