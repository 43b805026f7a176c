package floorcalc.examples.sheet;

import floorcalc.materials.OrderLine;
import floorcalc.measure.Area;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import floorcalc.working.Worked;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The part of the sheet that says how the figures came about. */
final class WorkingSection {
  /** A square millimetre. */
  private static final int AREA_DECIMALS = 6;

  private final Html html;
  private final FloorPlan plan;

  WorkingSection(Html html, FloorPlan plan) {
    this.html = html;
    this.plan = plan;
  }

  void write() {
    html.line("<section class=\"working\" aria-labelledby=\"s-working\">").line("<h2 id=\"s-working\">Working</h2>").line("<details>")
        .line("<summary>Open to see, or to print, how each figure came about</summary>").line("<p>Lengths are exact; areas are shown to the square millimetre.</p>");
    Set<Step> shown = new HashSet<>();
    for (Worked worked : plan.working()) {
      part(worked.about(), worked.steps());
      shown.addAll(worked.steps());
    }
    for (OrderLine line : plan.materials()) {
      part("order: " + line.item(), line.working().stream().filter(step -> !shown.contains(step)).toList());
    }
    html.line("</details>").line("</section>");
  }

  private void part(String about, List<Step> steps) {
    if (steps.isEmpty()) {
      return;
    }
    html.element("h3", about).line("").line("<div class=\"steps\">");
    for (Step step : steps) {
      html.raw("<div class=\"step\"><p>").text(step.question()).raw("</p><p><code>").text(step.formula())
          .raw("</code></p><ul>");
      for (Term term : step.terms()) {
        html.raw("<li><code>").text(term.symbol() + " = " + text(term.value())).raw("</code> ").text(term.meaning());
        if (term.source().standing() != Standing.GIVEN && term.source().standing() != Standing.DEFINITION) {
          html.raw(" <small>").text(term.source().toString()).raw("</small>");
        }
        html.raw("</li>");
      }
      html.raw("</ul><p><code><b>").text("= " + text(step.result())).raw("</b></code> <small>")
          .text(step.source().toString()).line("</small></p></div>");
    }
    html.line("</div>");
  }

  static String text(Object value) {
    if (value instanceof Area area) {
      return new BigDecimal(area.toSquareMetreString(AREA_DECIMALS)).stripTrailingZeros().toPlainString() + " m²";
    }
    return value instanceof BigDecimal number ? number.toPlainString() : value.toString();
  }
}
