package floorcalc.differential;

import floorcalc.joints.JointLayout;
import floorcalc.joints.JointPair;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Offsets of end joints and H patterns, against every pair of joints of every two rows. */
final class JointLayoutDifferential extends Comparison {
  private static final long MILLIMETRE = 1_000_000;

  JointLayoutDifferential(int cases) {
    super("smallest joint offset, joints too close, H patterns", Library.ALL_WAYS, cases, JointLayout.class, JointPair.class);
  }

  @Override
  public String unit() {
    return "nm of offset; pairs missed or too many";
  }

  @Override
  public double tolerance() {
    return 0;
  }

  @Override
  public String argument() {
    return "whole nanometres on both sides";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(651);
    for (int k = 0; k < upTo; k++) {
      int rows = random.nextInt(1, 9);
      long length = random.nextLong(20, 400);
      List<List<Length>> joints = new ArrayList<>();
      for (int row = 0; row < rows; row++) {
        joints.add(random.longs(random.nextInt(0, 6), 0, length).distinct().mapToObj(Length::ofMillimetres).toList());
      }
      JointLayout layout = JointLayout.of(joints);
      long minimum = random.nextLong(60) * MILLIMETRE;
      worst.nextCase();
      long smallest = Long.MAX_VALUE;
      for (long[] pair : pairs(joints, 1)) {
        smallest = Math.min(smallest, pair[4]);
      }
      long mine = layout.smallestOffset().map(pair -> pair.offset().toNanometres()).orElse(Long.MAX_VALUE);
      worst.see(mine - smallest, joints::toString);
      long bound = answers == Answers.AS_GIVEN ? minimum - 1 : minimum + MILLIMETRE;
      worst.see(missed(layout.closerThan(Length.ofNanometres(minimum)), pairs(joints, 1), bound), () -> "too close in " + joints);
      worst.see(missed(layout.inLine(), pairs(joints, 2), JointLayout.IN_LINE.toNanometres()), () -> "in line in " + joints);
    }
  }

  /** Row, joint, other row, other joint, offset. */
  private static List<long[]> pairs(List<List<Length>> joints, int apart) {
    List<long[]> pairs = new ArrayList<>();
    for (int row = 0; row + apart < joints.size(); row++) {
      for (Length joint : joints.get(row)) {
        for (Length other : joints.get(row + apart)) {
          pairs.add(new long[] {row + 1, joint.toNanometres(), row + 1 + apart, other.toNanometres(),
              Math.abs(joint.toNanometres() - other.toNanometres())});
        }
      }
    }
    return pairs;
  }

  private static long missed(List<JointPair> mine, List<long[]> all, long within) {
    List<JointPair> theirs = all.stream().filter(pair -> pair[4] <= within).map(pair -> new JointPair((int) pair[0],
        Length.ofNanometres(pair[1]), (int) pair[2], Length.ofNanometres(pair[3]))).toList();
    return mine.stream().filter(pair -> !theirs.contains(pair)).count() + theirs.stream().filter(pair -> !mine.contains(pair)).count()
        + Math.abs(mine.size() - theirs.size());
  }
}
