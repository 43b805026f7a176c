/**
 * Movement: how much boards swell and shrink, and whether the gap has room for it.
 * <p>
 * Wood moves across the grain, about twice as much along the growth rings as across them, and hardly at all along its
 * length. So a floor moves <b>across the boards</b>, and what counts is its whole width in that direction, through every
 * opening without a break, whichever side of the room that is. For each per cent of moisture content a board changes by
 * its {@link floorcalc.movement.Coefficient}: flat-sawn red oak by 0.369 % of its width, a multilayer board perhaps by a tenth of
 * that. {@link floorcalc.movement.Species} knows the published ones; the maker of an engineered board knows better.
 * <p>
 * From there:
 * <ul>
 * <li>{@link floorcalc.movement.WidthChange}: the change of any width from one moisture content to another;
 * <li>{@link floorcalc.movement.MovementForecast}: swelling to the dampest and shrinkage to the driest season, and how far
 * joints open;
 * <li>{@link floorcalc.movement.GapChecks}: the gap judged three ways, each by itself: wide enough at every place in the
 * dampest season, still covered by the trim in the driest, and nothing holding the floor;
 * <li>{@link floorcalc.movement.WallPoints}: the places to judge in a bay of any shape;
 * <li>{@link floorcalc.movement.GapAdvice}: which gap to leave on each side, or how wide a bay may be;
 * <li>{@link floorcalc.movement.WallAngle}: square to a slanted wall, or along the board.
 * </ul>
 * Every width says whether it is on each side or in total, and that it is square to the wall. Tables that disagree stand
 * beside each other. Lengths are exact until the last step of each formula, which says how it rounds. All types are
 * immutable and thread-safe and accept no null. See {@code docs/movement.md}.
 * <pre>{@code
 * Calculated<Length> wider = WidthChange.of(Length.parse("3900 mm"), Coefficient.NF_DTU_SOLID, Percent.of("7"), Percent.of("9"));
 * Length change = wider.value(); // more than zero: it swells
 * }</pre>
 */
package floorcalc.movement;
