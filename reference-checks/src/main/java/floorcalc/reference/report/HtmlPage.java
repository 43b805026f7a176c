package floorcalc.reference.report;

import java.util.List;

/** A page as HTML, in one file, to be read on paper or on a screen. Not thread-safe. */
final class HtmlPage implements Page {
  private static final String STYLE = """
      @page { margin: 12mm; @bottom-right { content: "page " counter(page) " of " counter(pages); font: 8.5pt Helvetica, Arial, sans-serif; } }
      html { --ink: #111; --paper: #fff; --thin: #767676; --alert: #a30000; color-scheme: light;
        font: 10.5pt/1.4 Georgia, "Liberation Serif", serif; color: var(--ink); background: var(--paper); }
      body { max-width: 60rem; margin: 0 auto; padding: 1rem; }
      h1, h2, h3 { font-family: Helvetica, Arial, "Liberation Sans", sans-serif; line-height: 1.2; break-after: avoid; }
      h2 { margin-top: 2.5rem; border-top: 2px solid; padding-top: .4rem; }
      .wide { overflow-x: auto; }
      table { border-collapse: collapse; width: 100%; min-width: 46rem; margin: .5rem 0 1.2rem; font-size: 9.5pt; }
      th, td { text-align: left; vertical-align: top; padding: .2rem .7rem .2rem 0; border-bottom: 1px solid var(--thin); overflow-wrap: break-word; }
      thead th { border-bottom: 2px solid; }
      tbody th { font-weight: normal; }
      caption { text-align: left; font-weight: bold; padding: 0 0 .2rem; break-after: avoid; }
      tr, thead { break-inside: avoid; }
      thead { break-after: avoid; }
      a { color: inherit; display: inline-block; padding: .3rem 0; }
      summary { padding: .4rem 0; cursor: pointer; }
      nav ul { list-style: none; padding: 0; columns: 2 16rem; }
      .alert { color: var(--alert); font-weight: bold; }
      tbody th.alert { font-weight: bold; }
      code { font-size: 9pt; }
      @media print { table { min-width: 0; } th, td { padding-right: .4rem; } nav { display: none; } }
      @media screen and (prefers-color-scheme: dark) {
        html { --ink: #f0f0f0; --paper: #000; --thin: #8c8c8c; --alert: #ff9a8f; color-scheme: dark; }
      }
      @media (prefers-contrast: more) { html { --thin: var(--ink); } }
      """;

  private final StringBuilder out = new StringBuilder(1 << 16);
  private final StringBuilder contents = new StringBuilder();
  /** Where the list of parts goes: behind the page's own heading. */
  private int contentsAt;
  private int headings;
  /** The heading that tables are named after, and how many of them it has. */
  private String latest = "";
  private int tables;

  HtmlPage(String title) {
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"UTF-8\"/>\n")
        .append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>").append(escaped(title))
        .append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
    contentsAt = out.length();
  }

  @Override
  public void heading(int level, String text) {
    String id = "part-" + ++headings;
    out.append("<h").append(level).append(" id=\"").append(id).append("\">").append(escaped(text)).append("</h").append(level).append(">\n");
    if (level == 1) {
      contentsAt = out.length();
    } else {
      contents.append("<li><a href=\"#").append(id).append("\">").append(escaped(text)).append("</a></li>\n");
    }
    latest = text;
    tables = 0;
  }

  @Override
  public void paragraph(String text) {
    out.append("<p>").append(escaped(text)).append("</p>\n");
  }

  @Override
  public void table(List<String> heads, List<List<String>> rows) {
    tables++;
    out.append("<div class=\"wide\"><table>\n<caption>").append(escaped(latest)).append(tables == 1 ? "" : ", table " + tables)
        .append("</caption>\n<thead><tr>");
    heads.forEach(head -> out.append("<th scope=\"col\">").append(escaped(head)).append("</th>"));
    out.append("</tr></thead>\n<tbody>\n");
    for (List<String> row : rows) {
      out.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        String cell = row.get(i);
        String tag = i == 0 ? "th" : "td";
        boolean alert = cell.startsWith(ALERT);
        out.append('<').append(tag).append(i == 0 ? " scope=\"row\"" : "").append(alert ? " class=\"alert\">" : ">")
            .append(escaped(alert ? cell.substring(ALERT.length()) : cell)).append("</").append(tag).append('>');
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
    String list = contents.isEmpty() ? "" : "<nav aria-label=\"Parts of this page\"><details><summary>Parts of this page</summary>\n<ul>\n" + contents
        + "</ul>\n</details></nav>\n";
    return out.substring(0, contentsAt) + list + out.substring(contentsAt) + "</main>\n</body>\n</html>\n";
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
