/**
 * Moisture: what the air does to wood, and what readings say before a board is opened.
 * <p>
 * Wood takes up water from damp air and gives it off in dry air until it is in balance. At 20&nbsp;°C that is at about 6 %
 * of its mass in air of 30 %, at 9 % in air of 50 % and at 12 % in air of 65 %: see
 * {@link floorcalc.moisture.EquilibriumMoisture}. A board laid at 12 % in a room that asks for 8 % will shrink there, and a
 * screed that still holds water gives it to the board above. So before laying these are measured, and each is held against
 * a named limit:
 * <ul>
 * <li>the air of the room, against {@link floorcalc.moisture.ClimateLimits};
 * <li>the subfloor, by {@link floorcalc.moisture.SubfloorMoisture} against {@link floorcalc.moisture.MoistureLimits};
 * <li>the boards, against {@link floorcalc.moisture.BoardMoistureLimits}, and against a wood subfloor by
 * {@link floorcalc.moisture.MoistureDifference};
 * <li>boards and room against each other, by {@link floorcalc.moisture.Acclimatisation};
 * <li>whether there are enough readings, by {@link floorcalc.moisture.ReadingCount}.
 * </ul>
 * Four principles hold everywhere:
 * <ul>
 * <li><b>Readings decide.</b> No date passes anything: that a screed is 28 days old is no reading, and there is no place to
 * give it.
 * <li><b>Not measured is never a pass.</b> What is missing comes out as
 * {@link floorcalc.working.Outcome#NOT_MEASURED} with what to measure.
 * <li><b>Methods are not converted.</b> CM-%, humidity in the slab and calcium chloride measure different things; a reading
 * is held against a limit for its own method or not at all.
 * <li><b>Sources stand apart.</b> Limits that disagree are sets of their own. The makers of boards and adhesive come before
 * any of them.
 * </ul>
 * Percentages and temperatures are exact decimal numbers, {@link floorcalc.moisture.Percent} and
 * {@link floorcalc.moisture.Temperature}, so that each step can be worked again to the last digit. All types are immutable
 * and thread-safe and accept no null. See {@code docs/moisture.md}.
 * <pre>{@code
 * AirClimate air = AirClimate.of(Temperature.parse("21 °C"), Percent.of("48"));
 * List<Judgement> judged = ClimateLimits.COMMON_PRACTICE.judge(air, "Study");
 * }</pre>
 */
package floorcalc.moisture;
