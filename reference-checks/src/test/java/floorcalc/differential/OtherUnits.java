package floorcalc.differential;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import javax.measure.MetricPrefix;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.UnitConverter;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.unit.Units;

/**
 * Units of Indriya, which converts in exact fractions. It brings metres and kelvins; inch, foot and degree Fahrenheit are built on them by
 * their definitions: 25.4 mm exactly, 12 in, and 5/9 K from 459.67 below zero (yard and pound agreement of 1959; NIST SP 811, B.8).
 */
final class OtherUnits {
  static final Unit<Length> NANOMETRE = MetricPrefix.NANO(Units.METRE);
  static final Unit<Length> MILLIMETRE = MetricPrefix.MILLI(Units.METRE);
  static final Unit<Length> CENTIMETRE = MetricPrefix.CENTI(Units.METRE);
  static final Unit<Length> INCH = CENTIMETRE.multiply(RationalNumber.of(254, 100));
  static final Unit<Length> FOOT = INCH.multiply(12);
  static final Unit<Area> SQUARE_NANOMETRE = NANOMETRE.multiply(NANOMETRE).asType(Area.class);
  static final Unit<Area> SQUARE_MILLIMETRE = MILLIMETRE.multiply(MILLIMETRE).asType(Area.class);
  static final Unit<Temperature> FAHRENHEIT = Units.KELVIN.multiply(RationalNumber.of(5, 9)).shift(RationalNumber.of(45_967, 100));

  private OtherUnits() {}

  /** An exact fraction. */
  record Fraction(BigInteger dividend, BigInteger divisor) {
    static Fraction of(BigDecimal decimal) {
      return decimal.scale() <= 0 ? new Fraction(decimal.toBigIntegerExact(), BigInteger.ONE)
          : new Fraction(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
    }

    static Fraction of(Number number) {
      if (number instanceof RationalNumber rational) {
        return new Fraction(rational.getDividend(), rational.getDivisor());
      }
      return of(number instanceof BigDecimal decimal ? decimal : new BigDecimal(number.toString()));
    }

    Number number() {
      return RationalNumber.of(dividend, divisor);
    }

    /** {@return this less a whole number, as the nearest double} */
    double minus(BigDecimal other) {
      Fraction o = of(other);
      BigInteger difference = dividend.multiply(o.divisor).subtract(o.dividend.multiply(divisor));
      return difference.signum() == 0 ? 0 : new BigDecimal(difference).divide(new BigDecimal(divisor.multiply(o.divisor)),
          MathContext.DECIMAL64).doubleValue();
    }

    /** {@return the nearest double, by 60 digits} */
    double nearest() {
      return new BigDecimal(dividend).divide(new BigDecimal(divisor), new MathContext(60)).doubleValue();
    }
  }

  /** {@return the value in the other unit, exact} */
  static <Q extends Quantity<Q>> Fraction convert(Fraction value, Unit<Q> from, Unit<Q> to) {
    UnitConverter converter = from.getConverterTo(to);
    return Fraction.of(converter.convert(value.number()));
  }
}
