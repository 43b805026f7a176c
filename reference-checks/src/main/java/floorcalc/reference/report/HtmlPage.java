package floorcalc.reference.report;

import java.util.List;

/** A page as HTML, in one file, to be read on paper or on a screen. Not thread-safe. */
final class HtmlPage implements Page {
  private static final String STYLE = """
      @page { margin: 12mm; }
      html { font: 10.5pt/1.4 Georgia, "Liberation Serif", serif; color: #111; background: #fff; }
      body { max-width: 60rem; margin: 0 auto; padding: 1rem; }
      h1, h2, h3 { font-family: Helvetica, Arial, "Liberation Sans", sans-serif; line-height: 1.2; break-after: avoid; }
      h2 { margin-top: 2.5rem; border-top: 2px solid #111; padding-top: .4rem; }
      .wide { overflow-x: auto; }
      table { border-collapse: collapse; width: 100%; min-width: 46rem; margin: .5rem 0 1.2rem; font-size: 9.5pt; }
      th, td { text-align: left; vertical-align: top; padding: .2rem .7rem .2rem 0; border-bottom: 1px solid #bbb; overflow-wrap: break-word; }
      th { border-bottom: 2px solid #111; }
      tr { break-inside: avoid; }
      td.alert { color: #a30000; font-weight: bold; }
      code { font-size: 9pt; }
      @media print { table { min-width: 0; } th, td { padding-right: .4rem; } }
      """;

  private final StringBuilder out = new StringBuilder(1 << 16);

  HtmlPage(String title) {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\"/>\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>").append(escaped(title))
        .append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
  }

  @Override
  public void heading(int level, String text) {
    out.append("<h").append(level).append('>').append(escaped(text)).append("</h").append(level).append(">\n");
  }

  @Override
  public void paragraph(String text) {
    out.append("<p>").append(escaped(text)).append("</p>\n");
  }

  @Override
  public void table(List<String> heads, List<List<String>> rows) {
    out.append("<div class=\"wide\"><table>\n<thead><tr>");
    heads.forEach(head -> out.append("<th scope=\"col\">").append(escaped(head)).append("</th>"));
    out.append("</tr></thead>\n<tbody>\n");
    for (List<String> row : rows) {
      out.append("<tr>");
      for (String cell : row) {
        boolean alert = cell.startsWith(ALERT);
        out.append(alert ? "<td class=\"alert\">" : "<td>").append(escaped(alert ? cell.substring(ALERT.length()) : cell)).append("</td>");
      }
      out.append("</tr>\n");
    }
    out.append("</tbody>\n</table></div>\n");
  }

  @Override
  public void list(List<String> items) {
    out.append("<ul>\n");
    items.forEach(item -> out.append("<li>").append(escaped(item)).append("</li>\n"));
    out.append("</ul>\n");
  }

  @Override
  public String end() {
    return out + "</main>\n</body>\n</html>\n";
  }

  /** Text of any origin; what stands between grave accents becomes code, whose names may go on in the next line. */
  private static String escaped(String text) {
    StringBuilder safe = new StringBuilder();
    boolean code = false;
    for (char c : text.toCharArray()) {
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '`' -> {
          safe.append(code ? "</code>" : "<code>");
          code = !code;
        }
        case '_', '.' -> safe.append(c).append(code ? "<wbr/>" : "");
        default -> safe.append(c);
      }
    }
    return code ? safe.append("</code>").toString() : safe.toString();
  }
}
