package floorcalc.examples.sheet;

import floorcalc.measure.PlainNumber;
import java.util.List;

/** Writes HTML; every text that comes from outside is escaped on its way in. Not thread-safe. */
final class Html {
  private final StringBuilder out = new StringBuilder(1 << 16);

  /** Markup of ours. */
  Html raw(String markup) {
    out.append(markup);
    return this;
  }

  /** A line of markup of ours. */
  Html line(String markup) {
    out.append(markup).append('\n');
    return this;
  }

  /** Text of any origin. */
  Html text(String text) {
    out.append(escaped(text));
    return this;
  }

  /** Text of any origin whose direction of writing is kept to itself. */
  Html name(String text) {
    out.append("<bdi>").append(escaped(text)).append("</bdi>");
    return this;
  }

  /** An element that holds a text alone. */
  Html element(String tag, String text) {
    String name = tag.contains(" ") ? tag.substring(0, tag.indexOf(' ')) : tag;
    out.append('<').append(tag).append('>').append(escaped(text)).append("</").append(name).append('>');
    return this;
  }

  /** The widths of a table's columns, in parts of the whole. */
  Html columns(String parts) {
    int sum = 0;
    for (String part : parts.split(" ")) {
      sum += Integer.parseInt(part);
    }
    out.append("<colgroup>");
    for (String part : parts.split(" ")) {
      out.append("<col style=\"width:").append(PlainNumber.text(Integer.parseInt(part) * 1000 / sum / 10.0)).append("%\"/>");
    }
    out.append("</colgroup>\n");
    return this;
  }

  /** The head of a table, one column each. */
  Html heads(List<String> columns) {
    out.append("<thead><tr>");
    for (String column : columns) {
      element("th scope=\"col\"", column);
    }
    out.append("</tr></thead>\n");
    return this;
  }

  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> safe.append("&amp;");
        case '<' -> safe.append("&lt;");
        case '>' -> safe.append("&gt;");
        case '"' -> safe.append("&quot;");
        case '\'' -> safe.append("&#39;");
        default -> safe.append(c >= ' ' || c == '\n' || c == '\t' ? c : '\uFFFD');
      }
    }
    return safe.toString();
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
