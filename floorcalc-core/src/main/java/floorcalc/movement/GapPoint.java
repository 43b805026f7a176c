package floorcalc.movement;

import floorcalc.measure.Length;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A place at the edge of a floor where its gap is judged: how far it lies from the line that stays put, how the wall runs,
 * how wide the gap is and how far the trim covers. Immutable and thread-safe.
 * <p>
 * A floating floor moves away from its middle, so the distance across the boards from the middle of the bay counts; where
 * something holds the floor, the distance from there. Gap and cover are measured square to the wall.
 *
 * @since 0.1
 */
public final class GapPoint {
  private final String name;
  private final Length across;
  private final Length along;
  private final WallAngle angle;
  private final Length gap;
  private final Length cover;

  private GapPoint(String name, Length across, Length along, WallAngle angle, Length gap, Length cover) {
    this.name = name;
    this.across = across;
    this.along = along;
    this.angle = angle;
    this.gap = gap;
    this.cover = cover;
  }

  /**
   * Returns a place at a wall that the boards run along.
   *
   * @param name such as {@code "window wall"}, not null
   * @param across how far it lies across the boards from the line that stays put; negative where a floor that swells moves
   *     away from the wall, as on the far side of a column; not null
   * @param gap the gap, square to the wall, on this side alone, not negative, not null
   * @return the place, without trim, not null
   * @throws IllegalArgumentException if the gap is negative
   */
  public static GapPoint of(String name, Length across, Length gap) {
    return new GapPoint(Objects.requireNonNull(name, "name"), Objects.requireNonNull(across, "across"),
        Length.ZERO, WallAngle.ALONG_BOARDS, notNegative(gap, "gap"), null);
  }

  /**
   * Returns the two sides of a floor of one width that is free to move from its middle.
   *
   * @param width the floor across the boards, through all openings without a break, not negative, not null
   * @param gap the gap at each side, square to the wall, not negative, not null
   * @return the places {@code "starting wall"} and {@code "finishing wall"}, each half the width from the middle, rounded
   *     up to a whole nanometre; not null
   * @throws IllegalArgumentException if a length is negative
   */
  public static List<GapPoint> bothSides(Length width, Length gap) {
    Length half = notNegative(width, "width").dividedBy(2, java.math.RoundingMode.CEILING);
    return List.of(of("starting wall", half, gap), of("finishing wall", half, gap));
  }

  private static Length notNegative(Length length, String what) {
    if (Objects.requireNonNull(length, what).isNegative()) {
      throw new IllegalArgumentException(what + " must not be negative, but was " + length);
    }
    return length;
  }

  /**
   * Returns the same place at a wall at an angle to the boards.
   *
   * @param wall the angle between wall and boards, not null
   * @return the place, not null
   */
  public GapPoint angle(WallAngle wall) {
    return new GapPoint(name, across, along, Objects.requireNonNull(wall, "wall"), gap, cover);
  }

  /**
   * Returns the same place with its distance along the boards, which counts if the boards move along their length too.
   *
   * @param fromStillLine how far it lies along the boards from the point that stays put, negative where a floor that swells
   *     moves away from the wall; not null
   * @return the place, not null
   */
  public GapPoint along(Length fromStillLine) {
    return new GapPoint(name, across, Objects.requireNonNull(fromStillLine, "fromStillLine"), angle, gap, cover);
  }

  /**
   * Returns the same place with a trim over the gap.
   *
   * @param fromWall how far from the wall the trim reaches, square to the wall, not negative, not null
   * @return the place, not null
   * @throws IllegalArgumentException if the length is negative
   */
  public GapPoint cover(Length fromWall) {
    Objects.requireNonNull(fromWall, "fromWall");
    return new GapPoint(name, across, along, angle, gap, notNegative(fromWall, "cover of the trim"));
  }

  /**
   * Returns the name of the place.
   *
   * @return the name, not null
   */
  public String name() {
    return name;
  }

  /**
   * Returns the distance across the boards from the line that stays put.
   *
   * @return the distance, negative where a floor that swells moves away from the wall; not null
   */
  public Length across() {
    return across;
  }

  /**
   * Returns the distance along the boards from the point that stays put.
   *
   * @return the distance, negative where a floor that swells moves away from the wall; not null
   */
  public Length along() {
    return along;
  }

  /**
   * Returns how the wall runs.
   *
   * @return the angle between wall and boards, not null
   */
  public WallAngle angle() {
    return angle;
  }

  /**
   * Returns the gap.
   *
   * @return square to the wall, on this side alone, not null
   */
  public Length gap() {
    return gap;
  }

  /**
   * Returns how far the trim reaches.
   *
   * @return from the wall, square to it; empty if that was not given; not null
   */
  public Optional<Length> cover() {
    return Optional.ofNullable(cover);
  }
}
