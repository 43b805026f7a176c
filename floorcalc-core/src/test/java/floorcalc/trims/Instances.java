package floorcalc.trims;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The published and constructed instances of the resources, whose heads name where they are from. */
final class Instances {
  private Instances() {}

  /** A list of lengths, a bar, the proven optimum. */
  record Instance(String name, long bar, long optimum, long[] lengths) {
    @Override
    public String toString() {
      return name;
    }
  }

  /** The bin packing lists of Martello and Toth, Falkenauer, Scholl, Klein and Juergens, and of a public collection. */
  static Stream<Instance> published() {
    return Stream.of("small", "falkenauer", "scholl").flatMap(file -> lines("bpp_instances_" + file + ".txt").stream())
        .map(line -> line.split(","))
        .map(part -> new Instance(part[0], Long.parseLong(part[1]), Long.parseLong(part[2]), numbers(part[3])));
  }

  static Instance published(String name) {
    return published().filter(instance -> instance.name.equals(name)).findFirst().orElseThrow();
  }

  /** The classic cutting stock examples. */
  static Stream<Instance> textbook() {
    return lines("csp_textbook.csv").stream().skip(1).map(line -> line.split(",")).map(part -> {
      long[] lengths = Arrays.stream(part[2].split(" ")).map(term -> term.split("x"))
          .flatMapToLong(term -> Stream.generate(() -> term[1]).limit(Long.parseLong(term[0])).mapToLong(Long::parseLong))
          .toArray();
      return new Instance(part[0], Long.parseLong(part[1]), Long.parseLong(part[8]), lengths);
    });
  }

  static long[] numbers(String text) {
    return Arrays.stream(text.trim().split(" ")).mapToLong(Long::parseLong).toArray();
  }

  static List<String> lines(String file) {
    List<String> lines = new ArrayList<>();
    try (BufferedReader reader = new BufferedReader(new InputStreamReader(
        Objects.requireNonNull(Instances.class.getResourceAsStream("/reference/" + file), file), UTF_8))) {
      for (String line = reader.readLine(); line != null; line = reader.readLine()) {
        if (!line.startsWith("#") && !line.isBlank()) {
          lines.add(line);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return lines;
  }

  /** The problem without a kerf, bars without limit. */
  static Problem problem(long bar, long[] lengths) {
    Map<Long, Integer> counts = new TreeMap<>(Comparator.reverseOrder());
    for (long length : lengths) {
      counts.merge(length, 1, Integer::sum);
    }
    return new Problem(counts.keySet().stream().mapToLong(Long::longValue).toArray(),
        counts.values().stream().mapToInt(Integer::intValue).toArray(), new long[] {bar}, new long[] {1},
        new int[] {Problem.NO_LIMIT});
  }
}
