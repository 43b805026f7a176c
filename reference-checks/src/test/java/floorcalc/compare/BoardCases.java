package floorcalc.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Series of cases that are the same on every machine. */
final class BoardCases {
  /** As many as {@link #large()} has. */
  static final int LARGE = 300;
  /** As many as {@link #small(int)} can have. */
  static final int SMALL = 10_000;
  private static final int KERF = 3;

  private BoardCases() {}

  /** 300 cases of 8 to 25 rows, of four kinds: whole multiples of a board, equal rows, tapering rows, all rows different. */
  static Stream<BoardCase> large() {
    return IntStream.range(0, LARGE).mapToObj(BoardCases::largeCase);
  }

  static BoardCase largeCase(int number) {
    Random random = new Random(number * 7919L + 13);
    int count = 8 + random.nextInt(18);
    int board = 1200 + random.nextInt(1001);
    int offset = Math.min(300 + random.nextInt(201), board / 2);
    int minimum = random.nextBoolean() ? 200 : 300;
    int length = 2000 + random.nextInt(6001);
    int kind = random.nextInt(4);
    if (kind == 0) {
      length = board * (1 + random.nextInt(4));
    }
    int taper = kind == 2 ? random.nextInt(31) - 15 : 0;
    List<Integer> rows = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      rows.add(kind == 3 ? length + random.nextInt(300) : length + taper * k);
    }
    return new BoardCase(number, board, KERF, offset, minimum, rows);
  }

  /** The first of 10 000 cases of 2 to 12 rows, some shorter than a board, of the same four kinds. */
  static Stream<BoardCase> small(int count) {
    return IntStream.range(0, count).mapToObj(BoardCases::smallCase);
  }

  static BoardCase smallCase(int number) {
    SplittableRandom random = new SplittableRandom(20_251_125L + number);
    int count = random.nextInt(2, 13);
    int board = random.nextInt(900, 2401);
    int offset = Math.min(random.nextInt(0, 501), board / 2);
    int minimum = Math.min(random.nextInt(0, 401), board / 3);
    int length = random.nextInt(700, 7001);
    int kind = random.nextInt(4);
    if (kind == 0) {
      length = board * random.nextInt(1, 5);
    }
    int taper = kind == 2 ? random.nextInt(-15, 16) : 0;
    int kerf = random.nextInt(0, 6);
    List<Integer> rows = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      rows.add(kind == 3 ? length + random.nextInt(300) : length + taper * k);
    }
    return new BoardCase(number, board, kerf, offset, minimum, rows);
  }
}
