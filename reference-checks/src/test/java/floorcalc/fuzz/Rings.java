package floorcalc.fuzz;

/** Rings of corners in nanometres, x and y in turn: rooms as they might be. */
final class Rings {
  static final long MM = 1_000_000;

  private final Chance chance;

  Rings(Chance chance) {
    this.chance = chance;
  }

  /** A length in whole millimetres for the most part, else in tenths or down to the nanometre. */
  long size(long leastMm, long mostMm) {
    long whole = chance.between(leastMm, mostMm) * MM;
    return switch (chance.below(8)) {
      case 0 -> whole + chance.between(0, 9) * MM / 10;
      case 1 -> whole + chance.between(0, MM - 1);
      default -> whole;
    };
  }

  /** A ring that encloses a room, as far as its sizes by chance allow. */
  long[] sound() {
    long[] ring = switch (chance.below(11)) {
      case 0, 1 -> rectangle(size(400, 6500), size(400, 5000));
      case 2 -> taper();
      case 3, 4 -> letter();
      case 5 -> star((int) chance.between(5, 14));
      case 6 -> comb((int) chance.between(2, 6), size(150, 900), size(100, 700), size(300, 2500));
      case 7 -> spiral((int) chance.between(3, 9), size(300, 900));
      case 8 -> stairs((int) chance.between(2, 9));
      case 9 -> round((int) chance.between(3, 40), size(500, 3000));
      default -> needle();
    };
    if (chance.oneIn(4)) {
      ring = turned(ring, chance.share() * 360);
    }
    if (chance.oneIn(6)) {
      ring = moved(ring, size(-9000, 9000), size(-9000, 9000));
    }
    return chance.oneIn(5) ? backwards(ring) : ring;
  }

  static long[] rectangle(long width, long depth) {
    return new long[] {0, 0, width, 0, width, depth, 0, depth};
  }

  private long[] taper() {
    long[] ring = rectangle(size(600, 6500), size(600, 5000));
    for (int i = 0; i < ring.length; i++) {
      ring[i] += chance.between(-150, 150) * MM / 3;
    }
    return ring;
  }

  private long[] letter() {
    long a = size(150, 2200);
    long ab = a + size(150, 2200);
    long abc = ab + size(150, 2200);
    long d = size(150, 2200);
    long de = d + size(150, 2200);
    long def = de + size(150, 2200);
    return switch (chance.below(6)) {
      case 0 -> new long[] {0, 0, ab, 0, ab, d, a, d, a, de, 0, de};
      case 1 -> new long[] {a, 0, ab, 0, ab, d, abc, d, abc, de, 0, de, 0, d, a, d};
      case 2 -> new long[] {0, 0, abc, 0, abc, de, ab, de, ab, d, a, d, a, def, 0, def};
      case 3 -> new long[] {0, 0, a, 0, a, d, ab, d, ab, 0, abc, 0, abc, def, ab, def, ab, de, a, de, a, def, 0, def};
      case 4 -> new long[] {0, 0, ab, 0, ab, d, abc, d, abc, de, a, de, a, d, 0, d};
      default -> new long[] {a, 0, ab, 0, ab, d, abc, d, abc, de, ab, de, ab, def, a, def, a, de, 0, de, 0, d, a, d};
    };
  }

  private long[] star(int corners) {
    long[] ring = new long[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * StrictMath.PI * i / corners;
      double reach = size(500, 3000);
      ring[2 * i] = StrictMath.round(reach * StrictMath.cos(angle));
      ring[2 * i + 1] = StrictMath.round(reach * StrictMath.sin(angle));
    }
    return ring;
  }

  /** A strip with teeth. */
  static long[] comb(int teeth, long tooth, long slot, long depth) {
    long[] ring = new long[8 * teeth + 2];
    int at = 0;
    for (int i = 0; i < teeth; i++) {
      long x = i * (tooth + slot);
      long[] four = {x, 0, x + tooth, 0, x + tooth, depth, x + tooth + slot, depth};
      System.arraycopy(four, 0, ring, at, 8);
      at += 8;
    }
    long width = teeth * (tooth + slot) - slot;
    ring[at - 2] = width;
    ring[at - 1] = depth + tooth;
    ring[at] = 0;
    ring[at + 1] = depth + tooth;
    return ring;
  }

  /** A corridor that winds inwards: out along its outer walls, back along the inner ones. */
  static long[] spiral(int legs, long wide) {
    int[][] ways = {{1, 0}, {0, 1}, {-1, 0}, {0, -1}};
    long[] ring = new long[4 * legs + 4];
    long x = 0;
    long y = 0;
    for (int i = 0; i <= legs; i++) {
      int[] before = i == 0 ? new int[2] : ways[i % 4];
      int[] after = i == legs ? new int[2] : ways[(i + 1) % 4];
      ring[2 * i] = x;
      ring[2 * i + 1] = y;
      int back = ring.length - 2 - 2 * i;
      ring[back] = x + wide * (before[0] + after[0]);
      ring[back + 1] = y + wide * (before[1] + after[1]);
      long run = wide * (2L * ((legs - i + 1) / 2) + 2);
      x += ways[i % 4][0] * run;
      y += ways[i % 4][1] * run;
    }
    return ring;
  }

  private long[] stairs(int steps) {
    long[] ring = new long[4 * steps + 4];
    long going = size(60, 600);
    long rise = size(60, 600);
    int at = 2;
    for (int i = 0; i < steps; i++) {
      ring[at++] = (i + 1) * going;
      ring[at++] = i * rise;
      ring[at++] = (i + 1) * going;
      ring[at++] = (i + 1) * rise;
    }
    ring[at++] = 0;
    ring[at] = steps * rise;
    return ring;
  }

  static long[] round(int corners, long radius) {
    long[] ring = new long[2 * corners];
    for (int i = 0; i < corners; i++) {
      double angle = 2 * StrictMath.PI * i / corners;
      ring[2 * i] = StrictMath.round(radius * StrictMath.cos(angle));
      ring[2 * i + 1] = StrictMath.round(radius * StrictMath.sin(angle));
    }
    return ring;
  }

  private long[] needle() {
    return new long[] {0, 0, size(2000, 12000), size(0, 60), size(500, 2000), size(61, 500)};
  }

  static long[] turned(long[] ring, double degrees) {
    double sin = StrictMath.sin(StrictMath.toRadians(degrees));
    double cos = StrictMath.cos(StrictMath.toRadians(degrees));
    long[] there = new long[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      there[i] = StrictMath.round(ring[i] * cos - ring[i + 1] * sin);
      there[i + 1] = StrictMath.round(ring[i] * sin + ring[i + 1] * cos);
    }
    return there;
  }

  static long[] moved(long[] ring, long dx, long dy) {
    long[] there = ring.clone();
    for (int i = 0; i < ring.length; i += 2) {
      there[i] += dx;
      there[i + 1] += dy;
    }
    return there;
  }

  static long[] backwards(long[] ring) {
    long[] there = new long[ring.length];
    for (int i = 0; i < ring.length; i += 2) {
      there[i] = ring[ring.length - 2 - i];
      there[i + 1] = ring[ring.length - 1 - i];
    }
    return there;
  }

  /** Whether a place is inside a ring, as far as doubles tell. */
  static boolean holds(long[] ring, long x, long y) {
    boolean inside = false;
    for (int i = 0, j = ring.length - 2; i < ring.length; j = i, i += 2) {
      if (ring[i + 1] > y != ring[j + 1] > y
          && x < (double) (ring[j] - ring[i]) * (y - ring[i + 1]) / (ring[j + 1] - ring[i + 1]) + ring[i]) {
        inside = !inside;
      }
    }
    return inside;
  }
}
