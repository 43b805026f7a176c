/**
 * Flat: how far a floor departs from a straight edge laid on it, whatever its slope; kept apart from level.
 * <p>
 * <b>Along a line.</b> A {@link floorcalc.flatness.HeightProfile} is heights along a line, from a level, a staff or
 * {@link floorcalc.flatness.TiltReadings tilts}. A {@link floorcalc.flatness.Straightedge} laid on it rests on two high points: an edge of the
 * upper convex hull of the part that it covers. The deviation is the greatest gap beneath it between these two. Which two
 * they are is a matter of the rest: the one that gravity chooses, or the worst that the edge can be rocked onto, see
 * {@link floorcalc.flatness.RestRule}. The worst placement is not always at a reading, so every placement is looked at,
 * exactly for a floor that runs straight between readings.
 * <p>
 * Other measures are not this one and have names of their own: {@link floorcalc.flatness.MidChord}, which sees humps as
 * well as dips, and {@link floorcalc.flatness.FNumbers}, which tell of bumps over 2 ft and of the fall over 10 ft.
 * <p>
 * <b>Tolerances.</b> A {@link floorcalc.flatness.ToleranceSet} says how large a gap one source allows, at one span or several, and for
 * which floor. It judges profiles and {@link floorcalc.flatness.GapReading gaps read by hand}. What was not measured is
 * never a pass, and what looks like a slip of the reader is told, never mended.
 * <p>
 * The compromise: readings say nothing on what lies between them. A span is judged from readings no farther apart than half of
 * it; nearer is better. Lengths are whole nanometres; all public types are immutable and thread-safe and take no null. See
 * {@code docs/flatness.md}.
 * <pre>{@code
 * GapReading reading = new GapReading(Length.parse("2000 mm"), Length.parse("3 mm"), "by the window");
 * List<SpanCheck> checks = ToleranceSet.COMMON_PRACTICE.judge(List.of(reading)).value();
 * }</pre>
 */
package floorcalc.flatness;
