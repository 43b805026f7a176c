/**
 * Room outlines: walls and voids, what is wrong with them, and what the expansion gap leaves of them.
 * <p>
 * A room is an {@link floorcalc.outline.Outline}: one {@link floorcalc.outline.Ring} of walls and any number of voids
 * (columns, hearths, islands), all of straight walls between {@link floorcalc.outline.Point corners} on whole nanometres.
 * Build it from points, or read it from well-known text with {@link floorcalc.outline.Wkt}:
 * <pre>{@code
 * Outline room = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");
 * room.area();                                                               // 10 m²
 * ExpansionGap.inset(room, Length.ofMillimetres(10)).value().laidArea();     // 9.8604 m²
 * }</pre>
 * {@link floorcalc.outline.InscribedCircle} and {@link floorcalc.outline.LeastWidth} say how wide a room is.
 * <p>
 * What is exact and what is rounded:
 * <ul>
 * <li>Areas, the side of a wall that a point lies on, whether walls meet, and turning by right angles are exact: whole
 * numbers, with products of 128 bits where 64 do not hold them. {@link floorcalc.outline.OutlineCheck} can therefore say
 * with certainty that two walls touch, and that two walls one nanometre apart do not.
 * <li>The length of a slanted wall is rounded to the nearest nanometre; a perimeter is the sum of such lengths.
 * <li>Corners that come out between nanometres are rounded to the nearest: by turning to a
 * {@link floorcalc.outline.Direction} that is not along an axis, and by the {@link floorcalc.outline.ExpansionGap}. A floor
 * turned there and back may be off by a nanometre.
 * </ul>
 * Compromises: walls are straight, so an arc is given as a chain of them; coordinates reach 10&nbsp;km either way and an
 * outline has at most 10&nbsp;000 corners; an outline is not checked when it is made, since checking takes longer than
 * making, and the numbers of the walls as given are lost once a clockwise ring has been turned round. A point where two
 * gaps just meet may be the corner of two pieces of floor, or of a piece and its hole.
 * <p>
 * All types are immutable and thread-safe and accept no null. No other library's type shows. See {@code docs/outline.md}
 * and {@code docs/expansion-gap.md}.
 */
package floorcalc.outline;
