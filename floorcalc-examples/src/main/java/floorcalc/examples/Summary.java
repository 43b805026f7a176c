package floorcalc.examples;

import floorcalc.materials.WasteLedger;
import floorcalc.measure.Area;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Order;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import java.util.List;

/** The few lines that are printed for each job. */
final class Summary {
  private final Console console;

  Summary(Console console) {
    this.console = console;
  }

  void print(String typed, FloorPlan plan, Results results) {
    Order order = plan.order();
    WasteLedger ledger = plan.ledger();
    long rooms = plan.bays().stream().map(Bay::room).distinct().count();
    console.say(plan.title() + " (" + typed + ")");
    line("floor", area(plan.bays().stream().map(bay -> bay.laid().area()).reduce(Area.ZERO, Area::plus)) + " laid in "
        + counted(rooms, "room") + ", " + counted(plan.bays().size(), "bay"));
    line("boards", order.boardsUsed() + (order.provenFewest() ? ", proven fewest for these rows and rules"
        : ", at least " + order.boardsAtLeast() + " for these rows and rules"));
    line("packs", order.packs() + ", " + counted(order.boardsInPacks(), "board") + ": " + order.spare() + " to keep, "
        + (order.boardsInPacks() - order.boardsUsed() - order.spare()) + " over" + (order.provenFewestPacks() ? ", proven fewest packs"
        : order.packsAtLeast() > 0 ? ", at least " + counted(order.packsAtLeast(), "pack") : ""));
    plan.figures().ifPresent(figures -> {
      line("joints", figures.smallestOffset().map(offset -> "at least " + CompareCommand.millimetres(offset) + " apart, ")
          .orElse("none in rows that touch, ") + counted(figures.patterns(), "H or stair pattern"));
      line("sawing", counted(figures.cuts(), "cut") + ", longest leftover "
          + CompareCommand.millimetres(figures.longestLeftover()));
    });
    line("not laid", area(ledger.bought().minus(ledger.laid())) + ": trimmed to shape " + area(ledger.trimmedToShape())
        + ", saw dust " + area(ledger.sawKerf()) + ", offcuts "
        + area(ledger.usableOffcuts().plus(ledger.shortOffcuts())) + ", whole boards "
        + area(ledger.spare().plus(ledger.packRounding())));
    line("compromises", plan.compromises().isEmpty() ? "none" : Integer.toString(plan.compromises().size()));
    long failed = plan.checks().stream().filter(check -> check.outcome() == Outcome.NOT_MET).count();
    long open = plan.checks().stream().filter(check -> check.outcome() == Outcome.NOT_MEASURED).count();
    line("checks", plan.checks().size() - failed - open + " met, " + failed + " not met, " + open + " open");
    plan.findings().stream().filter(finding -> finding.severity() != Severity.NOTE)
        .forEach(finding -> line("look here", (finding.message().contains(finding.where()) ? "" : finding.where() + ": ")
            + finding.message()));
    line("job sheet", results.folder().resolve("job-sheet.html").toString());
    List<String> strangers = results.strangers();
    if (!strangers.isEmpty()) {
      line("beware", "not of this plan, left by an earlier run: " + String.join(", ", strangers));
    }
  }

  private void line(String label, String text) {
    console.say("  " + label + " ".repeat(Math.max(1, 13 - label.length())) + text);
  }

  private static String area(Area area) {
    return area.toSquareMetreString(2) + " m²";
  }

  private static String counted(long count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
