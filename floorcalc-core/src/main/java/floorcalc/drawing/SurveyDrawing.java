package floorcalc.drawing;

import floorcalc.outline.survey.SurveyReport;
import java.util.Objects;

/**
 * A room as it was measured, drawn to scale on a sheet of paper: what the measurements make of it, what each of them is off, and
 * what to measure again. Immutable and thread-safe.
 * <p>
 * Of a room whose shape is fixed: the adjusted walls; every wall and every tie with the length that was read; how sure each corner is
 * (its error ellipse), what each reading is off (a bar along it) and the walk along the walls as read, which does not close, all three
 * much larger than they are, and the key says by how much; readings that do not fit in a frame, with what the others say; corners that are
 * out of square with how much. Of a room whose shape is not fixed: a sketch with the ties that would fix it. Of measurements that several
 * shapes fit: the shapes beside each other, with the tie that tells them apart.
 * <p>
 * The sheet is black on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap; what has
 * no room is listed in a note. The same report gives the same bytes everywhere.
 * <pre>{@code
 * String svg = SurveyDrawing.of(SurveyReport.of(survey).value()).titled("Study").toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class SurveyDrawing {
  private final SurveyReport report;
  private final String title;
  private final Measures measures;

  private SurveyDrawing(SurveyReport report, String title, Measures measures) {
    this.report = report;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of a survey, in millimetres.
   *
   * @param report what the survey comes to, not null
   * @return the drawing, not null
   */
  public static SurveyDrawing of(SurveyReport report) {
    return new SurveyDrawing(Objects.requireNonNull(report, "report"), "", Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public SurveyDrawing titled(String words) {
    return new SurveyDrawing(report, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public SurveyDrawing in(Measures units) {
    return new SurveyDrawing(report, title, Objects.requireNonNull(units, "units"));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code survey}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new SurveyComposition(this).draw();
  }

  SurveyReport report() {
    return report;
  }

  String title() {
    return title;
  }

  Measures measures() {
    return measures;
  }
}
