/**
 * What is cut out of boards: holes for pipes, notches at columns, hearths and islands, and the borders laid round them.
 * <p>
 * All places are those of a board that lies face up as it will lie on the floor, seen by someone with the starting wall behind them:
 * the start end is on the left, the start edge is the near one, {@link floorcalc.fittings.BoardSide}. Measure from these two: along
 * the board from the start end, across it from the start edge. Who saws with the face down turns the board over end for end, and
 * then measures along from the other end.
 * <ul>
 * <li>{@link floorcalc.fittings.PipeHoles} says which boards a pipe comes through, where the hole lies in each, what is sawn to get
 * the board round the pipe and which part is glued back behind it.
 * <li>{@link floorcalc.fittings.PieceNotches} compares a piece with its rectangle and lists each notch with its size and place.
 * <li>{@link floorcalc.fittings.ThinParts} finds what would break beside a notch: tongues and bridges that are thin and long.
 * <li>{@link floorcalc.fittings.MitredBorder} and {@link floorcalc.fittings.Apron} are for borders round a field or a hearth.
 * </ul>
 * Pieces are outlines in the frame of their bay, x along the boards. All types are immutable and thread-safe, and take no null.
 * <pre>{@code
 * BoardPiece piece = BoardPiece.of("study-1-3-2", ring);   // in the frame of its bay
 * List<Notch> notches = PieceNotches.of(piece).value().notches();
 * }</pre>
 */
package floorcalc.fittings;
