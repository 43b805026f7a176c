package floorcalc.flatness;

import floorcalc.measure.Length;
import java.math.RoundingMode;

/** What to do about a floor that is not flat, or not known to be. */
final class Advice {
  static final String CAUTION = "grinding concrete raises silica dust: extract it and wear a mask for it; old coverings and"
      + " adhesives may hold asbestos: have them tested before they are ground";

  private Advice() {}

  static String mend(EdgeRest rest) {
    return "grind at " + rest.left().place() + " or " + rest.right().place() + ", or fill at " + rest.lowSpot().place() + "; "
        + CAUTION;
  }

  static String mendByHand() {
    return "grind where the edge rests, or fill beneath it; " + CAUTION;
  }

  static String measure(Length span) {
    return "measure lines of at least " + span + ", with readings at most " + span.dividedBy(2, RoundingMode.FLOOR)
        + " apart, or lay an edge of " + span + " and read the gaps";
  }

  static String read(Length span) {
    return "lay an edge of " + span + " and read the gaps";
  }
}
