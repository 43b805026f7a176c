package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.Layer;
import floorcalc.transitions.ProfileKind;
import java.util.ArrayList;
import java.util.List;

/** A section through an edge of a floor: this floor on the left, what lies beyond on the right. */
final class HeightsComposition {
  private static final double MOST = 52;
  private static final double LEFT = 56;
  private static final double EDGE = 88;
  private static final double RIGHT = 128;
  private static final double SLOT = 3;
  private static final double GROUND = 5;
  private static final double ABOVE = 14;
  /** How wide a profile is drawn; its width is not to scale. */
  private static final double FOOT = 9;
  private static final String[] TONES = {"#dadada", "#ededed", "#cacaca", "#fff"};

  private final HeightsDrawing drawing;
  private final Measures measures;
  private final HeightStack here;
  private final double lowestOfAll;
  private final double perMillimetre;
  private final double base;
  private final Figure figure;
  private final Sheet sheet;

  HeightsComposition(HeightsDrawing drawing) {
    this.drawing = drawing;
    this.measures = drawing.measures();
    this.here = drawing.here();
    double low = here.subfloor().toMillimetres();
    double high = Math.max(here.top().toMillimetres(), Math.max(above(drawing.casing().orElse(Length.ZERO)),
        above(drawing.leaf().orElse(Length.ZERO))));
    if (drawing.beyond().isPresent()) {
      low = Math.min(low, drawing.beyond().get().subfloor().toMillimetres());
      high = Math.max(high, drawing.beyond().get().top().toMillimetres());
    }
    this.lowestOfAll = low;
    this.perMillimetre = times(MOST / Math.max(high - low, 1));
    this.base = Figure.TOP + ABOVE + perMillimetre * (high - low);
    this.figure = new Figure("heights", drawing.title(), measures, 1, base + GROUND + 8);
    this.sheet = figure.sheet;
  }

  /** The largest round factor that is not above another. */
  private static double times(double most) {
    for (double round : new double[] {5, 4, 3, 2.5, 2, 1.5, 1, 0.5, 0.25, 0.2}) {
      if (round <= most) {
        return round;
      }
    }
    return 1.0 / Paper.scaleFor(1 / most);
  }

  private double above(Length height) {
    return here.subfloor().plus(height).toMillimetres();
  }

  private double y(double height) {
    return base - perMillimetre * (height - lowestOfAll);
  }

  private double y(Length height) {
    return y(height.toMillimetres());
  }

  String draw() {
    figure.caption(drawing.title().isBlank() ? "Heights at an edge" : drawing.title(), "Heights " + scale()
        + ", from left to right not to scale \u00b7 lengths " + measures.words());
    double edge = drawing.beyond().isPresent() ? EDGE - SLOT / 2 : RIGHT;
    ground(here, LEFT, drawing.beyond().isPresent() ? EDGE : RIGHT);
    drawing.beyond().ifPresent(other -> ground(other, EDGE, RIGHT));
    layers(here, LEFT, edge);
    drawing.beyond().ifPresent(other -> layers(other, EDGE + SLOT / 2, RIGHT));
    over();
    drawing.profile().ifPresent(this::profile);
    totals();
    names(here, LEFT, -1);
    drawing.beyond().ifPresent(other -> names(other, RIGHT, 1));
    return figure.svg(drawing.title().isBlank() ? "A section through an edge of the floor" : "A section through an edge of the floor: "
        + drawing.title(), description());
  }

  private String scale() {
    return (perMillimetre == 1 ? "in true size" : perMillimetre > 1 ? Svg.number(perMillimetre) + " times their true size"
        : "1:" + Words.grouped((long) StrictMath.rint(1 / perMillimetre))) + " when printed in full size";
  }

  private void ground(HeightStack stack, double from, double to) {
    figure.rectangle(from, y(stack.subfloor()), to, base + GROUND, Figure.WALL, 0);
    figure.line(from, y(stack.subfloor()), to, y(stack.subfloor()), Figure.FIRM);
  }

  private void layers(HeightStack stack, double from, double to) {
    Length height = stack.subfloor();
    int number = 0;
    for (Layer layer : stack.layers()) {
      Length top = height.plus(layer.thickness());
      boolean last = ++number == stack.layers().size();
      figure.rectangle(from, y(top), to, y(height), last ? "#fff" : TONES[number % 3], Figure.FIRM);
      height = top;
    }
    sheet.take(Box.upright(from, y(height), to, y(stack.subfloor())));
  }

  /** What each layer is, beside it, pushed up where layers are thin. */
  private void names(HeightStack stack, double from, int side) {
    Length height = stack.subfloor();
    double lastY = base + GROUND - 0.5;
    List<String> left = new ArrayList<>();
    double out = from + side * 7;
    String ground = "subfloor" + (stack.subfloor().isZero() ? "" : " at " + measures.height(stack.subfloor()));
    label(ground, out, lastY - 1, side);
    lastY -= 1;
    for (Layer layer : stack.layers()) {
      Length top = height.plus(layer.thickness());
      double middle = (y(height) + y(top)) / 2;
      String text = layer.name() + " " + measures.row(layer.thickness());
      boolean written = false;
      double lowest = Math.min(middle, lastY - 3.4);
      for (double at = lowest; !written && at > lowest - 12; at -= 0.8) {
        if (label(text, out, at, side)) {
          figure.line(from, middle, from + side * 6, at, Figure.THIN);
          lastY = at;
          written = true;
        }
      }
      if (!written) {
        left.add(text);
      }
      height = top;
    }
    if (!left.isEmpty()) {
      sheet.note("Layers without room for a name, from below: " + Words.list(left, 20) + ".");
    }
  }

  private boolean label(String text, double x, double y, int side) {
    String cut = TextSize.cut(text, Sheet.TEXT, 34);
    return side < 0 ? figure.writeUpTo(x, y, cut) : figure.writeFrom(x, y, cut);
  }

  /** Casing and leaf above this floor. */
  private void over() {
    drawing.casing().ifPresent(cut -> {
      double at = y(above(cut));
      hanging(LEFT + 1, LEFT + 5, at, "#fff");
      figure.dashed(LEFT - 8, at, LEFT + 5.5, at);
      figure.writeUpTo(LEFT - 9, at - 1.9, "casing cut at " + measures.height(cut), "cut at " + measures.height(cut));
    });
    drawing.leaf().ifPresent(under -> {
      double at = y(above(under));
      double left = LEFT + 8;
      figure.write("leaf", left + 4.5, Math.min(at - 3, Figure.TOP + 4));
      hanging(left, left + 9, at, "#ededed");
      Length space = under.minus(here.total());
      if (space.isZero()) {
        sheet.note("The leaf stands on the floor.");
      } else {
        double top = Math.min(at, y(here.top()));
        double bottom = Math.max(at, y(here.top()));
        figure.upright(left + 11, top, bottom, measures.height(space), "Between floor and leaf " + measures.withUnit(space) + " are left.");
      }
    });
  }

  /** What hangs over the floor and goes on above. */
  private void hanging(double left, double right, double bottom, String fill) {
    String side = "M" + Svg.number(left) + ' ' + Svg.number(Figure.TOP) + 'L' + Svg.number(left) + ' ' + Svg.number(bottom) + 'L'
        + Svg.number(right) + ' ' + Svg.number(bottom) + 'L' + Svg.number(right) + ' ' + Svg.number(Figure.TOP);
    figure.path(side, fill, Figure.FIRM);
    sheet.take(Box.upright(left, Figure.TOP, right, bottom));
  }

  private void totals() {
    double x = 20;
    tie(here, LEFT, x, "The floor stands " + measures.withUnit(here.total()) + " over its subfloor.");
    drawing.beyond().ifPresent(other -> {
      tie(other, RIGHT, 164, "Beyond, it stands " + measures.withUnit(other.total()) + " over its subfloor.");
      Length difference = drawing.difference().orElseThrow().beyondHigherBy();
      sheet.note(difference.isZero() ? "Both floors are level." : "Beyond, the floor is " + measures.withUnit(difference.abs())
          + (difference.isNegative() ? " lower." : " higher."));
    });
    drawing.profile().ifPresent(kind -> sheet.note("Over the edge: " + words(kind) + ". Its shape is a sign; the section of its maker is another."));
    sheet.note("Thicknesses as they lie; the maker's instructions come first.");
  }

  private void tie(HeightStack stack, double from, double x, String note) {
    double top = y(stack.top());
    double bottom = y(stack.subfloor());
    double toward = x < from ? 1 : -1;
    for (double y : new double[] {top, bottom}) {
      sheet.take(Box.along(x - toward, y, from, y, 0.3));
    }
    sheet.lines.line("<path" + Figure.stroke(Figure.THIN) + " stroke-dasharray=\"0.5 0.7\" d=\"" + Sheet.segment(x - toward, top, from, top)
        + Sheet.segment(x - toward, bottom, from, bottom) + "\"/>");
    if (!stack.total().isZero()) {
      figure.upright(x, top, bottom, measures.height(stack.total()), note);
    }
  }

  /** A sign of the profile over the edge, from one floor to the other. */
  private void profile(ProfileKind kind) {
    double left = y(here.top());
    double right = drawing.beyond().map(other -> y(other.top())).orElse(y(here.subfloor()));
    double edge = drawing.beyond().isPresent() ? EDGE : RIGHT;
    double cap = 1.6;
    String data = switch (kind) {
      case T -> polygon(edge - FOOT, left, edge - FOOT, left - cap, edge + FOOT, right - cap, edge + FOOT, right, edge + 0.8, right,
          edge + 0.8, y(here.subfloor()), edge - 0.8, y(here.subfloor()), edge - 0.8, left);
      case REDUCER -> left <= right ? polygon(edge - FOOT, left, edge - FOOT, left - cap, edge + 1, left - cap, edge + FOOT, right - 0.4,
          edge + FOOT, right, edge, right, edge - 0.6, left) : polygon(edge + FOOT, right, edge + FOOT, right - cap, edge - 1, right - cap,
          edge - FOOT, left - 0.4, edge - FOOT, left, edge, left, edge + 0.6, right);
      case END -> polygon(edge - FOOT, left, edge - FOOT, left - cap, edge + 0.8, left - cap, edge + 0.8, Math.max(right, left),
          edge - 0.6, Math.max(right, left), edge - 0.6, left);
      case NOSING -> polygon(edge - FOOT, left, edge - FOOT, left - cap, edge + 3, left - cap, edge + 3, left + 3, edge + 0.2, left + 3,
          edge + 0.2, left);
    };
    figure.path(data, "#000", 0.2);
    double top = Math.min(left, right) - cap;
    sheet.take(Box.upright(edge - FOOT, top, edge + FOOT, Math.max(left, right)));
    for (double up = 3; up < 12; up += 1.5) {
      if (figure.write(words(kind), edge + 6, top - up)) {
        return;
      }
    }
  }

  private static String words(ProfileKind kind) {
    return kind == ProfileKind.T || kind == ProfileKind.END ? kind.word() + " profile" : kind.word();
  }

  private static String polygon(double... xy) {
    StringBuilder data = new StringBuilder();
    for (int i = 0; i < xy.length; i += 2) {
      data.append(i == 0 ? 'M' : 'L').append(Svg.number(xy[i])).append(' ').append(Svg.number(xy[i + 1]));
    }
    return data.append('Z').toString();
  }

  private String description() {
    StringBuilder text = new StringBuilder("A section, heights to scale. This floor, from below: ").append(layers(here)).append(", in all ")
        .append(here.total()).append('.');
    drawing.beyond().ifPresent(other -> text.append(" Beyond: ").append(layers(other)).append(", in all ").append(other.total())
        .append(" on a subfloor at ").append(other.subfloor()).append("; ").append(drawing.difference().orElseThrow()).append('.'));
    drawing.profile().ifPresent(kind -> text.append(" Over the edge lies a profile: ").append(words(kind)).append('.'));
    drawing.casing().ifPresent(cut -> text.append(" The casing is cut at ").append(cut).append('.'));
    drawing.leaf().ifPresent(under -> text.append(" The leaf ends at ").append(under).append(", ").append(under.minus(here.total()))
        .append(" over the floor."));
    return text.toString();
  }

  private static String layers(HeightStack stack) {
    return stack.layers().isEmpty() ? "the bare subfloor"
        : Words.list(stack.layers().stream().map(layer -> layer.name() + " " + layer.thickness()).toList(), 20);
  }
}
