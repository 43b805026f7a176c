package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The heights of a floor along a straight line, at equal or unequal spacing. Between two readings the floor is taken to
 * run straight.
 * <p>
 * Places are level distances and rise from reading to reading. Heights are over any datum, up positive; a fall of the
 * whole line is no matter for flatness. What cannot be a profile is refused with one message: fewer than two readings, a
 * place used twice, places that do not rise, places or heights beyond 10 km. What can be one but looks like a slip
 * is told by {@link #doubts()} and never mended.
 * <p>
 * Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class HeightProfile {
  /** Farthest from zero that a place or a height may be: a slip of the unit or of the point is beyond it. */
  static final Length FARTHEST = Length.ofMillimetres(10_000_000);
  private static final int LEAST_READINGS = 2;

  private final long[] places;
  private final long[] heights;
  private final Length uncertainty;

  private HeightProfile(long[] places, long[] heights, Length uncertainty) {
    this.places = places;
    this.heights = heights;
    this.uncertainty = uncertainty;
  }

  /**
   * Returns the profile of readings in the order of the line.
   *
   * @param readings place and height of each, not null, at least two, each place beyond the one before
   * @return the profile, not null
   * @throws IllegalArgumentException if there are fewer than two readings, a place comes twice or out of order, or a
   *     place or height is beyond 10 km
   */
  public static HeightProfile of(List<ProfilePoint> readings) {
    Objects.requireNonNull(readings, "readings");
    if (readings.size() < LEAST_READINGS) {
      throw new IllegalArgumentException("a profile needs at least " + LEAST_READINGS + " readings, but has "
          + readings.size() + "; three or more show a gap under an edge");
    }
    long[] places = new long[readings.size()];
    long[] heights = new long[readings.size()];
    for (int i = 0; i < places.length; i++) {
      ProfilePoint reading = readings.get(i);
      requireNear(reading.place(), "place", i);
      requireNear(reading.height(), "height", i);
      places[i] = reading.place().toNanometres();
      heights[i] = reading.height().toNanometres();
      if (i > 0 && places[i] <= places[i - 1]) {
        throw outOfOrder(readings, i);
      }
    }
    return new HeightProfile(places, heights, null);
  }

  private static void requireNear(Length length, String what, int index) {
    if (length.abs().compareTo(FARTHEST) > 0) {
      throw new IllegalArgumentException(what + " of reading " + (index + 1) + " must be at most " + FARTHEST
          + " from zero, but was " + length + "; check the unit");
    }
  }

  private static IllegalArgumentException outOfOrder(List<ProfilePoint> readings, int index) {
    Length place = readings.get(index).place();
    String reading = "reading " + (index + 1) + " at " + place;
    for (int i = 0; i < index; i++) {
      if (readings.get(i).place().equals(place)) {
        return new IllegalArgumentException(reading + " has the place of reading " + (i + 1) + "; heights there are "
            + readings.get(i).height() + " and " + readings.get(index).height() + ": keep one of them");
      }
    }
    return new IllegalArgumentException(reading + " lies before reading " + index + " at "
        + readings.get(index - 1).place() + "; list the readings in the order of the line");
  }

  /**
   * Returns the profile of heights at equal spacing, the first at place 0.
   *
   * @param spacing from reading to reading, not null, more than zero
   * @param heights the heights in the order of the line, not null, at least two
   * @return the profile, not null
   * @throws IllegalArgumentException if the spacing is not more than zero, or as {@link #of(List)}
   */
  public static HeightProfile ofEqualSpacing(Length spacing, List<Length> heights) {
    Objects.requireNonNull(heights, "heights");
    if (!Objects.requireNonNull(spacing, "spacing").isPositive()) {
      throw new IllegalArgumentException("spacing of readings must be more than 0 mm, but was " + spacing);
    }
    requireNear(spacing, "spacing", 0);
    List<ProfilePoint> readings = new ArrayList<>(heights.size());
    for (int i = 0; i < heights.size(); i++) {
      readings.add(new ProfilePoint(spacing.multipliedBy(i), heights.get(i)));
    }
    return of(readings);
  }

  /**
   * Returns this profile with the instrument's uncertainty stated.
   *
   * @param each how far each height may be off, up or down; not null, not negative
   * @return the profile, not null
   * @throws IllegalArgumentException if it is negative or more than 1 m
   */
  public HeightProfile withUncertainty(Length each) {
    if (Objects.requireNonNull(each, "each").isNegative() || each.compareTo(Length.ofMillimetres(1000)) > 0) {
      throw new IllegalArgumentException("uncertainty of a height must be 0 mm to 1000 mm, but was " + each);
    }
    return new HeightProfile(places, heights, each);
  }

  /**
   * Returns the same floor read from the other end.
   *
   * @return the profile, first place 0 if the last place is the length of the profile; not null
   */
  public HeightProfile mirrored() {
    int n = size();
    long[] back = new long[n];
    long[] up = new long[n];
    for (int i = 0; i < n; i++) {
      back[i] = places[0] + (places[n - 1] - places[n - 1 - i]);
      up[i] = heights[n - 1 - i];
    }
    return new HeightProfile(back, up, uncertainty);
  }

  /**
   * Returns the number of readings.
   *
   * @return at least 2
   */
  public int size() {
    return places.length;
  }

  /**
   * Returns a reading.
   *
   * @param index from 0 to {@code size() - 1}
   * @return the reading, not null
   * @throws IndexOutOfBoundsException if there is none of that number
   */
  public ProfilePoint reading(int index) {
    return new ProfilePoint(Length.ofNanometres(places[index]), Length.ofNanometres(heights[index]));
  }

  /**
   * Returns all readings in the order of the line.
   *
   * @return an unmodifiable list, not null
   */
  public List<ProfilePoint> readings() {
    List<ProfilePoint> readings = new ArrayList<>(size());
    for (int i = 0; i < size(); i++) {
      readings.add(reading(i));
    }
    return List.copyOf(readings);
  }

  /**
   * Returns where the first reading is.
   *
   * @return the place, not null
   */
  public Length first() {
    return Length.ofNanometres(places[0]);
  }

  /**
   * Returns where the last reading is.
   *
   * @return the place, not null
   */
  public Length last() {
    return Length.ofNanometres(places[size() - 1]);
  }

  /**
   * Returns the distance from the first reading to the last.
   *
   * @return the length, not null, more than zero
   */
  public Length length() {
    return last().minus(first());
  }

  /**
   * Returns the greatest distance between two neighbouring readings.
   *
   * @return the distance, not null, more than zero
   */
  public Length widestSpacing() {
    long widest = 0;
    for (int i = 1; i < size(); i++) {
      widest = Math.max(widest, places[i] - places[i - 1]);
    }
    return Length.ofNanometres(widest);
  }

  /**
   * Returns the height of the floor at any place of the line: a reading, or on the straight line between two, to the
   * nearest nanometre (a half to the even one).
   *
   * @param place from the first place to the last, not null
   * @return the height, not null
   * @throws IllegalArgumentException if the place is not on the line
   */
  public Length heightAt(Length place) {
    if (Objects.requireNonNull(place, "place").compareTo(first()) < 0 || place.compareTo(last()) > 0) {
      throw new IllegalArgumentException("place must be from " + first() + " to " + last() + ", but was " + place);
    }
    return Length.ofNanometres(heightOn(place.toNanometres()));
  }

  /**
   * Returns how far each height may be off, if the instrument's uncertainty was stated.
   *
   * @return the uncertainty, not null
   */
  public Optional<Length> uncertainty() {
    return Optional.ofNullable(uncertainty);
  }

  /**
   * Returns what about these readings looks like a slip: {@code reading-slip}, one reading off by about 100 mm or by
   * 1 in; {@code unit-doubtful}, heights or places that no floor has. None of it is mended.
   *
   * @return the findings, not null, may be empty
   */
  public List<Finding> doubts() {
    return ProfileDoubts.of(this);
  }

  long place(int index) {
    return places[index];
  }

  long height(int index) {
    return heights[index];
  }

  /** The same floor with its heights turned over: what was high is low. */
  HeightProfile turnedOver() {
    long[] down = new long[size()];
    for (int i = 0; i < down.length; i++) {
      down[i] = -heights[i];
    }
    return new HeightProfile(places, down, uncertainty);
  }

  /** The last reading at or before a place on the line. */
  int indexAt(long place) {
    int found = Arrays.binarySearch(places, place);
    return found >= 0 ? found : -found - 2;
  }

  /** The height at a place on the line, in nanometres. */
  long heightOn(long place) {
    int i = indexAt(place);
    if (places[i] == place) {
      return heights[i];
    }
    BigInteger rise = BigInteger.valueOf(heights[i + 1] - heights[i]).multiply(BigInteger.valueOf(place - places[i]));
    return heights[i] + Cross.nearest(rise, BigInteger.valueOf(places[i + 1] - places[i]));
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof HeightProfile other && Arrays.equals(places, other.places)
        && Arrays.equals(heights, other.heights) && Objects.equals(uncertainty, other.uncertainty);
  }

  @Override
  public int hashCode() {
    return Objects.hash(Arrays.hashCode(places), Arrays.hashCode(heights), uncertainty);
  }

  /**
   * Returns one line.
   *
   * @return such as {@code "14 readings over 3900 mm"}, not null
   */
  @Override
  public String toString() {
    return size() + " readings over " + length();
  }
}
