package floorcalc.recheck;

/**
 * How much was looked at. A check of nothing finds nothing, so these numbers belong to every report.
 *
 * @param plans plans of the job that were compared byte for byte: 1 if there was nothing to compare with
 * @param lengths lengths read from the plan
 * @param rooms rooms of the job
 * @param walls rooms whose laid area was held against their walls
 * @param bays bays whose pieces were united and compared with the laid area
 * @param rows rows of these
 * @param pieces pieces of these
 * @param joints pairs of pieces that meet end to end
 * @param contacts stretches of row lines on which two pieces touch
 * @param offsets pairs of joints of neighbouring rows whose distance was measured
 * @param boards boards opened
 * @param pairs pairs of pieces of one board whose distance was measured
 * @param profiles profiles whose place was looked for
 * @param compromises compromises held against what was measured
 * @param checks checks of the plan that were read for their words
 * @param boardsByArea boards that no plan can do without because the laid area fills them: a lower bound of its own, 0 if it was not worked out
 * @param boardsCutAgain boards that the plan's own pieces take when they are cut again by a simple rule: a plan that exists, so no true
 *     lower bound is above it; 0 if it was not worked out
 */
public record Checked(int plans, int lengths, int rooms, int walls, int bays, int rows, int pieces, int joints, int contacts, int offsets, int boards,
    int pairs, int profiles, int compromises, int checks, int boardsByArea, int boardsCutAgain) {
}
