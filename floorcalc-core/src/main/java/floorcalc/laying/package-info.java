/**
 * Lays a floor: from a job to a plan that has not been audited yet.
 * <p>
 * A room less its expansion gap is turned so that its boards run along x, then cut along level lines into rows and along
 * the end joints into pieces. All corners are whole nanometres; a cut makes its corners once, for both parts, so there is
 * neither a hole nor an overlap between them, and only a slanted outer wall moves, by half a nanometre at most where it is
 * cut. Rows share one grid of lines, so a piece's place across its board is its place in its row, and an edge that meets
 * the next row is a factory edge by construction.
 * <p>
 * Programs start at {@code floorcalc.FloorPlanner}, which audits what is laid here. See {@code docs/laying.md}.
 * <pre>{@code
 * FloorPlan laid = FloorLaying.of(job);   // not audited: FloorPlanner.plan does both
 * }</pre>
 */
package floorcalc.laying;
