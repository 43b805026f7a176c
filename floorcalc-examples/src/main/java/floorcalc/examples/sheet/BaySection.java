package floorcalc.examples.sheet;

import floorcalc.drawing.FloorDrawing;
import floorcalc.finishing.PieceCut;
import floorcalc.fittings.ThinPart;
import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The part of the sheet on one bay: its drawing and its cut card. */
final class BaySection {
  /** Millimetres on paper: a Letter page, the headings of a bay and of its cut card, a line of the card, a drawn piece with its words. */
  private static final int PAGE = 258;
  private static final int HEADINGS = 30;
  private static final int ROW = 13;
  private static final int DRAWN = 62;

  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;
  private final Bay bay;
  /** For each piece the rest that was kept for it last. */
  private final Map<String, Rest> kept;

  BaySection(Html html, Figures figures, FloorJob job, FloorPlan plan, Bay bay, Map<String, Rest> kept) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
    this.bay = bay;
    this.kept = kept;
  }

  void write(List<CutLine> lines, String page) {
    String id = "s-" + bay.bay();
    FloorDrawing drawing = FloorDrawing.of(job, plan, bay, figures.measures());
    html.raw("<section class=\"bay " + page + "\" aria-labelledby=\"" + Html.escaped(id) + "\">")
        .line(isLying(drawing) ? "<div class=\"lying\">" : "<div>").raw("<h2 id=\"" + Html.escaped(id) + "\">")
        .name(bay.room()).raw(" <span>").text("bay " + bay.bay()).line("</span></h2>");
    figure(drawing);
    html.line("</div>");
    parts();
    html.raw(startsApart(drawing, lines) ? "<table class=\"cut apart\">" : "<table class=\"cut\">").raw("<caption>Cut card of ").text(bay.bay())
        .line(": row by row in laying order"
            + (lines.stream().anyMatch(BaySection::isDrawn) ? ". Drawings: face up, along from the start end on the left, across from the"
                + " start edge, the near one" : "") + "</caption>")
        .columns(figures.inches() ? "15 30 20 29 20 33 39" : "30 64 44 38 32 82 82")
        .heads(List.of("Row", "Piece", "Board", "Length", "Width", "Saw", "What is left"));
    int row = 0;
    List<CutLine> ofRow = new ArrayList<>();
    for (CutLine line : lines) {
      if (line.row() != row) {
        row(ofRow);
        ofRow.clear();
        row = line.row();
      }
      ofRow.add(line);
    }
    row(ofRow);
    html.line("</table>").line("</section>");
  }

  /** Puts the parts of a large bay on pages of their own. What all of them show is in the first; the others refer to it. */
  private void parts() {
    String first = "";
    for (FloorDrawing part : FloorDrawing.parts(job, plan, bay, figures.measures())) {
      String svg = part.toSvg();
      int use = svg.indexOf("href=\"#") + "href=\"#".length();
      String whole = svg.substring(use, svg.indexOf('"', use));
      html.line(isLying(part) ? "<div class=\"lying\">" : "<div>").raw("<figure>");
      if (first.isEmpty()) {
        first = whole;
        html.raw(svg);
      } else {
        html.raw(svg.substring(0, svg.indexOf("<defs>")))
            .raw(svg.substring(svg.indexOf("</defs>") + "</defs>".length()).replace("#" + whole, "#" + first));
      }
      html.line("</figure>").line("</div>");
    }
  }

  /** Whether heading and first row of the cut card may find no room below the drawing. On the safe side; a Letter sheet is the lower one. */
  private static boolean startsApart(FloorDrawing drawing, List<CutLine> lines) {
    List<CutLine> first = lines.stream().takeWhile(line -> line.row() == lines.get(0).row()).toList();
    long row = ROW * groups(first).size() + DRAWN * first.stream().filter(BaySection::isDrawn).count();
    return !isLying(drawing) && drawing.paperHeight().toMillimetres() + HEADINGS + row > PAGE;
  }

  private static boolean isLying(FloorDrawing drawing) {
    return drawing.paperWidth().equals(FloorDrawing.LYING_WIDTH);
  }

  private void figure(FloorDrawing drawing) {
    html.line("<figure>").raw(drawing.toSvg()).line("</figure>");
  }

  private void row(List<CutLine> lines) {
    if (lines.isEmpty()) {
      return;
    }
    html.line("<tbody>");
    List<List<CutLine>> groups = groups(lines);
    long height = groups.size() + groups.stream().filter(group -> isDrawn(group.get(0))).count();
    int runs = lines.get(lines.size() - 1).piece().run();
    for (int i = 0; i < groups.size(); i++) {
      List<CutLine> group = groups.get(i);
      html.raw("<tr>");
      if (i == 0) {
        html.raw("<th scope=\"rowgroup\" rowspan=\"" + height + "\"><label><input type=\"checkbox\" aria-label=\"row "
            + lines.get(0).row() + " is laid\"/> " + lines.get(0).row() + "</label></th>");
      }
      boolean runStarts = runs > 1 && (i == 0 || group.get(0).piece().run() != groups.get(i - 1).get(0).piece().run());
      String run = runStarts ? "run " + group.get(0).piece().run() + ": " : "";
      if (group.get(0).isWholeBoard()) {
        wholeBoards(run, group);
      } else {
        sawn(run, group);
      }
      html.line("</tr>");
      if (isDrawn(group.get(0))) {
        drawn(group.get(0).cut().orElseThrow());
      }
    }
    html.line("</tbody>");
  }

  /** Whether a piece is drawn: one with a notch or a hole, not one that is no more than slanted or tapered. */
  private static boolean isDrawn(CutLine line) {
    boolean plain = line.shape().isEmpty() || line.shape().get().taper().isPresent() || line.shape().get().slant().isPresent();
    return line.cut().isPresent() && (!plain || line.isDrilled() || !line.piece().holes().isEmpty());
  }

  private void drawn(PieceCut cut) {
    html.raw("<tr><td colspan=\"6\" class=\"drawn\">").raw(NotchFigure.of(figures, cut)).raw("<ul>");
    cut.inWords(figures::plain).forEach(words -> html.element("li", words));
    for (ThinPart part : cut.thin()) {
      html.raw("<li><b>May break:</b> ").text(figures.inWords(part.inWords())).raw("</li>");
    }
    html.line("</ul></td></tr>");
  }

  /** Boards that follow each other in a run, whole or ripped alike, stand in one line. */
  private static List<List<CutLine>> groups(List<CutLine> lines) {
    List<List<CutLine>> groups = new ArrayList<>();
    for (CutLine line : lines) {
      List<CutLine> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      if (!last.isEmpty() && isAlike(last.get(0), line)) {
        last.add(line);
      } else {
        groups.add(new ArrayList<>(List.of(line)));
      }
    }
    return groups;
  }

  private static boolean isAlike(CutLine first, CutLine line) {
    boolean size = first.piece().run() == line.piece().run() && first.boardLength().equals(line.boardLength());
    return size && (first.isWholeBoard() && line.isWholeBoard() || isRipped(first) && isRipped(line)
        && first.width().equals(line.width()) && first.edge().equals(line.edge()) && first.rests().equals(line.rests()));
  }

  /** Whether a line is a new board that is ripped from end to end, with nothing kept of it. */
  private static boolean isRipped(CutLine line) {
    return line.piece().kind() == PieceKind.FULL && line.opens() && line.shape().isEmpty() && line.piece().holes().isEmpty()
        && !line.isDrilled() && line.length().equals(line.boardLength()) && line.rests().stream().allMatch(rest -> rest.keptFor().isEmpty());
  }

  private void wholeBoards(String run, List<CutLine> group) {
    html.element("td", run + (group.size() == 1 ? "1 whole board" : group.size() + " whole boards"))
        .element("td class=\"no\"", numbers(group)).element("td", figures.bare(group.get(0).length()))
        .element("td", "full").raw("<td colspan=\"2\">nothing to saw</td>");
  }

  /** The numbers of boards, those that follow each other as "12 to 15". */
  private static String numbers(List<CutLine> group) {
    List<String> parts = new ArrayList<>();
    for (int i = 0; i < group.size();) {
      int from = board(group.get(i));
      int to = from;
      for (i++; i < group.size() && board(group.get(i)) == to + 1; i++) {
        to++;
      }
      parts.add(to > from + 1 ? from + " to " + to : to > from ? from + ", " + to : Integer.toString(from));
    }
    return String.join(", ", parts);
  }

  private static int board(CutLine line) {
    return line.piece().from().board();
  }

  private void sawn(String run, List<CutLine> group) {
    CutLine line = group.get(0);
    boolean one = group.size() == 1;
    String number = number(line.piece().piece());
    html.raw("<td>").text(run + (one ? kind(line.piece().kind()) : group.size() + " whole lengths")).raw(" <small>")
        .text(one ? number : number + " to " + number(group.get(group.size() - 1).piece().piece())).raw("</small>");
    line.shape().map(this::shape).ifPresent(shape -> html.raw("<br/><em>").text(shape).raw("</em>"));
    if (!line.piece().holes().isEmpty() || line.isDrilled()) {
      html.raw("<br/><em>with a hole, see below</em>");
    }
    html.raw("</td>").element("td class=\"no\"", (line.opens() ? "new " : "rest of ") + numbers(group))
        .element("td class=\"key\"", figures.bare(line.length()))
        .element("td class=\"key\"", line.width().equals(line.boardWidth()) ? "full" : figures.bare(line.width()))
        .element("td", isAsKept(line) ? "nothing, it is as kept" : saw(line).isEmpty() && isDrawn(line) ? "to the drawing" : saw(line)).raw("<td>" + (one || line.rests().isEmpty() ? "" : "of each ")).raw(left(line)).raw("</td>");
  }

  private static String kind(PieceKind kind) {
    return switch (kind) {
      case START -> "start";
      case FULL -> "whole length";
      case END -> "end";
      case SINGLE -> "single";
    };
  }

  /** The number of a piece within its bay. */
  private String number(String piece) {
    return piece.startsWith(bay.bay() + ".") ? piece.substring(bay.bay().length() + 1) : piece;
  }

  private String shape(PieceShape shape) {
    if (shape.taper().isPresent()) {
      return "taper: " + figures.plain(shape.taper().get().get(0)) + " at the left, "
          + figures.plain(shape.taper().get().get(1)) + " at the right";
    }
    if (shape.slant().isPresent()) {
      return "slant: " + figures.plain(shape.slant().get().get(0)) + " near, "
          + figures.plain(shape.slant().get().get(1)) + " far";
    }
    return "to shape, see below";
  }

  /** Whether a piece is the last rest that was kept for it, just as it is. */
  private boolean isAsKept(CutLine line) {
    Rest rest = kept.get(line.piece().piece());
    return rest != null && !line.opens() && line.shape().isEmpty() && line.piece().holes().isEmpty()
        && !line.isDrilled() && rest.length().equals(line.length()) && rest.width().equals(line.width());
  }

  /** Which part of the board the piece is, and by that which of its ends and edges are sawn. */
  private static String saw(CutLine line) {
    String across = switch (line.end()) {
      case "left end" -> "left end, saw on right";
      case "right end" -> "right end, saw on left";
      case "middle" -> "middle, saw both ends";
      default -> "";
    };
    String along = switch (line.edge()) {
      case "near edge" -> "rip off the far edge";
      case "far edge" -> "rip off the near edge";
      case "neither edge" -> "rip off both edges";
      default -> "";
    };
    return across.isEmpty() || along.isEmpty() ? across + along : across + "; " + along;
  }

  /** The rests of a cut as markup, with what is to be written on them in bold. */
  private String left(CutLine line) {
    if (line.rests().isEmpty()) {
      return "nothing";
    }
    return line.rests().stream().map(rest -> rest(rest, line.boardWidth())).collect(Collectors.joining("; "));
  }

  private String rest(Rest rest, Length boardWidth) {
    String size = Html.escaped(rest.width().equals(boardWidth) ? figures.plain(rest.length())
        : figures.plain(rest.length()) + " × " + figures.plain(rest.width()));
    return rest.keptFor().isEmpty() ? size + " over"
        : size + ": keep, mark <b>" + Html.escaped(rest.keptFor().stream().map(this::number).collect(Collectors.joining(", "))) + "</b>";
  }
}
