package floorcalc.examples.sheet;

import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationLimit;
import floorcalc.deviations.DeviationSet;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.outline.Extent;
import floorcalc.plan.Bay;
import floorcalc.plan.Compromise;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.rules.RuleValue;
import floorcalc.working.Standing;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The record that stays with the floor: what was laid, by which readings and whose rules, who decided what, what was not
 * kept, how to look after it, and who signed.
 */
final class HandoverSection {
  private static final List<String> CARE = List.of(
      "Grit scratches: mats inside and outside the entrance, felt under the feet of furniture, soft wide castors.",
      "Sweep, or vacuum with a soft brush. Wipe with a cloth that is wrung out well; never leave water standing, never steam.",
      "Wipe up what is spilt at once, also beside pots and radiators. Rugs that let no air through keep damp below them.",
      "Wood takes up and gives off moisture with the air. Keep the air of the rooms as the maker of the boards asks, all year:"
          + " fine gaps in the dry season close again, gaps that stay or boards that lift want looking at soon.",
      "The floor moves as one piece in each bay. Fix nothing through it, stand no fitted furniture on it that was not planned,"
          + " and fill neither the gap at the walls nor the breaks.",
      "Light changes the colour of wood, most in the first months: move rugs now and then.",
      "Over floor heating warm up and cool down slowly, and keep the surface within the maker's limit.",
      "Oiled, waxed and lacquered boards want different means: use what the maker of the boards or of their surface names, and"
          + " try it first where it does not show.");

  /** Kinds that are called profile. */
  private static final List<String> LONG_NAMED = List.of("T", "end");

  private static final List<Deviation> AT_HANDOVER = List.of(Deviation.JOINT, Deviation.LIPPING, Deviation.CUPPING);

  private final Html html;
  private final Figures figures;
  private final FloorJob job;
  private final FloorPlan plan;

  HandoverSection(Html html, Figures figures, FloorJob job, FloorPlan plan) {
    this.html = html;
    this.figures = figures;
    this.job = job;
    this.plan = plan;
  }

  void write() {
    html.line("<section class=\"record handover\" aria-labelledby=\"s-handover\">").line("<h2 id=\"s-handover\">Handover</h2>");
    html.raw("<p>This page stays with the floor “").text(plan.title()).line("”. Keep it with the makers' papers: what was"
        + " measured, whose rules were followed and who decided otherwise is asked for when something moves.</p>");
    floor();
    new ReadingsTable(html, figures, plan).write("Readings that the floor was planned with");
    rules();
    compromises();
    breaks();
    permitted();
    kept();
    care();
    sign();
    html.line("</section>");
  }

  private void floor() {
    html.line("<table>").line("<caption>The floor</caption>").columns("40 40 34 36 36")
        .heads(List.of("Room", "Bay", "Area", "Along the boards", "Across them")).line("<tbody>");
    Area sum = Area.ZERO;
    for (Bay bay : plan.bays()) {
      Extent extent = bay.direction().toFrame(bay.laid()).extent();
      sum = sum.plus(bay.laid().area());
      html.raw("<tr><th scope=\"row\">").name(bay.room()).raw("</th>").element("td", bay.bay())
          .element("td", figures.area(bay.laid().area())).element("td", figures.bare(extent.width()))
          .element("td", figures.bare(extent.height())).line("</tr>");
    }
    html.line("</tbody>").raw("<tfoot><tr><th scope=\"row\">together</th><td></td>").element("td", figures.area(sum))
        .line("<td></td><td></td></tr></tfoot>").line("</table>");
    html.raw("<p>Boards: ").text(job.board().construction().name().toLowerCase(Locale.ROOT) + ", "
        + job.board().species().map(species -> species + ", ").orElse("") + figures.withUnit(job.board().coverWidth()) + " cover width, "
        + figures.withUnit(job.board().thickness()) + " thick.").line(" Product and batch: ______________________________</p>");
  }

  /** All rules with their sources; where the job differs from its set, what the set says, and a line for who decided. */
  private void rules() {
    Optional<LayingRules> set = RuleSet.all().stream().filter(one -> one.name().equals(job.rules().name()) && !one.dependsOnRoom())
        .findFirst().map(one -> one.forBoard(job.board().thickness(), job.board().coverWidth()));
    html.line("<section aria-labelledby=\"s-rules\">").line("<h3 id=\"s-rules\">Rules used</h3>").line("<table>")
        .raw("<caption>").text("Rules, set “" + job.rules().name() + "”").line("</caption>")
        .columns("70 28 50 38").heads(List.of("Rule", "Value", "Whose rule", "Instead of; decided by"));
    html.line("<tbody>");
    for (RuleValue<?> rule : job.rules().all()) {
      html.raw("<tr>").element("th scope=\"row\"", rule.key().meaning()).element("td", value(rule.value()))
          .element("td", rule.source().toString());
      if (rule.source().standing() == Standing.GIVEN) {
        html.raw("<td>").text(set.map(own -> instead(own.get(rule.key()), rule)).orElse("")).raw("<span class=\"line\"></span></td>");
      } else {
        html.raw("<td></td>");
      }
      html.line("</tr>");
    }
    html.line("</tbody>").line("</table>").line("</section>");
  }

  private String instead(RuleValue<?> own, RuleValue<?> given) {
    return own.value().equals(given.value()) ? "as the set has it" : value(own.value());
  }

  private String value(Object value) {
    return value instanceof Length length ? figures.withUnit(length) : WorkingSection.text(value);
  }

  private void compromises() {
    html.line("<h3>Compromises</h3>");
    if (plan.compromises().isEmpty()) {
      html.line("<p>None: the plan keeps its rules everywhere.</p>");
      return;
    }
    Map<List<String>, Integer> alike = new LinkedHashMap<>();
    for (Compromise one : plan.compromises()) {
      alike.merge(List.of(Verdicts.words(one.rule()), figures.bare(one.required()), figures.bare(one.found()), one.because()), 1, Integer::sum);
    }
    html.line("<table class=\"fill\">").line("<caption>What was not kept, and who accepted it</caption>").columns("40 22 22 18 48 36")
        .heads(List.of("Rule", "Asked for", "Has", "Places", "Because", "Accepted by, date")).line("<tbody>");
    alike.forEach((one, places) -> html.raw("<tr>").element("th scope=\"row\"", one.get(0)).element("td", one.get(1))
        .element("td", one.get(2)).element("td", places.toString()).element("td", one.get(3)).line("<td class=\"blank\"></td></tr>"));
    html.line("</tbody>").line("</table>");
  }

  private void breaks() {
    html.line("<h3>Breaks and profiles</h3>");
    if (plan.profiles().isEmpty()) {
      html.line("<p>None planned.</p>");
      return;
    }
    html.line("<ul>");
    for (int i = 0; i < plan.profiles().size(); i++) {
      Profile profile = plan.profiles().get(i);
      html.raw("<li>").text(profile.letter() + (i + 1) + ", " + profile.kind() + (LONG_NAMED.contains(profile.kind()) ? " profile, " : ", ") + figures.withUnit(profile.length()) + ": "
          + profile.because()).line("</li>");
    }
    html.line("</ul>").line("<p>Each lies over a gap that the floor needs: do not fill it, and put the profile back after a repair.</p>");
  }

  /** What published sources let a laid floor of such boards deviate, with a column for what was measured. */
  private void permitted() {
    html.line("<section aria-labelledby=\"s-permitted\">").line("<h3 id=\"s-permitted\">What the laid floor may deviate</h3>")
        .line("<p>Published limits differ; the contract says which holds. Measure together, in the air that the floor is used in.</p>")
        .line("<table class=\"fill\">").line("<caption>Limits of a laid floor, and what was measured</caption>").columns("44 56 50 36")
        .heads(List.of("What", "Limit", "Whose limit", "Measured; date"))
        .line("<tbody>");
    for (DeviationSet set : DeviationSet.ofLaid(job.board().construction())) {
      for (DeviationLimit limit : set.limits()) {
        if (AT_HANDOVER.contains(limit.deviation()) && limit.widths().contains(job.board().coverWidth())) {
          html.raw("<tr>").element("th scope=\"row\"", limit.deviation().words()).element("td", figures.inWords(limit.at(job.board().coverWidth())))
              .element("td", limit.source().toString()).line("<td class=\"blank\"></td></tr>");
        }
      }
    }
    html.line("</tbody>").line("</table>").line("</section>");
  }

  private void kept() {
    int over = plan.order().boardsInPacks() - plan.order().boardsUsed() - plan.order().spare();
    html.line("<h3>Boards kept back</h3>").raw("<p>").text(plan.order().spare() + (plan.order().spare() == 1 ? " board" : " boards")
        + " of the same batch for repairs" + (over == 0 ? "" : ", and " + over + " over from the packs") + ".")
        .line(" Kept flat and dry at: ______________________________</p>");
  }

  private void care() {
    html.line("<section class=\"keep\" aria-labelledby=\"s-care\">").line("<h3 id=\"s-care\">Cleaning and care</h3>")
        .line("<p>Common practice, no source; what the maker of the boards says comes first.</p>").line("<ul>");
    CARE.forEach(line -> html.element("li", line).line(""));
    html.line("</ul>").line("</section>");
  }

  private void sign() {
    html.line("<section class=\"sign\" aria-labelledby=\"s-sign\">").line("<h3 id=\"s-sign\">Signed off</h3>")
        .line("<table>").line("<caption>Who did each step</caption>").columns("78 40 28 40").heads(List.of("Step", "Name", "Date", "Signature")).line("<tbody>");
    for (String step : new String[] {"Sizes checked on site", "Subfloor dry, flat and clean; readings written down",
        "Packs of one batch, boards looked over", "First row straight, gap kept everywhere", "Compromises and own rules agreed",
        "Floor handed over with the makers' papers, by the layer", "Floor taken over, by the customer"}) {
      html.line("<tr><th scope=\"row\">" + step + "</th><td></td><td></td><td></td></tr>");
    }
    html.line("</tbody>").line("</table>").line("</section>");
  }
}
