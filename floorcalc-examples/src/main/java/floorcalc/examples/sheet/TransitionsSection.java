package floorcalc.examples.sheet;

import floorcalc.finishing.DoorEdge;
import floorcalc.finishing.FloorHeights;
import floorcalc.finishing.Transitions;
import floorcalc.measure.Length;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.RoomBreak;
import floorcalc.transitions.Casing;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.DoorLeaf;
import floorcalc.transitions.Fall;
import floorcalc.transitions.HeightDifference;
import java.util.List;
import java.util.stream.Collectors;

/** The part of the sheet on doors and profiles: what is cut before a board is laid, and which bar goes where. */
final class TransitionsSection {
  private final Html html;
  private final Figures figures;
  private final FloorPlan plan;
  private final FloorHeights heights;
  private final Transitions edges;

  TransitionsSection(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.plan = plan;
    this.heights = FloorHeights.of(job);
    this.edges = Transitions.of(job, plan);
  }

  void write() {
    if (edges.doors().isEmpty() && plan.breaks().isEmpty()) {
      return;
    }
    html.line("<section aria-labelledby=\"s-edges\">").line("<h2 id=\"s-edges\">Doors and transitions</h2>");
    html.raw("<p>The floor stands ").text(figures.withUnit(heights.stack().total())).raw(" above the bare subfloor: ")
        .text(heights.stack().layers().stream().map(layer -> layer.name() + " (" + figures.withUnit(layer.thickness()) + ")")
            .collect(Collectors.joining(" + ")));
    if (!heights.notStated().isEmpty()) {
      html.raw(". <b>Not stated: ").text(String.join(", ", heights.notStated()))
          .raw("</b>; add its thickness to each height below, and take it off the space under doors");
    }
    html.line(".</p>");
    doors();
    breaks();
    html.line("</section>");
  }

  private void doors() {
    if (edges.doors().isEmpty()) {
      return;
    }
    html.line("<table class=\"edges\">").line("<caption>At doors</caption>").columns("34 22 17 28 33 28 38")
        .heads(List.of("Door", "Profile", "Length", "Beyond", "Casings", "Leaf", "Because")).line("<tbody>");
    for (DoorEdge edge : edges.doors()) {
      html.raw("<tr><th scope=\"row\">").name(edge.room()).raw(", ").name(edge.door().name());
      if (!edge.door().leadsTo().isEmpty()) {
        html.raw(" <small>to ").name(edge.door().leadsTo()).raw("</small>");
      }
      html.raw("</th>").element("td", profile(edge))
          .element("td", edge.profile().map(one -> figures.bare(one.length())).orElse(""))
          .element("td", beyond(edge.door(), edge.choice().difference()))
          .element("td", casing(edge)).raw(leafCell(edge))
          .element("td", edge.shared().isEmpty() || edge.profile().isPresent() ? figures.inWords(edge.choice().because())
              : "the profile at " + edge.shared()).line("</tr>");
    }
    html.line("</tbody>").line("</table>");
  }

  /** By the letter and number that drawings and the handover have, too. */
  private String profile(DoorEdge edge) {
    return edge.profile().map(this::named).orElseGet(() -> edges.doors().stream()
        .filter(other -> edge.shared().equals(other.room() + ", door " + other.door().name()))
        .flatMap(other -> other.profile().stream()).findFirst().map(one -> named(one) + ", shared").orElse("none"));
  }

  private String named(Profile profile) {
    return profile.letter() + (edges.profiles().indexOf(profile) + 1) + (profile.kind().equals("T") ? "" : " " + profile.kind());
  }

  private String beyond(Door door, HeightDifference difference) {
    String height = difference.fall() == Fall.LEVEL ? "level" : figures.withUnit(difference.size())
        + (difference.fall() == Fall.TO_BEYOND ? " lower: falls away" : " higher: falls to here");
    return door.beyond().finish().isBlank() ? height : door.beyond().finish() + ", " + height;
  }

  private String casing(DoorEdge edge) {
    CasingWork work = edge.casing();
    return switch (work.treatment()) {
      case UNDERCUT -> "cut " + figures.withUnit(work.height().orElse(Length.ZERO)) + " above the subfloor"
          + (edge.door().casing() == Casing.CUT ? "" : ", if they can be");
      case SEALED_GAP -> "not cut: keep the gap, seal it";
      case ASK_FIRST -> "FIRE DOOR: leave alone, ask";
    };
  }

  private String leafCell(DoorEdge edge) {
    if (edge.leaf().isEmpty()) {
      return "<td>not measured</td>";
    }
    DoorLeaf leaf = edge.leaf().get();
    String space = leaf.clearance().isNegative() ? "floor " + figures.withUnit(leaf.clearance().negated()) + " too high"
        : figures.withUnit(leaf.clearance()) + " left under it";
    return leaf.lacking().isZero() ? "<td>" + Html.escaped(space) + "</td>"
        : "<td class=\"no\">" + Html.escaped(space + ", " + figures.withUnit(leaf.lacking()) + " lacking") + "</td>";
  }

  private void breaks() {
    if (plan.breaks().isEmpty()) {
      return;
    }
    html.line("<table class=\"edges\">").line("<caption>At expansion breaks: T profiles</caption>").columns("28 16 18 14 31 31 62")
        .heads(List.of("Room", "Profile", "Length", "Gap", "From", "To", "Because")).line("<tbody>");
    for (int i = 0; i < plan.breaks().size(); i++) {
      RoomBreak one = plan.breaks().get(i);
      html.raw("<tr><th scope=\"row\">").name(one.room()).raw("</th>").element("td", named(edges.profiles().get(i))).element("td", figures.bare(one.line().length()))
          .element("td", figures.bare(one.gap())).element("td", figures.inWords(one.line().from().toString()))
          .element("td", figures.inWords(one.line().to().toString())).element("td", figures.inWords(one.line().because()))
          .line("</tr>");
    }
    html.line("</tbody>").line("</table>");
  }
}
