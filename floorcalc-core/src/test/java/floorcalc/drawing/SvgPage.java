package floorcalc.drawing;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** An SVG read back by a strict XML parser; its texts become boxes as a viewer would set them. */
final class SvgPage {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final Pattern ROTATE = Pattern.compile("rotate\\((\\S+) (\\S+) (\\S+)\\)");
  private static final Pattern CORNER = Pattern.compile("([ML])(-?[0-9.]+) (-?[0-9.]+)|Z");
  /** Heights of digits, which point, minus and plus keep within, and of other letters above and below the baseline, in em: DejaVu Sans 2.37, digits, H, g, j. */
  private static final double DIGIT_TOP = 0.742;
  private static final double DIGIT_BOTTOM = 0.014;
  private static final double TOP = 0.76;
  private static final double BOTTOM = 0.236;

  /** A text and the box that it is set in. */
  record Text(String text, double size, Polygon box) {
  }

  private final Element root;

  private SvgPage(Element root) {
    this.root = root;
  }

  static SvgPage parse(String svg) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setNamespaceAware(true);
      Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
      return new SvgPage(document.getDocumentElement());
    } catch (Exception e) {
      throw new AssertionError("not well-formed: " + e.getMessage(), e);
    }
  }

  Element root() {
    return root;
  }

  List<Element> all(String name) {
    NodeList nodes = root.getElementsByTagNameNS("*", name);
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }

  Element byId(String end) {
    return all("*").stream().filter(e -> e.getAttribute("id").endsWith(end)).findFirst()
        .orElseThrow(() -> new AssertionError("no element with an id that ends in " + end));
  }

  List<Text> texts() {
    return all("text").stream().map(SvgPage::text).toList();
  }

  List<Text> boardNumbers() {
    NodeList nodes = byId("-board-numbers").getElementsByTagNameNS("*", "text");
    List<Text> texts = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.add(text((Element) nodes.item(i)));
    }
    return texts;
  }

  /** Returns the pieces drawn one by one. */
  List<Element> pieces() {
    return all("path").stream().filter(e -> e.getAttribute("id").contains("-piece-")).toList();
  }

  List<String> words() {
    return texts().stream().map(Text::text).toList();
  }

  private static Text text(Element element) {
    String text = element.getTextContent();
    double size = Double.parseDouble(inherited(element, "font-size"));
    double x = Double.parseDouble(element.getAttribute("x"));
    double y = Double.parseDouble(element.getAttribute("y"));
    double width = Widths.of(text) * size;
    double left = switch (inherited(element, "text-anchor")) {
      case "middle" -> x - width / 2;
      case "end" -> x - width;
      default -> x;
    };
    boolean digits = text.chars().allMatch(c -> c >= '0' && c <= '9' || c == '.' || c == '-' || c == '+');
    double top = y - size * (digits ? DIGIT_TOP : TOP);
    double bottom = y + size * (digits ? DIGIT_BOTTOM : BOTTOM);
    Geometry box = ring(new Coordinate(left, top), new Coordinate(left + width, top),
        new Coordinate(left + width, bottom), new Coordinate(left, bottom));
    Matcher turn = ROTATE.matcher(element.getAttribute("transform"));
    if (turn.matches()) {
      box = AffineTransformation.rotationInstance(Math.toRadians(Double.parseDouble(turn.group(1))),
          Double.parseDouble(turn.group(2)), Double.parseDouble(turn.group(3))).transform(box);
    } else if (!element.getAttribute("transform").isEmpty()) {
      throw new AssertionError("unknown transform " + element.getAttribute("transform"));
    }
    return new Text(text, size, (Polygon) box);
  }

  private static String inherited(Element element, String name) {
    for (Node node = element; node instanceof Element e; node = node.getParentNode()) {
      if (e.hasAttribute(name)) {
        return e.getAttribute(name);
      }
    }
    return "";
  }

  /** Returns the area that closed path data encloses: the first ring less the others. */
  static Polygon area(Element path) {
    List<LinearRing> rings = new ArrayList<>();
    List<Coordinate> corners = new ArrayList<>();
    Matcher parts = CORNER.matcher(path.getAttribute("d"));
    while (parts.find()) {
      if (parts.group().equals("Z")) {
        corners.add(corners.get(0).copy());
        rings.add(JTS.createLinearRing(corners.toArray(Coordinate[]::new)));
        corners.clear();
      } else {
        corners.add(new Coordinate(Double.parseDouble(parts.group(2)), Double.parseDouble(parts.group(3))));
      }
    }
    return JTS.createPolygon(rings.get(0), rings.subList(1, rings.size()).toArray(LinearRing[]::new));
  }

  private static Polygon ring(Coordinate... corners) {
    Coordinate[] closed = new Coordinate[corners.length + 1];
    System.arraycopy(corners, 0, closed, 0, corners.length);
    closed[corners.length] = corners[0];
    return JTS.createPolygon(closed);
  }
}
