package floorcalc.laying;

import floorcalc.boards.Offcut;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import java.math.BigInteger;

/** Adds up what becomes of the boards that are cut: the floor, what is trimmed to shape, offcuts long enough to use again and others. */
record Waste(Area laid, Area trimmed, Area usable, Area tooShort) {

  static Waste of(JobLaying laying, Length minimumPiece, Length minimumWidth) {
    BigInteger twiceLaid = BigInteger.ZERO;
    BigInteger boxes = BigInteger.ZERO;
    for (var pieces : laying.pieces()) {
      for (ShapedPiece piece : pieces) {
        for (Loop loop : piece.floor().loops()) {
          twiceLaid = twiceLaid.add(loop.twiceArea());
        }
        Loop shell = piece.floor().shell();
        boxes = boxes.add(BigInteger.valueOf(shell.maxX - shell.minX)
            .multiply(BigInteger.valueOf(shell.maxY - shell.minY)));
      }
    }
    Area laid = Area.ofHalfSquareNanometres(twiceLaid);
    Area usable = Area.ZERO;
    Area tooShort = Area.ZERO;
    for (Offcut offcut : laying.cutting().offcuts()) {
      boolean useful = offcut.length().compareTo(minimumPiece) >= 0 && offcut.width().compareTo(minimumWidth) >= 0;
      if (useful) {
        usable = usable.plus(offcut.area());
      } else {
        tooShort = tooShort.plus(offcut.area());
      }
    }
    return new Waste(laid, Area.ofSquareNanometres(boxes).minus(laid), usable, tooShort);
  }
}
