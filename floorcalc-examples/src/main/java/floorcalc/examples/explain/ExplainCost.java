package floorcalc.examples.explain;

import floorcalc.materials.CostSheet;
import floorcalc.materials.OrderLine;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows what the lines of an order cost. */
@Command(name = "cost", mixinStandardHelpOptions = true,
    description = "What the lines of an order cost: exact lines, a total for each currency, rounded once at the end.")
final class ExplainCost extends Explaining {
  private static final Pattern LINE = Pattern.compile(
      "([0-9]{1,9}(?:\\.[0-9]{1,9})?)\\s*x\\s*([0-9]{1,12}(?:\\.[0-9]{1,6})?)\\s*([A-Z]{3})\\s*,\\s*(\\S.*)");

  @Option(names = "--line", required = true, paramLabel = "LINE",
      description = "A line of the order: how many, x, the price of one, a comma, what it is: \"19 x 118.40 EUR, packs of boards\"."
          + " Give --line once for each.")
  private List<String> lines;

  ExplainCost(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<CostSheet> calculate() {
    List<OrderLine> order = new ArrayList<>();
    List<Step> steps = new ArrayList<>();
    for (String text : lines) {
      Matcher line = LINE.matcher(text.strip());
      if (!line.matches()) {
        throw new IllegalArgumentException("found [" + text + "]; write a line as \"19 x 118.40 EUR, packs of boards\"");
      }
      BigDecimal number = new BigDecimal(line.group(1));
      OrderLine priced = OrderLine.of(line.group(4).strip(), "", number, "unit", List.of())
          .at(UnitPrice.each(new Price(new BigDecimal(line.group(2)), line.group(3))), number);
      order.add(priced);
      steps.addAll(priced.working());
    }
    Calculated<CostSheet> sheet = CostSheet.of(order);
    steps.addAll(sheet.steps());
    return Calculated.of(sheet.value(), steps, sheet.findings());
  }
}
