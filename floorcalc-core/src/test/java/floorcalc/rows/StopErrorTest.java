package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Stops that were measured to within an error of their own. */
class StopErrorTest {
  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }

  private static Calculated<StartLine> choose(RowWay way, Stop... stops) {
    return StartLine.choose(List.of(stops), Length.ZERO, mm("185"), mm("70"), way);
  }

  @Test
  void everyStripKeepsTheMinimumWithinTheErrors() {
    // 3735 = 20 * 185 + 35. With 4 mm of doubt the last row is planned 74 wide: the first is 185 + 35 - 74 = 146
    Calculated<StartLine> line = choose(RowWay.LEAST_CUT, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorBelow("wall 3", mm("3735")).within(mm("4")));
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("146"));
    assertThat(line.value().strips().get(1).width()).isEqualTo(mm("74"));
    assertThat(line.value().strips().get(1).certain()).isEqualTo(mm("70"));
    assertThat(line.value().narrowestStrip()).isEqualTo(mm("70"));
    assertThat(line.findings()).isEmpty();
    assertStepsHold(line);
    assertThat(line.explain()).contains("""
        strip-below: How wide is the narrowest strip below a stop, at wall 3, wherever within its error the stop lies?
          s = h - w1 - k * p - e
        """, "e = 4 mm  (measuring error of the stop, plus or minus)");
  }

  @Test
  void errorsOfItsOwnWeighMoreThanTheMiddle() {
    // shared 185 + 35 = 220; equally certain strips: f = 220 - f - 10, so f = 105 and the last row 115 +- 10
    StartLine line = choose(RowWay.WIDEST_STRIP, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorBelow("wall 3", mm("3735")).within(mm("10"))).value();
    assertThat(line.firstRowWidth()).isEqualTo(mm("105"));
    assertThat(line.strips()).extracting(Strip::certain).containsExactly(mm("105"), mm("105"));
  }

  @Test
  void exactFitIsNoLongerTakenForAFullBoard() {
    Calculated<StartLine> line = choose(RowWay.LEAST_CUT, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorBelow("wall 3", mm("3700")).within(mm("3")));
    // 3700 = 20 * 185: the first and the last row share 185. The last must be 70 and 3 of doubt, so the first is 112
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("112"));
    assertThat(line.value().strips().get(1)).isEqualTo(new Strip(Stop.floorBelow("wall 3", mm("3700")).within(mm("3")),
        mm("73"), mm("70")));
    assertThat(line.findings()).isEmpty();
  }

  @Test
  void stripOfTheMinimumThatMayBeLessIsSaid() {
    // strips f, f - 60 and 208 - f; with 2 and 5 of doubt the middle of 62 and 203 is 132.5, with 70.5 for certain
    Calculated<StartLine> kept = choose(RowWay.AS_NEEDED, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorAbove("step", mm("60")).within(mm("2")), Stop.floorBelow("wall 3", mm("208")).within(mm("5")));
    assertThat(kept.value().firstRowWidth()).isEqualTo(mm("132.5"));
    assertThat(kept.value().narrowestStrip()).isEqualTo(mm("70.5"));
    assertThat(kept.findings()).isEmpty();
    // 7 of doubt at the step: the middle of 67 and 203 is 135, 68 for certain, 75 and 73 as measured
    Calculated<StartLine> less = choose(RowWay.AS_NEEDED, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorAbove("step", mm("60")).within(mm("7")), Stop.floorBelow("wall 3", mm("208")).within(mm("5")));
    assertThat(less.value().firstRowWidth()).isEqualTo(mm("135"));
    assertThat(less.findings()).extracting(Finding::code).containsExactly("narrow-within-error", "narrow-within-error");
    assertThat(less.findings().get(0).message()).isEqualTo("as measured the strip is 75 mm; if the floor ends 7 mm sooner it is"
        + " 68 mm, if 7 mm later 82 mm; at least 70 mm is asked for: measure again before the first row is ripped");
    assertStepsHold(less);
  }

  @Test
  void errorAsWideAsABoardIsTakenAsMeasuredAndSaid() {
    Calculated<StartLine> line = choose(RowWay.LEAST_CUT, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorBelow("wall 3", mm("3735")).within(mm("93")));
    assertThat(line.value().firstRowWidth()).isEqualTo(mm("150"));
    assertThat(line.value().strips().get(1).width()).isEqualTo(mm("70"));
    assertThat(line.value().strips().get(1).certain()).isEqualTo(Length.ZERO);
    assertThat(line.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("error-too-large");
      assertThat(finding.message()).isEqualTo("the stop is measured to plus or minus 93 mm: with a laid pitch of 185 mm no start"
          + " line keeps a strip there for certain, it is taken as measured; measure it again");
    });
  }

  @Test
  void theLargerOfTwoErrorsCounts() {
    StartLine line = choose(RowWay.LEAST_CUT, Stop.floorAbove("wall 1", Length.ZERO),
        Stop.floorBelow("wall 3", mm("3735")).within(mm("4"))).value();
    assertThat(line.withError(mm("1")).value().worst()).isEqualTo(mm("70"));
    assertThat(line.withError(mm("6")).value().worst()).isEqualTo(mm("68"));
    assertStepsHold(line.withError(mm("1")));
    assertStepsHold(line.withError(mm("6")));
  }

  @Test
  void errorIsASize() {
    assertThatThrownBy(() -> Stop.floorBelow("wall 3", mm("3735")).within(mm("-1"))).hasMessage("measuring error of stop 'wall 3'"
        + " must not be negative, but was -1 mm; give its size, it counts both ways");
    assertThat(Stop.floorBelow("wall 3", mm("1")).within(mm("2")).asMeasured()).isEqualTo(Stop.floorBelow("wall 3", mm("1")));
  }

  @Provide
  Arbitrary<List<Stop>> stops() {
    return Combinators.combine(Arbitraries.integers().between(0, 120), Arbitraries.integers().between(0, 9),
        Arbitraries.integers().between(0, 6), Arbitraries.of(Stop.Side.values()))
        .as((low, taper, error, side) -> new Stop("s", side, nm(low), nm(low + taper)).within(nm(error)))
        .list().ofMinSize(1).ofMaxSize(4).map(list -> {
          List<Stop> all = new ArrayList<>(list);
          all.add(Stop.floorBelow("top", nm(1000)));
          return all;
        });
  }

  /** The strip of a stop at its narrowest over every place within its error, at whole nanometres. */
  private static long anywhere(Stop stop, long line, long pitch) {
    long least = Long.MAX_VALUE;
    long error = stop.plusMinus().toNanometres();
    for (long shift = -error; shift <= error; shift++) {
      least = Math.min(least, stop.asMeasured().later(nm(shift)).strip(line, pitch));
    }
    return least;
  }

  /** A strip that passes through nothing leaves one nanometre at whole nanometres, and is certain of none. */
  @Property
  void certainIsTheLeastOfEveryPlaceWithinTheError(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 2, max = 37)
      int pitch, @ForAll RowWay way) {
    StartLine line = StartLine.choose(stops, nm(-20), nm(pitch), nm(5), way).value();
    long at = -20 + line.firstRowWidth().toNanometres();
    assertThat(line.strips()).allSatisfy(strip -> {
      long least = anywhere(strip.stop(), at, pitch);
      assertThat(strip.certain().toNanometres()).isEqualTo(least <= 1 && !strip.certain().equals(nm(1)) ? 0 : least);
      assertThat(strip.width().toNanometres()).isEqualTo(strip.stop().asMeasured().strip(at, pitch));
      assertThat(strip.certain()).isLessThanOrEqualTo(strip.width());
    });
  }

  @Property
  void noLineKeepsMoreForCertain(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 25, max = 37) int pitch) {
    StartLine line = StartLine.choose(stops, nm(-20), nm(pitch), Length.ZERO, RowWay.WIDEST_STRIP).value();
    long best = line.narrowestStrip().toNanometres();
    for (long f = 1; f <= pitch; f++) {
      long at = -20 + f;
      long least = stops.stream().mapToLong(stop -> anywhere(stop, at, pitch)).min().orElseThrow();
      assertThat(least <= 1 ? 0 : least).isLessThanOrEqualTo(best);
    }
  }

  /** Wherever the stops lie within their errors, the strips of a line without findings are of the minimum. */
  @Property
  void aLineWithoutFindingsKeepsTheMinimumWhereverTheStopsLie(@ForAll("stops") List<Stop> stops,
      @ForAll @IntRange(min = 25, max = 37) int pitch, @ForAll @IntRange(min = 1, max = 8) int minimum, @ForAll RowWay way) {
    Calculated<StartLine> line = StartLine.choose(stops, nm(-20), nm(pitch), nm(minimum), way);
    long at = -20 + line.value().firstRowWidth().toNanometres();
    boolean kept = stops.stream().allMatch(stop -> stop.strip(at, pitch) >= minimum);
    assertThat(line.findings().isEmpty()).isEqualTo(kept);
    if (kept) {
      assertThat(stops).allSatisfy(stop -> assertThat(anywhere(stop, at, pitch)).isGreaterThanOrEqualTo(minimum));
    }
    assertStepsHold(line);
  }
}
