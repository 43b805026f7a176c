package floorcalc.fuzz;

import java.util.Arrays;

/** Rings that are wrong, or right by a hair: what a slip of a program that draws rooms might hand over. */
final class HostileRings {
  private static final long FURTHEST = 10_000_000 * Rings.MM;

  private final Chance chance;
  private final Rings rings;

  HostileRings(Chance chance) {
    this.chance = chance;
    this.rings = new Rings(chance);
  }

  long[] any() {
    long[] ring = rings.sound();
    for (int times = 1 + chance.below(3); times > 0; times--) {
      ring = spoilt(ring);
    }
    return ring;
  }

  private long[] spoilt(long[] ring) {
    int corner = 2 * chance.below(ring.length / 2);
    int other = 2 * chance.below(ring.length / 2);
    return switch (chance.below(18)) {
      case 0 -> with(ring, corner, ring[corner], ring[corner + 1]);
      case 1 -> with(ring, corner, ring[other], ring[other + 1]);
      case 2 -> with(ring, corner, ring[corner] + 1, ring[corner + 1]);
      case 3 -> with(ring, corner, ring[corner], ring[corner + 1] + chance.between(-3, 3));
      case 4 -> spike(ring, corner);
      case 5 -> with(ring, corner, middle(ring, corner, 0), middle(ring, corner, 1));
      case 6 -> with(ring, corner, middle(ring, other, 0), middle(ring, other, 1));
      case 7 -> Rings.moved(ring, chance.any(FURTHEST, -FURTHEST) - extreme(ring, 0), 0);
      case 8 -> Rings.moved(ring, FURTHEST + chance.between(-2, 2), -FURTHEST + chance.between(-2, 2));
      case 9 -> swapped(ring, corner, other);
      case 10 -> scaled(ring, chance.any(1e-6, 1e-4, 1e-2, 0.05, 0.3, 1.7, 30.0));
      case 11 -> without(ring, corner);
      case 12 -> collinear(ring, chance.below(30));
      case 13 -> flattened(ring);
      case 14 -> wander((int) chance.between(3, 12));
      case 15 -> notched(ring, corner, chance.any(1L, 2L, 1000L, Rings.MM, 20 * Rings.MM, 21 * Rings.MM));
      case 16 -> nudged(ring);
      default -> Rings.turned(ring, chance.any(45.0, 90.0, 0.0001, 1e-9, 89.999999));
    };
  }

  private static long[] with(long[] ring, int before, long x, long y) {
    long[] more = new long[ring.length + 2];
    System.arraycopy(ring, 0, more, 0, before + 2);
    more[before + 2] = x;
    more[before + 3] = y;
    System.arraycopy(ring, before + 2, more, before + 4, ring.length - before - 2);
    return more;
  }

  private static long[] without(long[] ring, int corner) {
    long[] less = new long[ring.length - 2];
    System.arraycopy(ring, 0, less, 0, corner);
    System.arraycopy(ring, corner + 2, less, corner, less.length - corner);
    return less.length < 2 ? ring : less;
  }

  private static long middle(long[] ring, int corner, int axis) {
    return (ring[corner + axis] + ring[(corner + 2) % ring.length + axis]) / 2;
  }

  private long[] spike(long[] ring, int corner) {
    long[] out = with(ring, corner, middle(ring, corner, 0) + chance.between(-900, 900) * Rings.MM,
        middle(ring, corner, 1) + chance.between(-900, 900) * Rings.MM);
    return chance.oneIn(2) ? with(out, corner + 2, ring[corner] + chance.between(0, 2), ring[corner + 1]) : out;
  }

  private static long extreme(long[] ring, int axis) {
    long most = Long.MIN_VALUE;
    for (int i = axis; i < ring.length; i += 2) {
      most = Math.max(most, ring[i]);
    }
    return most;
  }

  private static long[] swapped(long[] ring, int one, int other) {
    long[] there = ring.clone();
    there[one] = ring[other];
    there[one + 1] = ring[other + 1];
    there[other] = ring[one];
    there[other + 1] = ring[one + 1];
    return there;
  }

  private static long[] scaled(long[] ring, double by) {
    return Arrays.stream(ring).map(at -> StrictMath.round(at * by)).toArray();
  }

  /** Corners along walls, exactly or to the nanometre. */
  private long[] collinear(long[] ring, int corners) {
    long[] more = ring;
    for (int i = 0; i < corners; i++) {
      int corner = 2 * chance.below(more.length / 2);
      more = with(more, corner, middle(more, corner, 0), middle(more, corner, 1));
    }
    return more;
  }

  private long[] flattened(long[] ring) {
    long[] flat = ring.clone();
    int axis = chance.below(2);
    long by = chance.any(0L, 1L, 2L, 10L, 1000L);
    for (int i = axis; i < flat.length; i += 2) {
      flat[i] = Long.signum(flat[i]) * by;
    }
    return flat;
  }

  private long[] wander(int corners) {
    long[] ring = new long[2 * corners];
    for (int i = 0; i < ring.length; i++) {
      ring[i] = chance.between(-4, 4) * 500 * Rings.MM;
    }
    return ring;
  }

  /** A slot of a width that is about that of a gap, or of nothing. */
  private static long[] notched(long[] ring, int corner, long wide) {
    long x = middle(ring, corner, 0);
    long y = middle(ring, corner, 1);
    long[] out = with(ring, corner, x, y);
    out = with(out, corner + 2, x + 300 * Rings.MM, y + 300 * Rings.MM);
    return with(out, corner + 4, x + wide, y);
  }

  private long[] nudged(long[] ring) {
    long[] there = ring.clone();
    for (int i = 0; i < there.length; i++) {
      there[i] += chance.between(-1, 1);
    }
    return there;
  }
}
