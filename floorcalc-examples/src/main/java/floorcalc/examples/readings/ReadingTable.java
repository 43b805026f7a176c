package floorcalc.examples.readings;

import floorcalc.examples.job.Shown;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A table of readings: columns with their units from the header, and the cells of each line below it. */
final class ReadingTable {
  static final int MOST_READINGS = 10_000;
  static final int SHOWN = 40;
  private static final Pattern COLUMN = Pattern.compile("([^()]*)\\(([^()]*)\\)");

  /** A column by its name and unit. */
  record Column(String name, ColumnUnit unit) {
    @Override
    public String toString() {
      return name + " (" + unit.word() + ")";
    }
  }

  /** The cells of one line, in the order of the columns wanted. */
  record Row(int line, List<String> cells) {}

  final List<Column> columns;
  final List<Row> rows = new ArrayList<>();
  final char separator;
  private final LineMistakes mistakes;
  /** For each cell of a line the column wanted that it belongs to. */
  private final int[] places;

  private ReadingTable(char separator, List<Column> columns, int[] places, LineMistakes mistakes) {
    this.separator = separator;
    this.columns = columns;
    this.places = places;
    this.mistakes = mistakes;
  }

  /** Reads a table that must have just the columns wanted; stops at once if the header has not. */
  static ReadingTable read(byte[] bytes, List<String> wanted, String otherwise, LineMistakes mistakes) {
    List<TextLines.Line> lines = TextLines.of(bytes, mistakes);
    if (lines.isEmpty()) {
      mistakes.add("the file holds no line; the first must be a header such as " + example(wanted));
      mistakes.check();
    }
    ReadingTable table = header(lines.get(0), wanted, otherwise, mistakes);
    mistakes.check();
    for (TextLines.Line line : lines.subList(1, lines.size())) {
      if (table.rows.size() == MOST_READINGS) {
        mistakes.add(line.number(), "", "there are more than " + MOST_READINGS + " readings; work in parts");
        break;
      }
      table.row(line);
    }
    return table;
  }

  private static String example(List<String> wanted) {
    return wanted.size() == 2 ? "distance (m),height (mm)" : "x (m),y (m),z (mm)";
  }

  private static ReadingTable header(TextLines.Line line, List<String> wanted, String otherwise, LineMistakes mistakes) {
    boolean semicolon = line.text().indexOf(';') >= 0;
    char separator = semicolon ? ';' : ',';
    String must = "; the header must name the columns " + String.join(", ", wanted) + ", each with its unit, such as "
        + example(wanted);
    if (semicolon && line.text().indexOf(',') >= 0 || line.text().indexOf('\t') >= 0) {
      mistakes.add(line.number(), "", "found [" + Shown.plain(line.text(), SHOWN) + "], which separates columns in two ways or by tabs"
          + "; separate them by commas or by semicolons");
      mistakes.check();
    }
    List<String> cells = cells(line, separator, mistakes);
    Column[] columns = new Column[wanted.size()];
    int[] places = new int[cells.size()];
    List<String> unknown = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      Matcher parts = COLUMN.matcher(cells.get(i));
      boolean named = parts.matches();
      String name = (named ? parts.group(1) : cells.get(i)).strip().toLowerCase(Locale.ROOT);
      int place = wanted.indexOf(name);
      places[i] = place;
      if (place < 0) {
        unknown.add("[" + Shown.plain(cells.get(i), SHOWN) + "]");
        continue;
      }
      Optional<ColumnUnit> unit = ColumnUnit.of(named ? parts.group(2).strip() : "");
      if (columns[place] != null) {
        mistakes.add(line.number(), name, "there are two columns of this name; leave one out");
      } else if (unit.isEmpty()) {
        mistakes.add(line.number(), name, (named ? "found the unit [" + Shown.plain(parts.group(2).strip(), SHOWN) + "]" : "the unit is missing")
            + "; write " + name + " (mm), where the unit is one of " + ColumnUnit.words() + " (tape: each value with its own unit)");
      }
      columns[place] = new Column(name, unit.orElse(ColumnUnit.MILLIMETRE));
    }
    if (!unknown.isEmpty()) {
      mistakes.add(line.number(), "", "found " + String.join(", ", unknown.subList(0, Math.min(unknown.size(), 6)))
          + " as the name of a column" + must + otherwise);
    }
    for (int i = 0; i < columns.length; i++) {
      if (columns[i] == null && unknown.isEmpty()) {
        mistakes.add(line.number(), "", "there is no column " + wanted.get(i) + must + otherwise);
      }
    }
    mistakes.check();
    return new ReadingTable(separator, List.of(columns), places, mistakes);
  }

  private void row(TextLines.Line line) {
    List<String> cells = cells(line, separator, mistakes);
    if (cells.isEmpty() || cells.stream().allMatch(String::isEmpty)) {
      return;
    }
    if (cells.size() != places.length) {
      boolean commas = separator == ',' && cells.size() > places.length;
      mistakes.add(line.number(), "", "found " + cells.size() + (cells.size() == 1 ? " value" : " values") + ", must be "
          + places.length + " as in the header" + (commas
              ? "; if the commas are decimal, write points, or separate the columns by semicolons" : ""));
      return;
    }
    String[] sorted = new String[places.length];
    for (int i = 0; i < places.length; i++) {
      sorted[places[i]] = cells.get(i);
    }
    rows.add(new Row(line.number(), List.of(sorted)));
  }

  /** The cells of a line without blanks around them; none, and a mistake, if its quotes are wrong. */
  private static List<String> cells(TextLines.Line line, char separator, LineMistakes mistakes) {
    try (CSVParser parser = CSVParser.parse(line.text(), CSVFormat.RFC4180.builder()
        .setDelimiter(separator).setIgnoreSurroundingSpaces(true).get())) {
      List<String> cells = new ArrayList<>();
      for (CSVRecord record : parser) {
        record.forEach(cell -> cells.add(cell.strip()));
      }
      return cells;
    } catch (IOException | UncheckedIOException | IllegalStateException fault) {
      mistakes.add(line.number(), "", "a quotation mark is not closed or stands within a value; write inches as in, or put the value"
          + " into quotation marks and double the mark within it");
      return List.of();
    }
  }
}
