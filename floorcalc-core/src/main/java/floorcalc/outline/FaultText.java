package floorcalc.outline;

import java.util.List;
import java.util.stream.Collectors;

/** The sentences of the outline check, in one place. Ring 0 is the outline, a higher number is a void. */
final class FaultText {
  private FaultText() {}

  static String tooMany(int corners) {
    return "the outline and its voids have " + corners + " corners together; at most " + OutlineCheck.MOST_CORNERS
        + " are allowed; leave out corners that lie on a straight wall";
  }

  static String tooFew(int ring, int corners) {
    return name(ring) + " has " + corners + (corners == 1 ? " corner" : " corners") + "; it needs at least 3";
  }

  static String beyond(int ring, int corner, Point at) {
    return "corner " + corner + of(ring) + " at " + at + " is too far from the origin; coordinates may be up to "
        + OutlineCheck.FURTHEST + " either way";
  }

  static String withoutLength(int ring, int wall, int next, Point at) {
    return "wall " + wall + of(ring) + " has no length: corners " + wall + " and " + next + " are both at " + at
        + (next == 1 ? "; the last corner is joined to the first, so do not repeat it" : "; list each corner once");
  }

  static String noArea(int ring) {
    return name(ring) + " encloses no area: all its corners lie on one line";
  }

  static String cross(int ring, int wall, int other, Point at) {
    return "walls " + wall + " and " + other + of(ring) + " cross at " + at + "; " + kind(ring) + " must not cross itself";
  }

  static String touch(int ring, List<Integer> walls, Point at) {
    return "walls " + list(walls) + of(ring) + " touch at " + at + "; " + kind(ring) + " must not touch itself";
  }

  static String overlap(int ring, int wall, int other, Point from, Point to) {
    return "walls " + wall + " and " + other + of(ring) + " run along each other from " + from + " to " + to + "; "
        + kind(ring) + " must not touch itself";
  }

  static String fold(int ring, int wall, int before, Point at) {
    return "wall " + wall + of(ring) + " folds back along wall " + before + " at " + at + "; leave out that corner";
  }

  static String rings(String verb, int ring, int wall, int otherRing, int other, Point at) {
    String advice = otherRing == 0
        ? "a void must lie inside the outline, clear of its walls; draw what stands against a wall as part of the outline"
        : "voids must lie clear of each other; draw what stands together as one void";
    return "wall " + wall + of(ring) + " " + verb + " wall " + other
        + (otherRing == 0 ? " of the outline" : of(otherRing)) + " at " + at + "; " + advice;
  }

  static String outside(int ring, Point at) {
    return name(ring) + " lies outside the outline, with a corner at " + at + "; a void must lie inside it";
  }

  static String within(int ring, int other, Point at) {
    return name(ring) + " lies within void " + other + ", with a corner at " + at + "; leave it out";
  }

  static String more() {
    return "only the first " + OutlineCheck.MOST_FAULTS + " faults are listed; mend these first";
  }

  private static String name(int ring) {
    return ring == 0 ? "the outline" : "void " + ring;
  }

  private static String kind(int ring) {
    return ring == 0 ? "an outline" : "a void";
  }

  private static String of(int ring) {
    return ring == 0 ? "" : " of void " + ring;
  }

  private static String list(List<Integer> numbers) {
    String front = numbers.subList(0, numbers.size() - 1).stream().map(String::valueOf).collect(Collectors.joining(", "));
    return front + " and " + numbers.get(numbers.size() - 1);
  }
}
