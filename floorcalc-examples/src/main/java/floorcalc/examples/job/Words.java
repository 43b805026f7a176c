package floorcalc.examples.job;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Lists of words in messages, and the word that was probably meant. */
final class Words {
  private Words() {
  }

  /** For example {@code one of "engineered", "solid"}. */
  static String oneOf(Collection<String> words) {
    return (words.size() == 1 ? "" : "one of ")
        + words.stream().map(word -> "\"" + word + "\"").collect(Collectors.joining(", "));
  }

  /** For example {@code ; did you mean "solid"?}, or nothing if no word is near. */
  static String hint(String typed, Collection<String> known) {
    return nearest(typed, known).map(word -> "; did you mean \"" + word + "\"?").orElse("");
  }

  /** The known word that is at most a third of its letters away from the typed one, the first if several are as near. */
  static Optional<String> nearest(String typed, Collection<String> known) {
    String word = bare(typed);
    String best = "";
    int least = Integer.MAX_VALUE;
    for (String candidate : known) {
      if (Math.abs(candidate.length() - typed.length()) <= candidate.length()) {
        int distance = distance(word, bare(candidate));
        if (distance < least && distance * 3 <= candidate.length()) {
          least = distance;
          best = candidate;
        }
      }
    }
    return best.isEmpty() ? Optional.empty() : Optional.of(best);
  }

  private static String bare(String word) {
    return word.toLowerCase(Locale.ROOT).replaceAll("[ _-]", "");
  }

  /** Letters to add, take away, change or swap with their neighbour to make one word of the other. */
  private static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        d[i][j] = Math.min(d[i - 1][j - 1] + change, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
          d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
