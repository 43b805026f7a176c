package floorcalc.examples.sheet;

import floorcalc.finishing.PieceCut;
import floorcalc.fittings.GluedPart;
import floorcalc.fittings.HoleInPiece;
import floorcalc.fittings.Notch;
import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/**
 * A small drawing of a notched or drilled piece, face up, the start end on the left and the start edge below: places along the board from its
 * start end stand below it, places across it from its start edge on its right. Long plain stretches are shortened. Millimetres on paper.
 */
final class NotchFigure {
  private static final double MOST = 128;
  private static final double HEIGHT = 22;
  private static final double LEFT = 4;
  private static final double TOP = 3;
  private static final double FONT = 3.4;
  private static final double DIGIT = 0.6 * FONT;
  private static final double BETWEEN = 1.6;
  /** A curve is told by its ends and its deepest place; its points stand in words. */
  private static final int LABELLED = 4;

  private final Figures figures;
  private final PieceCut cut;
  private final BoardScale along;
  private final BoardScale across;
  private final TreeSet<Length> alongLabels = new TreeSet<>();
  private final TreeSet<Length> acrossLabels = new TreeSet<>();
  /** How far to the right the figures below the board reach. */
  private double widestAlong;
  private final StringBuilder svg = new StringBuilder();

  private NotchFigure(Figures figures, PieceCut cut) {
    this.figures = figures;
    this.cut = cut;
    TreeSet<Length> xs = new TreeSet<>(List.of(Length.ZERO, cut.shape().length()));
    TreeSet<Length> ys = new TreeSet<>(List.of(Length.ZERO, cut.shape().width()));
    for (Notch notch : cut.shape().notches()) {
      notch.sawn().forEach(line -> {
        add(line.from(), xs, ys);
        add(line.to(), xs, ys);
      });
      label(notch);
    }
    for (HoleInPiece hole : cut.holes()) {
      hole.sawn().forEach(ring -> {
        add(ring.extent().low(), xs, ys);
        add(ring.extent().high(), xs, ys);
      });
      label(hole.fromStartEnd(), hole.fromStartEdge());
      label(hole.fromStartEnd().plus(hole.along()), hole.fromStartEdge().plus(hole.across()));
    }
    for (GluedPart part : cut.glued()) {
      xs.addAll(List.of(part.from(), part.to()));
      alongLabels.addAll(List.of(part.from(), part.to()));
    }
    alongLabels.add(cut.shape().length());
    acrossLabels.add(cut.shape().width());
    double scale = Math.min(0.4, HEIGHT / cut.shape().width().toMillimetres());
    along = BoardScale.of(xs, scale, MOST);
    across = BoardScale.of(ys, scale, HEIGHT);
  }

  static String of(Figures figures, PieceCut cut) {
    return new NotchFigure(figures, cut).draw();
  }

  private static void add(Point place, TreeSet<Length> xs, TreeSet<Length> ys) {
    xs.add(place.x());
    ys.add(place.y());
  }

  private void label(Notch notch) {
    if (notch.sawn().size() <= LABELLED || notch.isSquare()) {
      notch.sawn().forEach(line -> {
        label(line.from().x(), line.from().y());
        label(line.to().x(), line.to().y());
      });
    } else {
      label(notch.fromStartEnd(), notch.fromStartEdge());
      label(notch.fromStartEnd().plus(notch.along()), notch.fromStartEdge().plus(notch.across()));
    }
  }

  private void label(Length x, Length y) {
    if (x.isPositive() && x.compareTo(cut.shape().length()) < 0) {
      alongLabels.add(x);
    }
    if (y.isPositive() && y.compareTo(cut.shape().width()) < 0) {
      acrossLabels.add(y);
    }
  }

  private double x(Length place) {
    return LEFT + along.at(place);
  }

  private double y(Length place) {
    return TOP + across.length() - across.at(place);
  }

  private String draw() {
    double right = LEFT + along.length();
    double bottom = TOP + across.length();
    line("class=\"gone\"", LEFT, TOP, right, TOP);
    line("class=\"gone\"", LEFT, bottom, right, bottom);
    line("class=\"gone\"", LEFT, TOP, LEFT, bottom);
    line("class=\"gone\"", right, TOP, right, bottom);
    path(cut.shape().outline(), "fill=\"#eee\" stroke=\"#000\" stroke-width=\".5\"");
    cut.shape().notches().stream().filter(notch -> notch.kind() == Notch.Kind.HOLE)
        .forEach(notch -> path(notch.removed(), "fill=\"#fff\" stroke=\"#000\" stroke-width=\".5\""));
    for (HoleInPiece hole : cut.holes()) {
      hole.sawn().forEach(ring -> path(ring, "fill=\"#fff\" stroke=\"#000\" stroke-width=\".5\""));
      middle(hole);
    }
    cut.glued().forEach(this::glued);
    for (double at : along.breaks()) {
      breakMark(LEFT + at, bottom);
    }
    double far = acrossFigures(right);
    double low = alongFigures(bottom);
    far = Math.max(far, widestAlong);
    String id = "cut-" + Html.escaped(cut.piece());
    return String.format(Locale.ROOT, "<svg class=\"notch\" viewBox=\"0 0 %s %s\" width=\"%smm\" height=\"%smm\" role=\"img\" aria-labelledby=\"%s-title %s-desc\">"
        + "<title id=\"%s-title\">%s</title><desc id=\"%s-desc\">%s</desc>%s</svg>", number(far), number(low), number(far), number(low), id, id,
        id, Html.escaped("Piece " + cut.piece() + ", face up, start end on the left"), id, Html.escaped(String.join("; ", cut.inWords(figures::plain))), svg);
  }

  /** A cross at the middle of a hole, if it lies on the board. */
  private void middle(HoleInPiece hole) {
    if (hole.holdsMiddle() && !hole.isSlot()) {
      double px = x(hole.fromStartEnd());
      double py = y(hole.fromStartEdge());
      line("stroke=\"#000\" stroke-width=\".2\"", px - 1.5, py, px + 1.5, py);
      line("stroke=\"#000\" stroke-width=\".2\"", px, py - 1.5, px, py + 1.5);
    }
  }

  /** The saw cuts of a part that is glued back. */
  private void glued(GluedPart part) {
    String dashed = "stroke=\"#000\" stroke-width=\".5\" stroke-dasharray=\"2 1\"";
    if (part.side().isEnd()) {
      line(dashed, x(part.from()), TOP, x(part.from()), TOP + across.length());
      return;
    }
    HoleInPiece hole = cut.holes().stream().filter(one -> one.holdsMiddle()
        && one.fromStartEnd().compareTo(part.from()) >= 0 && one.fromStartEnd().compareTo(part.to()) <= 0).findFirst().orElseThrow();
    double edge = part.side() == floorcalc.fittings.BoardSide.START_EDGE ? TOP + across.length() : TOP;
    line(dashed, x(part.from()), y(hole.fromStartEdge()), x(part.from()), edge);
    line(dashed, x(part.to()), y(hole.fromStartEdge()), x(part.to()), edge);
  }

  private void breakMark(double at, double bottom) {
    svg.append(String.format(Locale.ROOT, "<path d=\"M%s %sL%s %sL%s %sL%s %sZ\" fill=\"#fff\"/>", number(at - 1.6), number(bottom + 1),
        number(at + .4), number(TOP - 1), number(at + 1.6), number(TOP - 1), number(at - .4), number(bottom + 1)));
    line("stroke=\"#000\" stroke-width=\".25\"", at - 1.6, bottom + 1, at + .4, TOP - 1);
    line("stroke=\"#000\" stroke-width=\".25\"", at - .4, bottom + 1, at + 1.6, TOP - 1);
  }

  /** Figures below the board, each with a line to its place; they stand upright where there are too many to lie side by side. */
  private double alongFigures(double bottom) {
    List<Length> labels = new ArrayList<>(alongLabels);
    double[] widths = labels.stream().mapToDouble(this::width).toArray();
    boolean lying = Arrays.stream(widths).sum() + widths.length * BETWEEN < MOST;
    double[] half = lying ? Arrays.stream(widths).map(width -> width / 2).toArray() : labels.stream().mapToDouble(label -> FONT / 2).toArray();
    double[] at = spread(labels.stream().mapToDouble(this::x).toArray(), half, lying ? BETWEEN : .6);
    for (int i = 0; i < at.length; i++) {
      at[i] = Math.max(at[i], i == 0 ? half[0] : at[i - 1] + half[i - 1] + half[i] + (lying ? BETWEEN : .6));
      leader(x(labels.get(i)), bottom, x(labels.get(i)), bottom + 1.5);
      leader(x(labels.get(i)), bottom + 1.5, at[i], bottom + 5);
      String turned = lying ? "" : String.format(Locale.ROOT, " transform=\"rotate(-90 %s %s)\"", number(at[i] + FONT / 3),
          number(bottom + 6));
      text(at[i] + (lying ? 0 : FONT / 3), bottom + (lying ? 8.4 : 6), lying ? "middle" : "end", turned, figures.plain(labels.get(i)));
    }
    widestAlong = at[at.length - 1] + half[half.length - 1] + 1;
    return bottom + (lying ? 10 : 8 + Arrays.stream(widths).max().orElse(0));
  }

  /** The width of a figure, on the safe side. */
  private double width(Length label) {
    return figures.plain(label).length() * DIGIT;
  }

  /** Figures on the right of the board. */
  private double acrossFigures(double right) {
    List<Length> labels = new ArrayList<>(acrossLabels);
    double[] half = labels.stream().mapToDouble(label -> FONT / 2).toArray();
    double[] at = spread(labels.stream().mapToDouble(label -> -y(label)).toArray(), half, .4);
    for (int i = 0; i < at.length; i++) {
      leader(right, y(labels.get(i)), right + 1.5, y(labels.get(i)));
      leader(right + 1.5, y(labels.get(i)), right + 5, -at[i]);
      text(right + 5.6, -at[i] + FONT / 3, "start", "", figures.plain(labels.get(i)));
    }
    return right + 8 + labels.stream().mapToDouble(this::width).max().orElse(0);
  }

  /** Moves rising places apart so that figures of some half widths keep a distance, each group about its middle. */
  private static double[] spread(double[] wanted, double[] half, double between) {
    double[] at = wanted.clone();
    boolean moved = true;
    for (int pass = 0; moved && pass < 500; pass++) {
      moved = false;
      for (int i = 1; i < at.length; i++) {
        double lack = half[i - 1] + half[i] + between - (at[i] - at[i - 1]);
        if (lack > 1e-3) {
          at[i - 1] -= lack / 2;
          at[i] += lack / 2;
          moved = true;
        }
      }
    }
    return at;
  }

  private void leader(double x0, double y0, double x1, double y1) {
    line("stroke=\"#000\" stroke-width=\".15\"", x0, y0, x1, y1);
  }

  private void line(String style, double x0, double y0, double x1, double y1) {
    String drawn = style.startsWith("class") ? "stroke=\"#777\" stroke-width=\".2\" stroke-dasharray=\"1 1\"" : style;
    svg.append(String.format(Locale.ROOT, "<path d=\"M%s %sL%s %s\" fill=\"none\" %s/>", number(x0), number(y0), number(x1), number(y1),
        drawn));
  }

  private void path(Ring ring, String style) {
    svg.append("<path d=\"");
    for (int i = 0; i < ring.size(); i++) {
      Point corner = ring.corners().get(i);
      svg.append(i == 0 ? 'M' : 'L').append(number(x(corner.x()))).append(' ').append(number(y(corner.y())));
    }
    svg.append("Z\" ").append(style).append("/>");
  }

  private void text(double x, double y, String anchor, String more, String text) {
    svg.append(String.format(Locale.ROOT, "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\"%s>%s</text>", number(x), number(y),
        number(FONT), anchor, more, Html.escaped(text)));
  }

  private static String number(double value) {
    return PlainNumber.text(value, 2);
  }
}
