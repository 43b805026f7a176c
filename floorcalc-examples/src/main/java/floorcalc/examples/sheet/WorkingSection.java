package floorcalc.examples.sheet;

import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.MaterialLine;
import floorcalc.rules.RuleValue;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import floorcalc.working.Worked;
import java.math.BigDecimal;
import java.util.List;

/** The parts of the sheet that say how the figures came about: the rules and the working. */
final class WorkingSection {
  private final Html html;
  private final FloorJob job;
  private final FloorPlan plan;

  WorkingSection(Html html, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.job = job;
    this.plan = plan;
  }

  void write() {
    html.line("<section aria-labelledby=\"s-rules\">").line("<h2 id=\"s-rules\">Rules used</h2>").line("<table>")
        .raw("<caption>").text("Rules, set “" + job.rules().name() + "”").line("</caption>")
        .heads(List.of("Rule", "Value", "Whose rule"));
    html.line("<tbody>");
    for (RuleValue<?> rule : job.rules().all()) {
      html.raw("<tr>").element("th scope=\"row\"", rule.key().meaning()).element("td", text(rule.value()))
          .element("td", rule.source().toString()).line("</tr>");
    }
    html.line("</tbody>").line("</table>").line("</section>");
    html.line("<section class=\"working\" aria-labelledby=\"s-working\">").line("<h2 id=\"s-working\">Working</h2>");
    for (Worked worked : plan.working()) {
      part(worked.about(), worked.steps());
    }
    for (MaterialLine line : plan.materials()) {
      if (!line.working().isEmpty()) {
        part("Order: " + line.item(), line.working());
      }
    }
    html.line("</section>");
  }

  private void part(String about, List<Step> steps) {
    html.element("h3", about).line("");
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
  }

  private static String text(Object value) {
    return value instanceof BigDecimal number ? number.toPlainString() : value.toString();
  }
}
