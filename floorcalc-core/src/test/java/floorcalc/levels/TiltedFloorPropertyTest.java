package floorcalc.levels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import floorcalc.flatness.ChordDeviation;
import floorcalc.flatness.FNumbers;
import floorcalc.flatness.FreeMovementClass;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.MidChord;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;

/** What a fall of the whole floor, or reading it from its other end, must not change in measures of flatness. */
class TiltedFloorPropertyTest {
  private static final Length SPACING = Length.ofMillimetres(300);

  @Provide
  Arbitrary<List<Length>> heights() {
    return Arbitraries.randomValue(TiltedFloorPropertyTest::heights);
  }

  private static List<Length> heights(Random random) {
    List<Length> heights = new ArrayList<>();
    for (int i = 12 + random.nextInt(30); i > 0; i--) {
      heights.add(Length.ofNanometres(random.nextInt(9_000_000)));
    }
    return heights;
  }

  private static HeightProfile tilted(List<Length> heights, long lift, long rise) {
    List<Length> tilted = new ArrayList<>();
    for (int i = 0; i < heights.size(); i++) {
      tilted.add(Length.ofNanometres(heights.get(i).toNanometres() + lift + rise * i));
    }
    return HeightProfile.ofEqualSpacing(SPACING, tilted);
  }

  /** FF, the bends of TR34 and the deviations from chords are those of the floor that lies level. */
  @Property(tries = 200)
  void aPlaneIsNoMatter(@ForAll("heights") List<Length> heights, @ForAll @LongRange(min = -1_000_000_000, max = 1_000_000_000) long lift,
      @ForAll @LongRange(min = -9_000_000, max = 9_000_000) long rise) {
    HeightProfile level = tilted(heights, 0, 0);
    HeightProfile tilted = tilted(heights, lift, rise);
    assertThat(FNumbers.of(tilted).value().flatness()).isEqualTo(FNumbers.of(level).value().flatness());
    FreeMovementClass any = FreeMovementClass.named("FM2");
    assertThat(any.judgeFlatness(List.of(tilted))).isEqualTo(any.judgeFlatness(List.of(level)));
    assertThat(deviations(tilted)).isEqualTo(deviations(level));
    // levelness is another question: z takes ten rises more
    assertThat(FNumbers.of(tilted).value().levelDifferences().get(0))
        .isEqualTo(FNumbers.of(level).value().levelDifferences().get(0).plus(Length.ofNanometres(10 * rise)));
  }

  /** From the other end q is the same backwards and z has the other sign: FF, FL and deviations stay. */
  @Property(tries = 200)
  void mirroredIsTheSame(@ForAll("heights") List<Length> heights) {
    HeightProfile floor = tilted(heights, 0, 0);
    HeightProfile mirrored = floor.mirrored();
    FNumbers one = FNumbers.of(floor).value();
    FNumbers other = FNumbers.of(mirrored).value();
    assertThat(other.flatness().value()).isCloseTo(one.flatness().value(), within(1e-6));
    assertThat(other.levelness().value()).isCloseTo(one.levelness().value(), within(1e-6));
    assertThat(deviations(mirrored)).containsExactlyInAnyOrderElementsOf(deviations(floor));
  }

  private static List<Length> deviations(HeightProfile profile) {
    return MidChord.of(profile, Length.ofMillimetres(1200)).value().deviations().stream().map(ChordDeviation::deviation).toList();
  }
}
