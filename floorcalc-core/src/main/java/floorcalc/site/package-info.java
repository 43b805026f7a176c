/**
 * Is the site fit for laying? The readings of a room turned into verdicts with reasons.
 * <p>
 * {@link floorcalc.site.SiteReadings} holds what was read in a room, {@link floorcalc.site.SiteFloor} what of the floor to be
 * laid bears on it, and {@link floorcalc.site.Readiness} is the report: every limit with what was found, whose limit it is,
 * what it came to and what to do. It brings together the judgements of {@link floorcalc.moisture},
 * {@link floorcalc.flatness} and {@link floorcalc.movement}, and works out none of them anew.
 * <pre>{@code
 * Readiness.of(SiteFloor.of("Study", area, boards).withSubfloor(Substrate.CONCRETE),
 *     SiteReadings.NONE.withAir(air).withBoardMoisture(readings)).value().isReady();
 * }</pre>
 * What was not measured is never a pass, nor is a reading that is doubted; days stand in for no reading. All types are
 * immutable and thread-safe and take no null. See {@code docs/site.md}.
 */
package floorcalc.site;
