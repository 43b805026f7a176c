/**
 * The second auditor: whole plans checked again from two texts, a job and a plan as JSON, with nothing else known.
 * <p>
 * Start at {@link floorcalc.recheck.PlanRecheck}. It takes the job's and the plan's text, finds what breaks one of the seven
 * rules on which a reader of a plan may rely (see {@link floorcalc.recheck.Rule}), and says what it looked at and what it could
 * not look at. Programs that are not written in Java call {@link floorcalc.recheck.RecheckCommand}.
 * <p>
 * The idea: two pieces of code that share nothing seldom make the same mistake. This package knows no class of the library. It reads
 * lengths with a tape reader of its own, it has the rules' values of common practice written down a second time, and it works
 * with polygons of a general-purpose geometry library in floating point, where the library's own audit sweeps over rows in
 * exact arithmetic. It is slow and plain: it unites all pieces of a bay and subtracts, it holds every two neighbours against
 * each other, and it finds out from the shapes alone where boards meet. What the plan says of itself (which piece is a start
 * piece, where a compromise was made) is compared with that, never believed.
 * <p>
 * What it cannot know, it says: the walls of a room that was surveyed follow from measurements by least squares, which only the
 * library adjusts; there the gap to the walls is left out and the report names the room.
 */
package floorcalc.recheck;
