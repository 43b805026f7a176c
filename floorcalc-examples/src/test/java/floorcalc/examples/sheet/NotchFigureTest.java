package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.examples.job.Tape;
import floorcalc.finishing.CutOuts;
import floorcalc.finishing.PieceCut;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Point;
import floorcalc.outline.Wkt;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The room of the page on fittings: a column that notches rows 2 and 4, a pipe near the start of row 1. */
class NotchFigureTest {
  private static final Pattern TEXT = Pattern.compile("<text x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" font-size=\"([0-9.]+)\""
      + " text-anchor=\"(\\w+)\"( transform[^>]*)?>([^<]*)</text>");
  private static final Pattern BOX = Pattern.compile("viewBox=\"0 0 ([0-9.]+) ([0-9.]+)\"");

  private static CutOuts cutOuts() {
    BoardGoods goods = BoardGoods.of(Length.parse("2.2 m"), Length.parse("185 mm"), Length.parse("14 mm"), 6);
    Room room = Room.of("Study", Wkt.parse("POLYGON ((0 0, 4000 0, 4000 3145, 0 3145, 0 0),"
        + " (1500 350, 1900 350, 1900 550, 1500 550, 1500 350))"))
        .withPipes(List.of(new Pipe(Point.ofMillimetres(60, 100), Length.parse("22 mm"))));
    FloorJob job = FloorJob.of("A column and a pipe (invented)", goods).direction(DirectionChoice.of(Direction.ALONG_X)).room(room)
        .build();
    return CutOuts.of(job, FloorPlanner.plan(job)).value();
  }

  private static List<String> figures(String svg) {
    return TEXT.matcher(svg).results().map(text -> text.group(6)).toList();
  }

  @Test
  void placesFromStartEndAndStartEdgeStandAtTheDrawing() {
    CutOuts cuts = cutOuts();
    // the hole 50 from the end and 90 from the edge, on a row of 165 mm
    assertThat(figures(NotchFigure.of(new Figures(Tape.METRIC), cuts.of("study-1.1.1").orElseThrow())))
        .contains("50", "90", "165");
    // the notch of row 2: 20 of 185 mm deep, so its bottom is at 165; 1063 to 1483 along
    assertThat(figures(NotchFigure.of(new Figures(Tape.METRIC), cuts.of("study-1.2.2").orElseThrow())))
        .contains("1063", "1483", "165", "185");
  }

  @Test
  void figuresOverlapNeitherEachOtherNorTheEdge() {
    for (Tape tape : List.of(Tape.METRIC, Tape.FEET_AND_INCHES)) {
      for (PieceCut cut : cutOuts().pieces()) {
        String svg = NotchFigure.of(new Figures(tape), cut);
        MatchResult box = BOX.matcher(svg).results().findFirst().orElseThrow();
        List<double[]> boxes = new ArrayList<>();
        for (MatchResult text : TEXT.matcher(svg).results().toList()) {
          double size = Double.parseDouble(text.group(3));
          double width = 0.56 * size * text.group(6).replace("&quot;", "\"").replace("&#39;", "'").length();
          double x = Double.parseDouble(text.group(1));
          double y = Double.parseDouble(text.group(2));
          assertThat(text.group(5)).isNull();
          double left = text.group(4).equals("middle") ? x - width / 2 : x;
          assertThat(left).isNotNegative();
          assertThat(left + width).isLessThanOrEqualTo(Double.parseDouble(box.group(1)));
          assertThat(y).isLessThanOrEqualTo(Double.parseDouble(box.group(2)));
          for (double[] other : boxes) {
            assertThat(left >= other[2] || left + width <= other[0] || y - 0.72 * size >= other[3] || y <= other[1])
                .as(svg).isTrue();
          }
          boxes.add(new double[] {left, y - 0.72 * size, left + width, y});
        }
        assertThat(boxes).hasSizeGreaterThan(2);
      }
    }
  }

  @Test
  void placesRiseAlongTheBoardAndPlainStretchesAreShortened() {
    List<Length> places = List.of(Length.ZERO, Length.parse("50 mm"), Length.parse("92 mm"), Length.parse("2200 mm"));
    BoardScale scale = BoardScale.of(places, 0.1, 100);
    // 5 mm, 4.2 mm, and 26 mm in place of 210.8
    assertThat(places.stream().map(scale::at)).containsExactly(0.0, 5.0, 9.2, 35.2);
    assertThat(scale.at(Length.parse("25 mm"))).isEqualTo(2.5);
    assertThat(scale.breaks()).containsExactly((9.2 + 35.2) / 2);
    assertThat(BoardScale.of(places, 0.1, 17.6).length()).isEqualTo(17.6);
  }
}
