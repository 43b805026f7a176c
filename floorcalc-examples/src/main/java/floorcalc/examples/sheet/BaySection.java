package floorcalc.examples.sheet;

import floorcalc.drawing.FloorDrawing;
import floorcalc.measure.Length;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.PieceKind;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The part of the sheet on one bay: its drawing and its cut card. */
final class BaySection {
  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;
  private final Bay bay;

  BaySection(Html html, Figures figures, FloorJob job, FloorPlan plan, Bay bay) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
    this.bay = bay;
  }

  void write(List<CutLine> lines) {
    String id = "s-" + bay.bay();
    html.raw("<section class=\"bay\" aria-labelledby=\"" + Html.escaped(id) + "\"><h2 id=\"" + Html.escaped(id) + "\">")
        .name(bay.room()).raw(" <span>").text("bay " + bay.bay()).line("</span></h2>");
    html.line("<figure>").raw(svg()).line("</figure>");
    html.raw("<table class=\"cut\">").raw("<caption>Cut card of ").text(bay.bay())
        .line(": row by row in laying order</caption>")
        .columns(figures.inches() ? "17 34 19 29 22 25 40" : "17 46 21 18 15 29 40")
        .heads(List.of("Row", "Piece", "Board", "Length", "Width", "Take from", "What is left"));
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

  /** The drawing without the head that only a file of its own needs. */
  private String svg() {
    String svg = FloorDrawing.of(job, plan, bay).toSvg();
    return svg.substring(svg.indexOf("<svg"));
  }

  private void row(List<CutLine> lines) {
    if (lines.isEmpty()) {
      return;
    }
    html.line("<tbody>");
    List<List<CutLine>> groups = groups(lines);
    long height = groups.size() + groups.stream().filter(group -> corners(group.get(0))).count();
    int runs = lines.get(lines.size() - 1).piece().run();
    for (int i = 0; i < groups.size(); i++) {
      List<CutLine> group = groups.get(i);
      html.raw("<tr>");
      if (i == 0) {
        html.raw("<th scope=\"rowgroup\" rowspan=\"" + height + "\"><span class=\"tick\" aria-hidden=\"true\">"
            + "</span> " + lines.get(0).row() + "</th>");
      }
      boolean runStarts = runs > 1 && (i == 0 || group.get(0).piece().run() != groups.get(i - 1).get(0).piece().run());
      String run = runStarts ? "run " + group.get(0).piece().run() + ": " : "";
      if (group.get(0).isWholeBoard()) {
        wholeBoards(run, group);
      } else {
        sawn(run, group.get(0));
      }
      html.line("</tr>");
      if (corners(group.get(0))) {
        html.raw("<tr><td colspan=\"6\"><em>").text(corners(group.get(0).shape().orElseThrow())).line("</em></td></tr>");
      }
    }
    html.line("</tbody>");
  }

  /** Whether a piece needs its corners listed. */
  private static boolean corners(CutLine line) {
    return line.shape().isPresent() && line.shape().get().taper().isEmpty() && line.shape().get().slant().isEmpty();
  }

  /** Whole boards that follow each other in a run stand in one line. */
  private static List<List<CutLine>> groups(List<CutLine> lines) {
    List<List<CutLine>> groups = new ArrayList<>();
    for (CutLine line : lines) {
      List<CutLine> last = groups.isEmpty() ? List.of() : groups.get(groups.size() - 1);
      if (!last.isEmpty() && line.isWholeBoard() && last.get(0).isWholeBoard()
          && last.get(0).piece().run() == line.piece().run() && last.get(0).boardLength().equals(line.boardLength())) {
        last.add(line);
      } else {
        groups.add(new ArrayList<>(List.of(line)));
      }
    }
    return groups;
  }

  private void wholeBoards(String run, List<CutLine> group) {
    String boards = group.stream().map(line -> Integer.toString(line.piece().from().board()))
        .collect(Collectors.joining(", "));
    html.element("td", run + (group.size() == 1 ? "1 whole board" : group.size() + " whole boards"))
        .element("td class=\"no\"", boards).element("td", figures.bare(group.get(0).length()))
        .element("td", "full").raw("<td colspan=\"2\">nothing to saw</td>");
  }

  private void sawn(String run, CutLine line) {
    html.raw("<td>").text(run + kind(line.piece().kind())).raw(" <small>").text(number(line.piece().piece()))
        .raw("</small>");
    line.shape().map(this::shape).ifPresent(shape -> html.raw("<br/><em>").text(shape).raw("</em>"));
    if (!line.piece().holes().isEmpty()) {
      html.raw("<br/><em>with a cut-out, see the drawing</em>");
    }
    html.raw("</td>").element("td class=\"no\"", (line.opens() ? "new " : "rest of ") + line.piece().from().board())
        .element("td class=\"key\"", figures.bare(line.length()))
        .element("td class=\"key\"", line.width().equals(line.boardWidth()) ? "full" : figures.bare(line.width()))
        .element("td", from(line)).element("td", left(line));
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

  private String corners(PieceShape shape) {
    return "corners from near left, along and across: " + shape.corners().stream()
        .map(corner -> "(" + figures.plain(corner.x()) + ", " + figures.plain(corner.y()) + ")")
        .collect(Collectors.joining(" "));
  }

  private static String from(CutLine line) {
    String end = line.end();
    return line.width().equals(line.boardWidth()) ? end
        : (end.equals("whole length") ? "" : end + ", ") + "keep " + line.edge();
  }

  private String left(CutLine line) {
    if (line.rests().isEmpty()) {
      return "nothing";
    }
    return line.rests().stream().map(rest -> rest(rest, line.boardWidth())).collect(Collectors.joining("; "));
  }

  private String rest(Rest rest, Length boardWidth) {
    String size = rest.width().equals(boardWidth) ? figures.plain(rest.length())
        : figures.plain(rest.length()) + " × " + figures.plain(rest.width());
    return rest.keptFor().isEmpty() ? size + " over"
        : size + " KEEP for " + rest.keptFor().stream().map(this::number).collect(Collectors.joining(", "));
  }
}
