package floorcalc.examples.job;

import floorcalc.measure.Mass;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads prices, masses and volumes. */
final class PriceReader {
  private static final Pattern MASS = Pattern.compile("([0-9]{1,9}(?:\\.[0-9]{1,9})?) ?(kg|g|lb)");
  private static final Pattern PRICE = Pattern.compile("([0-9]{1,12}(?:\\.[0-9]{1,6})?) ?([A-Z]{3})");
  private static final Pattern UNIT_PRICE = Pattern.compile("([0-9]{1,12}(?:\\.[0-9]{1,6})?) ?([A-Z]{3})(?: ?/ ?(m2|m²|m))?");
  private static final Pattern VOLUME = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?) ?(ml|l)");
  private static final BigDecimal KILOGRAMS_PER_GRAM = new BigDecimal("0.001");
  /** The avoirdupois pound, exact since 1959. */
  private static final BigDecimal KILOGRAMS_PER_POUND = new BigDecimal("0.45359237");

  private PriceReader() {
  }

  static Optional<Mass> mass(Value value) {
    return matched(value, MASS, "a text with a number and kg, g or lb such as \"19.4 kg\"").map(m -> new Mass(switch (m.group(2)) {
      case "kg" -> new BigDecimal(m.group(1));
      case "g" -> new BigDecimal(m.group(1)).multiply(KILOGRAMS_PER_GRAM);
      default -> new BigDecimal(m.group(1)).multiply(KILOGRAMS_PER_POUND);
    }));
  }

  static Optional<Price> price(Value value) {
    return matched(value, PRICE, "a text with an amount and the three capital letters of a currency such as \"118.40 EUR\"")
        .map(m -> new Price(new BigDecimal(m.group(1)), m.group(2)));
  }

  /** A price of one as it is sold, of a metre or of a square metre. */
  static Optional<UnitPrice> unitPrice(Value value) {
    return matched(value, UNIT_PRICE, "a text with an amount and the three capital letters of a currency such as \"29.90 EUR\", or"
        + " \"3.20 EUR/m\", or \"2.40 EUR/m2\"").map(m -> new UnitPrice(new Price(new BigDecimal(m.group(1)), m.group(2)),
            m.group(3) == null ? UnitPrice.Per.UNIT : m.group(3).equals("m") ? UnitPrice.Per.METRE : UnitPrice.Per.SQUARE_METRE));
  }

  /** A price of one as it is sold. */
  static Optional<UnitPrice> priceOfOne(Value value) {
    return price(value).map(UnitPrice::each);
  }

  /** Millilitres, more than zero. */
  static Optional<BigDecimal> millilitres(Value value) {
    String allowed = "a text with a number of more than 0 and ml or l such as \"310 ml\"";
    Optional<BigDecimal> read = matched(value, VOLUME, allowed).map(m -> m.group(2).equals("l")
        ? new BigDecimal(m.group(1)).multiply(BigDecimal.valueOf(1000)) : new BigDecimal(m.group(1)));
    return read.isPresent() && read.get().signum() == 0 ? value.refuse(allowed) : read;
  }

  private static Optional<Matcher> matched(Value value, Pattern pattern, String allowed) {
    Optional<Matcher> matched = value.asText().map(pattern::matcher).filter(Matcher::matches);
    return matched.isPresent() ? matched : value.refuse(allowed);
  }
}
