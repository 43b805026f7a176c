package floorcalc.examples.sheet;

import floorcalc.drawing.FloorDrawing;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;

/** Drawings that show where the bays lie: of all rooms on one sheet, and of a room that has more than one bay. */
final class OverviewFigure {
  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;

  OverviewFigure(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
  }

  /** Draws all rooms, if they are measured in one frame. */
  void allRooms() {
    FloorDrawing.ofAllRooms(job, plan, figures.measures()).ifPresent(drawing -> figure("s-rooms", "Where the rooms and bays lie", "", drawing));
  }

  /** Draws a room with more than one bay. */
  void room(String name) {
    if (plan.bays().stream().filter(bay -> bay.room().equals(name)).count() > 1) {
      String id = "overview-" + plan.bays().stream().filter(bay -> bay.room().equals(name)).findFirst().orElseThrow().bay();
      figure(id, name, "its bays", FloorDrawing.ofRoom(job, plan, name, figures.measures()));
    }
  }

  private void figure(String id, String heading, String more, FloorDrawing drawing) {
    boolean lying = drawing.paperWidth().equals(FloorDrawing.LYING_WIDTH);
    html.raw("<section class=\"bay\" aria-labelledby=\"" + Html.escaped(id) + "\">").line(lying ? "<div class=\"lying\">" : "<div>")
        .raw("<h2 id=\"" + Html.escaped(id) + "\">").name(heading).raw(more.isEmpty() ? "" : " <span>" + Html.escaped(more) + "</span>")
        .line("</h2>").line("<figure>").raw(drawing.toSvg()).line("</figure>").line("</div>").line("</section>");
  }
}
