/**
 * Levels: the heights of a floor all over a room, how far it falls, how flat it is, and what to grind and what to fill.
 * <p>
 * {@link floorcalc.levels.Levels} are heights at many places above one datum. {@link floorcalc.levels.LevelPlane} is the plane
 * that fits them best: how level the floor is. Level and flat are two questions: a ramp is flat, a wavy floor may be level in
 * all. {@link floorcalc.levels.GridFlatness} lays a straightedge along each row, each column and both diagonals of a grid of
 * readings, each at every place, and holds the gaps against a {@link floorcalc.flatness.ToleranceSet}.
 * <p>
 * {@link floorcalc.levels.SubfloorPreparation} says how deep to grind and how deep to fill at each reading so that such a set is
 * kept, with the least filler or the least work, and how much filler that is. What it finds is a linear program's optimum in
 * whole steps of grinding.
 * <p>
 * The compromise: between readings the floor is taken to run straight, and a hump that no reading met is not seen. Lengths are
 * whole nanometres; all public types are immutable and thread-safe and take no null. See {@code docs/levels.md}.
 * <pre>{@code
 * Levels levels = Levels.of(List.of(new SpotLevel(Point.ofMillimetres(0, 0), Length.parse("2 mm")),
 *     new SpotLevel(Point.ofMillimetres(2000, 0), Length.parse("5 mm")), new SpotLevel(Point.ofMillimetres(0, 1500), Length.parse("1 mm"))));
 * Length fall = levels.plane().value().fall();
 * }</pre>
 */
package floorcalc.levels;
