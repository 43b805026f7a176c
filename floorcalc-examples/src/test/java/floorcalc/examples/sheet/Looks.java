package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/**
 * What a page or a drawing must have so that somebody who does not see it, or sees it on paper alone, gets all of it. Rules of the
 * Web Content Accessibility Guidelines 2.2 that hold without a browser: names, order, headers, contrast.
 */
final class Looks {
  private static final String DOCTYPE = "<!DOCTYPE html>";

  private Looks() {
  }

  static Document parse(String markup) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(
        markup.startsWith(DOCTYPE) ? markup.substring(DOCTYPE.length()).strip() : markup)));
  }

  static List<Element> all(Node in, String tag) {
    NodeList nodes = in instanceof Document document ? document.getElementsByTagName(tag) : ((Element) in).getElementsByTagName(tag);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  /** Ids stand once, and whatever refers to one finds it. */
  static void idsHold(Document document) {
    Set<String> ids = new HashSet<>();
    for (Element element : all(document, "*")) {
      if (element.hasAttribute("id")) {
        assertThat(element.getAttribute("id")).doesNotContainAnyWhitespaces();
        assertThat(ids.add(element.getAttribute("id"))).as("id %s stands once", element.getAttribute("id")).isTrue();
      }
    }
    for (Element element : all(document, "*")) {
      for (String name : new String[] {"aria-labelledby", "aria-describedby", "aria-controls", "for", "href"}) {
        for (String id : element.getAttribute(name).strip().split("\\s+")) {
          assertThat(id.isEmpty() || ids.contains(name.equals("href") ? id.substring(1) : id)).as("%s of <%s> finds %s", name, element.getTagName(), id)
              .isTrue();
        }
      }
    }
  }

  /** A page has a language, a title, one main part, one first heading, and no heading skips a level. */
  static void pageHolds(Document document) {
    assertThat(document.getDocumentElement().getAttribute("lang")).isEqualTo("en");
    assertThat(all(document, "title").get(0).getTextContent()).isNotBlank();
    assertThat(all(document, "main")).hasSize(1);
    int before = 0;
    int first = 0;
    for (Element element : all(document, "*")) {
      if (element.getTagName().matches("h[1-6]")) {
        int level = element.getTagName().charAt(1) - '0';
        assertThat(level).as(element.getTextContent()).isLessThanOrEqualTo(before + 1);
        assertThat(element.getTextContent()).isNotBlank();
        before = level;
        first += level == 1 ? 1 : 0;
      }
    }
    assertThat(first).isEqualTo(1);
    for (Element section : all(document, "section")) {
      assertThat(section.getAttribute("aria-labelledby")).as("a section is named by its heading").isNotEmpty();
    }
  }

  /** A table says what it holds, and each header whether it stands over a column or before a row; each row has as many cells as there are columns. */
  static void tablesHold(Document document) {
    for (Element table : all(document, "table")) {
      List<Element> captions = all(table, "caption");
      assertThat(captions).hasSize(1);
      assertThat(captions.get(0).getTextContent()).isNotBlank();
      String caption = captions.get(0).getTextContent();
      assertThat(all(table, "thead")).as(caption).hasSize(1);
      List<Element> headers = all(table, "th");
      assertThat(headers).as(caption).isNotEmpty().allMatch(th -> th.getAttribute("scope").matches("col|row|rowgroup"))
          .allMatch(th -> !th.getTextContent().isBlank());
      assertThat(headers.stream().filter(th -> th.getAttribute("scope").startsWith("row"))).as("%s: rows have headers", caption)
          .hasSizeGreaterThanOrEqualTo(all(table, "tbody").size());
      rowsAreFull(table, all(all(table, "thead").get(0), "th").size());
    }
  }

  private static void rowsAreFull(Element table, int columns) {
    int spanned = 0;
    for (Element row : all(table, "tr")) {
      int cells = spanned > 0 ? 1 : 0;
      spanned = Math.max(0, spanned - 1);
      for (Node node = row.getFirstChild(); node != null; node = node.getNextSibling()) {
        if (node instanceof Element cell) {
          cells += cell.hasAttribute("colspan") ? Integer.parseInt(cell.getAttribute("colspan")) : 1;
          spanned = cell.hasAttribute("rowspan") ? Integer.parseInt(cell.getAttribute("rowspan")) - 1 : spanned;
        }
      }
      assertThat(cells).as(row.getTextContent()).isEqualTo(columns);
    }
  }

  /** A drawing is a picture with a name and a description, in that order and first; or it is hidden from those who hear the page. */
  static void drawingsHold(Document document) {
    for (Element svg : all(document, "svg")) {
      if (svg.getAttribute("aria-hidden").equals("true")) {
        continue;
      }
      assertThat(svg.getAttribute("role")).isEqualTo("img");
      List<Element> first = all(svg, "*").subList(0, 2);
      assertThat(first.stream().map(Element::getTagName)).containsExactly("title", "desc");
      assertThat(first).allMatch(part -> !part.getTextContent().isBlank());
      assertThat(svg.getAttribute("aria-labelledby")).isEqualTo(first.get(0).getAttribute("id") + " " + first.get(1).getAttribute("id"));
      textsAreInside(svg);
    }
  }

  /** No text begins or ends beyond the paper; where the anchor is inside, the drawing's own measure of texts keeps the rest inside. */
  private static void textsAreInside(Element svg) {
    String[] box = svg.getAttribute("viewBox").split(" ");
    double width = Double.parseDouble(box[2]);
    double height = Double.parseDouble(box[3]);
    List<Element> shownInParts = all(svg, "defs").stream().flatMap(defs -> all(defs, "text").stream()).toList();
    for (Element text : all(svg, "text")) {
      if (shownInParts.contains(text)) {
        continue;
      }
      assertThat(Double.parseDouble(text.getAttribute("x"))).as(text.getTextContent()).isBetween(0.0, width);
      assertThat(Double.parseDouble(text.getAttribute("y"))).as(text.getTextContent()).isBetween(0.0, height);
    }
  }

  /** Each box to tick has a name of its own: a label round it, or one that is read out alone. */
  static void boxesHold(Document document) {
    for (Element input : all(document, "input")) {
      assertThat(input.getAttribute("type")).isEqualTo("checkbox");
      assertThat(((Element) input.getParentNode()).getTagName()).isEqualTo("label");
      assertThat(input.getParentNode().getTextContent().isBlank() && input.getAttribute("aria-label").isBlank()).isFalse();
    }
  }

  /** Contrast of two colours such as {@code #1a1a1a}: Web Content Accessibility Guidelines 2.2, definitions of relative luminance and contrast ratio. */
  static double contrast(String one, String other) {
    double lighter = Math.max(luminance(one), luminance(other));
    double darker = Math.min(luminance(one), luminance(other));
    return (lighter + 0.05) / (darker + 0.05);
  }

  private static double luminance(String colour) {
    String full = colour.length() == 4 ? colour.replaceAll("([0-9a-fA-F])", "$1$1") : colour;
    double[] share = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < share.length; i++) {
      double part = Integer.parseInt(full.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      sum += share[i] * (part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
