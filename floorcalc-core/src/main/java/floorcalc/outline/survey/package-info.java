/**
 * Surveys: a room as it was measured, turned into an outline that says how far it can be trusted.
 * <p>
 * A room is measured as the lengths of its walls in order, ties between corners, turns at corners where they are known,
 * and what stands off the straight line from corner to corner. Such figures hold mistakes, and more of them than the
 * shape needs: all of them together give the most likely corners, what each measurement is off, and how sure each
 * corner is.
 * <p>
 * Walls and corners are counted from 1. Wall {@code i} runs from corner {@code i} to corner {@code i + 1}, the last one
 * back to corner 1; the room lies on the left. Corner 1 is the origin and wall 1 runs along x.
 * <p>
 * All types are immutable and thread-safe and accept no null.
 * <pre>{@code
 * Survey survey = Survey.ofWalls(Length.parse("5028 mm"), Length.parse("3996 mm"), Length.parse("5006 mm"), Length.parse("3987 mm"))
 *     .withTies(List.of(new Tie(1, 3, Length.parse("6399 mm")), new Tie(2, 4, Length.parse("6423 mm"))));
 * Outline room = SurveyReport.of(survey).value().room().orElseThrow().outline();
 * }</pre>
 */
package floorcalc.outline.survey;
