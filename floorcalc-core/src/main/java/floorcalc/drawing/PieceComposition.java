package floorcalc.drawing;

import floorcalc.fittings.GluedPart;
import floorcalc.fittings.HoleCut;
import floorcalc.fittings.HoleInPiece;
import floorcalc.fittings.Notch;
import floorcalc.fittings.PieceNotches;
import floorcalc.measure.Length;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** A piece on a sheet, its start end on the left and its start edge in front. */
final class PieceComposition {
  private static final double LEFT = 30;
  private static final double RIGHT = 166;
  private static final double HIGHEST = 120;

  private final PieceDrawing drawing;
  private final Measures measures;
  private final PieceNotches piece;
  private final List<HoleInPiece> holes = new ArrayList<>();
  private final List<GluedPart> glued = new ArrayList<>();
  private final Figure figure;
  private final Sheet sheet;
  private final double bottom;

  PieceComposition(PieceDrawing drawing) {
    this.drawing = drawing;
    this.measures = drawing.measures();
    this.piece = PieceNotches.of(drawing.piece()).value();
    for (HoleCut cut : drawing.holes()) {
      cut.parts().stream().filter(part -> part.piece().equals(drawing.piece().name())).forEach(holes::add);
      cut.glued().filter(part -> part.piece().equals(drawing.piece().name())).ifPresent(glued::add);
    }
    long scale = Paper.scaleFor(Math.max(piece.length().toMillimetres() / (RIGHT - LEFT), piece.width().toMillimetres() / HIGHEST));
    this.bottom = Figure.TOP + 8 + piece.width().toMillimetres() / scale;
    this.figure = new Figure("piece", drawing.title(), measures, scale, bottom + 20);
    this.sheet = figure.sheet;
  }

  private double x(Length along) {
    return LEFT + sheet.paper.of(along);
  }

  private double y(Length across) {
    return bottom - sheet.paper.of(across);
  }

  String draw() {
    figure.caption(drawing.title().isBlank() ? "A piece" : drawing.title(), "Scale 1:" + Words.grouped(sheet.paper.scale()) + " \u00b7 face up, "
        + measures.withUnit(piece.length()) + " by " + measures.withUnit(piece.width())
        + " \u00b7 places from the start end and the start edge \u00b7 lengths " + measures.words());
    double right = x(piece.length());
    double top = y(piece.width());
    sheet.floor.line("<rect " + Svg.attribute("x", LEFT) + ' ' + Svg.attribute("y", top) + ' ' + Svg.attribute("width", right - LEFT) + ' '
        + Svg.attribute("height", bottom - top) + " fill=\"#fff\"" + Figure.stroke(0.2) + " stroke-dasharray=\"1.2 0.8\"/>");
    figure.path(path(piece.outline()), "#ededed", Figure.FIRM);
    piece.notches().stream().filter(notch -> notch.kind() == Notch.Kind.HOLE)
        .forEach(notch -> figure.path(path(notch.removed()), "#fff", Figure.FIRM));
    holes.forEach(hole -> hole.sawn().forEach(ring -> figure.path(path(ring), "#fff", Figure.FIRM)));
    glued.forEach(this::glue);
    sheet.take(Box.upright(LEFT, top, right, bottom));
    figure.write("far edge", (LEFT + right) / 2, top - 3);
    along();
    across();
    figure.write("start edge", (LEFT + right) / 2, bottom + 14);
    figure.writeUpTo(LEFT - 2, top - 3, "start end");
    figure.writeFrom(right + 1.5, (top + bottom) / 2, "far end");
    holes.forEach(hole -> sheet.note(capital(hole.inWords(drawing::words)) + "."));
    glued.forEach(part -> sheet.note(capital(part.inWords(drawing::words)) + "."));
    piece.notches().forEach(notch -> sheet.note(capital(notch.inWords(drawing::words)) + "."));
    figure.foot.scaleBar();
    key();
    return figure.svg(drawing.title().isBlank() ? "A piece of a board" : "A piece of a board: " + drawing.title(), description());
  }

  private String path(Ring ring) {
    StringBuilder data = new StringBuilder();
    for (int i = 0; i < ring.size(); i++) {
      data.append(i == 0 ? 'M' : 'L').append(Svg.number(x(Length.ofNanometres(ring.x(i))))).append(' ')
          .append(Svg.number(y(Length.ofNanometres(ring.y(i)))));
    }
    return data.append('Z').toString();
  }

  /** The saw cuts that free the part which is glued back. */
  private void glue(GluedPart part) {
    StringBuilder cuts = new StringBuilder();
    Length deep = part.depth();
    switch (part.side()) {
      case START_END -> Sheet.appendSegment(cuts, x(deep), y(Length.ZERO), x(deep), y(piece.width()));
      case FAR_END -> Sheet.appendSegment(cuts, x(piece.length().minus(deep)), y(Length.ZERO), x(piece.length().minus(deep)), y(piece.width()));
      case START_EDGE -> {
        Sheet.appendSegment(cuts, x(part.from()), y(Length.ZERO), x(part.from()), y(deep));
        Sheet.appendSegment(cuts, x(part.to()), y(Length.ZERO), x(part.to()), y(deep));
      }
      case FAR_EDGE -> {
        Sheet.appendSegment(cuts, x(part.from()), y(piece.width()), x(part.from()), y(piece.width().minus(deep)));
        Sheet.appendSegment(cuts, x(part.to()), y(piece.width()), x(part.to()), y(piece.width().minus(deep)));
      }
    }
    sheet.floor.line("<path" + Figure.stroke(0.4) + " stroke-dasharray=\"0.8 0.5\" d=\"" + cuts + "\"/>");
  }

  private void along() {
    TreeSet<Length> places = new TreeSet<>();
    places.add(piece.length());
    piece.notches().forEach(notch -> {
      places.add(notch.fromStartEnd());
      places.add(notch.fromStartEnd().plus(notch.along()));
    });
    holes.forEach(hole -> {
      places.add(hole.fromStartEnd());
      places.add(hole.fromStartEnd().plus(hole.along()));
    });
    glued.forEach(part -> {
      if (part.side().isEnd()) {
        places.add(part.side() == floorcalc.fittings.BoardSide.START_END ? part.depth() : piece.length().minus(part.depth()));
      } else {
        places.add(part.from());
        places.add(part.to());
      }
    });
    places.removeIf(place -> place.isNegative() || place.compareTo(piece.length()) > 0);
    double y = bottom + 4;
    figure.line(LEFT, y, x(piece.length()), y, Figure.THIN);
    places.add(Length.ZERO);
    figure.ordinates(places.stream().map(place -> new Figure.Tag(x(place), measures.row(place))).toList(), y, "Places from the start end");
  }

  /** Places across, on the left of the piece, each a little higher than the one before. */
  private void across() {
    TreeSet<Length> places = new TreeSet<>();
    places.add(piece.width());
    piece.notches().forEach(notch -> {
      places.add(notch.fromStartEdge());
      places.add(notch.fromStartEdge().plus(notch.across()));
    });
    holes.forEach(hole -> {
      places.add(hole.fromStartEdge());
      places.add(hole.fromStartEdge().plus(hole.across()));
    });
    places.removeIf(place -> place.isNegative() || place.compareTo(piece.width()) > 0);
    places.remove(Length.ZERO);
    double x = LEFT - 4;
    figure.line(x, y(piece.width()), x, bottom, Figure.THIN);
    double last = bottom + 3;
    List<String> left = new ArrayList<>();
    for (Length place : places) {
      double y = y(place);
      double at = Math.min(y, last - 3.1);
      sheet.lines.line("<path" + Figure.stroke(Figure.THIN) + " d=\"" + Sheet.segment(x - 1, y, x + 1, y) + Sheet.segment(x - 1, y, x - 3, at)
          + "\"/>");
      if (figure.writeUpTo(x - 3.5, at, measures.row(place))) {
        last = at;
      } else {
        left.add(measures.row(place));
      }
    }
    if (!left.isEmpty()) {
      sheet.note("Places from the start edge without room: " + Words.list(left, 30) + ".");
    }
  }

  private void key() {
    double rest = figure.foot.next("board");
    sheet.lines.line("<rect " + figure.foot.rectangle(rest) + " fill=\"#ededed\" stroke-width=\"0.3\"/>");
    double off = figure.foot.next("falls off");
    sheet.lines.line("<rect " + figure.foot.rectangle(off) + " fill=\"#fff\"" + Figure.stroke(0.2) + " stroke-dasharray=\"1.2 0.8\"/>");
    if (!glued.isEmpty()) {
      double cut = figure.foot.next("saw cut; the part is glued back");
      double y = figure.foot.middle();
      sheet.lines.line("<path" + Figure.stroke(0.4) + " stroke-dasharray=\"0.8 0.5\" d=\"" + Sheet.segment(cut, y, cut + 6, y) + "\"/>");
    }
  }

  private String description() {
    StringBuilder text = new StringBuilder("A piece of ").append(piece.length()).append(" by ").append(piece.width())
        .append(", to scale, its start end on the left and its start edge in front.");
    holes.forEach(hole -> text.append(' ').append(capital(hole.inWords(Length::toString))).append('.'));
    piece.notches().forEach(notch -> text.append(' ').append(capital(notch.inWords(Length::toString))).append('.'));
    return text.toString();
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
  }
}
