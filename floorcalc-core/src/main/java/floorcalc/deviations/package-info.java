/**
 * Permitted deviations and sizes: what published standards ask of boards as they are sold, of a laid floor, of corners, of level and of
 * the tape that all of it is measured with.
 * <p>
 * Nothing is exact, so a standard says how far off is still right. Four questions, four kinds of named set:
 * <ul>
 * <li>is this board of a size that its standard knows? {@link floorcalc.deviations.SizeSet}
 * <li>do these boards, or this laid floor, keep within what is permitted? {@link floorcalc.deviations.DeviationSet} over
 * {@link floorcalc.deviations.DeviationReadings}: widths and out of square of a sample of boards before laying; joints, lipping and
 * cupping at handover
 * <li>is this corner square enough for the length of its wall? {@link floorcalc.deviations.AngleSet}
 * <li>is this floor level enough? {@link floorcalc.deviations.OutOfLevelSet}. Level is another question than flat, which
 * {@code floorcalc.flatness} answers
 * </ul>
 * {@link floorcalc.deviations.TapeRules} says what a tape itself may be off, and how fine to measure.
 * <p>
 * Each limit stands beside its {@link floorcalc.working.Source}. Sources that disagree are sets of their own and are never averaged, and
 * a caller can make a set of his own, such as that of the boards' papers, which come before any standard. A limit that is not kept is a
 * judgement with what to do, never a refusal. Where a set is silent, or nothing was measured, the outcome is <em>not measured</em>, which is never
 * a pass. All types are immutable and thread-safe and take no null. See {@code docs/deviations.md}.
 * <pre>{@code
 * List<CornerSquareness> room = Squareness.of(Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3015, 0 3000, 0 0))").shell()).value();
 * List<Judgement> corners = AngleSet.DIN_18202.judge(room).value();
 * }</pre>
 */
package floorcalc.deviations;
