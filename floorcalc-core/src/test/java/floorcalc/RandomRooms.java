package floorcalc;

import floorcalc.outline.Direction;
import floorcalc.outline.Outline;
import floorcalc.outline.OutlineCheck;
import floorcalc.outline.Ring;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Invented rooms of many shapes, made from plain numbers so that a failing room shrinks to a plain one. */
final class RandomRooms {
  static final long MM = 1_000_000L;

  private RandomRooms() {}

  /** Any sound room of ordinary size, lying straight or turned by any angle. */
  static Arbitrary<Outline> any() {
    Arbitrary<Outline> straight = straight();
    return Arbitraries.frequencyOf(Tuple.of(3, straight), Tuple.of(1, turned(straight)));
  }

  /** Any sound room of ordinary size, as it is first listed. */
  static Arbitrary<Outline> straight() {
    return Arbitraries.frequencyOf(
        Tuple.of(3, rectangles()), Tuple.of(3, tapers()), Tuple.of(3, letters()), Tuple.of(3, withColumns()),
        Tuple.of(2, withBays()), Tuple.of(2, stars()), Tuple.of(2, steps()), Tuple.of(1, slivers()),
        Tuple.of(1, tiny())).filter(RandomRooms::isSound);
  }

  static boolean isSound(Outline outline) {
    return OutlineCheck.faultsOf(outline).isEmpty();
  }

  /** Lengths in nanometres: mostly whole millimetres, some in tenths, few down to the nanometre. */
  static Arbitrary<Long> sizes(int leastMm, int mostMm) {
    Arbitrary<Integer> fine = Arbitraries.frequencyOf(Tuple.of(6, Arbitraries.just(0)),
        Tuple.of(2, Arbitraries.integers().between(0, 9).map(tenth -> tenth * 100_000)),
        Tuple.of(1, Arbitraries.integers().between(0, 999_999)));
    return Combinators.combine(Arbitraries.integers().between(leastMm, mostMm), fine).as((mm, nm) -> mm * MM + nm);
  }

  static Arbitrary<Outline> rectangles() {
    return Combinators.combine(sizes(600, 6500), sizes(600, 5000)).as(RandomRooms::rectangle);
  }

  static Outline rectangle(long width, long depth) {
    return shell(0, 0, width, 0, width, depth, 0, depth);
  }

  /** Four walls, none of them square to another. */
  static Arbitrary<Outline> tapers() {
    Arbitrary<Integer> off = Arbitraries.integers().between(-1500, 1500);
    return Combinators.combine(sizes(600, 6500), sizes(600, 5000), off.list().ofSize(8)).as((w, d, by) -> {
      long[] at = {0, 0, w, 0, w, d, 0, d};
      for (int i = 0; i < 8; i++) {
        at[i] += by.get(i) * MM / 10;
      }
      return shell(at);
    });
  }

  /** Rooms like an L, T, U, H, Z or plus. */
  static Arbitrary<Outline> letters() {
    Arbitrary<Long> part = sizes(150, 2200);
    return Combinators.combine(Arbitraries.of("L", "T", "U", "H", "Z", "+"), part, part, part, part, part)
        .as(RandomRooms::letter);
  }

  private static Outline letter(String letter, long a, long b, long c, long d, long e) {
    long ab = a + b;
    long abc = a + b + c;
    long de = d + e;
    return switch (letter) {
      case "L" -> shell(0, 0, ab, 0, ab, d, a, d, a, de, 0, de);
      case "T" -> shell(a, 0, ab, 0, ab, d, abc, d, abc, de, 0, de, 0, d, a, d);
      case "U" -> shell(0, 0, abc, 0, abc, de, ab, de, ab, d, a, d, a, de + c, 0, de + c);
      case "H" -> shell(0, 0, a, 0, a, d, ab, d, ab, 0, abc, 0, abc, de + d, ab, de + d, ab, de, a, de, a, de + d, 0,
          de + d);
      case "Z" -> shell(0, 0, ab, 0, ab, d, abc, d, abc, de, a, de, a, d, 0, d);
      default -> shell(a, 0, ab, 0, ab, d, abc, d, abc, de, ab, de, ab, de + c, a, de + c, a, de, 0, de, 0, d, a, d);
    };
  }

  /** A rectangle with one to three columns: upright, on their tip, or six-sided. */
  static Arbitrary<Outline> withColumns() {
    Arbitrary<List<Integer>> column = Arbitraries.integers().between(1, 998).list().ofSize(4);
    return Combinators.combine(sizes(1200, 6000), sizes(900, 4500), column.list().ofMinSize(1).ofMaxSize(3),
        Arbitraries.integers().between(0, 2)).as((w, d, columns, kind) -> {
          List<Ring> voids = new ArrayList<>();
          for (int i = 0; i < columns.size(); i++) {
            voids.add(column(w / 3 * i, 0, w / 3, d, columns.get(i), kind));
          }
          return Outline.of(rectangle(w, d).shell(), voids);
        });
  }

  /** A column within a cell of the room; the numbers are thousandths of what is free. */
  private static Ring column(long x, long y, long w, long d, List<Integer> at, int kind) {
    long x0 = x + w / 1000 * at.get(0);
    long y0 = y + d / 1000 * at.get(1);
    long x1 = x0 + Math.max(2, (x + w - x0) / 1000 * at.get(2));
    long y1 = y0 + Math.max(2, (y + d - y0) / 1000 * at.get(3));
    long xm = (x0 + x1) / 2;
    long ym = (y0 + y1) / 2;
    return switch (kind) {
      case 0 -> ring(x0, y0, x1, y0, x1, y1, x0, y1);
      case 1 -> ring(xm, y0, x1, ym, xm, y1, x0, ym);
      default -> ring(x0 + (x1 - x0) / 4, y0, x1 - (x1 - x0) / 4, y0, x1, ym, x1 - (x1 - x0) / 4, y1,
          x0 + (x1 - x0) / 4, y1, x0, ym);
    };
  }

  /** A rectangle with a bay window: part of a circle in straight walls. */
  static Arbitrary<Outline> withBays() {
    return Combinators.combine(sizes(1500, 5500), sizes(900, 4000), Arbitraries.integers().between(100, 450),
        Arbitraries.integers().between(100, 1000), Arbitraries.integers().between(2, 12)).as((w, d, side, rise, walls) -> {
          long half = w / 1000 * side;
          List<Long> at = new ArrayList<>(List.of(0L, 0L, w, 0L, w, d));
          for (int i = 0; i <= walls; i++) {
            double angle = StrictMath.PI * i / walls;
            at.add(w / 2 + StrictMath.round(half * StrictMath.cos(angle)));
            at.add(d + StrictMath.round(half / 1000.0 * rise * StrictMath.sin(angle)));
          }
          at.addAll(List.of(0L, d));
          return shell(at.stream().mapToLong(Long::longValue).toArray());
        });
  }

  /** 3 to 40 corners, one in each sector round a point. */
  static Arbitrary<Outline> stars() {
    return Combinators.combine(Arbitraries.integers().between(400, 2800), Arbitraries.integers().between(-400, 400))
        .as((radius, turn) -> new int[] {radius, turn}).list().ofMinSize(3).ofMaxSize(40).map(corners -> {
          long[] at = new long[2 * corners.size()];
          for (int i = 0; i < corners.size(); i++) {
            double angle = 2 * StrictMath.PI * (i + corners.get(i)[1] / 1000.0) / corners.size();
            at[2 * i] = StrictMath.round(corners.get(i)[0] * StrictMath.cos(angle) * 1000) * 1000;
            at[2 * i + 1] = StrictMath.round(corners.get(i)[0] * StrictMath.sin(angle) * 1000) * 1000;
          }
          return shell(at);
        });
  }

  /** Up to 40 corners, all square: bars side by side that reach below and above a line; some corners lie within a wall. */
  static Arbitrary<Outline> steps() {
    return Combinators.combine(sizes(20, 1300), sizes(60, 2000), sizes(60, 2000)).as((w, low, high) ->
        new long[] {w, low, high}).list().ofMinSize(1).ofMaxSize(10).map(bars -> {
          List<Long> at = new ArrayList<>();
          long x = 0;
          for (long[] bar : bars) {
            at.addAll(List.of(x, -bar[1], x + bar[0], -bar[1]));
            x += bar[0];
          }
          for (int i = bars.size() - 1; i >= 0; i--) {
            long[] bar = bars.get(i);
            at.addAll(List.of(x, bar[2], x - bar[0], bar[2]));
            x -= bar[0];
          }
          return shell(withoutRepeats(at));
        });
  }

  private static long[] withoutRepeats(List<Long> at) {
    List<Long> kept = new ArrayList<>();
    for (int i = 0; i < at.size(); i += 2) {
      int n = kept.size();
      if (n == 0 || !kept.get(n - 2).equals(at.get(i)) || !kept.get(n - 1).equals(at.get(i + 1))) {
        kept.addAll(List.of(at.get(i), at.get(i + 1)));
      }
    }
    return kept.stream().mapToLong(Long::longValue).toArray();
  }

  /** Floors little wider than their gaps: strips, needles, flat four-sided floors. */
  static Arbitrary<Outline> slivers() {
    return Combinators.combine(Arbitraries.integers().between(0, 2), sizes(400, 6000), sizes(5, 120), sizes(-300, 300))
        .as((kind, long_, wide, off) -> switch (kind) {
          case 0 -> rectangle(long_, wide);
          case 1 -> shell(0, 0, long_, 0, off, wide);
          default -> shell(0, 0, long_, off, long_ + off, wide + off, off, wide);
        });
  }

  /** From a pipe casing to a cupboard of 500 by 500. */
  static Arbitrary<Outline> tiny() {
    return Combinators.combine(sizes(45, 500), sizes(45, 500), sizes(0, 20)).as((w, d, off) ->
        shell(0, 0, w + off, 0, w, d, 0, d + off));
  }

  /** Corridors about 200 m long: straight, tapering, or with niches. */
  static Arbitrary<Outline> corridors() {
    return Combinators.combine(sizes(195_000, 205_000), sizes(700, 1600), sizes(0, 300), sizes(300, 90_000))
        .as((l, w, off, at) -> off % 2 == 0
            ? shell(0, 0, l, 0, l, w + off, 0, w)
            : shell(0, 0, l, 0, l, w, at + 2000 * MM, w, at + 2000 * MM, w + off, at, w + off, at, w, 0, w));
  }

  /** The same rooms turned by any angle, every corner rounded to the nanometre. */
  static Arbitrary<Outline> turned(Arbitrary<Outline> rooms) {
    Arbitrary<Double> angles = Arbitraries.frequencyOf(
        Tuple.of(2, Arbitraries.integers().between(1, 719).map(half -> half / 2.0)),
        Tuple.of(1, Arbitraries.longs().between(1, 359_999_999_999L).map(nano -> nano / 1e9)));
    return Combinators.combine(rooms, angles).as((room, angle) -> Direction.fromDegrees(angle).toRoom(room))
        .filter(RandomRooms::isSound);
  }

  static Outline shell(long... at) {
    return Outline.of(ring(at));
  }

  static Ring ring(long... at) {
    long[] xs = new long[at.length / 2];
    long[] ys = new long[at.length / 2];
    for (int i = 0; i < xs.length; i++) {
      xs[i] = at[2 * i];
      ys[i] = at[2 * i + 1];
    }
    return Ring.ofNanometres(xs, ys);
  }
}
