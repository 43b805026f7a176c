/**
 * Edges of a floor: heights either side, the profile that lies there, and doors that have to clear the floor.
 * <p>
 * Start at {@link floorcalc.transitions.HeightStack}, the layers from the bare subfloor up. From it follow
 * <ul>
 * <li>the {@link floorcalc.transitions.HeightDifference} to what lies beyond an edge, and with it the
 * {@link floorcalc.transitions.ProfileChoice}: T profile, reducer, end profile or nosing, which way it falls, how long a bevel or a ramp
 * must be;
 * <li>what becomes of the {@link floorcalc.transitions.CasingWork casings} of a door, and whether its
 * {@link floorcalc.transitions.DoorLeaf leaf} still clears the floor;
 * <li>the {@link floorcalc.transitions.Risers} of a stair.
 * </ul>
 * {@link floorcalc.transitions.ProfileLine} works out the pieces of a profile that turns corners.
 * <p>
 * Limits are named sets with their sources: {@link floorcalc.transitions.LevelChangeSet}, {@link floorcalc.transitions.DoorSet},
 * {@link floorcalc.transitions.StairSet}. They disagree and are never averaged. Nothing here ever tells to cut a fire door.
 * Lengths are exact unless a type says how it rounds. All types are immutable and thread-safe and take no null. See
 * {@code docs/transitions.md}.
 * <pre>{@code
 * HeightStack here = HeightStack.BARE.on("underlay", Length.parse("2 mm")).on("board", Length.parse("14 mm"));
 * HeightDifference difference = HeightDifference.toHeight(here, Length.parse("12 mm")).value();
 * ProfileChoice profile = ProfileChoice.of(EdgeType.OTHER_FINISH, difference, LevelChangeSet.COMMON_PRACTICE).value();
 * }</pre>
 */
package floorcalc.transitions;
