package floorcalc.transitions;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import floorcalc.outline.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;

class TransitionsPropertyTest {
  @Provide
  Arbitrary<HeightStack> stacks() {
    return Combinators.combine(Arbitraries.longs().between(0, 60_000_000).list().ofMaxSize(5),
        Arbitraries.longs().between(-50_000_000, 50_000_000)).as((layers, at) -> {
          HeightStack stack = HeightStack.BARE.fromSubfloorAt(Length.ofNanometres(at));
          for (int i = 0; i < layers.size(); i++) {
            stack = stack.on("layer " + i, Length.ofNanometres(layers.get(i)));
          }
          return stack;
        });
  }

  @Provide
  Arbitrary<LevelChangeSet> sets() {
    return Arbitraries.of(LevelChangeSet.all());
  }

  /** Seen from the other side the same profile lies there, falling the other way. */
  @Property
  void mirror(@ForAll("stacks") HeightStack here, @ForAll("stacks") HeightStack beyond, @ForAll("sets") LevelChangeSet set) {
    HeightDifference there = HeightDifference.between(here, beyond).value();
    HeightDifference back = HeightDifference.between(beyond, here).value();
    assertThat(back).isEqualTo(there.fromBeyond());
    ProfileChoice one = ProfileChoice.of(EdgeType.SAME_FLOOR, there, set).value();
    ProfileChoice other = ProfileChoice.of(EdgeType.SAME_FLOOR, back, set).value();
    assertThat(other.kind()).isEqualTo(one.kind());
    assertThat(other.verdict()).isEqualTo(one.verdict());
    assertThat(other.fall()).isEqualTo(switch (one.fall()) {
      case LEVEL -> Fall.LEVEL;
      case TO_BEYOND -> Fall.TO_HERE;
      case TO_HERE -> Fall.TO_BEYOND;
    });
  }

  /** A layer on both sides changes nothing at the edge, and raises undercut and floor by itself. */
  @Property
  void aLayerOnBothSides(@ForAll("stacks") HeightStack here, @ForAll("stacks") HeightStack beyond,
      @ForAll @LongRange(max = 80_000_000) long more) {
    Length thickness = Length.ofNanometres(more);
    assertThat(HeightDifference.between(here.on("more", thickness), beyond.on("more", thickness)).value())
        .isEqualTo(HeightDifference.between(here, beyond).value());
    assertThat(CasingWork.of(here.on("more", thickness), CasingWork.CLEARANCE, Casing.CUT, FireRating.NO_FIRE_DOOR).value()
        .height().orElseThrow()).isEqualTo(CasingWork.of(here, CasingWork.CLEARANCE, Casing.CUT, FireRating.NO_FIRE_DOOR)
            .value().height().orElseThrow().plus(thickness));
  }

  /** A larger difference never asks for less: runs do not get shorter where they are asked for at one slope or a gentler one. */
  @Property
  void moreNeverNeedsLess(@ForAll @LongRange(max = 300_000_000) long less, @ForAll @LongRange(max = 300_000_000) long more,
      @ForAll("sets") LevelChangeSet set) {
    Assume.that(less <= more);
    LevelChangeVerdict small = set.judge(new HeightDifference(Length.ofNanometres(less))).value();
    LevelChangeVerdict large = set.judge(new HeightDifference(Length.ofNanometres(-more))).value();
    assertThat(small.treatment()).isLessThanOrEqualTo(large.treatment());
    if (small.run().isPresent() && large.run().isPresent()) {
      assertThat(small.run().get()).isLessThanOrEqualTo(large.run().get());
    }
    assertStepsHold(set.judge(new HeightDifference(Length.ofNanometres(-more))));
  }

  /** Floors move height about in a stair, they do not make it: the sum of the risers changes by top less foot. */
  @Property
  void theSumOfTheRisers(@ForAll @Size(min = 1, max = 20) List<@LongRange(min = 170_000_000, max = 220_000_000) Long> risers,
      @ForAll @LongRange(max = 40_000_000) long foot, @ForAll @LongRange(max = 40_000_000) long tread,
      @ForAll @LongRange(max = 40_000_000) long top) {
    List<Length> before = risers.stream().map(Length::ofNanometres).toList();
    Risers after = Risers.of(before, laid(foot), laid(tread), laid(top), StairSet.COMMON_PRACTICE_US).value();
    Length sum = before.stream().reduce(Length.ZERO, Length::plus);
    assertThat(after.after().stream().reduce(Length.ZERO, Length::plus))
        .isEqualTo(sum.minus(Length.ofNanometres(foot)).plus(Length.ofNanometres(top)));
  }

  private static HeightStack laid(long nanometres) {
    return HeightStack.BARE.on("floor", Length.ofNanometres(nanometres));
  }

  @Provide
  Arbitrary<List<Point>> lines() {
    Arbitrary<Point> points = Combinators.combine(Arbitraries.longs().between(-5_000, 5_000),
        Arbitraries.longs().between(-5_000, 5_000)).as(Point::ofMillimetres);
    return points.list().ofMinSize(2).ofMaxSize(6);
  }

  /** Walked from the other end the pieces are the same, each with its ends exchanged and its turns the other way. */
  @Property
  void walkedBack(@ForAll("lines") List<Point> corners, @ForAll @LongRange(min = 10, max = 120) long width) {
    ProfileLine there;
    try {
      there = ProfileLine.of(corners, Length.ofMillimetres(width)).value();
    } catch (IllegalArgumentException foldedOrTwice) {
      return;
    }
    List<Point> turned = new ArrayList<>(corners);
    Collections.reverse(turned);
    List<ProfilePiece> back = new ArrayList<>(ProfileLine.of(turned, Length.ofMillimetres(width)).value().pieces());
    Collections.reverse(back);
    for (int i = 0; i < back.size(); i++) {
      ProfilePiece one = there.pieces().get(i);
      ProfilePiece other = back.get(i);
      assertThat(other.length()).isEqualTo(one.length());
      assertThat(other.longPoint()).isEqualTo(one.longPoint());
      assertThat(other.cutAtFrom().negate()).isEqualByComparingTo(one.cutAtTo());
      assertThat(other.cutAtTo().negate()).isEqualByComparingTo(one.cutAtFrom());
      assertThat(one.longPoint().plus(one.shortPoint())).isEqualTo(one.length().multipliedBy(2));
    }
  }
}
