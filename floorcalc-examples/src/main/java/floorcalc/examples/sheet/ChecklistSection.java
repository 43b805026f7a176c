package floorcalc.examples.sheet;

import floorcalc.measure.Length;
import floorcalc.outline.Extent;
import floorcalc.outline.Ring;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;

/**
 * The installation checklist: what to look at and to measure before packs are opened, before laying, while laying and at the
 * end, with what the job and the plan say and blanks for what is found. Common practice, no source.
 */
final class ChecklistSection {
  private static final int CONTROL_ROWS = 6;
  /** Ten boards laid together tell the laid pitch to a tenth of what a tape can read. */
  private static final int STACK = 10;

  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;

  ChecklistSection(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
  }

  void write() {
    html.line("<section class=\"record checklist\" aria-labelledby=\"s-checklist\">").line("<h2 id=\"s-checklist\">Checklist</h2>")
        .line("<p>Fill it in as you go: what was found counts, not what was planned. Common practice, no source; the makers'"
            + " instructions come first.</p>");
    beforeOpening();
    beforeLaying();
    whileLaying();
    atTheEnd();
    html.line("</section>");
  }

  private void beforeOpening() {
    html.line("<h3>Before a pack is opened</h3>");
    new DayReadings(html, figures, job, plan).write();
    sizes();
    List<String> items = new ArrayList<>(List.of(
        "Packs delivered: ______ of " + plan.order().packs() + "; all of one batch; batch number: ____________",
        "Packs undamaged, dry, stacked flat and closed in the room where they will be laid; since: ____________",
        "Boards looked over in daylight; faulty ones set aside, not laid: ______",
        "Doors, windows, plaster and wet trades finished; water pipes tested",
        "Who knows where cables, pipes and heating run in the subfloor: ____________"));
    items.add("Floor heating, where there is any: run up and down as its maker says, record handed over by: ____________");
    list(items);
  }

  private void sizes() {
    html.line("<table class=\"fill\">").line("<caption>Sizes: measured again before the first cut</caption>")
        .columns("46 52 44 44").heads(List.of("Room", "Planned with", "Measured", "By, date")).line("<tbody>");
    for (Room room : job.rooms()) {
      Extent extent = room.outline().extent();
      html.raw("<tr><th scope=\"row\">").name(room.name()).raw("</th>").element("td",
          figures.plain(extent.width()) + " × " + figures.plain(extent.height()) + " over all" + diagonals(room.outline().shell()))
          .raw(blank()).raw(blank()).line("</tr>");
    }
    html.line("</tbody>").line("</table>");
  }

  private String diagonals(Ring shell) {
    return shell.size() != 4 ? "" : "; diagonals " + figures.plain(diagonal(shell, 0)) + " and " + figures.plain(diagonal(shell, 1));
  }

  private static Length diagonal(Ring shell, int from) {
    return Ring.of(shell.corners().get(from), shell.corners().get(from + 2), shell.corners().get(from + 1)).wallLength(0);
  }

  private void beforeLaying() {
    html.line("<h3>Before laying</h3>");
    Length pitch = job.board().laidPitch();
    List<String> items = new ArrayList<>(List.of(
        "Subfloor swept and vacuumed; high spots ground, low spots filled, filler dry",
        "Underlay and moisture barrier as the makers say; seams closed: ____________",
        STACK + " boards pushed together measure ____________ (planned " + figures.withUnit(pitch.multipliedBy(STACK)) + "); if not, plan again",
        "Starting line straight to 1 mm over its whole length, and square to what is seen first",
        "Spacers of " + figures.withUnit(job.rules().value(LayingRules.EXPANSION_GAP)) + " at everything fixed"));
    for (Bay bay : plan.bays()) {
      if (!bay.rows().isEmpty()) {
        items.add(bay.bay() + ": row 1 shows " + figures.withUnit(bay.rows().get(0).coverWidth()) + ", row " + bay.rows().size()
            + " " + figures.withUnit(bay.rows().get(bay.rows().size() - 1).coverWidth()) + " at the widest; found: ____________");
      }
    }
    if (!plan.profiles().isEmpty()) {
      items.add("Breaks and profiles marked on the subfloor: " + String.join(", ", labels()));
    }
    if (job.rooms().stream().anyMatch(room -> !room.doors().isEmpty())) {
      items.add("Doors open over the finished floor; casings cut where they may be; fire doors left alone and asked about");
    }
    list(items);
  }

  private List<String> labels() {
    List<String> labels = new ArrayList<>();
    for (int i = 0; i < plan.profiles().size(); i++) {
      Profile profile = plan.profiles().get(i);
      labels.add(profile.letter() + (i + 1));
    }
    return labels;
  }

  private void whileLaying() {
    html.line("<h3>While laying</h3>");
    list(List.of("Gap clear on every side, at each column, hearth, frame and pipe: no glue, filler, rubble or spacer left in it",
        "Joints tight; end joints as the cut card says; each board looked at again before it goes down",
        "Breaks straight and empty; nothing screwed, nailed or glued through the boards",
        "Board put down other than the card says (row and piece, why): ____________________________________"));
    html.line("<table class=\"fill\">").line("<caption>Drift: from the far edge of row 1 to the far edge of a later row</caption>")
        .columns("40 26 48 36 36").heads(List.of("Bay", "Row", "Planned", "At the left", "At the right")).line("<tbody>");
    for (Bay bay : plan.bays()) {
      for (int row : controlRows(bay.rows().size())) {
        html.raw("<tr>").element("th scope=\"row\"", bay.bay()).element("td", Integer.toString(row))
            .element("td", figures.bare(job.board().laidPitch().multipliedBy(row - 1))).raw(blank()).raw(blank()).line("</tr>");
      }
    }
    html.line("</tbody>").line("</table>");
  }

  /** Every fifth or tenth row and so on, so that there are at most six, and the last row but one, which is still whole. */
  static List<Integer> controlRows(int rows) {
    List<Integer> found = new ArrayList<>();
    int step = 5 * Math.max(1, (rows + 5 * CONTROL_ROWS - 1) / (5 * CONTROL_ROWS));
    for (int row = step; row < rows - 1; row += step) {
      found.add(row);
    }
    if (rows > 2) {
      found.add(rows - 1);
    }
    return found;
  }

  private void atTheEnd() {
    html.line("<h3>At the end</h3>");
    List<String> items = new ArrayList<>(List.of(
        "Spacers out; gap free all round, also behind radiators, in door openings and under casings",
        "Skirting and quadrants fixed to the wall, not to the floor; profiles fixed to the subfloor, not to the boards",
        "Nothing heavy or fixed stands on the floor that was not planned (islands, fitted cupboards, door stops)",
        "Doors open and close; floors beyond met as planned",
        "Floor level and quiet underfoot; faults that stay, with their place: ____________________________________",
        "Boards kept back: ______ (planned " + plan.order().spare() + "); stored at: ____________",
        "Air on the day: ______ °C, ______ % relative humidity; floor protected until handover"));
    list(items);
  }

  private void list(List<String> items) {
    html.line("<ul class=\"ticks\">");
    items.forEach(item -> html.raw("<li><label><input type=\"checkbox\"/> <span>").text(item).line("</span></label></li>"));
    html.line("</ul>");
  }

  private static String blank() {
    return "<td class=\"blank\"></td>";
  }
}
