package floorcalc.drawing;

import floorcalc.levels.Levels;
import floorcalc.levels.SpotWork;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.outline.Outline;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The levels of a floor, drawn to scale on a sheet of paper: tones between round heights, the lower the darker, with a line along each of them; the
 * highest and the lowest reading and those farthest from the plane of best fit marked; heights at the readings as far as they have
 * room; which way the floor falls. With a preparation, the spots to grind and to fill are hatched and have their depths; with an outline, the walls
 * are drawn. Immutable and thread-safe.
 * <p>
 * Between the readings of a grid each cell is four planes that meet in its middle, at the mean height of its corners. Scattered
 * readings are joined to triangles after Delaunay, each a plane. Nothing is drawn outside the hull of the readings, nor
 * outside the outline. That is how it is drawn, and says no more about the floor than the readings do.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap; what has
 * no room is left out, and a note says so. The same levels give the same bytes everywhere. At most
 * 2000 readings have a mark of their own.
 * <pre>{@code
 * String svg = LevelsDrawing.of(levels).in(Measures.MILLIMETRES).with(preparation).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class LevelsDrawing {
  private final Levels levels;
  private final String title;
  private final Measures measures;
  private final Outline room;
  private final SubfloorPreparation preparation;

  private LevelsDrawing(Levels levels, String title, Measures measures, Outline room, SubfloorPreparation preparation) {
    this.levels = levels;
    this.title = title;
    this.measures = measures;
    this.room = room;
    this.preparation = preparation;
  }

  /**
   * Returns a drawing of levels, in millimetres.
   *
   * @param levels the levels, not null
   * @return the drawing, not null
   */
  public static LevelsDrawing of(Levels levels) {
    return new LevelsDrawing(Objects.requireNonNull(levels, "levels"), "", Measures.MILLIMETRES, null, null);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public LevelsDrawing titled(String words) {
    return new LevelsDrawing(levels, Objects.requireNonNull(words, "words"), measures, room, preparation);
  }

  /**
   * Returns the same drawing in other units. Heights and depths in inches have millimetres beside them where they are marked.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public LevelsDrawing in(Measures units) {
    return new LevelsDrawing(levels, title, Objects.requireNonNull(units, "units"), room, preparation);
  }

  /**
   * Returns the same drawing with the walls of the room. Nothing but readings is drawn outside them.
   *
   * @param walls the outline, in the coordinates of the readings; not null
   * @return the drawing, not null
   */
  public LevelsDrawing within(Outline walls) {
    return new LevelsDrawing(levels, title, measures, Objects.requireNonNull(walls, "walls"), preparation);
  }

  /**
   * Returns the same drawing with the spots to grind and to fill.
   *
   * @param work the preparation of these levels, not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if it is a preparation of other levels
   */
  public LevelsDrawing with(SubfloorPreparation work) {
    List<SpotWork> spots = work.spots();
    boolean same = spots.size() == levels.spots().size();
    for (int i = 0; same && i < spots.size(); i++) {
      same = spots.get(i).place().equals(levels.spots().get(i).place()) && spots.get(i).found().equals(levels.spots().get(i).height());
    }
    if (!same) {
      throw new IllegalArgumentException("the preparation is of other readings than the " + levels.spots().size()
          + " drawn; prepare these levels");
    }
    return new LevelsDrawing(levels, title, measures, room, work);
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code levels}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new LevelsComposition(this).draw();
  }

  Levels levels() {
    return levels;
  }

  String title() {
    return title;
  }

  Measures measures() {
    return measures;
  }

  Optional<Outline> room() {
    return Optional.ofNullable(room);
  }

  Optional<SubfloorPreparation> preparation() {
    return Optional.ofNullable(preparation);
  }
}
