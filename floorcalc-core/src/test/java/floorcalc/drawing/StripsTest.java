package floorcalc.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.boards.BoardGoods;
import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Wkt;
import floorcalc.plan.Bay;
import floorcalc.plan.DirectionChoice;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.OpenedBoard;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripsTest {
  private static final Pattern WINDOW = Pattern.compile("viewBox=\"([\\d.]+) ([\\d.]+) ([\\d.]+) ([\\d.]+)\"><use");
  private static final Pattern NUMBER = Pattern.compile("<text x=\"([\\d.]+)\" y=\"([\\d.]+)\" font-size=\"[\\d.]+\"[^>]*>(\\d+)</text>");

  /** A corridor that is long enough for strips is not to be split. */
  private static final LayingRules ONE_BAY = RuleSet.COMMON_PRACTICE.forBoard(Length.ofMillimetres(14), Length.ofMillimetres(185))
      .with(LayingRules.MAXIMUM_RUN_ALONG, Length.ofMillimetres(200_000), Source.GIVEN)
      .with(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(200_000), Source.GIVEN)
      .with(LayingRules.DEEPEST_RECESS, Length.ofMillimetres(200_000), Source.GIVEN);

  private static FloorJob job(String room, double degrees) {
    BoardGoods goods = BoardGoods.of(Length.ofMillimetres(2200), Length.ofMillimetres(185), Length.ofMillimetres(14), 6);
    return FloorJob.of("Invented corridor", goods).room(Room.of("Corridor", Wkt.parse("POLYGON ((" + room + "))")))
        .direction(DirectionChoice.of(Direction.fromDegrees(degrees))).rules(ONE_BAY).build();
  }

  private static List<FloorDrawing> parts(FloorJob job, FloorPlan plan) {
    Bay bay = plan.bays().get(0);
    return FloorDrawing.parts(job, plan, bay, Measures.MILLIMETRES);
  }

  /** Four digits of the largest size for board numbers, 2.8 mm, are 7.2 mm long: half of that on either side. */
  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "0 0, 60000 0, 60000 1900, 41000 1900, 41000 2600, 36000 2600, 36000 1900, 0 1900, 0 0 | 0",
      "0 0, 1300 0, 1300 90000, 0 90000, 0 0 | 90", "0 0, 60000 0, 60000 1100, 1100 1100, 1100 20000, 0 20000, 0 0 | 0"})
  void everyBoardsNumberCanBeReadWholeInSomeStrip(String room, double degrees) {
    FloorJob job = job(room, degrees);
    FloorPlan plan = FloorPlanner.plan(job);
    List<FloorDrawing> parts = parts(job, plan);

    assertThat(parts).hasSizeBetween(2, 30);
    List<double[]> windows = new ArrayList<>();
    for (FloorDrawing part : parts) {
      Matcher window = WINDOW.matcher(part.toSvg());
      while (window.find()) {
        windows.add(new double[] {d(window, 1), d(window, 2), d(window, 3), d(window, 4)});
      }
    }
    Set<Integer> read = new HashSet<>();
    Matcher number = NUMBER.matcher(parts.get(0).toSvg());
    while (number.find()) {
      double x = d(number, 1);
      double y = d(number, 2);
      if (windows.stream().anyMatch(w -> x - 3.6 > w[0] && x + 3.6 < w[0] + w[2] && y - 3.6 > w[1] && y + 3.6 < w[1] + w[3])) {
        read.add(Integer.parseInt(number.group(3)));
      }
    }
    assertThat(read).containsAll(plan.boards().stream().map(OpenedBoard::board).toList());
  }

  private static double d(Matcher found, int group) {
    return Double.parseDouble(found.group(group));
  }

  @Test
  void eachSheetStandsByItself() {
    FloorJob job = job("0 0, 60000 0, 60000 1900, 0 1900, 0 0", 0);
    FloorPlan plan = FloorPlanner.plan(job);
    Set<String> names = new HashSet<>();
    for (FloorDrawing part : parts(job, plan)) {
      SvgPage page = SvgPage.parse(part.toSvg());
      assertThat(page.root().getAttribute("aria-labelledby")).startsWith("bay-corridor-1-parts-");
      assertThat(names.add(page.root().getAttribute("aria-labelledby"))).isTrue();
      assertThat(part.paperWidth()).isEqualTo(FloorDrawing.LYING_WIDTH);
      assertThat(part.paperHeight()).isLessThanOrEqualTo(Length.ofMillimetres(184));
      Matcher use = Pattern.compile("<use href=\"#([^\"]+)\"").matcher(part.toSvg());
      assertThat(use.find()).isTrue();
      assertThat(part.toSvg()).contains("id=\"" + use.group(1) + "\"");
    }
  }

  @Test
  void aRoomThatFitsItsSheetHasNoParts() {
    FloorJob job = job("0 0, 5000 0, 5000 4000, 0 4000, 0 0", 0);
    assertThat(parts(job, FloorPlanner.plan(job))).isEmpty();
  }

  @Test
  void lengthsInFeetAndInches() {
    FloorJob job = job("0 0, 3657.6 0, 3657.6 3048, 0 3048, 0 0", 0);
    FloorPlan plan = FloorPlanner.plan(job);

    String svg = FloorDrawing.of(job, plan, plan.bays().get(0), Measures.FEET_AND_INCHES).toSvg().replace("&#39;", "'")
        .replace("&quot;", "\"");

    // 3657.6 mm is 12 ft, 3048 mm is 10 ft, 10 mm is 0.3937 in: to a sixteenth 6/16.
    assertThat(svg).contains(">12' 0\" (3658)<", ">10' 0\" (3048)<", "lengths in feet and inches to 1/16",
        "Expansion gap 3/8\" (10 mm)", " ft</text>");
  }
}
