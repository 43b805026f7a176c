package floorcalc.site;

import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Heights read along a straight line on a floor, as they were written down. Whether they can be worked with is judged with
 * the site: a place read twice, or places out of order, is a finding there, and the line is then not measured.
 *
 * @param name what the line is called, such as {@code "A"}; not null, not blank
 * @param readings place and height of each, in the order of the line; not null
 * @since 0.1
 */
public record HeightLine(String name, List<ProfilePoint> readings) implements Serializable {
  /** Checks that the name is not blank and copies the list. */
  public HeightLine {
    Objects.requireNonNull(readings, "readings");
    if (Objects.requireNonNull(name, "name").isBlank()) {
      throw new IllegalArgumentException("a line of heights needs a name that is not blank");
    }
    readings = List.copyOf(readings);
  }

  /**
   * Returns a line read at equal distances, the first reading at place 0.
   *
   * @param name what the line is called, not null, not blank
   * @param spacing from reading to reading, more than zero, not null
   * @param heights the heights in the order of the line, not null
   * @return the line, not null
   * @throws IllegalArgumentException if the name is blank or the spacing is not more than zero
   */
  public static HeightLine ofEqualSpacing(String name, Length spacing, List<Length> heights) {
    if (!Objects.requireNonNull(spacing, "spacing").isPositive()) {
      throw new IllegalArgumentException("spacing of line '" + name + "' must be more than 0 mm, but was " + spacing);
    }
    List<ProfilePoint> readings = new ArrayList<>(heights.size());
    for (Length height : heights) {
      readings.add(new ProfilePoint(spacing.multipliedBy(readings.size()), height));
    }
    return new HeightLine(name, readings);
  }

  /**
   * Returns the line as a profile.
   *
   * @return the profile, not null
   * @throws IllegalArgumentException if the readings cannot be one, see {@link HeightProfile#of}
   */
  public HeightProfile profile() {
    return HeightProfile.of(readings);
  }
}
