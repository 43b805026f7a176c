package floorcalc.flatness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds for each of many chords the reading that lies deepest beneath it. Exact. Used by one thread.
 * <p>
 * The readings are cut into blocks of 1, 2, 4, 8, … and the lower convex hull of each block is made from those of its halves. The readings
 * under a chord are at most two blocks of each size. The deepest of a block is where its hull is as steep as the chord; the
 * chords are taken in order of their slopes, so that a pointer into each hull moves one way only. For {@code n} readings and
 * {@code q} chords that is a time of {@code (n + q) log n}, beside sorting the chords.
 */
final class DeepestReadings {
  private final HeightProfile profile;
  private final StepCount tally;
  private final List<Chord> chords = new ArrayList<>();
  /** The hulls of all blocks of one size, each from the first place of its block on. */
  private int[] hulls;
  private int[] sizes;
  private int[] pointers;

  DeepestReadings(HeightProfile profile, StepCount tally) {
    this.profile = profile;
    this.tally = tally;
  }

  /** Takes a chord that is to be answered; its number is that of chords before it. */
  void ask(Chord chord) {
    chords.add(chord);
  }

  List<Chord> chords() {
    return chords;
  }

  void answer() {
    Chord[] bySlope = chords.stream().filter(chord -> chord.first <= chord.last).toArray(Chord[]::new);
    Arrays.sort(bySlope, Chord::compareSlope);
    int[] from = new int[bySlope.length];
    int[] to = new int[bySlope.length];
    for (int k = 0; k < bySlope.length; k++) {
      from[k] = bySlope[k].first;
      to[k] = bySlope[k].last;
    }
    singles();
    boolean open = bySlope.length > 0;
    for (int width = 1; open; width *= 2) {
      open = false;
      for (int k = 0; k < bySlope.length; k++) {
        if (from[k] <= to[k]) {
          if ((from[k] & 1) == 1) {
            look(bySlope[k], from[k]++, width);
          }
          if ((to[k] & 1) == 0) {
            look(bySlope[k], to[k]--, width);
          }
          from[k] >>= 1;
          to[k] >>= 1;
          open |= from[k] <= to[k];
          tally.step();
        }
      }
      if (open) {
        join(width);
      }
    }
  }

  private void singles() {
    int n = profile.size();
    hulls = new int[n];
    sizes = new int[n];
    pointers = new int[n];
    for (int i = 0; i < n; i++) {
      hulls[i] = i;
      sizes[i] = 1;
    }
  }

  private void look(Chord chord, int block, int width) {
    int base = block * width;
    int at = pointers[block];
    while (at + 1 < sizes[block] && chord.compareRise(hulls[base + at], hulls[base + at + 1]) < 0) {
      at++;
      tally.step();
    }
    pointers[block] = at;
    chord.look(hulls[base + at]);
  }

  /** Makes the hulls of blocks of twice the width. */
  private void join(int width) {
    int blocks = (profile.size() + width - 1) / width;
    int joined = (blocks + 1) / 2;
    for (int block = 0; block < joined; block++) {
      int base = block * 2 * width;
      int size = sizes[2 * block];
      int second = 2 * block + 1 < blocks ? sizes[2 * block + 1] : 0;
      for (int k = 0; k < second; k++) {
        int reading = hulls[base + width + k];
        tally.step();
        while (size > 1 && isNoCorner(hulls[base + size - 2], hulls[base + size - 1], reading)) {
          size--;
          tally.step();
        }
        hulls[base + size++] = reading;
      }
      sizes[block] = size;
      pointers[block] = 0;
    }
  }

  private boolean isNoCorner(int one, int middle, int other) {
    return Cross.above(profile.place(one), profile.height(one), profile.place(middle), profile.height(middle),
        profile.place(other), profile.height(other)) >= 0;
  }
}
