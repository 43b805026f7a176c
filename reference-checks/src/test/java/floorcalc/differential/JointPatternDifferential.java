package floorcalc.differential;

import floorcalc.joints.JointPattern;
import floorcalc.joints.LargestOffset;
import floorcalc.measure.Length;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Source;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * Rows shifted by a fixed step, against walking from row to row: where joints fall, how far neighbours are apart, when they fall where
 * they fell first, and that the places of any number of rows leave gaps of at most three lengths (the three-gap theorem of Steinhaus).
 */
final class JointPatternDifferential extends Comparison {
  JointPatternDifferential(int cases) {
    super("joints shifted by a step: places, offsets, repetition, three gaps", Library.ALL_WAYS, cases, JointPattern.class,
        LargestOffset.class);
  }

  @Override
  public String unit() {
    return "nm; rows";
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
    SplittableRandom random = new SplittableRandom(661);
    for (int k = 0; k < upTo; k++) {
      long board = random.nextLong(2, 3000);
      long step = random.nextLong(1, 2 * board);
      Length length = Length.ofNanometres(board);
      JointPattern pattern = JointPattern.ofStep(Length.ofNanometres(step));
      String what = step + " on " + board;
      worst.nextCase();
      TreeSet<Long> places = new TreeSet<>();
      long at = 0;
      int row = 0;
      int asked = random.nextInt(1, 60);
      do {
        long mine = pattern.shift(row + (answers == Answers.AS_GIVEN ? 0 : 1), length).toNanometres();
        long here = at;
        worst.see(mine - here, () -> "place of " + what);
        if (row < asked) {
          places.add(here);
          worst.see(gaps(places, board) > 3 ? 1 : 0, () -> "gaps of " + what);
        }
        at = at + step >= board ? (at + step - board) % board : at + step;
        row++;
      } while (at != 0);
      int rows = row;
      worst.see(pattern.repeatsAfter(length).orElseThrow() - rows, () -> "repetition of " + what);
      long shift = step % board;
      worst.see(pattern.neighbourOffset(length).orElseThrow().toNanometres() - Math.min(shift, board - shift), () -> "offset of " + what);
      worst.see(LargestOffset.of(length, new RuleValue<>(LayingRules.MINIMUM_JOINT_OFFSET, Length.ZERO, Source.GIVEN)).value()
          .toNanometres() - largest(board), () -> "largest offset of " + board);
    }
  }

  private static int gaps(TreeSet<Long> places, long board) {
    TreeSet<Long> gaps = new TreeSet<>();
    long before = places.last() - board;
    for (long place : places) {
      gaps.add(place - before);
      before = place;
    }
    return gaps.size();
  }

  /** The farthest that a joint can be from the nearest of joints a board apart. */
  private static long largest(long board) {
    long largest = 0;
    for (long at = 0; at < board; at++) {
      largest = Math.max(largest, Math.min(at, board - at));
    }
    return largest;
  }
}
