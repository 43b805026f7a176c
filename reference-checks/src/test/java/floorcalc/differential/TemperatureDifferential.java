package floorcalc.differential;

import floorcalc.differential.OtherUnits.Fraction;
import floorcalc.moisture.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import tech.units.indriya.unit.Units;

/** Temperatures read on both scales, turned into degrees Celsius, and put in order. */
final class TemperatureDifferential extends Comparison {
  TemperatureDifferential(int cases) {
    super("temperatures in degrees Celsius and Fahrenheit", Library.INDRIYA, cases, Temperature.class);
  }

  @Override
  public String unit() {
    return "degrees Celsius";
  }

  @Override
  public double tolerance() {
    return 0.5e-6;
  }

  @Override
  public String argument() {
    return "the core rounds to six decimals where a Fahrenheit degree does not come out even";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(431);
    Temperature before = Temperature.celsius("0");
    Fraction beforeInKelvin = Fraction.of(new BigDecimal("273.15"));
    for (int k = 0; k < upTo; k++) {
      boolean fahrenheit = random.nextBoolean();
      BigDecimal degrees = BigDecimal.valueOf(fahrenheit ? random.nextLong(-58_000_000, 302_000_000) : random.nextLong(-50_000_000, 150_000_000))
          .movePointLeft(6).setScale(random.nextInt(7), RoundingMode.DOWN);
      Temperature temperature = Temperature.parse(degrees.toPlainString() + (fahrenheit ? " °F" : " °C"));
      Fraction celsius = OtherUnits.convert(Fraction.of(degrees), fahrenheit ? OtherUnits.FAHRENHEIT : Units.CELSIUS, Units.CELSIUS);
      Fraction kelvin = OtherUnits.convert(Fraction.of(degrees), fahrenheit ? OtherUnits.FAHRENHEIT : Units.CELSIUS, Units.KELVIN);
      worst.nextCase();
      worst.see(celsius.minus(answers == Answers.AS_GIVEN ? temperature.toCelsius() : temperature.degrees()), temperature::toString);
      int order = kelvin.dividend().multiply(beforeInKelvin.divisor()).compareTo(beforeInKelvin.dividend().multiply(kelvin.divisor()));
      Temperature other = before;
      worst.see(Integer.signum(temperature.compareTo(other)) == order ? 0 : 1, () -> temperature + " beside " + other);
      before = temperature;
      beforeInKelvin = kelvin;
    }
  }
}
