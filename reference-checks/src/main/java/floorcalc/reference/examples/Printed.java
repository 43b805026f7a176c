package floorcalc.reference.examples;

import floorcalc.measure.Length;
import floorcalc.reference.check.Kind;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Figures and sources out of the files. */
final class Printed {
  /** What most of the figures here are. */
  static final String QUOTED = Kind.QUOTED.words();
  static final String READ = Kind.READ.words();
  static final String APART = Kind.WORKED_APART.words();
  static final String CONSTRUCTED = Kind.CONSTRUCTED.words();

  private Printed() {}

  static List<DataRow> rows(String file, String column, String value) {
    List<DataRow> rows = DataFile.read(file).rows().stream().filter(row -> row.text(column).equals(value)).toList();
    if (rows.isEmpty()) {
      throw new IllegalArgumentException(file + " has no row with " + column + " " + value);
    }
    return rows;
  }

  static DataRow row(String file, String column, String value) {
    return rows(file, column, value).get(0);
  }

  /** Title, publisher, year and place of a file's source. */
  static String source(String file) {
    DataFile data = DataFile.read(file);
    return data.head("title") + ". " + data.head("publisher") + ", " + data.head("year") + ", " + data.head("locator");
  }

  /** A length as a number of another unit, to twelve decimals. */
  static BigDecimal in(Length length, String unit) {
    long nanometres = switch (unit) {
      case "mm" -> 1_000_000L;
      case "cm" -> 10_000_000L;
      case "m" -> 1_000_000_000L;
      case "in" -> 25_400_000L;
      default -> throw new IllegalArgumentException("unit " + unit + " is not asked for here");
    };
    return BigDecimal.valueOf(length.toNanometres()).divide(BigDecimal.valueOf(nanometres), 12, RoundingMode.HALF_EVEN);
  }

  /** A number of metres, to the nanometre. */
  static Length metres(String number) {
    return Length.ofNanometres(new BigDecimal(number).movePointRight(9).longValueExact());
  }
}
