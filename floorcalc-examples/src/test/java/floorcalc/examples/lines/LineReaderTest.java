package floorcalc.examples.lines;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineReaderTest {
  private static final int LONGEST = 10;

  private static List<String> lines(InputStream in) throws IOException {
    LineReader reader = new LineReader(in, LONGEST);
    List<String> lines = new ArrayList<>();
    for (Optional<Line> line = reader.next(); line.isPresent(); line = reader.next()) {
      lines.add(line.get().number() + " " + new String(line.get().bytes(), StandardCharsets.UTF_8));
    }
    return lines;
  }

  private static InputStream text(String text) {
    return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a\nbc\nd\n", "a\nbc\nd", "a\r\nbc\r\nd\r\n", "\uFEFFa\nbc\nd", "a\nbc\r\nd\r"})
  void linesEndWithALineFeedOrWithTheInput(String input) throws IOException {
    assertThat(lines(text(input))).containsExactly("1 a", "2 bc", "3 d");
  }

  @Test
  void blankLinesArePassedOverAndCounted() throws IOException {
    assertThat(lines(text("\n \t\r\n\na\n\n\r\n b\n \n"))).containsExactly("4 a", "7  b");
    assertThat(lines(text(""))).isEmpty();
    assertThat(lines(text("\uFEFF"))).isEmpty();
    assertThat(lines(text("\uFEFF\n\n"))).isEmpty();
  }

  @Test
  void aByteOrderMarkIsPassedOverAtTheStartAlone() throws IOException {
    assertThat(lines(text("\uFEFF\uFEFFa\n\uFEFFb"))).containsExactly("1 \uFEFFa", "2 \uFEFFb");
  }

  /** So that a column is one of the line: a carriage return would begin another line. */
  @Test
  void aCarriageReturnWithinALineIsATab() throws IOException {
    assertThat(lines(text("a\rb\r\r\n\rc"))).containsExactly("1 a\tb\t", "2 \tc");
  }

  @Test
  void aLineThatIsTooLongIsCutOneByteBeyondWhatIsAllowedAndPassedOver() throws IOException {
    assertThat(lines(text("0123456789\n0123456789\r\n0123456789a\n0123456789\r.\n0123456789abcdef\r\nb")))
        .containsExactly("1 0123456789", "2 0123456789", "3 0123456789a", "4 0123456789\t", "5 0123456789a", "6 b");
    assertThat(lines(text(" ".repeat(10) + "\n" + " ".repeat(12)))).containsExactly("2 " + " ".repeat(11));
  }

  /** Lines over many reads of the input, each of one byte. */
  @Test
  void inputThatComesByteByByte() throws IOException {
    InputStream slow = new InputStream() {
      private final InputStream in = text("ab\r\n\n0123456789abcdef\ncd");

      @Override
      public int read() throws IOException {
        return in.read();
      }

      @Override
      public int read(byte[] into, int from, int length) throws IOException {
        return in.read(into, from, 1);
      }
    };
    assertThat(lines(slow)).containsExactly("1 ab", "3 0123456789a", "4 cd");
  }

  @Test
  void linesAcrossTheChunksThatAreRead() throws IOException {
    List<String> expected = new ArrayList<>();
    StringBuilder input = new StringBuilder();
    for (int i = 1; i <= 30_000; i++) {
      input.append("x".repeat(i % 10 + 1)).append(i % 2 == 0 ? "\n" : "\r\n");
      expected.add(i + " " + "x".repeat(i % 10 + 1));
    }
    assertThat(lines(text(input.toString()))).isEqualTo(expected);
  }
}
