package floorcalc.materials;

import floorcalc.measure.Price;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What an order list costs, for each currency in it: lines are exact, the total is rounded once, half up, to the decimals that the currency
 * has (two for most, none for some such as JPY, three for some such as KWD; from memory). Currencies are never converted.
 * Taxes, freight and labour are in no total unless they are in the prices.
 *
 * @param totals the total of each currency in the order of their codes, rounded; not null
 * @param unpriced the items of which no price is stated, not null
 * @since 0.1
 */
public record CostSheet(Map<String, Price> totals, List<String> unpriced) {
  /** Checks that no part is null and copies. */
  public CostSheet {
    Objects.requireNonNull(totals, "totals");
    Objects.requireNonNull(unpriced, "unpriced");
    totals = Collections.unmodifiableMap(new LinkedHashMap<>(totals));
    unpriced = List.copyOf(unpriced);
  }

  /**
   * Adds up an order list.
   *
   * @param lines the lines, not null
   * @return the totals with a step {@code total-price} for each currency; findings {@code price-missing},
   *     {@code several-currencies}; not null
   */
  public static Calculated<CostSheet> of(List<OrderLine> lines) {
    Map<String, List<OrderLine>> byCurrency = new TreeMap<>();
    List<String> unpriced = new ArrayList<>();
    for (OrderLine line : lines) {
      line.price().ifPresentOrElse(price -> byCurrency.computeIfAbsent(price.currency(), c -> new ArrayList<>()).add(line),
          () -> unpriced.add(line.item()));
    }
    Map<String, Price> totals = new LinkedHashMap<>();
    List<Step> steps = new ArrayList<>();
    byCurrency.forEach((currency, priced) -> {
      Step step = total(currency, priced);
      steps.add(step);
      totals.put(currency, (Price) step.result());
    });
    List<Finding> findings = new ArrayList<>();
    if (!totals.isEmpty() && !unpriced.isEmpty()) {
      findings.add(new Finding("price-missing", Severity.NOTE, "", "no price is stated for " + String.join(", ", unpriced)
          + "; the total is without these", Source.DEFINITION));
    }
    if (totals.size() > 1) {
      findings.add(new Finding("several-currencies", Severity.NOTE, "", "prices are in " + String.join(", ", totals.keySet())
          + "; each has a total of its own, nothing is converted", Source.DEFINITION));
    }
    return Calculated.of(new CostSheet(totals, unpriced), steps, findings);
  }

  private static Step total(String currency, List<OrderLine> lines) {
    StringBuilder formula = new StringBuilder("C = ");
    List<Term> terms = new ArrayList<>();
    BigDecimal sum = BigDecimal.ZERO;
    for (OrderLine line : lines) {
      Price price = line.price().orElseThrow();
      String symbol = "c" + (terms.size() + 1);
      formula.append(terms.isEmpty() ? "" : " + ").append(symbol);
      terms.add(Term.of(symbol, line.item(), price));
      sum = sum.add(price.amount());
    }
    int digits = CurrencyDigits.of(currency);
    return new Step("total-price", "What does all that is priced in " + currency + " cost, rounded half up once, at the end?",
        formula + ", rounded to " + List.of("no", "one", "two", "three").get(digits) + " decimals", terms,
        rounded(new Price(sum, currency)), Source.DEFINITION);
  }

  /**
   * Rounds an amount half up to the decimals that its currency has.
   *
   * @param exact the amount, not null
   * @return the rounded amount, not null
   */
  public static Price rounded(Price exact) {
    return new Price(exact.amount().setScale(CurrencyDigits.of(exact.currency()), RoundingMode.HALF_UP), exact.currency());
  }

  /**
   * Returns the total of a currency.
   *
   * @param currency its three letters, not null
   * @return the total, empty if nothing is priced in it; not null
   */
  public Optional<Price> total(String currency) {
    Objects.requireNonNull(currency, "currency");
    return Optional.ofNullable(totals.get(currency));
  }
}
