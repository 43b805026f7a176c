package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;

/** Against trying every whole nanometre of a small period: the formulas know no scale, so small numbers prove as much. */
class StartLinePropertyTest {

  /** Narrowest strip, straight from the words: walk up or down from each level of the stop to the next row line. */
  private static long bruteStrip(Stop stop, long line, long pitch) {
    long narrowest = Long.MAX_VALUE;
    long low = stop.low().toNanometres();
    long high = stop.high().toNanometres();
    for (long y = low; y <= high; y++) {
      long step = stop.side() == Stop.Side.FLOOR_ABOVE ? 1 : -1;
      long at = y + step;
      while (Math.floorMod(at - line, pitch) != 0) {
        at += step;
      }
      narrowest = Math.min(narrowest, Math.abs(at - y));
      boolean lineMeetsSlant = low < high && Math.floorMod(y - line, pitch) == 0
          && (stop.side() == Stop.Side.FLOOR_ABOVE ? y > low : y < high);
      if (lineMeetsSlant) {
        return 0;
      }
    }
    return narrowest;
  }

  private static int nothings(List<Stop> stops, long line, long pitch) {
    int count = 0;
    for (Stop stop : stops) {
      count += bruteStrip(stop, line, pitch) == 0 ? 1 : 0;
    }
    return count;
  }

  private static long narrowestOfTheRest(List<Stop> stops, long line, long pitch) {
    long narrowest = pitch;
    for (Stop stop : stops) {
      long strip = bruteStrip(stop, line, pitch);
      narrowest = strip == 0 ? narrowest : Math.min(narrowest, strip);
    }
    return narrowest;
  }

  @Provide
  Arbitrary<List<Stop>> stops() {
    Arbitrary<Stop> stop = Combinators.combine(Arbitraries.integers().between(-60, 200),
        Arbitraries.frequencyOf(Tuple.of(3, Arbitraries.just(0)), Tuple.of(2, Arbitraries.integers().between(1, 45))),
        Arbitraries.of(Stop.Side.values()))
        .as((low, taper, side) -> new Stop("s", side, nm(low), nm(low + taper)));
    return stop.list().ofMinSize(0).ofMaxSize(9).map(list -> {
      List<Stop> all = new ArrayList<>(list);
      all.add(Stop.floorBelow("top", nm(1000)));
      return all;
    });
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }

  @Property
  void everyStripIsThatOfWalkingToTheNextRowLine(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 1, max = 37)
      int pitch, @ForAll @IntRange(min = -50, max = 50) int bayLow, @ForAll RowWay way) {
    StartLine line = StartLine.choose(stops, nm(bayLow), nm(pitch), nm(5), way).value();
    long at = bayLow + line.firstRowWidth().toNanometres();
    assertThat(line.strips()).allSatisfy(strip ->
        assertThat(strip.width().toNanometres()).isEqualTo(bruteStrip(strip.stop(), at, pitch)));
  }

  @Property(tries = 3000)
  void noStartLineOfAllIsBetterThanTheWidestStrip(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 1, max = 37)
      int pitch, @ForAll @IntRange(min = -50, max = 50) int bayLow) {
    StartLine line = StartLine.choose(stops, nm(bayLow), nm(pitch), Length.ZERO, RowWay.WIDEST_STRIP).value();
    List<Stop> inChoice = stops.stream().filter(stop -> stop.taper().toNanometres() < pitch).toList();
    long best = 0;
    for (long first = 1; first <= pitch; first++) {
      if (best == 0 || better(inChoice, bayLow, pitch, first, best) >= 0) {
        best = first;
      }
    }
    assertThat(line.firstRowWidth().toNanometres()).isEqualTo(best);
  }

  private static int better(List<Stop> stops, long bayLow, long pitch, long first, long than) {
    int fewer = Integer.compare(nothings(stops, bayLow + than, pitch), nothings(stops, bayLow + first, pitch));
    return fewer != 0 ? fewer : Long.compare(narrowestOfTheRest(stops, bayLow + first, pitch),
        narrowestOfTheRest(stops, bayLow + than, pitch));
  }

  @Property(tries = 3000)
  void leastCutIsTheWidestFirstRowThatKeepsTheMinimum(@ForAll("stops") List<Stop> stops,
      @ForAll @IntRange(min = 1, max = 37) int pitch, @ForAll @IntRange(min = 1, max = 20) int minimum) {
    StartLine line = StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum), RowWay.LEAST_CUT).value();
    List<Stop> inChoice = stops.stream().filter(stop -> stop.taper().toNanometres() < pitch).toList();
    for (long first = pitch; first >= 1; first--) {
      long at = -60 + first;
      if (inChoice.stream().allMatch(stop -> bruteStrip(stop, at, pitch) >= Math.min(minimum, pitch))) {
        assertThat(line.firstRowWidth().toNanometres()).isEqualTo(first);
        return;
      }
    }
    assertThat(line.firstRowWidth())
        .isEqualTo(StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum), RowWay.WIDEST_STRIP).value().firstRowWidth());
  }

  @Property
  void asNeededIsFullOrTheWidestStrip(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 1, max = 37) int pitch,
      @ForAll @IntRange(max = 40) int minimum) {
    StartLine line = StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum), RowWay.AS_NEEDED).value();
    boolean fullServes = stops.stream().filter(stop -> stop.taper().toNanometres() < pitch)
        .allMatch(stop -> bruteStrip(stop, -60 + pitch, pitch) >= Math.min(minimum, pitch));
    assertThat(line.firstRowWidth()).isEqualTo(fullServes ? nm(pitch)
        : StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum), RowWay.WIDEST_STRIP).value().firstRowWidth());
  }

  @Property
  void tighterMinimumNeverGivesFewerFindings(@ForAll("stops") List<Stop> stops,
      @ForAll @IntRange(min = 1, max = 37) int pitch, @ForAll @IntRange(max = 40) int minimum,
      @ForAll @IntRange(max = 20) int tighter, @ForAll RowWay way) {
    assertThat(StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum + tighter), way).findings())
        .hasSizeGreaterThanOrEqualTo(StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum), way).findings().size());
  }

  @Property
  void upsideDownTheWidestStripIsAsWide(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 1, max = 37) int pitch) {
    List<Stop> turned = stops.stream().map(stop -> new Stop(stop.name(),
        stop.side() == Stop.Side.FLOOR_ABOVE ? Stop.Side.FLOOR_BELOW : Stop.Side.FLOOR_ABOVE,
        stop.high().negated(), stop.low().negated())).toList();
    StartLine up = StartLine.choose(stops, nm(-60), nm(pitch), Length.ZERO, RowWay.WIDEST_STRIP).value();
    StartLine down = StartLine.choose(turned, nm(-1000), nm(pitch), Length.ZERO, RowWay.WIDEST_STRIP).value();
    assertThat(down.narrowestStrip()).isEqualTo(up.narrowestStrip());
  }

  @Property
  void theStripsOfTheWorkingCanBeRedone(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 1, max = 37) int pitch,
      @ForAll @IntRange(max = 40) int minimum, @ForAll RowWay way) {
    assertStepsHold(StartLine.choose(stops, nm(-60), nm(pitch), nm(minimum), way));
  }

  /** Where each strip at a stop is at least as wide as asked for, it is so at a line worth trying with the same rows. */
  @Property
  void everyWayToDivideHasALineWorthTrying(@ForAll("stops") List<Stop> stops, @ForAll @IntRange(min = 2, max = 37) int pitch,
      @ForAll @IntRange(min = 0, max = 12) int minimum) {
    long least = Math.max(1, Math.min(minimum, pitch));
    List<Stop> inChoice = stops.stream().filter(stop -> stop.taper().toNanometres() < pitch).toList();
    List<Long> lines = StartLine.worthTrying(stops, nm(-60), nm(pitch), nm(minimum)).stream().map(Length::toNanometres).toList();
    boolean anyKept = false;
    for (long f = 1; f <= pitch; f++) {
      if (keepsAll(inChoice, f - 60, pitch, least)) {
        anyKept = true;
        List<Long> rows = rowsUpTo(inChoice, f - 60, pitch);
        assertThat(lines).anySatisfy(line -> assertThat(rowsUpTo(inChoice, line - 60, pitch)).isEqualTo(rows));
      }
    }
    assertThat(lines).isNotEmpty().doesNotHaveDuplicates().allSatisfy(line -> assertThat(line).isBetween(1L, (long) pitch));
    if (anyKept) {
      assertThat(lines).allSatisfy(line -> assertThat(keepsAll(inChoice, line - 60, pitch, least)).isTrue());
    }
  }

  private static boolean keepsAll(List<Stop> stops, long line, long pitch, long least) {
    return stops.stream().allMatch(stop -> bruteStrip(stop, line, pitch) >= least);
  }

  /** The row line that each stop's strip ends at, counted from the first one. */
  private static List<Long> rowsUpTo(List<Stop> stops, long line, long pitch) {
    return stops.stream().map(stop -> {
      long strip = bruteStrip(stop, line, pitch);
      long end = stop.side() == Stop.Side.FLOOR_ABOVE ? stop.high().toNanometres() + strip : stop.low().toNanometres() - strip;
      return Math.floorDiv(end - line, pitch);
    }).toList();
  }
}
