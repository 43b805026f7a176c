package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Docs;
import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.plan.Door;
import floorcalc.plan.Room;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Doors and pipes by the wall they are on. */
class PlacesOnWallsTest {
  private static final Point ORIGIN = Point.ofMillimetres(0, 0);

  private static Point point(String x, String y) {
    return Point.of(Length.ofMillimetres(x), Length.ofMillimetres(y));
  }

  private static byte[] job(String outline, String more) {
    return """
        {"format": "floorcalc-job/1", "title": "Invented",
         "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
         "rooms": [{"name": "Hall", "outline": %s, %s}]}
        """.formatted(outline, more).getBytes(StandardCharsets.UTF_8);
  }

  private static Room room(String outline, String more) {
    return JobReader.read(job(outline, more)).job().rooms().get(0);
  }

  @Test
  void doorAndPipeOfAWallOfAnOutline() {
    Room room = room("[[0, 0], [4000, 0], [4000, 3000], [0, 3000]]", """
        "doors": [{"name": "D1", "from": {"wall": 2, "at": 812}, "to": {"wall": 2, "at": "1.638 m"}},
                  {"name": "D2", "from": [0, 500], "to": {"wall": 4, "at": 1500}}],
        "pipes": [{"at": {"wall": 2, "at": 812, "off": 140}, "diameter": 22}]""");
    assertThat(room.doors().get(0)).extracting(Door::from, Door::to)
        .containsExactly(Point.ofMillimetres(4000, 812), Point.ofMillimetres(4000, 1638));
    // wall 4 comes down the left side: 1500 along it is at y = 3000 - 1500
    assertThat(room.doors().get(1).to()).isEqualTo(Point.ofMillimetres(0, 1500));
    // into the room is to the left of a wall that goes up: x = 4000 - 140
    assertThat(room.pipes().get(0).at()).isEqualTo(Point.ofMillimetres(3860, 812));
  }

  /** Walls keep the numbers in which they are given, and the room is where it is. */
  @Test
  void outlineListedTheOtherWayRound() {
    Room room = room("[[0, 0], [0, 3000], [4000, 3000], [4000, 0]]",
        "\"pipes\": [{\"at\": {\"wall\": 1, \"at\": 812, \"off\": 140}, \"diameter\": 22}]");
    assertThat(room.pipes().get(0).at()).isEqualTo(Point.ofMillimetres(140, 812));
  }

  /** A wall of 3-4-5: 2500 of 5000 mm along it, and 1000 mm square off it. */
  @Test
  void slantedWall() {
    Room room = room("[[0, 0], [4000, 3000], [0, 6000]]", """
        "doors": [{"name": "D1", "from": {"wall": 1, "at": 2500}, "to": {"wall": 1, "at": 5000}}],
        "pipes": [{"at": {"wall": 1, "at": 2500, "off": 1000}, "diameter": 22}]""");
    assertThat(room.doors().get(0)).extracting(Door::from, Door::to)
        .containsExactly(Point.ofMillimetres(2000, 1500), Point.ofMillimetres(4000, 3000));
    // (2000, 1500) + 1000 · (-3/5, 4/5)
    assertThat(room.pipes().get(0).at()).isEqualTo(Point.ofMillimetres(1400, 2300));
  }

  /** A room of 4000 by 3000 mm by its walls alone, taken as square: wall 4 comes down from (0, 3000). */
  @Test
  void surveyedRoom() {
    Room room = JobReader.read("""
        {"format": "floorcalc-job/1", "title": "Invented",
         "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
         "rooms": [{"name": "Hall", "survey": {"walls": [{"length": 4000}, {"length": 3000}, {"length": 4000}, {"length": 3000}]},
           "doors": [{"name": "D1", "from": {"wall": 4, "at": 1200}, "to": {"wall": 4, "at": 2026}}],
           "pipes": [{"at": {"wall": 4, "at": 500, "off": 140}, "diameter": 22}]}]}
        """.getBytes(StandardCharsets.UTF_8)).job().rooms().get(0);
    assertThat(room.outline()).isEqualTo(Outline.of(Ring.of(ORIGIN, point("4000", "0"), point("4000", "3000"), point("0", "3000"))));
    assertThat(room.doors().get(0)).extracting(Door::from, Door::to)
        .containsExactly(Point.ofMillimetres(0, 1800), Point.ofMillimetres(0, 974));
    assertThat(room.pipes().get(0).at()).isEqualTo(Point.ofMillimetres(140, 2500));
  }

  @Test
  void theSchemaTakesBothForms() throws Exception {
    assertThat(Docs.faultsOfJob(job("[[0, 0], [4000, 0], [4000, 3000]]", """
        "doors": [{"name": "D1", "from": {"wall": 2, "at": 812}, "to": [4000, 1638]}],
        "pipes": [{"at": {"wall": 2, "at": "2 ft", "off": "1 in"}, "diameter": 22}]"""))).isEmpty();
    assertThat(Docs.faultsOfJob(job("[[0, 0], [4000, 0], [4000, 3000]]", """
        "doors": [{"name": "D1", "from": {"wall": 2, "at": 812, "off": 3}, "to": [4000, 1638]}]"""))).isNotEmpty();
  }

  /** A niche of 60 mm from 1000 to 1500, and a bow of 20 mm that peaks at 3000, in a wall of 4000 mm. */
  @Test
  void wallWhoseFaceStandsOffItsLine() {
    Ring ring = Ring.of(ORIGIN, point("1000", "0"), point("1000", "-60"), point("1500", "-60"), point("1500", "0"),
        point("2000", "0"), point("3000", "20"), point("4000", "0"), point("4000", "3000"), point("0", "3000"));
    NumberedWalls walls = NumberedWalls.of(ring, List.of(ORIGIN, point("4000", "0"), point("4000", "3000"), point("0", "3000")),
        List.of(Length.ofMillimetres(4001), Length.ofMillimetres(2999), Length.ofMillimetres(4000), Length.ofMillimetres(3000)));
    assertThat(walls.count()).isEqualTo(4);
    assertThat(walls.at(1, Length.ofMillimetres(500), Length.ZERO)).isEqualTo(point("500", "0"));
    assertThat(walls.at(1, Length.ofMillimetres(1200), Length.ZERO)).isEqualTo(point("1200", "-60"));
    assertThat(walls.at(1, Length.ofMillimetres(1200), Length.ofMillimetres(100))).isEqualTo(point("1200", "40"));
    // 500 of the 1000 mm on which the bow rises by 20 mm
    assertThat(walls.at(1, Length.ofMillimetres(2500), Length.ZERO)).isEqualTo(point("2500", "10"));
    assertThat(walls.at(2, Length.ofMillimetres(700), Length.ZERO)).isEqualTo(point("4000", "700"));
  }

  /** A tape reading at the end of a wall is its end, whatever all measurements together make of its length. */
  @Test
  void endOfAMeasuredWall() {
    Ring ring = Ring.of(ORIGIN, point("4000", "0"), point("4000", "3000"));
    NumberedWalls walls = NumberedWalls.of(ring, ring.corners(),
        List.of(Length.ofMillimetres(4001), Length.ofMillimetres(2999), Length.ofMillimetres(5000)));
    assertThat(walls.reach(1)).isEqualTo(Length.ofMillimetres(4001));
    assertThat(walls.at(1, Length.ofMillimetres(4001), Length.ZERO)).isEqualTo(point("4000", "0"));
    assertThat(walls.reach(2)).isEqualTo(Length.ofMillimetres(3000));
    assertThat(walls.at(2, Length.ofMillimetres(3000), Length.ZERO)).isEqualTo(point("4000", "3000"));
  }
}
