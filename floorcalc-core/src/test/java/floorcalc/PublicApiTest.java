package floorcalc;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The public API is what {@code public-api.txt} says: nothing becomes public, changes or goes by accident. After a change
 * that is meant, {@code -Dapi.write=yes} writes the file anew; the difference is then seen in the commit.
 */
class PublicApiTest {

  private static final Path LISTED = Path.of("public-api.txt");

  @Test
  void isWhatIsListed() throws IOException {
    List<String> now = PublicApi.lines(PublicApi.types());
    if (System.getProperty("api.write") != null) {
      Files.writeString(LISTED, now.stream().map(line -> line + "\n").collect(Collectors.joining()));
    }
    assertThat(difference(Files.readAllLines(LISTED), now))
        .as("changes of the public API; when they are meant, run this test with -Dapi.write=yes and add a line to CHANGELOG.md")
        .isEmpty();
  }

  @Test
  void namesWhatWasAddedAndWhatWasRemoved() {
    assertThat(difference(List.of("A: final class", "A: method int one()"), List.of("A: final class", "A: method int two()")))
        .containsExactly("removed  A: method int one()", "added    A: method int two()");
  }

  @Test
  void listsTypesConstantsComponentsAndMembers() {
    assertThat(PublicApi.lines(List.of(Sample.class, Sample.Side.class, Sample.Pair.class))).containsExactly(
        "floorcalc.PublicApiTest.Sample: final class<T extends java.lang.Number> is java.lang.Comparable<floorcalc.PublicApiTest.Sample<T>>",
        "floorcalc.PublicApiTest.Sample: field static floorcalc.measure.Length NONE",
        "floorcalc.PublicApiTest.Sample: method <S> java.util.List<S> all(S, java.lang.String[]) varargs throws java.io.IOException",
        "floorcalc.PublicApiTest.Sample: method int compareTo(floorcalc.PublicApiTest.Sample<T>)",
        "floorcalc.PublicApiTest.Sample: method int seen()",
        "floorcalc.PublicApiTest.Sample.Side: enum",
        "floorcalc.PublicApiTest.Sample.Side: constant LEFT",
        "floorcalc.PublicApiTest.Sample.Pair: record",
        "floorcalc.PublicApiTest.Sample.Pair: component 01 floorcalc.measure.Length one",
        "floorcalc.PublicApiTest.Sample.Pair: component 02 java.util.List<java.lang.String> many",
        "floorcalc.PublicApiTest.Sample.Pair: constructor (floorcalc.measure.Length, java.util.List<java.lang.String>)");
  }

  private static List<String> difference(List<String> before, List<String> after) {
    List<String> removed = new ArrayList<>(before);
    removed.removeAll(after);
    List<String> added = new ArrayList<>(after);
    added.removeAll(before);
    return Stream.concat(removed.stream().map(line -> "removed  " + line), added.stream().map(line -> "added    " + line)).toList();
  }

  /** What no caller can name: its members are seen through a public child. */
  private abstract static class Hidden {

    public int seen() {
      return 0;
    }

    int unseen() {
      return 0;
    }
  }

  static final class Sample<T extends Number> extends Hidden implements Comparable<Sample<T>> {

    public static final Length NONE = Length.ZERO;

    private Sample() {
    }

    public <S> List<S> all(S first, String... more) throws IOException {
      return List.of(first);
    }

    @Override
    public int compareTo(Sample<T> other) {
      return 0;
    }

    enum Side { LEFT }

    record Pair(Length one, List<String> many) {

      public Pair {
        many = List.copyOf(many);
      }
    }
  }
}
