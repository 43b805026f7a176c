package floorcalc.underlay;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RollOrderTest {
  private static final RollGoods METRE = RollGoods.underlay("foam", mm(1000), mm(15_000));

  private static Length mm(long millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Outline rectangle(long width, long depth) {
    return Wkt.parse("POLYGON ((0 0, " + width + " 0, " + width + " " + depth + ", 0 " + depth + ", 0 0))");
  }

  private static CoveredRoom room(String name, long width, long depth) {
    return CoveredRoom.bothWays(name, rectangle(width, depth), Direction.ALONG_X);
  }

  private static Calculated<RollOrder> ordered(RollGoods roll, CoveredRoom... rooms) {
    Calculated<RollOrder> order = RollOrder.of(roll, List.of(rooms));
    assertStepsHold(order);
    assertThat(order.value().rollsAtLeast()).isLessThanOrEqualTo(order.value().rolls());
    return order;
  }

  @Test
  void theBetterOfTwoDirections() {
    // along x four strips of 4200, three to a roll of 15 000: 2 rolls; along y five of 3600, four to a roll: 2 rolls.
    // Seams 12 600 against 14 400: along x. By length 16 800 / 15 000: at least 2
    RollOrder order = ordered(METRE, room("Study", 4200, 3600)).value();
    assertThat(order.rolls()).isEqualTo(2);
    assertThat(order.rollsAtLeast()).isEqualTo(2);
    assertThat(order.isProvenFewest()).isTrue();
    assertThat(order.layouts().get(0).direction()).isEqualTo(Direction.ALONG_X);
    assertThat(order.seamLength()).isEqualTo(mm(12_600));
    assertThat(order.edgeLength()).isEqualTo(mm(15_600));
    assertThat(order.boughtArea()).hasToString("30 m²");
    // fewer rolls come before less seam: 7600 x 3100 along x is 4 * 7600, one to a roll of 15 000: 4 rolls;
    // along y 8 * 3100, four to a roll: 2 rolls
    RollOrder fewer = ordered(METRE, room("Hall", 7600, 3100)).value();
    assertThat(fewer.rolls()).isEqualTo(2);
    assertThat(fewer.layouts().get(0).direction().degrees()).isEqualTo(90);
  }

  @Test
  void oneDirectionIfNoOtherIsAllowed() {
    RollOrder order = ordered(METRE, CoveredRoom.oneWay("Hall", rectangle(7600, 3100), Direction.ALONG_X)).value();
    assertThat(order.rolls()).isEqualTo(4);
  }

  @Test
  void theRestOfARollServesTheNextRoom() {
    // 2 * 6000 of a roll leave 3000, which is the closet's strip: each alone takes 1 roll, both together 1
    RollOrder order = ordered(METRE, room("Hall", 6000, 2000), room("Closet", 3000, 1000)).value();
    assertThat(order.rolls()).isEqualTo(1);
    assertThat(order.netArea()).hasToString("15 m²");
  }

  @Test
  void roomsAreTurnedTogether() {
    // Alone the hall of 5000 x 4000 takes 2 rolls either way: four strips of 5000, or five of 4000 in which three fill a roll; the
    // first has less seam, 15 000 against 16 000. The closet of 3000 x 3000 takes 9000. Four 5000 and three 3000 are 29 000, in two
    // rolls only as 15 000 + 14 000: 3 * 5000, and 5000 + 3 * 3000
    RollOrder order = ordered(METRE, room("Hall", 5000, 4000), room("Closet", 3000, 3000)).value();
    assertThat(order.rolls()).isEqualTo(2);
    assertThat(order.isProvenFewest()).isTrue();
    // Kitchen 4000 x 4000: four of 4000. With three of 3400 (3400 x 3000 along x) 26 200, but of 15 000 three 4000 leave 3000:
    // 4000 * 3, then 4000 + 3 * 3400 = 14 200: two rolls
    assertThat(ordered(METRE, room("Kitchen", 4000, 4000), room("Store", 3400, 3000)).value().rolls()).isEqualTo(2);
  }

  @Test
  void workingSpeaksOfRolls() {
    String working = ordered(METRE, room("Study", 4200, 3600)).explain();
    assertThat(working).contains("rolls-by-length: How many rolls do the pieces").doesNotContain(" bar")
        .contains("over-net: How much more is bought than the floors measure");
  }

  @Test
  void manyDifferentLengthsAreRounded() {
    // a taper of 0.1 mm per strip of 50 mm, in 600 strips: 600 lengths, of which 500 are allowed; to whole mm they are about 60
    RollGoods narrow = RollGoods.underlay("narrow", mm(50), mm(15_000));
    Outline taper = Wkt.parse("POLYGON ((0 0, 1000 0, 1060 30000, 0 30000, 0 0))");
    Calculated<RollOrder> order = ordered(narrow, CoveredRoom.oneWay("Ramp", taper, Direction.ALONG_X));
    assertThat(order.findings()).extracting(Finding::code).contains("strip-lengths-rounded");
    List<Length> cut = new ArrayList<>();
    order.value().cutting().bars().forEach(bar -> bar.pieces().forEach(piece -> cut.add(piece.length())));
    assertThat(cut).hasSize(600).allMatch(length -> length.remainder(mm(1)).isZero());
  }

  @Test
  void nothingToCoverIsRefused() {
    assertThatThrownBy(() -> RollOrder.of(METRE, List.of())).isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no floor to cover; give at least one");
  }
}
