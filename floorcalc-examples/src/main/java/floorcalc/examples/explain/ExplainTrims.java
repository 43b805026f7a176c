package floorcalc.examples.explain;

import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.trims.TrimBar;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimPiecing;
import floorcalc.trims.TrimStock;
import floorcalc.working.Calculated;
import floorcalc.working.Step;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows which piece of skirting or profile is cut from which bar. */
@Command(name = "trims", mixinStandardHelpOptions = true,
    description = "Cuts skirtings or profiles from bars: how few are bought, the bound, and which piece from which bar.")
final class ExplainTrims extends Explaining {
  private static final Pattern PRICE = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)\\s*([A-Z]{3})");

  @Option(names = "--piece", required = true, paramLabel = "PIECE", converter = Typed.OfLot.class,
      description = "A piece wanted: its length, such as 1290; \"3 x 1290\" for three; \"3 x 1290, hall\" with a name. Give"
          + " --piece once for each.")
  private List<Typed.Lot> pieces;

  @Option(names = "--bar", paramLabel = "BAR", converter = Typed.OfLot.class,
      description = "A length that is sold: 2400; \"12 x 2400\" if there are only twelve; \"2400, 7.80 EUR\" at a price. May be"
          + " given several times.")
  private List<Typed.Lot> bars = List.of();

  @Option(names = "--on-hand", paramLabel = "BAR", converter = Typed.OfLot.class,
      description = "A bar or offcut that is there already: 1300, or \"2 x 1300\". May be given several times.")
  private List<Typed.Lot> onHand = List.of();

  @Option(names = "--kerf", paramLabel = "LENGTH", defaultValue = "3", converter = Typed.OfLength.class,
      description = "Width of a saw cut; 3 mm if not given.")
  private Length kerf;

  @Option(names = "--allowance", paramLabel = "LENGTH", defaultValue = "0", converter = Typed.OfLength.class,
      description = "What each piece is cut longer for mitres and fitting; 0 mm if not given.")
  private Length allowance;

  @Option(names = "--least-part", paramLabel = "LENGTH", converter = Typed.OfLength.class,
      description = "Make pieces that are longer than the longest bar up of several, none shorter than this. Without it such a"
          + " piece is refused.")
  private Length leastPart;

  ExplainTrims(PrintStream out) {
    super(out);
  }

  @Override
  Calculated<TrimCutting> calculate() {
    List<TrimPiece> wanted = new ArrayList<>();
    for (Typed.Lot lot : pieces) {
      wanted.add(new TrimPiece(lot.more(), lot.length(), allowance, lot.number().orElse(1)));
    }
    List<TrimStock> stock = new ArrayList<>();
    bars.forEach(lot -> stock.add(sold(lot)));
    onHand.forEach(lot -> stock.add(there(lot)));
    if (stock.isEmpty()) {
      throw new IllegalArgumentException("there is no bar to cut from; give --bar or --on-hand");
    }
    List<Step> steps = new ArrayList<>();
    if (leastPart != null) {
      Calculated<List<TrimPiece>> parts = TrimPiecing.of(wanted, longest(stock), leastPart);
      steps.addAll(parts.steps());
      wanted = parts.value();
    }
    Calculated<TrimCutting> cutting = TrimCutting.of(wanted, stock, kerf);
    steps.addAll(cutting.steps());
    return Calculated.of(cutting.value(), steps, cutting.findings());
  }

  private static TrimStock sold(Typed.Lot lot) {
    TrimStock stock = TrimStock.sold(lot.length());
    if (lot.number().isPresent()) {
      stock = stock.atMost(lot.number().get());
    }
    if (lot.more().isEmpty()) {
      return stock;
    }
    Matcher price = PRICE.matcher(lot.more());
    if (!price.matches()) {
      throw new IllegalArgumentException("found [" + lot.more() + "] as the price of a bar of " + lot.length()
          + "; write it as 7.80 EUR");
    }
    return stock.at(new Price(new BigDecimal(price.group(1)), price.group(2)));
  }

  private static TrimStock there(Typed.Lot lot) {
    if (!lot.more().isEmpty()) {
      throw new IllegalArgumentException("found [" + lot.more() + "] behind a bar on hand of " + lot.length()
          + "; it has neither price nor name");
    }
    return TrimStock.onHand(lot.length(), lot.number().orElse(1));
  }

  /** The longest length without limit, or the longest of all if there is none. */
  private static Length longest(List<TrimStock> stock) {
    Optional<Length> unlimited = stock.stream().filter(one -> one.limit().isEmpty()).map(TrimStock::length)
        .reduce(Length::max);
    return unlimited.orElseGet(() -> stock.stream().map(TrimStock::length).reduce(Length.ZERO, Length::max));
  }

  @Override
  String below(Object value) {
    TrimCutting cutting = (TrimCutting) value;
    StringBuilder text = new StringBuilder("\ncut list: ").append(count(cutting.bars().size(), "bar")).append(", ")
        .append(cutting.barsBought()).append(" of them bought")
        .append(cutting.isLeast() ? ", proven to be the least" : ", not proven to be the least").append("; ")
        .append(count(cutting.cuts(), "cut"));
    cutting.price().ifPresent(price -> text.append("; ").append(price));
    List<TrimBar> bars = cutting.bars();
    int from = 0;
    while (from < bars.size()) {
      String line = line(bars.get(from));
      int to = from;
      while (to + 1 < bars.size() && line(bars.get(to + 1)).equals(line)) {
        to++;
      }
      text.append("\n  ").append(from + 1).append(to == from ? "" : " to " + (to + 1)).append(": ").append(line);
      from = to + 1;
    }
    return text.toString();
  }

  private static String count(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  private static String line(TrimBar bar) {
    return bar.stock().length() + (bar.stock().isOnHand() ? " on hand" : "") + " gives "
        + bar.pieces().stream().map(piece -> piece.cutLength() + (piece.name().isEmpty() ? "" : " (" + piece.name() + ")"))
            .collect(Collectors.joining(" + ")) + ", left " + bar.leftover();
  }
}
