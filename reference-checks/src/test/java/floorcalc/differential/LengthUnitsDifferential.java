package floorcalc.differential;

import floorcalc.differential.OtherUnits.Fraction;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import javax.measure.Unit;
import tech.units.indriya.unit.Units;

/** Lengths read in every unit and form of tape notation, and given out as a double of millimetres. */
final class LengthUnitsDifferential extends Comparison {
  LengthUnitsDifferential(int cases) {
    super("lengths read in tape notation: mm, cm, m, inches, feet", Library.INDRIYA, cases, TapeNotation.class, Length.class);
  }

  @Override
  public String unit() {
    return "nm";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides convert in whole numbers and fractions";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(401);
    for (int k = 0; k < upTo; k++) {
      Written written = written(random, k % 7);
      Length mine = TapeNotation.parse(written.text);
      worst.nextCase();
      BigDecimal nanometres = BigDecimal.valueOf(mine.toNanometres());
      BigDecimal said = answers == Answers.AS_GIVEN ? nanometres : nanometres.add(nanometres.movePointLeft(6));
      worst.see(OtherUnits.convert(written.value, written.unit, OtherUnits.NANOMETRE).minus(said), written::text);
      double millimetres = OtherUnits.convert(written.value, written.unit, OtherUnits.MILLIMETRE).nearest();
      worst.see((mine.toMillimetres() - millimetres) * 1e6, () -> written.text + " as a double of millimetres");
      worst.see(Length.parse(mine.toString()).minus(mine).toNanometres(), () -> mine + " read back");
    }
  }

  /** A text, and what it says. */
  private record Written(String text, Fraction value, Unit<javax.measure.quantity.Length> unit) {}

  private static Written written(SplittableRandom random, int form) {
    return switch (form) {
      case 0 -> decimal(random, " mm", OtherUnits.MILLIMETRE, 6);
      case 1 -> decimal(random, "cm", OtherUnits.CENTIMETRE, 7);
      case 2 -> decimal(random, " m", Units.METRE, 9);
      case 3 -> decimal(random, " in", OtherUnits.INCH, 5);
      case 4 -> decimal(random, "'", OtherUnits.FOOT, 5);
      case 5 -> {
        int denominator = 1 << random.nextInt(1, 7);
        int numerator = random.nextInt(1, denominator);
        int whole = random.nextInt(400);
        yield new Written(whole + " " + numerator + "/" + denominator + "\"", fraction(whole, numerator, denominator), OtherUnits.INCH);
      }
      default -> {
        int denominator = 1 << random.nextInt(1, 7);
        int numerator = random.nextInt(1, denominator);
        int feet = random.nextInt(100);
        int inches = random.nextInt(12);
        yield new Written("-" + feet + " ft " + inches + "-" + numerator + "/" + denominator + " in",
            negated(fraction(12 * feet + inches, numerator, denominator)), OtherUnits.INCH);
      }
    };
  }

  private static Written decimal(SplittableRandom random, String unit, Unit<javax.measure.quantity.Length> in, int decimals) {
    BigDecimal value = BigDecimal.valueOf(random.nextLong(-9_999_999_999L, 10_000_000_000L)).movePointLeft(9)
        .setScale(random.nextInt(decimals + 1), RoundingMode.DOWN);
    return new Written(value.toPlainString() + unit, Fraction.of(value), in);
  }

  private static Fraction fraction(int whole, int numerator, int denominator) {
    return new Fraction(BigInteger.valueOf((long) whole * denominator + numerator), BigInteger.valueOf(denominator));
  }

  private static Fraction negated(Fraction fraction) {
    return new Fraction(fraction.dividend().negate(), fraction.divisor());
  }
}
