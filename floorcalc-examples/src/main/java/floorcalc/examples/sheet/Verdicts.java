package floorcalc.examples.sheet;

import floorcalc.plan.Check;
import floorcalc.plan.Compromise;
import floorcalc.plan.FloorPlan;
import floorcalc.working.Finding;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The second part of the sheet: checks, what was noticed, and rules that could not be kept. */
final class Verdicts {
  private static final int PLACES_LISTED = 12;

  private final Html html;
  private final Figures figures;
  private final FloorPlan plan;

  Verdicts(Html html, Figures figures, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.plan = plan;
  }

  static boolean isFailure(Finding finding) {
    return finding.severity() != Severity.NOTE;
  }

  void write() {
    html.line("<section aria-labelledby=\"s-checks\">").line("<h2 id=\"s-checks\">Checks and compromises</h2>");
    findings();
    compromises();
    checks();
    notes();
    html.line("</section>");
  }

  private void findings() {
    for (Finding finding : plan.findings()) {
      if (isFailure(finding) && !MeasuredSection.isHere(finding.code())) {
        html.raw("<p class=\"stop\"><b>" + (finding.severity() == Severity.SERIOUS ? "Do not lay it like this" : "Look here")
            + ".</b> ");
        html.text(figures.inWords(finding.message().contains(finding.where()) ? finding.message() : finding.where() + ": " + finding.message())).raw(" <small>").text(finding.source().toString()).line("</small></p>");
      }
    }
  }

  private void notes() {
    List<Finding> notes = plan.findings().stream().filter(finding -> !isFailure(finding) && !MeasuredSection.isHere(finding.code())).toList();
    if (notes.isEmpty()) {
      return;
    }
    html.raw("<div class=\"open\"><p><b>Good to know:</b></p><ul>");
    for (Finding note : notes) {
      html.raw("<li>").text(figures.inWords(note.where().isEmpty() ? note.message() : note.where() + ": " + note.message()))
          .raw(" <small>").text(note.source().toString()).raw("</small></li>");
    }
    html.line("</ul></div>");
  }

  private void checks() {
    html.line("<table>").line("<caption>Checks</caption>").columns("20 52 38 34 46")
        .heads(List.of("Result", "Check", "Found", "Limit", "Whose limit"));
    html.line("<tbody>");
    for (Check check : ofTheFloor()) {
      if (check.outcome() != Outcome.NOT_MEASURED) {
        boolean met = check.outcome() == Outcome.MET;
        html.raw(met ? "<tr><td>met</td>" : "<tr><td class=\"no\">NOT MET</td>")
            .element("th scope=\"row\"", check.check() + (check.advice().isEmpty() ? "" : ": " + check.advice()))
            .element("td", figures.inText(check.found())).element("td", figures.inText(check.limit())).element("td class=\"source\"", check.source().toString())
            .line("</tr>");
      }
    }
    html.line("</tbody>").line("</table>");
    open();
  }

  /** Checks of the laid floor; those of the rooms have a section of their own. */
  private List<Check> ofTheFloor() {
    return plan.checks().stream().filter(check -> check.room().isEmpty()).toList();
  }

  /** What nobody has measured: it is never a pass, so it stands here by name. */
  private void open() {
    Map<String, List<String>> byLimit = new LinkedHashMap<>();
    for (Check check : ofTheFloor()) {
      if (check.outcome() == Outcome.NOT_MEASURED) {
        byLimit.computeIfAbsent(check.limit(), none -> new ArrayList<>())
            .add(check.check() + (check.found().isEmpty() ? "" : ": " + check.found())
                + (check.advice().isEmpty() ? "" : "; " + check.advice()));
      }
    }
    byLimit.forEach((limit, found) -> {
      html.raw("<div class=\"open\"><p><b>Open:</b> ").text(limit).raw(".</p><ul>");
      found.forEach(reading -> html.element("li", reading));
      html.line("</ul></div>");
    });
  }

  private void compromises() {
    if (plan.compromises().isEmpty()) {
      html.line("<p>No compromise: the narrowest row, the shortest end piece and the joint offset are kept everywhere.</p>");
      return;
    }
    Map<List<Object>, List<Compromise>> groups = new LinkedHashMap<>();
    for (Compromise compromise : plan.compromises()) {
      groups.computeIfAbsent(List.of(compromise.rule(), compromise.required(), compromise.found(), compromise.because()),
          none -> new ArrayList<>()).add(compromise);
    }
    html.line("<table>").line("<caption>Compromises: rules that this floor cannot keep everywhere</caption>")
        .columns("40 24 24 46 52").heads(List.of("Rule", "Asked for", "Has", "Where", "Because"));
    html.line("<tbody>");
    for (List<Compromise> group : groups.values()) {
      Compromise first = group.get(0);
      html.raw("<tr>").element("th scope=\"row\"", words(first.rule())).element("td", figures.bare(first.required()))
          .element("td", figures.bare(first.found())).element("td", places(group)).element("td", first.because())
          .line("</tr>");
    }
    html.line("</tbody>").line("</table>");
  }

  private static String places(List<Compromise> group) {
    List<String> places = group.stream().map(Compromise::where).toList();
    return places.size() <= PLACES_LISTED ? String.join(", ", places)
        : String.join(", ", places.subList(0, PLACES_LISTED)) + " and " + (places.size() - PLACES_LISTED)
            + " more places, all in plan.json";
  }

  static String words(String rule) {
    return switch (rule) {
      case "minimumRowWidth" -> "narrowest row";
      case "minimumEndPiece" -> "shortest start or end piece";
      case "minimumJointOffset" -> "joint offset";
      default -> rule;
    };
  }
}
