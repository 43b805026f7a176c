package floorcalc.rooms;

import floorcalc.outline.Outline;
import java.util.List;

/**
 * The outline of a designed or a real room, with figures computed elsewhere from its printed corners.
 *
 * @param id its name in the data
 * @param outline its outline
 * @param corners the number of its corners
 * @param area its area in square metres, printed to six decimals
 * @param perimeter its perimeter in metres, printed to six decimals
 * @param inner the area in square metres that a gap leaves, printed to six decimals: first for 8 mm, then for 12 mm
 * @param printedInner12 that for 12 mm as it is printed, where a formula stands for it too
 * @param radius the radius of its widest circle in metres, printed to four decimals
 * @param leastWidth its least width in metres, printed to four decimals
 * @param convex whether it has no reflex corner
 */
record RealRoom(String id, Outline outline, int corners, double area, double perimeter, List<Double> inner, double printedInner12,
    double radius, double leastWidth, boolean convex) {
  static final List<Integer> GAPS = List.of(8, 12);
  /** Half of the sixth decimal. */
  static final double HALF_DIGIT = 0.5e-6;

  @Override
  public String toString() {
    return id;
  }
}
