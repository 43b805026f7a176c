package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * The levels of a floor: its height read at many places, on a grid or scattered, above one datum. Immutable and thread-safe.
 * <p>
 * Any three readings that are not in line give a {@linkplain #plane() plane}. Flatness and what to grind and fill need readings in rows and
 * columns, so that a straightedge can lie along them: a {@linkplain #isGrid() grid}.
 * <pre>{@code
 * Levels levels = Levels.ofGrid(Point.ofMillimetres(0, 0), Length.ofMillimetres(500), Length.ofMillimetres(500), List.of(
 *     List.of(Length.ZERO, Length.ofMillimetres("-4"), Length.ZERO),
 *     List.of(Length.ZERO, Length.ofMillimetres(-1), Length.ZERO)));
 * levels.plane().value().fall();
 * }</pre>
 * Places and heights are exact.
 *
 * @since 0.1
 */
public final class Levels implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The most readings of one floor. */
  public static final int MOST = 10_000;
  /** How far from zero a place or a height may be. */
  public static final Length FURTHEST = Length.ofMillimetres(1_000_000);

  /** The readings as given; a list that can be serialised. */
  @SuppressWarnings("serial")
  private final List<SpotLevel> spots;

  private Levels(List<SpotLevel> spots) {
    this.spots = List.copyOf(spots);
    List<LevelFault> faults = faultsOf(this.spots);
    if (!faults.isEmpty()) {
      throw new BadLevelsException(faults);
    }
  }

  /**
   * Returns the levels of a floor, read anywhere.
   *
   * @param spots the readings in any order, 3 to {@value #MOST}, not all in line, each place once; not null
   * @return the levels, not null
   * @throws BadLevelsException if they cannot be worked with, see {@link #faultsOf(List)}
   */
  public static Levels of(List<SpotLevel> spots) {
    Objects.requireNonNull(spots, "spots");
    return new Levels(spots);
  }

  /**
   * Returns levels read on a regular grid.
   *
   * @param corner the place of the first reading of the first row, not null
   * @param along the distance from reading to reading along x, more than zero; not null
   * @param between the distance from row to row along y, more than zero; not null
   * @param rows the heights: rows in order of y, in each the readings in order of x, all rows of equal length; not null
   * @return the levels, not null
   * @throws IllegalArgumentException if a distance is not more than zero or the rows are not of equal length
   * @throws BadLevelsException if there are too few or too many readings, or they are in line
   */
  public static Levels ofGrid(Point corner, Length along, Length between, List<List<Length>> rows) {
    positive("along", along);
    positive("between", between);
    List<SpotLevel> spots = new ArrayList<>();
    for (int row = 0; row < rows.size(); row++) {
      if (rows.get(row).size() != rows.get(0).size()) {
        throw new IllegalArgumentException("row " + (row + 1) + " has " + rows.get(row).size()
            + " heights, but row 1 has " + rows.get(0).size() + "; give rows of equal length, or single readings with their places");
      }
      for (int column = 0; column < rows.get(row).size(); column++) {
        spots.add(SpotLevel.of(corner.x().plus(along.multipliedBy(column)), corner.y().plus(between.multipliedBy(row)),
            rows.get(row).get(column)));
      }
    }
    return new Levels(spots);
  }

  private static void positive(String name, Length length) {
    if (!Objects.requireNonNull(length, name).isPositive()) {
      throw new IllegalArgumentException("distance " + name + " must be more than 0 mm, but was " + length);
    }
  }

  /**
   * Says everything that is wrong with readings.
   *
   * @param spots the readings, not null
   * @return the faults, empty if {@link #of(List)} takes them; not null
   */
  public static List<LevelFault> faultsOf(List<SpotLevel> spots) {
    List<LevelFault> faults = new ArrayList<>();
    if (spots.size() < 3) {
      faults.add(new LevelFault(LevelFault.Kind.TOO_FEW, List.of(), "there must be at least 3 readings, but there "
          + (spots.size() == 1 ? "is 1" : "are " + spots.size()) + "; read the floor at more places"));
    }
    if (spots.size() > MOST) {
      faults.add(new LevelFault(LevelFault.Kind.TOO_MANY, List.of(), "there must be at most " + MOST
          + " readings, but there are " + spots.size() + "; work in parts"));
      return List.copyOf(faults);
    }
    Map<Point, Integer> first = new LinkedHashMap<>();
    for (int i = 0; i < spots.size(); i++) {
      SpotLevel spot = spots.get(i);
      for (Length value : List.of(spot.place().x(), spot.place().y(), spot.height())) {
        if (value.compareTo(FURTHEST) > 0 || value.compareTo(FURTHEST.negated()) < 0) {
          faults.add(new LevelFault(LevelFault.Kind.BEYOND_LIMIT, List.of(i + 1), "reading " + (i + 1) + " has " + value
              + ", which is further from zero than " + FURTHEST + "; is the unit right?"));
          break;
        }
      }
      Integer before = first.putIfAbsent(spot.place(), i + 1);
      if (before != null) {
        faults.add(new LevelFault(LevelFault.Kind.READ_TWICE, List.of(before, i + 1), "readings " + before + " and "
            + (i + 1) + " are both at x = " + spot.place().x() + ", y = " + spot.place().y() + ", with heights "
            + spots.get(before - 1).height() + " and " + spot.height() + "; keep the one that is right"));
      }
    }
    if (first.size() >= 3 && PlaneFit.of(spots).isInLine()) {
      faults.add(new LevelFault(LevelFault.Kind.IN_LINE, List.of(), "all " + spots.size() + " readings lie in one line, or in"
          + " a strip 100 times longer than wide; read the floor beside it too, or judge the line as a profile"));
    }
    return faults;
  }

  /**
   * Returns the readings as given.
   *
   * @return an unmodifiable list, not null
   */
  public List<SpotLevel> spots() {
    return spots;
  }

  /**
   * Returns the highest reading.
   *
   * @return the first of the highest, not null
   */
  public SpotLevel highest() {
    return spots.stream().reduce((a, b) -> b.height().compareTo(a.height()) > 0 ? b : a).orElseThrow();
  }

  /**
   * Returns the lowest reading.
   *
   * @return the first of the lowest, not null
   */
  public SpotLevel lowest() {
    return spots.stream().reduce((a, b) -> b.height().compareTo(a.height()) < 0 ? b : a).orElseThrow();
  }

  /**
   * Returns the plane that fits best, with its working: slope, direction of fall, fall, and how far readings are from it. What
   * seems misread is among the findings.
   *
   * @return the plane, not null
   */
  public Calculated<LevelPlane> plane() {
    Calculated<LevelPlane> plane = LevelPlane.of(spots);
    return Calculated.of(plane.value(), plane.steps(), doubts());
  }

  /**
   * Returns which readings are probably mistakes: off by a whole 100 mm, 1 in or 1 m, written in another unit, or far from
   * all others. Nothing is put right silently.
   *
   * @return findings {@code reading-off-by-100-mm}, {@code reading-off-by-1-in}, {@code reading-off-by-1-m},
   *     {@code reading-in-other-unit}, {@code reading-stands-out}, {@code floor-in-other-unit} or
   *     {@code heights-in-other-unit}; not null
   */
  public List<Finding> doubts() {
    return List.copyOf(LevelDoubts.of(spots));
  }

  /**
   * Tells whether the readings form a grid of rows and columns parallel to x and y, at distances that may differ, each reading a corner
   * of a cell of which at least three corners were read. Places of the grid where nothing was read, such as a corner that is no floor, are allowed.
   *
   * @return true if flatness can be judged
   */
  public boolean isGrid() {
    return LevelGrid.find(spots).isPresent();
  }

  LevelGrid grid() {
    return LevelGrid.find(spots).orElseThrow(() -> new IllegalArgumentException("the " + spots.size()
        + " readings do not lie in rows and columns with neighbours in both; a straightedge cannot be laid along them."
        + " Read the floor on a grid parallel to x and y"));
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof Levels other && spots.equals(other.spots);
  }

  @Override
  public int hashCode() {
    return spots.hashCode();
  }

  /**
   * Returns one line.
   *
   * @return for example {@code "35 levels from -4 mm to 3.5 mm"}, not null
   */
  @Override
  public String toString() {
    return spots.size() + " levels from " + lowest().height() + " to " + highest().height();
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return new Levels(spots);
  }
}
