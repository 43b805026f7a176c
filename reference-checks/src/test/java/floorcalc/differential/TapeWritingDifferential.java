package floorcalc.differential;

import floorcalc.differential.OtherUnits.Fraction;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.SplittableRandom;
import javax.measure.Unit;
import tech.units.indriya.unit.Units;

/** Lengths written in tape notation, taken apart again and converted by the library: how far from the length, in steps of the form. */
final class TapeWritingDifferential extends Comparison {
  TapeWritingDifferential(int cases) {
    super("lengths written in tape notation", Library.INDRIYA, cases, TapeNotation.class);
  }

  @Override
  public String unit() {
    return "of a step of what is written";
  }

  @Override
  public double tolerance() {
    return 0.5;
  }

  @Override
  public String argument() {
    return "what is written is rounded to the nearest step";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(411);
    for (int k = 0; k < upTo; k++) {
      Length length = Length.ofNanometres(random.nextLong(-30_000_000_000L, 30_000_000_000L));
      int decimals = random.nextInt(4);
      int denominator = 1 << random.nextInt(7);
      worst.nextCase();
      Length shown = answers == Answers.AS_GIVEN ? length : length.multipliedBy(-1);
      see(worst, length, TapeNotation.millimetres(decimals).format(shown), " mm", OtherUnits.MILLIMETRE, decimals);
      see(worst, length, TapeNotation.centimetres(decimals).format(shown), " cm", OtherUnits.CENTIMETRE, decimals);
      see(worst, length, TapeNotation.metres(decimals).format(shown), " m", Units.METRE, decimals);
      seeInches(worst, length, TapeNotation.inches(denominator).format(shown), denominator);
      seeInches(worst, length, TapeNotation.feetAndInches(denominator).format(shown), denominator);
    }
  }

  private static void see(Worst worst, Length length, String text, String sign, Unit<javax.measure.quantity.Length> unit, int decimals) {
    Fraction value = Fraction.of(new BigDecimal(text.substring(0, text.length() - sign.length())));
    Fraction step = Fraction.of(BigDecimal.ONE.movePointLeft(decimals));
    see(worst, length, text, value, step, unit);
  }

  /** The text is [-][feet' ][whole ][n/d]". */
  private static void seeInches(Worst worst, Length length, String text, int denominator) {
    String rest = text.replace("\"", "").replace("-", "");
    long inches = 0;
    int feet = rest.indexOf('\'');
    if (feet >= 0) {
      inches = 12 * Long.parseLong(rest.substring(0, feet));
      rest = rest.substring(feet + 1).strip();
    }
    BigInteger dividend = BigInteger.valueOf(inches);
    BigInteger divisor = BigInteger.ONE;
    for (String part : rest.split(" ")) {
      String[] ratio = part.split("/");
      BigInteger d = ratio.length == 2 ? new BigInteger(ratio[1]) : BigInteger.ONE;
      dividend = dividend.multiply(d).add(new BigInteger(ratio[0]).multiply(divisor));
      divisor = divisor.multiply(d);
    }
    see(worst, length, text, new Fraction(text.startsWith("-") ? dividend.negate() : dividend, divisor),
        new Fraction(BigInteger.ONE, BigInteger.valueOf(denominator)), OtherUnits.INCH);
  }

  private static void see(Worst worst, Length length, String text, Fraction value, Fraction step, Unit<javax.measure.quantity.Length> unit) {
    double away = OtherUnits.convert(value, unit, OtherUnits.NANOMETRE).minus(BigDecimal.valueOf(length.toNanometres()));
    worst.see(away / OtherUnits.convert(step, unit, OtherUnits.NANOMETRE).nearest(), () -> length + " as " + text);
  }
}
