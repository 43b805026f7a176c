package floorcalc.outline.survey;

import floorcalc.measure.Length;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * What was measured of a room: its walls in order, with the room on the left, and what else was read. Immutable and
 * thread-safe.
 * <pre>{@code
 * Survey survey = Survey.of(List.of(SurveyWall.of(Length.parse("5030 mm")), SurveyWall.of(Length.parse("3997 mm")),
 *     SurveyWall.of(Length.parse("5005 mm")), SurveyWall.of(Length.parse("3990 mm"))))
 *     .withTies(List.of(new Tie(1, 3, Length.parse("6399 mm")), new Tie(2, 4, Length.parse("6427 mm"))));
 * }</pre>
 *
 * @since 0.1
 */
public final class Survey implements Serializable {
  /** The most walls that a survey may have. */
  public static final int MOST_WALLS = 60;
  /** The most ties that a survey may have. */
  public static final int MOST_TIES = 500;

  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial")
  private final List<SurveyWall> walls;
  private final Corners corners;
  @SuppressWarnings("serial")
  private final List<Tie> ties;
  @SuppressWarnings("serial")
  private final List<WallOffset> offsets;
  private final SurveyUncertainty uncertainty;

  private Survey(List<SurveyWall> walls, Corners corners, List<Tie> ties, List<WallOffset> offsets,
      SurveyUncertainty uncertainty) {
    this.walls = walls;
    this.corners = corners;
    this.ties = ties;
    this.offsets = offsets;
    this.uncertainty = uncertainty;
  }

  /**
   * Returns a survey of walls of which only the lengths were read, in order with the floor on the left.
   *
   * @param lengths the lengths of the walls, not null, 3 to {@link #MOST_WALLS}
   * @return the survey, not null
   * @throws IllegalArgumentException if there are too few or too many, or one is not more than zero
   */
  public static Survey ofWalls(Length... lengths) {
    return of(Arrays.stream(Objects.requireNonNull(lengths, "lengths")).map(SurveyWall::of).toList());
  }

  /**
   * Returns a survey of walls alone, measured by {@link SurveyUncertainty#TAPE}, whose corners are as their ties and
   * turns make them.
   *
   * @param walls the walls in order, the room on the left; not null, from 3 to {@value #MOST_WALLS}
   * @return the survey, not null
   * @throws IllegalArgumentException if there are too few or too many walls
   */
  public static Survey of(List<SurveyWall> walls) {
    if (walls.size() < 3 || walls.size() > MOST_WALLS) {
      throw new IllegalArgumentException("a survey needs from 3 to " + MOST_WALLS + " walls, but has " + walls.size());
    }
    return new Survey(List.copyOf(walls), Corners.AS_MEASURED, List.of(), List.of(), SurveyUncertainty.TAPE);
  }

  /**
   * What is known of a corner whose turn was not measured.
   *
   * @since 0.1
   */
  public enum Corners {
    /** Nothing: what ties and other walls make it. */
    AS_MEASURED,
    /** It is a right angle, to the left or to the right, exactly. */
    RIGHT_ANGLES
  }

  /**
   * Returns the same survey with something known of the corners whose turn was not measured.
   *
   * @param known what is known, not null
   * @return the survey, not null
   */
  public Survey withCorners(Corners known) {
    return new Survey(walls, Objects.requireNonNull(known, "known"), ties, offsets, uncertainty);
  }

  /**
   * Returns the same survey with ties in place of those it had.
   *
   * @param measured the ties, not null, at most {@value #MOST_TIES}
   * @return the survey, not null
   * @throws IllegalArgumentException if there are too many ties or one ends at a corner that there is not
   */
  public Survey withTies(List<Tie> measured) {
    if (measured.size() > MOST_TIES) {
      throw new IllegalArgumentException("a survey may have at most " + MOST_TIES + " ties, but has " + measured.size());
    }
    for (Tie tie : measured) {
      if (Math.max(tie.from(), tie.to()) > walls.size()) {
        throw new IllegalArgumentException("a tie runs from corner " + tie.from() + " to corner " + tie.to()
            + ", but the room has corners 1 to " + walls.size());
      }
    }
    return new Survey(walls, corners, List.copyOf(measured), offsets, uncertainty);
  }

  /**
   * Returns the same survey with points of walls off their straight line, in place of those it had. Those of one wall
   * follow each other in the order given.
   *
   * @param measured the offsets, not null
   * @return the survey, not null
   * @throws IllegalArgumentException if there is no such wall, the wall is an arc, or an offset lies beyond its end or
   *     before the one before it
   */
  public Survey withOffsets(List<WallOffset> measured) {
    Length[] reached = new Length[walls.size()];
    for (WallOffset offset : measured) {
      if (offset.wall() > walls.size()) {
        throw new IllegalArgumentException("an offset is given for wall " + offset.wall() + ", but the room has walls 1 to "
            + walls.size());
      }
      SurveyWall wall = walls.get(offset.wall() - 1);
      if (!wall.rise().isZero()) {
        throw new IllegalArgumentException("wall " + offset.wall()
            + " has a rise and offsets; give one of the two: an arc over its chord, or points off the straight line");
      }
      if (offset.at().compareTo(wall.length()) > 0) {
        throw new IllegalArgumentException("an offset lies " + offset.at() + " along wall " + offset.wall()
            + ", which is " + wall.length() + " long; measure from the wall's first corner");
      }
      Length before = reached[offset.wall() - 1];
      if (before != null && offset.at().compareTo(before) < 0) {
        throw new IllegalArgumentException("offsets of wall " + offset.wall() + " go back from " + before + " to "
            + offset.at() + "; give them in the order in which the wall is walked");
      }
      reached[offset.wall() - 1] = offset.at();
    }
    return new Survey(walls, corners, ties, List.copyOf(measured), uncertainty);
  }

  /**
   * Returns the same survey measured with another standard deviation.
   *
   * @param deviations how far measurements are off as a rule, not null
   * @return the survey, not null
   */
  public Survey withUncertainty(SurveyUncertainty deviations) {
    return new Survey(walls, corners, ties, offsets, Objects.requireNonNull(deviations, "deviations"));
  }

  /**
   * Returns the walls in order.
   *
   * @return an unmodifiable list, not null
   */
  public List<SurveyWall> walls() {
    return walls;
  }

  /**
   * Returns what is known of corners whose turn was not measured.
   *
   * @return what is known, not null
   */
  public Corners corners() {
    return corners;
  }

  /**
   * Returns the ties.
   *
   * @return an unmodifiable list, not null
   */
  public List<Tie> ties() {
    return ties;
  }

  /**
   * Returns the points of walls off their straight line.
   *
   * @return an unmodifiable list, not null
   */
  public List<WallOffset> offsets() {
    return offsets;
  }

  /**
   * Returns how far measurements are off as a rule.
   *
   * @return the standard deviations, not null
   */
  public SurveyUncertainty uncertainty() {
    return uncertainty;
  }

  /**
   * Returns the number of walls, which is that of the corners.
   *
   * @return from 3 to {@value #MOST_WALLS}
   */
  public int size() {
    return walls.size();
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Survey other && walls.equals(other.walls) && corners == other.corners
        && ties.equals(other.ties) && offsets.equals(other.offsets) && uncertainty.equals(other.uncertainty);
  }

  @Override
  public int hashCode() {
    return Objects.hash(walls, corners, ties, offsets, uncertainty);
  }

  @Override
  public String toString() {
    return "survey of " + walls.size() + " walls, " + ties.size() + " ties, " + offsets.size() + " offsets";
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(walls).withCorners(corners).withTies(ties).withOffsets(offsets).withUncertainty(uncertainty);
  }
}
