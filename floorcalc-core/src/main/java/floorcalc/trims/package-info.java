/**
 * Skirtings, profiles and other trims: how much a room takes, which piece is cut from which bar, and how few bars do.
 * <p>
 * {@link floorcalc.trims.TrimRuns} walks along the walls of a room and gathers runs of skirting, less its openings;
 * {@link floorcalc.trims.BarOrder} cuts the runs of all rooms from bars as they are sold. Profiles go the same way.
 * <p>
 * A trim has no factory ends that matter: any piece may be cut from anywhere in a bar, as long as a saw kerf lies between
 * two. This is the one-dimensional cutting stock problem. Pieces fit into a bar of length P if
 * {@code p1 + ... + pk + (k - 1) * kerf <= P}; made one kerf longer, pieces and bar alike, they fit if they simply add up.
 * <p>
 * {@link floorcalc.trims.TrimCutting} is the way in. It looks for the fewest bars, or the least length or cost where several
 * lengths are sold, and shows a bound that no cutting can be below:
 * <ol>
 * <li>by length, and by long pieces that cannot share a bar;</li>
 * <li>by prices: each length gets a price such that no bar holds more worth than it costs; then all pieces together cannot
 * be had for less than their worth. The best prices come from the linear program over all ways to fill a bar; what they
 * prove is worked out again in whole numbers.</li>
 * </ol>
 * The cutting comes from quick ways, from rounding that program, and from an exact search, each only while the bound is not
 * reached. {@link floorcalc.trims.TrimPiecing} makes long walls up of several pieces;
 * {@link floorcalc.trims.TrimEstimate} says between which numbers the fewest bars lie, without a search.
 * <p>
 * The compromise: the search takes a counted number of steps. Where they do not suffice, the cutting may be one bar too many,
 * and says so. Among cuttings of the same bars the longest single leftover is looked for, likewise; the fewest cuts are only
 * preferred among those that were found. Lengths are whole nanometres; all public types are immutable and thread-safe and
 * take no null. See {@code docs/trims.md} and {@code docs/skirting.md}.
 * <pre>{@code
 * TrimCutting cutting = TrimCutting.of(List.of(TrimPiece.of("doorway", Length.parse("810 mm")).times(7)),
 *     List.of(TrimStock.sold(Length.parse("2400 mm"))), Length.parse("3 mm")).value();
 * int bars = cutting.barsBought(); // never fewer than cutting.leastBarsBought()
 * }</pre>
 */
package floorcalc.trims;
