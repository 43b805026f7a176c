package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.moisture.Percent;
import floorcalc.movement.MovementForecast;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * How wide a floor is and what is left of its gaps in the driest season, when it is laid, and in the dampest: three sections across the boards under
 * each other, the middle staying where it is. The floor is to scale, gaps are drawn larger, and the caption says how many times. Immutable and
 * thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap;
 * what has no room is said in a note. The same movement gives the same bytes everywhere.
 * <pre>{@code
 * String svg = SeasonsDrawing.of(forecast, Length.parse("8 m"), Length.parse("10 mm")).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class SeasonsDrawing {
  private static final double WALL_WIDTH = 5;
  private static final double WIDEST_GAP = 12;
  private static final double BOARD = 6;
  private static final double PITCH = 21;

  private final MovementForecast forecast;
  private final Length width;
  private final Length gap;
  private final String title;
  private final Measures measures;

  private SeasonsDrawing(MovementForecast forecast, Length width, Length gap, String title, Measures measures) {
    this.forecast = forecast;
    this.width = width;
    this.gap = gap;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of a floor through the seasons, in millimetres.
   *
   * @param forecast from which moisture content to which, not null
   * @param width the width across the boards as laid, not null, more than zero and at most 1 km
   * @param gap the gap left on each side, not null, not negative
   * @return the drawing, not null
   * @throws IllegalArgumentException if the width or the gap is out of range
   */
  public static SeasonsDrawing of(MovementForecast forecast, Length width, Length gap) {
    Objects.requireNonNull(forecast, "forecast").swelling(Objects.requireNonNull(width, "width"));
    if (Objects.requireNonNull(gap, "gap").isNegative() || gap.compareTo(width) > 0) {
      throw new IllegalArgumentException("the gap on each side must be from 0 mm to the width of the floor, " + width + ", but was " + gap);
    }
    return new SeasonsDrawing(forecast, width, gap, "", Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public SeasonsDrawing titled(String words) {
    return new SeasonsDrawing(forecast, width, gap, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public SeasonsDrawing in(Measures units) {
    return new SeasonsDrawing(forecast, width, gap, title, Objects.requireNonNull(units, "units"));
  }

  /** A season: its name, the moisture content, and the width of the floor. */
  private record Season(String name, Percent moisture, Length width) {
  }

  private List<Season> seasons() {
    List<Season> seasons = new ArrayList<>();
    seasons.add(new Season("driest season", forecast.driest(), width.minus(forecast.shrinkage(width).value())));
    seasons.add(new Season("as laid", forecast.now(), width));
    seasons.add(new Season("dampest season", forecast.dampest(), width.plus(forecast.swelling(width).value())));
    return seasons;
  }

  /** What is left on each side; negative if the floor would be too wide. */
  private Length gap(Season season) {
    return gap.plus(width.minus(season.width()).dividedBy(2, RoundingMode.FLOOR));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code seasons}; it ends in a line feed; not null
   */
  public String toSvg() {
    Length room = width.plus(gap).plus(gap);
    Figure figure = new Figure("seasons", title, measures, Paper.scaleFor(room.toMillimetres() / (Figure.RIGHT - Figure.LEFT - 2 * WIDEST_GAP)),
        Figure.TOP + 3 * PITCH + 2);
    Length widest = seasons().stream().map(this::gap).reduce(Length.ZERO, Length::max);
    Exaggeration larger = Exaggeration.of(Math.max(widest.toMillimetres(), 0.01), WIDEST_GAP, figure.sheet.paper);
    figure.caption(title.isBlank() ? "Through the seasons" : title, "Scale 1:" + Words.grouped(figure.sheet.paper.scale())
        + " across the boards, gaps " + larger.words() + ", heights not to scale \u00b7 " + measures.withUnit(width) + " as laid \u00b7 lengths "
        + measures.words());
    double y = Figure.TOP;
    for (Season season : seasons()) {
      section(figure, season, larger, y);
      y += PITCH;
    }
    figure.foot.scaleBar();
    figure.sheet.note("The middle of the floor stays where it is; each side moves by half of the change.");
    return figure.svg(title.isBlank() ? "A floor through the seasons" : "A floor through the seasons: " + title, description());
  }

  private void section(Figure figure, Season season, Exaggeration larger, double top) {
    double reach = figure.sheet.paper.of(width) / 2 + larger.of(gap.toMillimetres());
    double middle = (Figure.LEFT + Figure.RIGHT) / 2;
    double left = middle - reach;
    double right = middle + reach;
    double open = larger.of(Math.max(0, gap(season).toMillimetres()));
    double floor = top + 5 + BOARD;
    for (double side : new double[] {-1, 1}) {
      double face = middle + side * reach;
      figure.rectangle(Math.min(face, face + side * WALL_WIDTH), top, Math.max(face, face + side * WALL_WIDTH), floor, Figure.WALL, 0);
      figure.line(face, top, face, floor, Figure.FIRM);
    }
    figure.line(left - WALL_WIDTH, floor, right + WALL_WIDTH, floor, Figure.FIRM);
    figure.rectangle(left + open, floor - BOARD, right - open, floor, "#ededed", Figure.FIRM);
    figure.writeWithin(season.name() + ", " + season.moisture() + ": " + measures.row(season.width()), left + open, right - open, floor - BOARD / 2);
    Length rest = gap(season);
    if (rest.compareTo(Length.ZERO) > 0) {
      String note = "In the section \"" + season.name() + "\" each gap is " + measures.withUnit(rest) + ".";
      figure.dimension(left, left + open, floor + 5, measures.row(rest), note);
      figure.dimension(right - open, right, floor + 5, measures.row(rest), note);
    } else {
      figure.sheet.note(capital(season.name()) + ": the floor has no gap left" + (rest.isZero() ? "." : " and would press on each wall by "
          + measures.withUnit(rest.negated()) + "; it lifts or breaks."));
    }
  }

  private String description() {
    StringBuilder text = new StringBuilder("Three sections across a floor.");
    for (Season season : seasons()) {
      Length rest = gap(season);
      text.append(' ').append(capital(season.name())).append(", ").append(season.moisture()).append(": ").append(season.width())
          .append(" wide, ").append(rest.isNegative() ? "too wide by " + rest.negated() + " on each side" : rest + " of gap on each side")
          .append('.');
    }
    return text.toString();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
