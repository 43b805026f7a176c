package floorcalc.flatness;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongToDoubleFunction;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** The search that grows with n log n against the slow one that tries every placement with all that it covers. */
class StraightedgeSpeedPropertyTest {
  private static final LongToDoubleFunction NOTHING = distance -> 0;
  /** A limit that rises in steps with the distance of the contacts, as those of a tolerance set do. */
  private static final LongToDoubleFunction BY_DISTANCE = distance -> 500_000 + distance / 250_000_000 * 1_000_000.0;

  /** A floor and an edge for it. */
  record Laid(List<ProfilePoint> readings, long span) {
    HeightProfile profile() {
      return HeightProfile.of(readings);
    }
  }

  @Provide
  Arbitrary<Laid> laid() {
    return Arbitraries.randomValue(StraightedgeSpeedPropertyTest::laid);
  }

  private static Laid laid(Random random) {
    int n = 2 + random.nextInt(random.nextInt(4) == 0 ? 120 : 24);
    int kind = random.nextInt(9);
    int spacing = random.nextInt(4);
    long place = random.nextInt(3) * 1_000_000_007L;
    long last = 0;
    List<ProfilePoint> readings = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      last = height(random, kind, i, n, last);
      readings.add(new ProfilePoint(Length.ofNanometres(place), Length.ofNanometres(last)));
      place += switch (spacing) {
        case 0 -> 300_000_000L;
        case 1 -> 1_000_000L * (1 + random.nextInt(600));
        case 2 -> 1 + random.nextInt(12);
        default -> random.nextInt(3) == 0 ? 400_000_000L + random.nextInt(1000) : 1_000_000L * (1 + random.nextInt(20));
      };
    }
    long length = readings.get(n - 1).place().minus(readings.get(0).place()).toNanometres();
    long span = switch (random.nextInt(4)) {
      case 0 -> length;
      case 1 -> 1 + (long) (random.nextDouble() * (length - 1));
      case 2 -> Math.max(1, length / 1000 * (1 + random.nextInt(400)));
      default -> Math.min(length, 600_000_000L + random.nextInt(2));
    };
    return new Laid(readings, span);
  }

  /** Noise, plateaus, straight slopes, bowls, arches, zigzags, steps, troughs with humps and holes, and a walk. */
  private static long height(Random random, int kind, int i, int n, long last) {
    double middle = (i - n / 2.0) / n;
    return switch (kind) {
      case 0 -> random.nextInt(10_000_000);
      case 1 -> random.nextInt(3) * 1_000_000L;
      case 2 -> i * 700_001L - (random.nextInt(4) == 0 ? 2_000_000L : 0);
      case 3 -> Math.round(4e7 * middle * middle) + random.nextInt(3);
      case 4 -> Math.round(-4e7 * middle * middle) - (random.nextInt(5) == 0 ? 3_000_000L : 0);
      case 5 -> (i % 2) * 2_000_000L + random.nextInt(2) * 1_000_000L;
      case 6 -> random.nextInt(3) == 0 ? last + (random.nextInt(5) - 2) * 1_000_000L : last;
      case 7 -> Math.round(Math.abs(middle) * 2e7) + (random.nextInt(3) == 0 ? random.nextInt(9_000_000) - 2_000_000L : 0);
      default -> last + random.nextInt(2_000_001) - 1_000_000;
    };
  }

  /** Gap, placement, contacts and low spot, to the last digit: of equal gaps both take the first. */
  @Property(tries = 8000)
  void fastIsTheSameAsSlow(@ForAll("laid") Laid laid) {
    HeightProfile profile = laid.profile();
    for (RestRule rule : RestRule.values()) {
      assertThat(new EdgeSearch(profile, laid.span()).find(rule)).as("%s", rule)
          .isEqualTo(new AllPlacements(profile, laid.span(), NOTHING).find(rule));
    }
  }

  @Property(tries = 1000)
  void fastIsTheSameAsSlowWhereTheLimitDependsOnTheContacts(@ForAll("laid") Laid laid) {
    HeightProfile profile = laid.profile();
    for (RestRule rule : RestRule.values()) {
      assertThat(new EdgeSearch(profile, laid.span(), BY_DISTANCE).find(rule)).as("%s", rule)
          .isEqualTo(new AllPlacements(profile, laid.span(), BY_DISTANCE).find(rule));
    }
  }

  /** An edge on equal blocks at its two ends: the reading farthest above or below it. */
  @Property(tries = 1000)
  void fastIsTheSameAsSlowOnEqualBlocks(@ForAll("laid") Laid laid) {
    HeightProfile profile = laid.profile();
    assertThat(new OffsetSearch(profile, laid.span(), new StepCount()).find())
        .isEqualTo(new AllPlacements(profile, laid.span(), NOTHING).offsets());
  }

  /** Every window of its own: rests, those that gravity may choose, and whether it tips. */
  @Property(tries = 1000)
  void windowsAreThoseOfPlacementsOneByOne(@ForAll("laid") Laid laid) {
    HeightProfile profile = laid.profile();
    Straightedge edge = Straightedge.of(Length.ofNanometres(laid.span()));
    List<EdgePlacement> placements = edge.atReadings(profile);
    assertThat(placements).hasSize((int) laid.readings().stream().filter(reading ->
        reading.place().plus(edge.span()).compareTo(profile.last()) <= 0).count());
    for (int i = 0; i < placements.size(); i++) {
      EdgePlacement alone = edge.at(profile, laid.readings().get(i).place());
      assertThat(placements.get(i).rests()).isEqualTo(alone.rests());
      assertThat(placements.get(i).gravity()).isEqualTo(alone.gravity());
      assertThat(placements.get(i).isTipping()).isEqualTo(alone.isTipping());
      assertThat(placements.get(i).start()).isEqualTo(alone.start());
    }
  }
}
