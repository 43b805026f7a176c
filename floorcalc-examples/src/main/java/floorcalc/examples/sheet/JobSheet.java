package floorcalc.examples.sheet;

import floorcalc.examples.job.JobFile;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * The printable job sheet: one HTML file that needs nothing beside it, for A4 and Letter, black on white. It says first
 * what to bring, what to beware of and what to order, then whether the site is fit and what was not kept, then piece by piece
 * what to saw, then the records: a checklist to fill in and a handover to sign. How the figures came about stands last, on pages of its own
 * that need not be printed.
 */
public final class JobSheet {
  private final FloorJob job;
  private final FloorPlan plan;
  private final JobFile file;
  private final Figures figures;
  private final Html html = new Html();
  private final Html top = new Html();

  private JobSheet(JobFile file, FloorPlan plan) {
    this.job = file.job();
    this.plan = plan;
    this.file = file;
    this.figures = new Figures(file.tape());
  }

  /**
   * Returns the sheet of a plan.
   *
   * @param file the job that was planned, not null
   * @param plan its plan, not null
   * @return the bytes of the HTML file, not null
   */
  public static byte[] of(JobFile file, FloorPlan plan) {
    return new JobSheet(file, plan).write().getBytes(StandardCharsets.UTF_8);
  }

  private String write() {
    new Glance(html, figures, job, plan).write();
    OverviewFigure overview = new OverviewFigure(html, figures, job, plan);
    cautions();
    overview.allRooms();
    OrderSection order = new OrderSection(html, figures, job.board(), plan);
    order.orderList();
    order.ledger();
    new SiteSection(html, figures, job, plan).write();
    new MeasuredSection(html, file, plan).write();
    new Verdicts(html, figures, plan).write();
    new TransitionsSection(html, figures, job, plan).write();
    CutCard card = CutCard.of(job, plan);
    Map<String, Rest> kept = new HashMap<>();
    card.lines().forEach(line -> line.rests().forEach(rest -> rest.keptFor().forEach(piece -> kept.put(piece, rest))));
    String room = "";
    for (int i = 0; i < plan.bays().size(); i++) {
      Bay bay = plan.bays().get(i);
      if (!bay.room().equals(room)) {
        overview.room(bay.room());
        room = bay.room();
      }
      new BaySection(html, figures, job, plan, bay, kept).write(card.linesOf(bay), PageHeads.page(i));
    }
    new ChecklistSection(html, figures, job, plan).write();
    new HandoverSection(html, figures, job, plan).write();
    new WorkingSection(html, plan).write();
    html.line("</main>").line("</body>").line("</html>");
    head(Contents.of(html.toString()));
    return top.toString() + html;
  }

  private void head(String contents) {
    top.line("<!DOCTYPE html>").line("<html lang=\"en\">").line("<head>").line("<meta charset=\"utf-8\"/>")
        .line("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\"/>")
        .line("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>")
        .element("title", "Job sheet: " + plan.title()).line("").line("<style>").raw(SheetStyle.CSS).raw(PageHeads.of(plan)).line("</style>")
        .line("</head>").line("<body>").raw(skip()).line("<main>").raw("<h1><span>Job sheet</span> ").name(plan.title()).line("</h1>");
    top.line("<p class=\"lead\">" + (figures.inches() ? "Lengths in feet and inches to 1/16, millimetres in brackets" : "Lengths in millimetres")
        + ". <b>Near</b> is towards the starting wall, <b>far</b> away from it; <b>left</b> and <b>right</b> are yours when"
        + " the starting wall is behind you. Read the <a href=\"#s-cautions\">cautions</a> before you saw; fill in the"
        + " <a href=\"#s-checklist\">checklist</a>; the <a href=\"#s-handover\">handover</a> stays with the floor. Each"
        + " printed page of a cut card has its room and bay at the top right. The <a href=\"#s-working\">working</a> of the figures stands"
        + " last and is printed only if it is opened on the screen before.</p>").raw(contents);
  }

  private String skip() {
    return plan.bays().isEmpty() ? "" : "<a class=\"skip\" href=\"#s-" + Html.escaped(plan.bays().get(0).bay()) + "\">Skip to the first cut card</a>\n";
  }

  private void cautions() {
    html.line("<section class=\"keep\" aria-labelledby=\"s-cautions\">").line("<h2 id=\"s-cautions\">Cautions</h2>").line("<ul class=\"lead\">");
    plan.cautions().forEach(caution -> html.raw("<li>").text(caution).line("</li>"));
    html.line("</ul>").line("</section>");
  }
}
