package floorcalc.fuzz;

import floorcalc.examples.job.Mistake;
import floorcalc.examples.readings.BadReadingsException;
import floorcalc.examples.readings.ReadingFile;
import floorcalc.measure.Length;
import floorcalc.measure.TapeNotation;
import floorcalc.measure.TapeNotationException;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.outline.WktException;
import java.nio.charset.StandardCharsets;

/** Short texts: outlines as well-known text, lengths in tape notation, tables of readings. */
final class TextCases {
  private static final String[] WKT_PARTS = {"POLYGON", " ", "((", "))", "(", ")", ",", "0", "1 1", "-5.25", "1e3", "1e400", "1e99999999999", "EMPTY", "POLYGON Z", "nan",
      "1e-400", "0.0000001", "9223372036.854775807", "MULTIPOLYGON", "polygon", "+3", "1.", ".5", "--1", "\n", "é", "SRID=4326;", "0 0, 4 0, 4 3, 0 3, 0 0",
      "99999999999999999999"};
  private static final String[] TAPE_PARTS = {"12", "'", "\"", " ", "7", "5/8", "mm", "cm", "m", "ft", "in", "-", "½", "⅜", "″", "′", "''", ".", "0", "185", "3.2",
      "1/0", "0/3", "1/64", "1/128", "9999999999999", "e5", "e99999999999", "inch", "feet", "FT.", "٣", ",", "+", "\u00a0", "99999999999999999999", "0.000001", "\u0000", "𝟙"};

  private TextCases() {}

  static byte[] wkt(Chance chance) {
    String text = chance.oneIn(2) ? new String(OutlineCases.make(chance), StandardCharsets.UTF_8) : joined(chance, WKT_PARTS, 14);
    return changed(text, chance, WKT_PARTS);
  }

  static byte[] tape(Chance chance) {
    return changed(joined(chance, TAPE_PARTS, 6), chance, TAPE_PARTS);
  }

  static byte[] readings(Chance chance) {
    String sign = chance.any(",", ";", ",", "\t");
    boolean line = chance.oneIn(2);
    StringBuilder text = new StringBuilder(chance.any("", "# invented\n", "\uFEFF", "\n\n"));
    text.append(line ? chance.any("distance (m)", "distance (ft)", "distance (m)", "distance") + sign + chance.any("height (mm)", "height (in)", "z (mm)")
        : chance.any("x (m)", "x (mm)") + sign + "y (m)" + sign + chance.any("z (mm)", "z (cm)")).append(chance.any("\n", "\r\n", "\r"));
    long at = 0;
    for (int i = chance.below(12); i > 0; i--) {
      at += chance.between(chance.oneIn(20) ? 0 : 1, 900);
      for (int column = 0; column < (line ? 2 : 3); column++) {
        text.append(column > 0 ? sign : "").append(chance.oneIn(15) ? joined(chance, TAPE_PARTS, 3)
            : column == 0 && !chance.oneIn(40) ? java.math.BigDecimal.valueOf(at, 3).toPlainString() : java.math.BigDecimal.valueOf(chance.between(-4000, 4000), chance.below(4)).toPlainString());
      }
      text.append("\n");
    }
    byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
    return chance.oneIn(2) ? bytes : changed(text.toString(), chance, new String[] {"\"", ",", ";", "\n", "\r", "#", "\u0000", "1e9", "1e99999999999", "'", "NaN"});
  }

  private static String joined(Chance chance, String[] parts, int most) {
    StringBuilder text = new StringBuilder();
    for (int i = chance.below(most + 1); i > 0; i--) {
      text.append(chance.any(parts)).append(chance.oneIn(3) ? " " : "");
    }
    return text.toString();
  }

  private static byte[] changed(String text, Chance chance, String[] parts) {
    StringBuilder there = new StringBuilder(text);
    for (int i = chance.below(3); i > 0 && there.length() > 0; i--) {
      int at = chance.below(there.length());
      switch (chance.below(4)) {
        case 0 -> there.deleteCharAt(at);
        case 1 -> there.setCharAt(at, (char) chance.below(chance.any(128, 0x10000)));
        case 2 -> there.setLength(at);
        default -> there.insert(at, chance.any(parts).repeat(chance.oneIn(50) ? 200 : 1));
      }
    }
    return there.toString().getBytes(StandardCharsets.UTF_8);
  }

  static Ending readWkt(byte[] input, Chance chance) {
    try {
      Outline read = Wkt.parse(new String(input, StandardCharsets.UTF_8));
      Claim.that(Wkt.parse(Wkt.write(read)).equals(read), "another outline when read back");
    } catch (WktException refused) {
      JobCases.checkLine(refused.getMessage().replace('\n', ' '));
      return Ending.REFUSED;
    }
    return Ending.DONE;
  }

  static Ending readTape(byte[] input, Chance chance) {
    try {
      Length read = TapeNotation.parse(new String(input, StandardCharsets.UTF_8));
      Claim.that(TapeNotation.parse(TapeNotation.millimetres().format(read)).equals(read), "another length when read back");
    } catch (TapeNotationException refused) {
      JobCases.checkLine(refused.getMessage().replace('\n', ' '));
      return Ending.REFUSED;
    }
    return Ending.DONE;
  }

  static Ending readReadings(byte[] input, Chance chance) {
    try {
      if (new String(input, StandardCharsets.UTF_8).contains("distance")) {
        ReadingFile.line(input);
      } else {
        ReadingFile.room(input);
      }
    } catch (BadReadingsException bad) {
      Claim.that(!bad.mistakes().isEmpty(), "a refusal without a mistake");
      for (Mistake mistake : bad.mistakes()) {
        JobCases.checkLine(mistake.toString());
      }
      return Ending.REFUSED;
    }
    return Ending.DONE;
  }
}
