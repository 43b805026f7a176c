package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;
import org.w3c.dom.Element;

/** What holds for the texts of every drawing. */
final class DrawingChecks {
  /** Two places of a number's box are rounded to hundredths on paper, so its box is at most this much off. */
  private static final double ROUNDING = 0.011;
  private static final Pattern FROM_BOARD = Pattern.compile("from board (\\d+)$");
  private static final Pattern LEFT_OUT = Pattern
      .compile("Pieces too small for a number, row by row, with their boards: ([^.]*)\\.");
  private static final Pattern MORE = Pattern.compile(" and (\\S+) more$");

  private DrawingChecks() {
  }

  static void textsNeverCollide(SvgPage page) {
    textsKeepApart(page);
    Polygon walls = SvgPage.area(page.byId("-walls"));
    Geometry faces = walls.getExteriorRing();
    if (page.all("path").stream().anyMatch(path -> path.getAttribute("id").endsWith("-frame"))) {
      // Walls outside the frame's opening are covered: they are left out where only the surroundings of a bay are drawn.
      faces = faces.intersection(SvgPage.area(page.byId("-frame")).getInteriorRingN(0).getEnvelope());
    }
    for (SvgPage.Text text : page.texts()) {
      assertThat(faces.intersects(text.box())).as("'%s' stands on a wall", text.text()).isFalse();
    }
  }

  static void textsKeepApart(SvgPage page) {
    STRtree tree = new STRtree();
    List<SvgPage.Text> texts = page.texts();
    texts.forEach(text -> tree.insert(text.box().getEnvelopeInternal(), text));
    for (SvgPage.Text text : texts) {
      for (Object near : tree.query(text.box().getEnvelopeInternal())) {
        SvgPage.Text other = (SvgPage.Text) near;
        if (other != text && other.box().intersects(text.box())) {
          assertThat(other.box().intersection(text.box()).getArea())
              .as("'%s' and '%s' overlap", text.text(), other.text()).isLessThan(1e-6);
        }
      }
    }
  }

  static void textsLieOnTheSheet(SvgPage page) {
    String[] view = page.root().getAttribute("viewBox").split(" ");
    Envelope sheet = new Envelope(0, Double.parseDouble(view[2]), 0, Double.parseDouble(view[3]));
    assertThat(page.texts()).allSatisfy(text -> {
      assertThat(sheet.contains(text.box().getEnvelopeInternal())).as("'%s' on the sheet", text.text()).isTrue();
      assertThat(text.size()).as("size of '%s'", text.text()).isGreaterThanOrEqualTo(1.9);
    });
  }

  /** Each number lies in a piece that comes from that board; each piece has its number in it or in the note. */
  static void numbersLieInTheirPieces(SvgPage page) {
    STRtree tree = new STRtree();
    List<Element> pieces = page.pieces();
    for (Element piece : pieces) {
      Polygon area = SvgPage.area(piece);
      tree.insert(area.getEnvelopeInternal(), new Object[] {area, board(piece)});
    }
    List<SvgPage.Text> numbers = page.boardNumbers();
    for (SvgPage.Text number : numbers) {
      boolean inside = false;
      for (Object near : tree.query(number.box().getEnvelopeInternal())) {
        Object[] piece = (Object[]) near;
        inside |= number.text().equals(piece[1])
            && ((Polygon) piece[0]).buffer(ROUNDING).contains(number.box());
      }
      assertThat(inside).as("number %s lies in a piece from that board", number.text()).isTrue();
    }
    if (!numbers.isEmpty()) {
      assertThat(numbers.size() + leftOut(page)).as("numbered and listed pieces").isEqualTo(pieces.size());
    }
  }

  private static String board(Element piece) {
    Matcher tip = FROM_BOARD.matcher(piece.getElementsByTagNameNS("*", "title").item(0).getTextContent());
    assertThat(tip.find()).isTrue();
    return tip.group(1);
  }

  private static int leftOut(SvgPage page) {
    Matcher note = LEFT_OUT.matcher(String.join(" ", page.words()));
    if (!note.find()) {
      return 0;
    }
    String list = note.group(1);
    Matcher more = MORE.matcher(list);
    int further = more.find() ? Integer.parseInt(more.group(1)) : 0;
    return MORE.matcher(list).replaceAll("").split("[,;]").length + further;
  }
}
