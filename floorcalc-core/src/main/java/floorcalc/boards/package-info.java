/**
 * Which piece is cut from which board.
 * <p>
 * A board has two factory ends that differ, so that one grips the next, and two factory edges that differ likewise. An end
 * that meets another board, and an edge that meets another row, must be a factory one; what is sawn faces a gap. In a run
 * laid from low x to high x the <em>start piece</em> is therefore the right-hand part of a board: its left end is sawn and
 * faces the gap. The <em>end piece</em> is a left-hand part. So one board gives at most one of each, with a saw kerf between
 * them, and pieces that need no factory end from its middle. Across the board the same holds: the first row's strip keeps
 * the high edge, the last row's strip the low edge, so the two may share a board.
 * <p>
 * The work is done in three steps, each of use alone:
 * <ol>
 * <li>{@link floorcalc.boards.RunLayout} sets the end joints of {@link floorcalc.boards.Run runs};</li>
 * <li>{@link floorcalc.boards.CuttingPlan} cuts the {@link floorcalc.boards.PieceWanted pieces wanted} from boards, in
 * laying order, and keeps account of every offcut and of the saw's dust;</li>
 * <li>{@link floorcalc.boards.BoardBound} says how many boards no plan could do without.</li>
 * </ol>
 * Three boards of 2000 mm hold the start pieces 1000 and 1400 and the end pieces 500 and 900 if each takes the shortest
 * offcut on hand; paired beforehand, two do. The compromise: the search for joints looks at many ways of laying, not at
 * all, so the number of boards may lie above the bound. Where the two are equal, no plan needs fewer.
 * <p>
 * Lengths are whole nanometres; nothing here rounds. All types are immutable and thread-safe and take no null. See
 * {@code docs/boards.md}.
 * <pre>{@code
 * BoardGoods goods = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
 * RunLayout layout = RunLayout.search(Run.equalRows(20, Length.parse("4190 mm")), goods, rules);
 * }</pre>
 */
package floorcalc.boards;
