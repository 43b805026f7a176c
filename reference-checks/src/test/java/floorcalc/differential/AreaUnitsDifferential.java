package floorcalc.differential;

import floorcalc.differential.OtherUnits.Fraction;
import floorcalc.measure.Area;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.Random;
import java.util.SplittableRandom;
import tech.units.indriya.unit.Units;

/** Areas read in square metres, made from half square nanometres, and given out in square metres and millimetres. */
final class AreaUnitsDifferential extends Comparison {
  AreaUnitsDifferential(int cases) {
    super("areas in square metres, millimetres and nanometres", Library.INDRIYA, cases, Area.class);
  }

  @Override
  public String unit() {
    return "nm2; m2 and mm2 as double";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "both sides convert in fractions; a double is the nearest there is";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(421);
    for (int k = 0; k < upTo; k++) {
      BigDecimal metres = BigDecimal.valueOf(random.nextLong()).movePointLeft(random.nextInt(12, 19));
      Area read = Area.ofSquareMetres(metres.toPlainString());
      worst.nextCase();
      Fraction nanometres = OtherUnits.convert(Fraction.of(metres), Units.SQUARE_METRE, OtherUnits.SQUARE_NANOMETRE);
      BigDecimal said = new BigDecimal(read.toHalfSquareNanometres()).divide(BigDecimal.valueOf(answers == Answers.AS_GIVEN ? 2 : 1));
      worst.see(nanometres.minus(said), metres::toPlainString);
      BigInteger halves = new BigInteger(80, new Random(random.nextLong()));
      Area made = Area.ofHalfSquareNanometres(halves);
      Fraction value = new Fraction(halves, BigInteger.TWO);
      worst.see(made.toSquareMetres() - OtherUnits.convert(value, OtherUnits.SQUARE_NANOMETRE, Units.SQUARE_METRE).nearest(),
          () -> halves + " halves in square metres");
      worst.see(made.toSquareMillimetres()
          - OtherUnits.convert(value, OtherUnits.SQUARE_NANOMETRE, OtherUnits.SQUARE_MILLIMETRE).nearest(),
          () -> halves + " halves in square millimetres");
    }
  }
}
