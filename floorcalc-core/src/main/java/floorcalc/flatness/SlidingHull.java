package floorcalc.flatness;

import java.math.BigInteger;
import java.util.List;

/**
 * The upper convex hull of the readings in a window that moves on along a profile, points in line on it kept. Exact. Used
 * by one thread.
 * <p>
 * The window is cut at a seam. What lies right of it is a hull that readings are added to at its right end. What lies left of it was built
 * from the seam outwards, each reading with a note of what it replaced, so that taking readings away at the left end undoes this
 * step by step. When the left part is used up the seam moves to the right end, and the left part is built anew: each reading
 * comes once into either part. The two parts are joined by the one edge over the seam that has nothing above it, which is found by halving
 * both at once (the bridge of M. Overmars and J. van Leeuwen, Maintenance of configurations in the plane, 1981). A move costs the readings that
 * come in or go out, and one bridge: the logarithm of the readings in the window.
 */
final class SlidingHull {
  private final HeightProfile profile;
  private final StepCount tally;
  /** Readings of the left part from the seam outwards. */
  private final int[] left;
  /** What the left part was before a reading came to it: its size, and what was in the place that the reading took. */
  private final int[] formerSize;
  private final int[] formerReading;
  private final int[] right;
  private int leftSize;
  private int rightSize;
  private int low;
  private int high = -1;
  /** How many of the left part, counted from the left, are on the hull of both; and the first of the right part that is. */
  private int usedLeft;
  private int firstRight;
  private final Runs givenLeft = new Runs();
  private final Runs givenRight = new Runs();
  private int givenBridge = -1;
  private int givenBridgeEnd = -1;

  /** Takes two neighbours on the hull. */
  interface EdgeTaker {
    void take(int leftReading, int rightReading);
  }

  SlidingHull(HeightProfile profile, StepCount tally) {
    this.profile = profile;
    this.tally = tally;
    left = new int[profile.size() + 1];
    right = new int[profile.size() + 1];
    formerSize = new int[profile.size()];
    formerReading = new int[profile.size()];
  }

  /** Moves the window on to the readings from one to another, none if the other is the one before; neither ever moves back. */
  void moveTo(int first, int last) {
    boolean moved = high < last || low < first;
    while (high < last) {
      addRight(++high);
    }
    while (low < first) {
      dropLeft();
    }
    if (moved) {
      join();
    }
  }

  private void addRight(int reading) {
    tally.step();
    while (rightSize > 1 && above(right[rightSize - 2], right[rightSize - 1], reading) < 0) {
      rightSize--;
      tally.step();
    }
    givenRight.cutFrom(rightSize - 1);
    right[rightSize++] = reading;
  }

  private void dropLeft() {
    tally.step();
    if (leftSize == 0) {
      for (int reading = high; reading >= low; reading--) {
        addLeft(reading);
      }
      rightSize = 0;
      givenLeft.cutFrom(0);
      givenRight.cutFrom(0);
    }
    int place = leftSize - 1;
    left[place] = formerReading[low];
    leftSize = formerSize[low];
    givenLeft.cutFrom(place - 1);
    low++;
  }

  private void addLeft(int reading) {
    tally.step();
    int size = leftSize;
    while (size > 1 && above(reading, left[size - 1], left[size - 2]) < 0) {
      size--;
      tally.step();
    }
    formerSize[reading] = leftSize;
    formerReading[reading] = left[size];
    left[size] = reading;
    leftSize = size + 1;
  }

  /** Finds the edge over the seam: the last of the left and the first of the right part that are on the hull of both. */
  private void join() {
    usedLeft = leftSize;
    firstRight = 0;
    if (leftSize == 0 || rightSize == 0) {
      return;
    }
    int i = 0;
    int j = 0;
    int leftLow = 0;
    int leftHigh = leftSize - 1;
    int rightLow = 0;
    int rightHigh = rightSize - 1;
    while (true) {
      tally.step();
      i = (leftLow + leftHigh) >>> 1;
      j = (rightLow + rightHigh) >>> 1;
      int ofLeft = i > 0 && above(leftAt(i), leftAt(i - 1), right[j]) > 0 ? -1
          : i + 1 < leftSize && above(leftAt(i), leftAt(i + 1), right[j]) > 0 ? 1 : 0;
      int ofRight = j > 0 && above(leftAt(i), right[j - 1], right[j]) > 0 ? -1
          : j + 1 < rightSize && above(leftAt(i), right[j + 1], right[j]) > 0 ? 1 : 0;
      if (ofLeft == 0 && ofRight == 0) {
        break;
      }
      if (ofLeft == 1 && ofRight == -1) {
        if (leftIsHigherAtSeam(i, j)) {
          leftLow = i + 1;
        } else {
          rightHigh = j - 1;
        }
        continue;
      }
      if (ofLeft == -1) {
        leftHigh = i - 1;
      } else if (ofLeft == 1 && ofRight == 0) {
        leftLow = i + 1;
      } else if (ofLeft == 0) {
        leftHigh = i;
      }
      if (ofRight == 1) {
        rightLow = j + 1;
      } else if (ofRight == -1 && ofLeft == 0) {
        rightHigh = j - 1;
      } else if (ofRight == 0) {
        rightLow = j;
      }
    }
    innermost(i, j);
  }

  /** Of all the points in line with the bridge those next to the seam are its ends. */
  private void innermost(int touchingLeft, int touchingRight) {
    int one = leftAt(touchingLeft);
    int other = right[touchingRight];
    int i = touchingLeft;
    int beyond = leftSize;
    while (beyond - i > 1) {
      tally.step();
      int k = (i + beyond) >>> 1;
      if (above(one, leftAt(k), other) == 0) {
        i = k;
      } else {
        beyond = k;
      }
    }
    int j = touchingRight;
    int before = -1;
    while (j - before > 1) {
      tally.step();
      int k = (j + before) >>> 1;
      if (above(one, right[k], other) == 0) {
        j = k;
      } else {
        before = k;
      }
    }
    usedLeft = i + 1;
    firstRight = j;
  }

  private int above(int one, int middle, int other) {
    return Cross.above(profile.place(one), profile.height(one), profile.place(middle), profile.height(middle),
        profile.place(other), profile.height(other));
  }

  /** Whether the left part's edge after a point, drawn on to the seam, is there no lower than the right part's edge before a point. */
  private boolean leftIsHigherAtSeam(int i, int j) {
    int seam = right[0];
    BigInteger[] one = heightAt(seam, leftAt(i), leftAt(i + 1));
    BigInteger[] other = heightAt(seam, right[j - 1], right[j]);
    return one[0].multiply(other[1]).compareTo(other[0].multiply(one[1])) >= 0;
  }

  /** The height of a line at a reading's place over that reading, as a fraction. */
  private BigInteger[] heightAt(int at, int from, int to) {
    BigInteger width = BigInteger.valueOf(profile.place(to) - profile.place(from));
    BigInteger rise = BigInteger.valueOf(profile.height(to) - profile.height(from))
        .multiply(BigInteger.valueOf(profile.place(at) - profile.place(from)));
    return new BigInteger[] {
        rise.add(BigInteger.valueOf(profile.height(from) - profile.height(at)).multiply(width)), width};
  }

  private int leftAt(int i) {
    return left[leftSize - 1 - i];
  }

  /** The number of readings on the hull. */
  int size() {
    return usedLeft + rightSize - firstRight;
  }

  /** A reading on the hull, counted from the left. */
  int reading(int corner) {
    return corner < usedLeft ? leftAt(corner) : right[firstRight + corner - usedLeft];
  }

  /** Hands out the edges between two corners, from the left, without those that were handed out before. */
  void handOut(int from, int to, EdgeTaker taker) {
    int leftTo = Math.min(to, usedLeft - 1);
    if (from < leftTo) {
      List<int[]> fresh = givenLeft.add(leftSize - 1 - leftTo, leftSize - 1 - from);
      for (int k = fresh.size() - 1; k >= 0; k--) {
        for (int place = fresh.get(k)[1]; place > fresh.get(k)[0]; place--) {
          tally.step();
          taker.take(left[place], left[place - 1]);
        }
      }
    }
    if (from < usedLeft && usedLeft <= to && usedLeft < size()) {
      int one = reading(usedLeft - 1);
      int other = reading(usedLeft);
      if (one != givenBridge || other != givenBridgeEnd) {
        givenBridge = one;
        givenBridgeEnd = other;
        taker.take(one, other);
      }
    }
    int rightFrom = Math.max(from, usedLeft);
    if (rightFrom < to) {
      int shift = firstRight - usedLeft;
      for (int[] run : givenRight.add(rightFrom + shift, to + shift)) {
        for (int place = run[0]; place < run[1]; place++) {
          tally.step();
          taker.take(right[place], right[place + 1]);
        }
      }
    }
  }
}
