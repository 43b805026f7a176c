package floorcalc.joints;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Against comparing every joint with every other, over small whole numbers. */
class JointLayoutPropertyTest {

  @Provide
  Arbitrary<long[][]> joints() {
    return Arbitraries.longs().between(0, 120).set().ofMaxSize(8)
        .map(row -> row.stream().mapToLong(Long::longValue).sorted().toArray()).list().ofMaxSize(7)
        .map(rows -> rows.toArray(long[][]::new));
  }

  @Provide
  Arbitrary<long[][]> touching() {
    return Arbitraries.longs().between(0, 120).set().ofSize(4)
        .map(ends -> ends.stream().mapToLong(Long::longValue).sorted().toArray()).list().ofMaxSize(7)
        .map(rows -> rows.toArray(long[][]::new));
  }

  private static boolean touches(long[][] touching, int row, long at) {
    if (row >= touching.length) {
      return true;
    }
    long[] ends = touching[row];
    return ends[0] <= at && at <= ends[1] || ends[2] <= at && at <= ends[3];
  }

  private static List<JointPair> all(long[][] joints, long[][] touching, int apart, long within) {
    List<JointPair> pairs = new ArrayList<>();
    for (int row = 0; row + apart < joints.length; row++) {
      for (long at : joints[row]) {
        for (long other : joints[row + apart]) {
          if (Math.abs(at - other) <= within && touches(touching, row, at)
              && touches(touching, row + apart - 1, other)) {
            pairs.add(new JointPair(row + 1, nm(at), row + apart + 1, nm(other)));
          }
        }
      }
    }
    return pairs;
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }

  @Property
  void pairsCloserThanAMinimumAreAllFound(@ForAll("joints") long[][] joints, @ForAll("touching") long[][] touching,
      @ForAll @IntRange(max = 40) int minimum) {
    assertThat(JointLayout.ofNanometres(joints, touching).closerThan(nm(minimum)))
        .containsExactlyElementsOf(all(joints, touching, 1, minimum - 1L));
  }

  @Property
  void smallestOffsetIsTheSmallestOfAll(@ForAll("joints") long[][] joints, @ForAll("touching") long[][] touching) {
    assertThat(JointLayout.ofNanometres(joints, touching).smallestOffset()).isEqualTo(
        all(joints, touching, 1, 1000).stream().min(Comparator.comparing(JointPair::offset)));
  }

  @Property
  void hPatternsAreAllFound(@ForAll("joints") long[][] joints, @ForAll("touching") long[][] touching,
      @ForAll @IntRange(max = 10) int tolerance) {
    assertThat(JointLayout.ofNanometres(joints, touching).inLine(nm(tolerance)))
        .containsExactlyElementsOf(all(joints, touching, 2, tolerance));
  }

  @Property
  void widerMinimumNeverFindsFewerPairs(@ForAll("joints") long[][] joints, @ForAll @IntRange(max = 40) int minimum,
      @ForAll @IntRange(max = 40) int more) {
    JointLayout layout = JointLayout.ofNanometres(joints);
    assertThat(layout.closerThan(nm(minimum + more))).containsAll(layout.closerThan(nm(minimum)));
  }

  @Property
  void stairsStepEvenlyToTheNearestJoint(@ForAll("joints") long[][] joints, @ForAll @IntRange(max = 6) int tolerance) {
    for (JointStair stair : JointLayout.ofNanometres(joints).stairs(nm(tolerance))) {
      long before = 0;
      for (int i = 0; i + 1 < stair.joints().size(); i++) {
        long from = stair.joints().get(i).toNanometres();
        long to = stair.joints().get(i + 1).toNanometres();
        int row = stair.firstRow() - 1 + i;
        assertThat(joints[row]).contains(from);
        assertThat(joints[row + 1]).contains(to);
        assertThat(Math.abs(to - from)).isGreaterThan(tolerance);
        for (long other : joints[row + 1]) {
          // Every other joint is further off; one on the other side by more than the tolerance.
          boolean otherSide = (other > from) != (to > from);
          assertThat(other == to || Math.abs(other - from) > Math.abs(to - from) + (otherSide ? tolerance : 0)).isTrue();
        }
        if (i > 0) {
          assertThat(Math.abs(to - from - before)).isLessThanOrEqualTo(tolerance);
        }
        before = to - from;
      }
    }
  }

  @Property
  void mirroredRowsHaveTheMirroredFindings(@ForAll("joints") long[][] joints) {
    long[][] mirrored = Arrays.stream(joints).map(row -> Arrays.stream(row).map(at -> -at).sorted().toArray())
        .toArray(long[][]::new);
    JointLayout one = JointLayout.ofNanometres(joints);
    JointLayout other = JointLayout.ofNanometres(mirrored);
    assertThat(other.smallestOffset().map(JointPair::offset)).isEqualTo(one.smallestOffset().map(JointPair::offset));
    assertThat(other.inLine()).hasSameSizeAs(one.inLine());
    assertThat(other.stairs(nm(0)).stream().map(stair -> stair.step().negated()).sorted().toList())
        .isEqualTo(one.stairs(nm(0)).stream().map(JointStair::step).sorted().toList());
  }
}
