package floorcalc.examples.readings;

import floorcalc.examples.job.Shown;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Which sign the values of a file have before their decimals. A comma can be one only between semicolons, where no value has a
 * point, and where at least one value shows that commas do not group thousands.
 */
final class DecimalSign {
  /** A comma that may group thousands. */
  private static final Pattern GROUPED = Pattern.compile("[^,0-9]?[1-9][0-9]{0,2}(,[0-9]{3})+(?![0-9])[^,]*");
  private static final Pattern ONE_COMMA = Pattern.compile("[^,]*[0-9],[0-9][^,]*");

  /** A value and where it stands. */
  private record Cell(int line, String text) {}

  private final boolean semicolons;
  private final Cell point;
  private final Cell clearComma;

  private DecimalSign(boolean semicolons, Cell point, Cell clearComma) {
    this.semicolons = semicolons;
    this.point = point;
    this.clearComma = clearComma;
  }

  static DecimalSign of(ReadingTable table) {
    Cell point = null;
    Cell comma = null;
    for (ReadingTable.Row row : table.rows) {
      for (String cell : row.cells()) {
        if (point == null && cell.indexOf('.') >= 0) {
          point = new Cell(row.line(), cell);
        }
        if (comma == null && ONE_COMMA.matcher(cell).matches() && !GROUPED.matcher(cell).matches()) {
          comma = new Cell(row.line(), cell);
        }
      }
    }
    return new DecimalSign(table.separator == ';', point, comma);
  }

  /** What is wrong with the comma of a value, if anything is. */
  Optional<String> fault(String text) {
    if (text.indexOf(',') < 0) {
      return Optional.empty();
    }
    if (!semicolons) {
      return Optional.of("write the decimal sign as a point, or separate the columns by semicolons");
    }
    if (point != null) {
      return Optional.of("line " + point.line() + " has [" + Shown.plain(point.text(), ReadingTable.SHOWN)
          + "] with a point; write one decimal sign in the whole file, and group no digits");
    }
    if (!ONE_COMMA.matcher(text).matches()) {
      return Optional.of("write one comma with digits on both sides");
    }
    if (clearComma == null) {
      return Optional.of("the comma may be decimal or group thousands, and no other value of the file tells which; write a point, or one"
          + " more or fewer decimals");
    }
    return Optional.empty();
  }

  /** The value with a point, if it has no {@linkplain #fault(String) fault}. */
  static String pointed(String text) {
    return text.replace(',', '.');
  }
}
