package floorcalc.reference.report;

import java.util.List;
import java.util.stream.Collectors;

/** A page as Markdown. Not thread-safe. */
final class MarkdownPage implements Page {
  private final StringBuilder out = new StringBuilder();

  @Override
  public void heading(int level, String text) {
    gap();
    out.append("#".repeat(level)).append(' ').append(text).append('\n');
  }

  @Override
  public void paragraph(String text) {
    gap();
    out.append(escaped(text)).append('\n');
  }

  @Override
  public void table(List<String> heads, List<List<String>> rows) {
    gap();
    row(heads);
    row(heads.stream().map(head -> "---").toList());
    rows.forEach(this::row);
  }

  @Override
  public void list(List<String> items) {
    gap();
    items.forEach(item -> out.append("- ").append(escaped(item)).append('\n'));
  }

  @Override
  public String end() {
    return out.toString();
  }

  private void gap() {
    if (out.length() > 0) {
      out.append('\n');
    }
  }

  private void row(List<String> cells) {
    out.append(cells.stream().map(MarkdownPage::cell).collect(Collectors.joining(" | ", "| ", " |\n")));
  }

  private static String cell(String text) {
    return text.startsWith(ALERT) ? "**" + escaped(text.substring(ALERT.length())) + "**" : escaped(text);
  }

  /** Marks that would be taken as markup; a name in a code span is left alone. */
  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    boolean code = false;
    for (char c : text.toCharArray()) {
      code ^= c == '`';
      if (c == '|' || !code && (c == '*' || c == '_' || c == '<' || c == '[')) {
        safe.append('\\');
      }
      safe.append(c);
    }
    return safe.toString();
  }
}
