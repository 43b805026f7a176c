/**
 * A bay of a plan, the levels of a floor, a room as it was measured, and the figures of single calculations, drawn to scale as SVG, for paper and for
 * the screen.
 * <p>
 * Start at {@link floorcalc.drawing.FloorDrawing}, for levels at {@link floorcalc.drawing.LevelsDrawing}, and for a survey at
 * {@link floorcalc.drawing.SurveyDrawing}. The drawing of a bay only shows what the plan says; it works nothing out. It is
 * made for a sheet of paper on site: black and light greys on white, a round scale with its bar, the number of its board
 * on each piece, combs where something is sawn, and no text across another. What does not fit is left out and named in a
 * note; a floor of too many pieces is drawn as rows and joints. The same bay gives the same bytes
 * everywhere.
 * <p>
 * What a single calculation comes to has drawings of its own, each made from the calculated object: {@link floorcalc.drawing.RowsDrawing} (a section
 * across the rows), {@link floorcalc.drawing.StartLineDrawing} (strips at every stop), {@link floorcalc.drawing.JointsDrawing} (offsets, H and stair patterns), {@link floorcalc.drawing.CutsDrawing} (what is cut from
 * boards or bars), {@link floorcalc.drawing.PieceDrawing} (notches and pipe holes of a piece), {@link floorcalc.drawing.StraightedgeDrawing} (a floor under
 * an edge), {@link floorcalc.drawing.HeightsDrawing} (layers, profile, casing and leaf at a door), {@link floorcalc.drawing.SeasonsDrawing} (gaps through
 * the seasons), {@link floorcalc.drawing.EquilibriumDrawing} (moisture of wood over humidity). What is not to scale, or drawn larger, is said in the caption.
 * <p>
 * All types are immutable and thread-safe and accept no null. See {@code docs/drawing.md} and
 * {@code docs/levels.md}.
 * <pre>{@code
 * String svg = FloorDrawing.of(job, plan, plan.bays().get(0)).toSvg();
 * }</pre>
 */
package floorcalc.drawing;
