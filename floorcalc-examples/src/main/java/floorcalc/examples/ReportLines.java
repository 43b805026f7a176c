package floorcalc.examples;

import java.util.ArrayList;
import java.util.List;

/** Writes a report as text of at most {@value #WIDTH} columns: verdicts with their parts under them, and tables. */
final class ReportLines {
  static final int WIDTH = 110;
  private static final String MARGIN = " ".repeat(16);
  private static final int LABEL = 7;

  private final Console console;

  ReportLines(Console console) {
    this.console = console;
  }

  /** A line as it is. */
  void say(String line) {
    console.say(line);
  }

  /** A verdict in the margin and what it is about. */
  void head(String verdict, String text) {
    wrapped("  " + verdict + " ".repeat(Math.max(1, MARGIN.length() - 2 - verdict.length())), MARGIN, text);
  }

  /** A part under it; nothing if there is no text. */
  void part(String label, String text) {
    if (!text.isEmpty()) {
      wrapped(MARGIN + label + " ".repeat(Math.max(1, LABEL - label.length())), MARGIN + " ".repeat(LABEL), text);
    }
  }

  /** Words that do not fit begin a new line under the first. */
  void wrapped(String first, String next, String text) {
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > WIDTH) {
        console.say(line.toString());
        line = new StringBuilder(next);
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    console.say(line.toString());
  }

  /** Rows of equally many cells, the first row the heads; each column as wide as its widest cell. */
  void table(List<List<String>> rows) {
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    rows.forEach(row -> {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    });
    for (List<String> row : rows) {
      List<String> cells = new ArrayList<>();
      for (int i = 0; i < columns; i++) {
        cells.add(row.get(i) + " ".repeat(widths[i] - row.get(i).length()));
      }
      console.say(("  " + String.join("  ", cells)).stripTrailing());
    }
  }
}
