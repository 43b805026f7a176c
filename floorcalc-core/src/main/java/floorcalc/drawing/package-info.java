/**
 * A bay of a plan, the levels of a floor, or a room as it was measured, drawn to scale as SVG, for paper and for the screen.
 * <p>
 * Start at {@link floorcalc.drawing.FloorDrawing}, for levels at {@link floorcalc.drawing.LevelsDrawing}, and for a survey at
 * {@link floorcalc.drawing.SurveyDrawing}. The drawing of a bay only shows what the plan says; it works nothing out. It is
 * made for a sheet of paper on site: black and light greys on white, a round scale with its bar, the number of its board
 * on each piece, combs where something is sawn, and no text across another. What does not fit is left out and named in a
 * note; a floor of too many pieces is drawn as rows and joints. The same bay gives the same bytes
 * everywhere.
 * <p>
 * All types are immutable and thread-safe and accept no null. See {@code docs/drawing.md} and
 * {@code docs/levels.md}.
 */
package floorcalc.drawing;
