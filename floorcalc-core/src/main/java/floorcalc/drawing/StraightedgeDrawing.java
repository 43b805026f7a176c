package floorcalc.drawing;

import floorcalc.flatness.EdgeRest;
import floorcalc.flatness.GreatestGap;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.measure.Length;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Heights along a line with a straightedge laid where the gap beneath it is greatest: the floor, the edge, its two contacts, and the gap. Places
 * along the line are to scale; heights are drawn larger, and the caption says how many times. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap; what
 * has no room is said in a note. The same heights give the same bytes everywhere.
 * <pre>{@code
 * String svg = StraightedgeDrawing.of(profile, Straightedge.of(Length.parse("2 m")), RestRule.WORST).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class StraightedgeDrawing {
  private static final double RELIEF = 26;
  private static final double EDGE = 3;

  private final HeightProfile profile;
  private final GreatestGap gap;
  private final String title;
  private final Measures measures;

  private StraightedgeDrawing(HeightProfile profile, GreatestGap gap, String title, Measures measures) {
    this.profile = profile;
    this.gap = gap;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of heights under an edge, in millimetres.
   *
   * @param profile the heights, not null
   * @param edge the edge, not null, no longer than the line of the heights
   * @param rule on which two points it rests, not null
   * @return the drawing, not null
   * @throws IllegalArgumentException if the edge is longer than the line
   */
  public static StraightedgeDrawing of(HeightProfile profile, Straightedge edge, RestRule rule) {
    Objects.requireNonNull(profile, "profile");
    Objects.requireNonNull(rule, "rule");
    return new StraightedgeDrawing(profile, Objects.requireNonNull(edge, "edge").greatest(profile, rule), "", Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public StraightedgeDrawing titled(String words) {
    return new StraightedgeDrawing(profile, gap, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public StraightedgeDrawing in(Measures units) {
    return new StraightedgeDrawing(profile, gap, title, Objects.requireNonNull(units, "units"));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code straightedge}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new Section().draw();
  }

  /** The floor cut along the line. */
  private final class Section {
    private final EdgeRest rest = gap.rest();
    private final Figure figure =
        new Figure("straightedge", title, measures, Figure.scale(profile.length().toMillimetres()), 76);
    private final Sheet sheet = figure.sheet;
    private final double lowest = profile.readings().stream().mapToDouble(p -> p.height().toMillimetres()).min().orElse(0);
    private final double highest = Math.max(profile.readings().stream().mapToDouble(p -> p.height().toMillimetres()).max().orElse(0),
        Math.max(edgeHeight(gap.start()), edgeHeight(gap.start().plus(gap.span()))));
    private final Exaggeration larger = Exaggeration.of(highest - lowest, RELIEF, sheet.paper);

    private double edgeHeight(Length place) {
      double share = place.minus(rest.left().place()).toMillimetres() / rest.contactDistance().toMillimetres();
      double left = rest.left().height().toMillimetres();
      return left + share * (rest.right().height().toMillimetres() - left);
    }

    private double x(Length place) {
      return Figure.LEFT + sheet.paper.of(place.minus(profile.first()));
    }

    private double y(double height) {
      return 52 - larger.of(height - lowest);
    }

    String draw() {
      figure.caption(title.isBlank() ? "Under a straightedge" : title, "Scale 1:" + Words.grouped(sheet.paper.scale())
          + " along, heights " + larger.words() + " \u00b7 edge of " + measures.withUnit(gap.span()) + " \u00b7 greatest gap "
          + measures.markedHeight(gap.gap()) + " \u00b7 lengths " + measures.words());
      floor();
      edge();
      places();
      figure.foot.scaleBar();
      key();
      return figure.svg(title.isBlank() ? "A floor under a straightedge" : "A floor under a straightedge: " + title, description());
    }

    private void floor() {
      List<ProfilePoint> readings = profile.readings();
      StringBuilder line = new StringBuilder();
      readings.forEach(point -> line.append(line.isEmpty() ? "M" : "L").append(Svg.number(x(point.place()))).append(' ')
          .append(Svg.number(y(point.height().toMillimetres()))));
      String ground = line + "L" + Svg.number(x(profile.last())) + " 57L" + Svg.number(x(profile.first())) + " 57Z";
      figure.path(ground, "#dadada", 0);
      figure.path(line.toString(), "", 0.4);
      for (int i = 1; i < readings.size(); i++) {
        sheet.take(Box.along(x(readings.get(i - 1).place()), y(readings.get(i - 1).height().toMillimetres()), x(readings.get(i).place()),
            y(readings.get(i).height().toMillimetres()), 0.5));
      }
      StringBuilder ticks = new StringBuilder();
      readings.forEach(point -> {
        double y = y(point.height().toMillimetres());
        Sheet.appendSegment(ticks, x(point.place()), y, x(point.place()), y + 1.2);
      });
      figure.path(ticks.toString(), "", 0.2);
    }

    private void edge() {
      Length end = gap.start().plus(gap.span());
      double x1 = x(gap.start());
      double x2 = x(end);
      double y1 = y(edgeHeight(gap.start()));
      double y2 = y(edgeHeight(end));
      figure.path("M" + Svg.number(x1) + ' ' + Svg.number(y1) + 'L' + Svg.number(x2) + ' ' + Svg.number(y2) + 'L' + Svg.number(x2) + ' '
          + Svg.number(y2 - EDGE) + 'L' + Svg.number(x1) + ' ' + Svg.number(y1 - EDGE) + 'Z', "#fff", Figure.FIRM);
      sheet.take(Box.along(x1, y1 - EDGE / 2, x2, y2 - EDGE / 2, EDGE));
      for (ProfilePoint contact : List.of(rest.left(), rest.right())) {
        figure.dot(x(contact.place()), y(contact.height().toMillimetres()), 0.9, "#000");
      }
      if (!gap.gap().isZero()) {
        double at = x(rest.lowSpot().place());
        figure.upright(at, y(edgeHeight(rest.lowSpot().place())), y(rest.lowSpot().height().toMillimetres()),
            measures.markedHeight(gap.gap()), "The greatest gap is " + measures.withUnit(gap.gap()) + ".");
      }
    }

    private void places() {
      double y = 61;
      figure.line(x(profile.first()), y, x(profile.last()), y, Figure.THIN);
      List<Figure.Tag> tags = Stream.of(gap.start(), rest.left().place(), rest.lowSpot().place(), rest.right().place(),
          gap.start().plus(gap.span())).distinct().sorted()
          .map(place -> new Figure.Tag(x(place), measures.row(place))).toList();
      figure.ordinates(tags, y, "Ends of the edge, contacts and low spot");
    }

    private void key() {
      double floor = figure.foot.next("floor, a tick for each reading");
      double y = figure.foot.middle();
      sheet.lines.line("<rect " + figure.foot.rectangle(floor) + " fill=\"#dadada\" stroke=\"none\"/>");
      sheet.lines.line("<path stroke-width=\"0.4\" d=\"" + Sheet.segment(floor, y - 1.5, floor + 6, y - 1.5) + "\"/>");
      sheet.lines.line("<path stroke-width=\"0.2\" d=\"" + Sheet.segment(floor + 3, y - 1.5, floor + 3, y - 0.3) + "\"/>");
      double contact = figure.foot.next("the edge rests here");
      figure.dot(contact + 3, figure.foot.middle(), 0.9, "#000");
    }

    private String description() {
      return "A section along a line of " + Words.count(profile.size(), "reading", "readings") + ", heights " + larger.words()
          + ". An edge of " + gap.span() + " laid from " + gap.start() + " rests at " + rest.left().place() + " and " + rest.right().place()
          + "; the greatest gap beneath it is " + gap.gap() + " at " + rest.lowSpot().place() + ".";
    }
  }
}
