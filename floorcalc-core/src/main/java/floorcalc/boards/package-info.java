/**
 * Which piece is cut from which board.
 * <p>
 * A board has two machined ends that differ, and two machined edges that differ. In a run laid from low x to high x the
 * <em>start piece</em> is the right-hand part of a board: its left end is sawn and faces the gap. The <em>end piece</em> is
 * a left-hand part. So one board gives at most one of each, with a saw kerf between them, and pieces that need no machined
 * end from its middle. Across the board the same holds: the first row's strip keeps the high edge, the last row's strip
 * the low edge, so the two may share a board.
 * <p>
 * The work is done in three steps, each of use alone:
 * <ol>
 * <li>{@link floorcalc.boards.RunLayout} sets the end joints of {@link floorcalc.boards.Run runs};</li>
 * <li>{@link floorcalc.boards.CuttingPlan} cuts the {@link floorcalc.boards.PieceWanted pieces wanted} from boards, in
 * laying order, and keeps account of every offcut and of the saw's dust;</li>
 * <li>{@link floorcalc.boards.BoardBound} says how many boards no plan could do without.</li>
 * </ol>
 * Lengths are whole nanometres; nothing here rounds. All types are immutable and take no null.
 */
package floorcalc.boards;
