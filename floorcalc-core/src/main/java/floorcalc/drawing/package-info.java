/**
 * A bay of a plan drawn to scale as SVG, for paper and for the screen.
 * <p>
 * Start at {@link floorcalc.drawing.FloorDrawing}. The drawing only shows what the plan says; it works nothing out.
 */
package floorcalc.drawing;
