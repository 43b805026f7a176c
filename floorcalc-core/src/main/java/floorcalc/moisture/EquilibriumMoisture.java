package floorcalc.moisture;

import floorcalc.moisture.Temperature.Scale;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The moisture content that wood settles at in air of a temperature and a relative humidity: its equilibrium moisture
 * content, in per cent of the oven-dry mass.
 * <p>
 * Wood Handbook, equation 4-5, in the form for degrees Celsius or for degrees Fahrenheit, whichever the temperature was
 * given in; the two differ by at most 0.013 percentage points. With h the humidity as a fraction and T the temperature:
 * <pre>{@code
 * M  = 1800 / W * (K h / (1 - K h) + (K1 K h + 2 K1 K2 K^2 h^2) / (1 + K1 K h + K1 K2 K^2 h^2))
 * °C:  W = 349 + 1.29 T + 0.0135 T^2             °F:  W = 330 + 0.452 T + 0.00415 T^2
 *      K = 0.805 + 0.000736 T - 0.00000273 T^2        K = 0.791 + 0.000463 T - 0.000000844 T^2
 *      K1 = 6.27 - 0.00938 T - 0.000303 T^2           K1 = 6.34 + 0.000775 T - 0.0000935 T^2
 *      K2 = 1.91 + 0.0407 T - 0.000293 T^2            K2 = 1.09 + 0.0284 T - 0.0000904 T^2
 * }</pre>
 * It reproduces the handbook's table 4-2 from 30 °F to 180 °F (-1.1 °C to 82.2 °C) and 5 % to 95 % humidity within 0.07
 * percentage points. Beyond that it is an extrapolation, and the finding {@code climate-beyond-table} says so; below
 * -20 °C and above 100 °C it is refused. Real boards differ by species, by piece and by whether they come from the damp or
 * from the dry side (1 to 4 percentage points at 50 %, as quoted from a guide of the Swedish wood industry).
 * <p>
 * Calculated with decimal numbers, so the same digits everywhere; results are rounded to four decimals.
 *
 * @since 0.1
 */
public final class EquilibriumMoisture {
  /** Where the equation is printed. */
  public static final Source SOURCE = new Source("Wood Handbook, FPL-GTR-282", "USDA Forest Products Laboratory", 2021,
      "equation 4-5", Standing.QUOTED);

  private static final String FORMULA = "M = 1800 / W * (K * h / (1 - K * h) + (K1 * K * h + 2 * K1 * K2 * K * K * h * h)"
      + " / (1 + K1 * K * h + K1 * K2 * K * K * h * h)), rounded to four decimals";
  private static final String[] NAMES = {"W", "K", "K1", "K2"};
  private static final String[][] CELSIUS = {{"349", "1.29", "0.0135"}, {"0.805", "0.000736", "-0.00000273"},
      {"6.27", "-0.00938", "-0.000303"}, {"1.91", "0.0407", "-0.000293"}};
  private static final String[][] FAHRENHEIT = {{"330", "0.452", "0.00415"}, {"0.791", "0.000463", "-0.000000844"},
      {"6.34", "0.000775", "-0.0000935"}, {"1.09", "0.0284", "-0.0000904"}};
  private static final MathContext MANY = new MathContext(50, RoundingMode.HALF_EVEN);
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final int DECIMALS = 4;
  private static final Temperature COLDEST = Temperature.celsius("-20");
  private static final Temperature WARMEST = Temperature.celsius("100");
  private static final Temperature TABLE_LOW = Temperature.fahrenheit("30");
  private static final Temperature TABLE_HIGH = Temperature.fahrenheit("180");
  private static final Percent HUMIDITY_LOW = Percent.of("5");
  private static final Percent HUMIDITY_HIGH = Percent.of("95");

  private EquilibriumMoisture() {
  }

  /**
   * Returns the equilibrium moisture content of wood in a climate.
   *
   * @param air the climate, from -20 °C to 100 °C, not null
   * @return the moisture content, rounded to four decimals, with its steps and perhaps the finding
   *     {@code climate-beyond-table}; not null
   * @throws IllegalArgumentException if the temperature is out of bounds
   */
  public static Calculated<Percent> of(AirClimate air) {
    Objects.requireNonNull(air, "air");
    List<Step> steps = new ArrayList<>();
    BigDecimal[] parameters = parameters(air.temperature(), steps);
    BigDecimal h = fraction(air.relativeHumidity());
    Percent result = rounded(moisture(parameters, h));
    List<Term> terms = new ArrayList<>(List.of(Term.of("h", "relative humidity as a fraction", h)));
    for (int i = 0; i < NAMES.length; i++) {
      terms.add(Term.of(NAMES[i], "parameter at " + air.temperature(), parameters[i]));
    }
    steps.add(new Step("equilibrium-moisture", "At which moisture content does wood settle in air of " + air + "?",
        FORMULA, terms, result, SOURCE));
    return Calculated.of(result, steps, findings(air));
  }

  /**
   * Returns the relative humidity in which wood settles at a moisture content: the least in steps of 0.0001 % at which
   * the equation gives that much, found by halving.
   *
   * @param temperature the temperature of the air, from -20 °C to 100 °C, not null
   * @param moisture the moisture content, from 0 % to what the equation gives at 100 % humidity, not null
   * @return the relative humidity with its steps and perhaps the finding {@code climate-beyond-table}; not null
   * @throws IllegalArgumentException if a value is out of bounds
   */
  public static Calculated<Percent> humidityFor(Temperature temperature, Percent moisture) {
    Objects.requireNonNull(temperature, "temperature");
    Objects.requireNonNull(moisture, "moisture");
    BigDecimal[] parameters = parameters(temperature, new ArrayList<>());
    BigDecimal most = moisture(parameters, BigDecimal.ONE);
    if (moisture.compareTo(Percent.ZERO) < 0 || moisture.number().compareTo(most) > 0) {
      throw new IllegalArgumentException("moisture content must be from 0 % to " + rounded(most)
          + ", which is in balance with air of 100 % at " + temperature + ", but was " + moisture);
    }
    long low = -1;
    long high = 1_000_000;
    while (high - low > 1) {
      long middle = Math.floorDiv(low + high, 2);
      if (moisture(parameters, BigDecimal.valueOf(middle, 6)).compareTo(moisture.number()) >= 0) {
        high = middle;
      } else {
        low = middle;
      }
    }
    Percent humidity = Percent.of(BigDecimal.valueOf(high, DECIMALS));
    Calculated<Percent> proof = of(AirClimate.of(temperature, humidity));
    List<Step> steps = new ArrayList<>();
    steps.add(new Step("humidity-in-balance", "In which relative humidity does wood settle at " + moisture + " at "
        + temperature + "? Found by halving; the steps below put it into the equation.", "value as stated", List.of(),
        humidity, SOURCE));
    steps.addAll(proof.steps());
    return Calculated.of(humidity, steps, proof.findings());
  }

  private static BigDecimal[] parameters(Temperature temperature, List<Step> steps) {
    if (temperature.compareTo(COLDEST) < 0 || temperature.compareTo(WARMEST) > 0) {
      throw new IllegalArgumentException("the equation for equilibrium moisture content is used from -20 °C to 100 °C"
          + " (-4 °F to 212 °F), but the temperature was " + temperature);
    }
    boolean celsius = temperature.scale() == Scale.CELSIUS;
    BigDecimal t = temperature.degrees();
    BigDecimal[] values = new BigDecimal[NAMES.length];
    for (int i = 0; i < NAMES.length; i++) {
      String[] a = celsius ? CELSIUS[i] : FAHRENHEIT[i];
      values[i] = Decimals.plain(new BigDecimal(a[0]).add(new BigDecimal(a[1]).multiply(t))
          .add(new BigDecimal(a[2]).multiply(t).multiply(t)));
      steps.add(new Step("parameter-" + NAMES[i].toLowerCase(java.util.Locale.ROOT),
          "What is the parameter " + NAMES[i] + " at " + temperature + "?",
          NAMES[i] + " = " + a[0] + signed(a[1]) + " * T" + signed(a[2]) + " * T * T",
          List.of(Term.of("T", "temperature", temperature)), values[i], SOURCE));
    }
    return values;
  }

  private static String signed(String number) {
    return number.startsWith("-") ? " - " + number.substring(1) : " + " + number;
  }

  /** The equation, per cent; unrounded but for the 50 digits that divisions are carried to. */
  private static BigDecimal moisture(BigDecimal[] p, BigDecimal h) {
    BigDecimal kh = p[1].multiply(h);
    BigDecimal one = p[2].multiply(kh);
    BigDecimal two = p[2].multiply(p[3]).multiply(kh).multiply(kh);
    BigDecimal dissolved = kh.divide(BigDecimal.ONE.subtract(kh), MANY);
    BigDecimal bound = one.add(two).add(two).divide(BigDecimal.ONE.add(one).add(two), MANY);
    return BigDecimal.valueOf(1800).multiply(dissolved.add(bound)).divide(p[0], MANY);
  }

  private static Percent rounded(BigDecimal number) {
    return Percent.of(number.setScale(DECIMALS, RoundingMode.HALF_UP));
  }

  private static BigDecimal fraction(Percent percent) {
    return Decimals.plain(percent.number().divide(HUNDRED));
  }

  private static List<Finding> findings(AirClimate air) {
    boolean warm = air.temperature().compareTo(TABLE_LOW) >= 0 && air.temperature().compareTo(TABLE_HIGH) <= 0;
    boolean humid = air.relativeHumidity().compareTo(HUMIDITY_LOW) >= 0
        && air.relativeHumidity().compareTo(HUMIDITY_HIGH) <= 0;
    if (warm && humid) {
      return List.of();
    }
    return List.of(new Finding("climate-beyond-table", Severity.WARNING, "", "air of " + air
        + " is beyond the range that the equation was checked in, 30 °F to 180 °F (-1.1 °C to 82.2 °C) and 5 % to 95 %;"
        + " take the figure as a rough one, or measure the wood", SOURCE));
  }
}
