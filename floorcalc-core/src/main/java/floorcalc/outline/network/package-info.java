/**
 * Networks: points placed by distances, angles and bearings between them, more of these than the shape needs, by least
 * squares.
 * <p>
 * A network is a list of points with approximate places and of observations with
 * standard deviations. Its adjustment moves the points so that the sum of the squares of what each observation is off,
 * each divided by its standard deviation, is least. It says what every observation is off, how well the others control
 * it, and how sure each point is, either with some points held or with none (free).
 * <p>
 * Numbers are plain decimals in one unit of length of the caller's own; x to the right, y up, angles in degrees
 * anticlockwise. All types are immutable and thread-safe and accept no null.
 * <pre>{@code
 * Network network = Network.of(
 *     List.of(NetworkPoint.held("a", 0, 0), NetworkPoint.held("b", 1000, 0), NetworkPoint.about("c", 0, 1000)),
 *     List.of(Observation.distance("a", "c", 1002, 1), Observation.distance("b", "c", 1413, 1)));
 * AdjustedPoint c = network.adjust().point("c");
 * }</pre>
 */
package floorcalc.outline.network;
