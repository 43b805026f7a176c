package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.trims.TrimCutting;
import java.util.List;
import java.util.Objects;

/**
 * What is cut from each board or bar, one under the other: the pieces with their lengths, the saw cuts between them, and what is left. Lengths
 * are to scale; heights are not, but strips of a ripped board share its width as they do in truth. Boards and bars of which nothing is cut off
 * are named in a note; those cut alike are drawn once with their number. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap; what
 * has no room is said in a note. At most 17 rows of boards or bars are drawn. The same cuts give the same bytes everywhere.
 * <pre>{@code
 * String boards = CutsDrawing.of(job, plan).toSvg();
 * String bars = CutsDrawing.of(cutting).titled("Skirting").toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class CutsDrawing {
  private final List<CutStock> stocks;
  /** What one of them is called. */
  private final String unit;
  private final String title;
  private final Measures measures;

  private CutsDrawing(List<CutStock> stocks, String unit, String title, Measures measures) {
    this.stocks = stocks;
    this.unit = unit;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of the boards of a plan, in millimetres.
   *
   * @param job the job of the plan, not null
   * @param plan the plan, not null
   * @return the drawing, not null
   */
  public static CutsDrawing of(FloorJob job, FloorPlan plan) {
    Objects.requireNonNull(job, "job");
    return new CutsDrawing(CutStock.ofBoards(job, Objects.requireNonNull(plan, "plan")), "board", "", Measures.MILLIMETRES);
  }

  /**
   * Returns a drawing of bars, in millimetres.
   *
   * @param cutting which piece is cut from which bar, not null
   * @return the drawing, not null
   */
  public static CutsDrawing of(TrimCutting cutting) {
    return new CutsDrawing(CutStock.ofBars(Objects.requireNonNull(cutting, "cutting")), "bar", "", Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public CutsDrawing titled(String words) {
    return new CutsDrawing(stocks, unit, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public CutsDrawing in(Measures units) {
    return new CutsDrawing(stocks, unit, title, Objects.requireNonNull(units, "units"));
  }

  /**
   * Returns the same drawing with another word for what is cut.
   *
   * @param word what one of them is called, such as {@code "roll"}; not null
   * @return the drawing, not null
   */
  public CutsDrawing called(String word) {
    return new CutsDrawing(stocks, Objects.requireNonNull(word, "word"), title, measures);
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code cuts}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new CutsComposition(stocks, unit, title, measures).draw();
  }

  /**
   * Returns the longest stock.
   *
   * @return its length, 1 mm if there is none
   */
  static Length longest(List<CutStock> stocks) {
    return stocks.stream().map(CutStock::length).reduce(Length.ofMillimetres(1), Length::max);
  }
}
