/**
 * Where a floor is split so that each part of it can move: expansion breaks, and the bays between them.
 * <p>
 * A floor that is not fixed swells and shrinks as one piece. A bay is such a piece: plain enough in shape that nothing fixed stands
 * in the way of its movement, and no longer or wider than its gaps can take. Where a room is not like that by itself,
 * {@link floorcalc.bays.ExpansionBreak expansion breaks} part it, each with a gap of its own under a profile.
 * <p>
 * {@link floorcalc.bays.BayFreedom} tells whether a bay can move, {@link floorcalc.bays.BaySplit} finds the breaks of least length,
 * and {@link floorcalc.bays.BayParts} parts a room at breaks that are known.
 * <pre>{@code
 * Calculated<BaySplit> split = BaySplit.of(outline, Direction.ALONG_X, List.of(), rules);
 * List<ExpansionBreak> breaks = split.value().breaks();
 * }</pre>
 */
package floorcalc.bays;
