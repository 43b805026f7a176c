package floorcalc.movement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Things found by any of their names: "red alder", "Alder, red" and "alder (red)" are the same. Immutable.
 *
 * @param <T> the type of the things
 */
final class Named<T> {
  private static final int NEAR = 8;

  private final Map<String, T> byWords = new LinkedHashMap<>();
  private final Map<String, String> firstNames = new LinkedHashMap<>();

  void put(List<String> names, T thing) {
    for (String name : names) {
      T before = byWords.putIfAbsent(words(name), thing);
      if (before != null && before != thing) {
        throw new IllegalStateException("two things are called " + name);
      }
      firstNames.putIfAbsent(words(name), names.get(0));
    }
  }

  Optional<T> find(String name) {
    return Optional.ofNullable(byWords.get(words(name)));
  }

  /** The first names of things that share a word with the name, or are written nearly so; at most eight, in order. */
  List<String> near(String name) {
    String words = words(name);
    List<String> asked = Arrays.asList(words.split(" "));
    List<String> near = new ArrayList<>();
    firstNames.forEach((key, first) -> {
      boolean alike = distance(words, key) <= Math.max(1, words.length() / 4)
          || Arrays.stream(key.split(" ")).anyMatch(word -> asked.stream().anyMatch(other -> same(word, other)));
      if (alike && near.size() < NEAR && !near.contains(first)) {
        near.add(first);
      }
    });
    return near;
  }

  /** Short words must be the same; long ones may differ in a letter. */
  private static boolean same(String word, String other) {
    return word.equals(other) || word.length() > 3 && other.length() > 3 && distance(word, other) <= 1;
  }

  /** In small letters, in alphabetical order, without what stands between them. */
  private static String words(String name) {
    return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+")).filter(word -> !word.isEmpty()).sorted()
        .collect(Collectors.joining(" "));
  }

  /** How many letters must be changed, added or left out. */
  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int above = row[j];
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? diagonal : diagonal + 1;
        row[j] = Math.min(change, Math.min(above, row[j - 1]) + 1);
        diagonal = above;
      }
    }
    return row[b.length()];
  }
}
