/**
 * Rows: a width divided into rows, one start line for every place where the floor ends, and crooked walls.
 * <p>
 * A floor is laid in rows of one height, the laid pitch. Where the width is no whole number of pitches, the last row
 * is ripped; if it came out too narrow to lay, the first row is ripped as well, so that both are wide enough. That is
 * {@link RowDivision}: a number of rows, a first and a last row, each with its working.
 * <p>
 * A real room has more stops than two: steps in the wall, columns, doorways, a hearth. One start line fixes the strip
 * at all of them, and each strip is a piecewise-linear function of the start line: it grows or shrinks one for one and
 * starts again at a full board. {@link StartLine} finds the best line exactly from the places where these functions
 * break, and says what a measuring error does to it.
 * <p>
 * A stop that was measured to within an error is judged by the strip that it keeps wherever it lies; {@link StripRisk} says how
 * likely a strip is too narrow.
 * <p>
 * A {@link ControlLine} is set out where no wall serves: {@link RowsBothWays} from it, {@link FloorStops} and a
 * {@link StripTable} for one line through several rooms, {@link LayingOrder} for what is laid back and where arms meet,
 * {@link Closure} for whether they do, {@link EndCut} for boards at an angle, {@link RightAngle} to set it out with a tape.
 * <p>
 * Along crooked walls, {@link Scribe} and {@link TaperedRows} say what is sawn, and {@link TrimCover} what need not be.
 * <p>
 * {@link RowDrift} says how far the last row moves when boards measure otherwise than their nominal width.
 * <p>
 * Compromises, each said in a finding: a minimum wider than a board is taken as a full board; a bay no wider than a
 * board is one row; a wall that runs off by a pitch or more has a strip that comes to nothing wherever the line is.
 * <p>
 * Lengths are exact; a width halved may leave one nanometre, which goes to the first row, and places on slanted lines are rounded
 * once, to the nearest nanometre. All
 * types are immutable and thread-safe and accept no null.
 * <pre>{@code
 * Calculated<RowDivision> rows = RowDivision.of(Length.parse("3600 mm"), Length.parse("185 mm"), Length.parse("70 mm"), RowWay.AS_NEEDED);
 * Length last = rows.value().lastRow();
 * String working = rows.explain();
 * }</pre>
 */
package floorcalc.rows;
