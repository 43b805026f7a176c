/**
 * Underlays and moisture barriers: what belongs between a subfloor and the boards, how its strips lie, and how many rolls that takes.
 * <p>
 * {@link floorcalc.underlay.UnderlayAdvice} says what belongs on a subfloor in a room of some use, and holds a roll against
 * {@link floorcalc.underlay.FilmLimits}. {@link floorcalc.underlay.StripLayout} lays strips off a roll on an outline of any shape,
 * each as long as the floor is within it, with the {@link floorcalc.underlay.Lap} that a source asks for.
 * {@link floorcalc.underlay.RollOrder} cuts the strips of all floors from whole rolls as bars are cut, see
 * {@link floorcalc.trims.TrimCutting}: a bound stands beside the number.
 * <p>
 * The compromise: strips lie in one direction on a whole floor, and what is left of a roll serves where it is long enough.
 * Lengths are exact; all public types are immutable and thread-safe and accept no null. See {@code docs/underlay.md}.
 * <pre>{@code
 * RollGoods film = RollGoods.barrier("film", Length.parse("2 m"), Length.parse("25 m"), Lap.NBS_K21);
 * CoveredRoom study = CoveredRoom.bothWays("Study", Wkt.parse("POLYGON ((0 0, 5000 0, 5000 4000, 0 4000, 0 0))"), Direction.ALONG_X);
 * String working = RollOrder.of(film, List.of(study)).explain();
 * }</pre>
 */
package floorcalc.underlay;
