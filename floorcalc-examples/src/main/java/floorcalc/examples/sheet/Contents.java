package floorcalc.examples.sheet;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The list of the sheet's parts, made from their headings, so that it holds all of them in their order. */
final class Contents {
  private static final Pattern HEADING = Pattern.compile("<h2 id=\"([^\"]*)\">(.*?)</h2>", Pattern.DOTALL);

  private Contents() {
  }

  /** Returns the list as markup; the parts are markup of ours, in which text of any origin is escaped. */
  static String of(String parts) {
    StringBuilder list = new StringBuilder("<nav class=\"contents\" aria-label=\"Parts of this sheet\">\n<ul>\n");
    Matcher heading = HEADING.matcher(parts);
    while (heading.find()) {
      list.append("<li><a href=\"#").append(heading.group(1)).append("\">").append(heading.group(2).strip()).append("</a></li>\n");
    }
    return list.append("</ul>\n</nav>\n").toString();
  }
}
