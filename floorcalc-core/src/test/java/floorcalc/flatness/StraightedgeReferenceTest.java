package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.measure.Length;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Gaps on a measured slab, placement by placement; the slab is that of the worksheet named at the head of
 * {@code e1155_slac_elevations.csv}, the gaps were worked out apart from this library, printed to 0.0001 mm.
 */
@Tag("reference")
class StraightedgeReferenceTest {
  private static final Offset<Double> HALF_OF_LAST_DIGIT = within(0.00005 + 1e-12);

  @ParameterizedTest(name = "line {0}, {1} mm from point {2}")
  @CsvFileSource(resources = "/reference/slac_straightedge_placements_computed.csv", useHeadersInDisplayName = true)
  void everyPlacement(int line, String span, int startPoint, String left, String right, double gravityGap, String rocks,
      double hullGap) {
    Profile profile = Slac.line(line);
    EdgePlacement placement = Straightedge.of(Length.ofMillimetres(span)).atReadings(profile).get(startPoint);

    assertThat(placement.start()).isEqualTo(profile.reading(startPoint).place());
    assertThat(outermost(placement)).containsExactly(Length.ofMillimetres(left), Length.ofMillimetres(right));
    assertThat(placement.gravity().gap().toMillimetres()).isCloseTo(gravityGap, HALF_OF_LAST_DIGIT);
    assertThat(placement.isTipping()).isEqualTo(rocks.equals("yes"));
    assertThat(placement.worst().gap().toMillimetres()).isCloseTo(hullGap, HALF_OF_LAST_DIGIT);
  }

  @ParameterizedTest(name = "line {0}, {1} mm")
  @CsvFileSource(resources = "/reference/slac_straightedge_computed.csv", useHeadersInDisplayName = true)
  void greatestOfAllPlacementsAtReadings(int line, String span, double gravityGap, int startPoint, String left,
      String right, double hullGap) {
    Profile profile = Slac.line(line);
    Straightedge edge = Straightedge.of(Length.ofMillimetres(span));
    List<EdgePlacement> placements = edge.atReadings(profile);
    EdgePlacement greatest = placements.get(startPoint);
    for (EdgePlacement placement : placements) {
      assertThat(placement.gravity().gap()).isLessThanOrEqualTo(greatest.gravity().gap());
    }

    assertThat(greatest.gravity().gap().toMillimetres()).isCloseTo(gravityGap, HALF_OF_LAST_DIGIT);
    assertThat(outermost(greatest)).containsExactly(Length.ofMillimetres(left), Length.ofMillimetres(right));
    assertThat(placements.stream().map(placement -> placement.worst().gap()).reduce(Length.ZERO, Length::max)
        .toMillimetres()).isCloseTo(hullGap, HALF_OF_LAST_DIGIT);
    assertThat(edge.greatest(profile, RestRule.GRAVITY).gap()).isGreaterThanOrEqualTo(greatest.gravity().gap());
    assertThat(edge.greatest(profile, RestRule.WORST).gap().toMillimetres()).isGreaterThanOrEqualTo(hullGap - 0.00005);
  }

  /** Where the floor touches the edge in three points in line, as it does four times here, the files name the outer two. */
  private static List<Length> outermost(EdgePlacement placement) {
    List<EdgeRest> rests = placement.rests();
    int from = rests.indexOf(placement.gravity());
    int to = from;
    while (from > 0 && isInLine(rests.get(from - 1), placement.gravity())) {
      from--;
    }
    while (to + 1 < rests.size() && isInLine(rests.get(to + 1), placement.gravity())) {
      to++;
    }
    return List.of(rests.get(from).left().place(), rests.get(to).right().place());
  }

  private static boolean isInLine(EdgeRest one, EdgeRest other) {
    return rise(one).times(other.contactDistance()).equals(rise(other).times(one.contactDistance()));
  }

  private static Length rise(EdgeRest rest) {
    return rest.right().height().minus(rest.left().height());
  }
}
