package floorcalc.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Documents that were sound jobs before bytes or parts of them were changed. */
final class JobBytes {
  private static final List<byte[]> SOUND = sound();
  private static final String[] PARTS = {"{", "}", "[", "]", ",", ":", "\"", "null", "true", "NaN", "-Infinity", "1e400", "-0", "0.0000000000001",
      "1E1000000000", "1e10000000000", "-1E-99999999999", "123456789012345678901234567890", "\\ud800", "\\u0000", "\\", "/*x*/", "//", "'", "\u2028", "\t", "\r", "01", "+1", ".5", "5.",
      "0x10", "\"length\":", "\"outline\":", "\"rooms\":", "\"survey\":", "[[0,0],[1,1]]", "\"12' 7\\\"\"", "[[[[", "]]]]", "{\"a\":", "1e-400",
      "9223372036854775808", "\uFEFF", "\"@\"", "𝟙"};

  private final Chance chance;

  JobBytes(Chance chance) {
    this.chance = chance;
  }

  byte[] make() {
    byte[] bytes = start();
    for (int times = 1 + (chance.oneIn(3) ? chance.below(8) : 0); times > 0; times--) {
      bytes = changed(bytes);
    }
    return bytes;
  }

  private byte[] start() {
    return chance.oneIn(3) ? new JobGrammar(chance, chance.any(JobGrammar.TAME, 100, 20, 5)).text().getBytes(StandardCharsets.UTF_8)
        : SOUND.get(chance.below(SOUND.size())).clone();
  }

  private byte[] changed(byte[] bytes) {
    if (bytes.length == 0) {
      return new byte[] {(byte) chance.below(256)};
    }
    int at = chance.below(bytes.length);
    int to = Math.min(bytes.length, at + 1 + chance.below(chance.any(2, 10, 100, 3000)));
    return switch (chance.below(14)) {
      case 0 -> set(bytes, at, bytes[at] ^ 1 << chance.below(8));
      case 1 -> set(bytes, at, chance.below(256));
      case 2 -> set(bytes, at, "{}[]:,\"\\0123456789eE.+-tfn ".charAt(chance.below(27)));
      case 3 -> spliced(bytes, at, to, new byte[0]);
      case 4 -> spliced(bytes, at, bytes.length, new byte[0]);
      case 5 -> spliced(bytes, at, at, chance.any(PARTS).getBytes(StandardCharsets.UTF_8));
      case 6, 7 -> token(bytes, at, chance.any(PARTS).getBytes(StandardCharsets.UTF_8));
      case 8 -> spliced(bytes, at, at, java.util.Arrays.copyOfRange(bytes, chance.below(at + 1), at));
      case 9 -> token(bytes, at, tokenAt(bytes, chance.below(bytes.length)));
      case 10 -> member(bytes, at);
      case 11 -> spliced(bytes, at, at, chance.any("[", "{\"x\":", "[[0,", "1", "9", "\"", " ").repeat(1 + chance.below(chance.any(5, 50, 2000)))
          .getBytes(StandardCharsets.UTF_8));
      case 12 -> number(bytes, at);
      default -> token(bytes, at, (chance.any("\"", "1", "0.", "-", "\"12' ") + chance.any("9", "0", "x", "\\u0041", "é").repeat(chance.below(1500)))
          .getBytes(StandardCharsets.UTF_8));
    };
  }

  private static byte[] set(byte[] bytes, int at, int value) {
    byte[] there = bytes.clone();
    there[at] = (byte) value;
    return there;
  }

  private static byte[] spliced(byte[] bytes, int from, int to, byte[] part) {
    byte[] there = new byte[bytes.length - (to - from) + part.length];
    System.arraycopy(bytes, 0, there, 0, from);
    System.arraycopy(part, 0, there, from, part.length);
    System.arraycopy(bytes, to, there, from + part.length, bytes.length - to);
    return there;
  }

  private static boolean ends(byte one) {
    return " \n\t,:[]{}".indexOf(one) >= 0;
  }

  private static int begin(byte[] bytes, int at) {
    int from = at;
    while (from > 0 && !ends(bytes[from - 1])) {
      from--;
    }
    return from;
  }

  private static int end(byte[] bytes, int at) {
    int to = at;
    while (to < bytes.length && !ends(bytes[to])) {
      to++;
    }
    return to;
  }

  private static byte[] tokenAt(byte[] bytes, int at) {
    int from = begin(bytes, at);
    return java.util.Arrays.copyOfRange(bytes, from, Math.max(from, end(bytes, at)));
  }

  /** Puts something in place of a name or a value. */
  private static byte[] token(byte[] bytes, int at, byte[] part) {
    int from = begin(bytes, at);
    return spliced(bytes, from, Math.max(from, end(bytes, at)), part);
  }

  /** Doubles what stands between two commas, or leaves it out. */
  private byte[] member(byte[] bytes, int at) {
    int from = at;
    while (from > 0 && bytes[from] != ',') {
      from--;
    }
    int to = at + 1;
    while (to < bytes.length && bytes[to] != ',') {
      to++;
    }
    return chance.oneIn(2) ? spliced(bytes, from, to, new byte[0]) : spliced(bytes, from, from, java.util.Arrays.copyOfRange(bytes, from, to));
  }

  /** Changes the next number: a sign, an exponent, more digits. */
  private byte[] number(byte[] bytes, int at) {
    int from = at;
    while (from < bytes.length && (bytes[from] < '0' || bytes[from] > '9')) {
      from++;
    }
    return spliced(bytes, from, from, chance.any("-", "0", "1e9", "9".repeat(40), "0.", "1e-", "--", "1E+", "0.0").getBytes(StandardCharsets.UTF_8));
  }

  private static List<byte[]> sound() {
    Path examples = Path.of(System.getProperty("fuzz.examples", "../floorcalc-examples"));
    try (Stream<Path> demo = Files.list(examples.resolve("demo")); Stream<Path> tests = Files.list(examples.resolve("src/test/resources/jobs"))) {
      return Stream.concat(demo, tests).filter(file -> file.toString().endsWith(".json")).sorted(java.util.Comparator.comparing(Path::getFileName))
          .map(JobBytes::bytes).toList();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }
}
