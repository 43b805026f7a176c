package floorcalc.examples.lines;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Optional;

/**
 * Reads lines of bytes. A line ends with a line feed, with or without a carriage return before it, or where the input ends; one
 * that is too long is passed over to its end without being held. Never reads ahead of what is there: who writes a line and waits
 * for the answer is served.
 */
final class LineReader {
  private static final int CHUNK = 1 << 16;
  private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

  private final InputStream in;
  private final int longest;
  private final byte[] chunk = new byte[CHUNK];
  private int at;
  private int end;
  private long number;

  LineReader(InputStream in, int longest) {
    this.in = in;
    this.longest = longest;
  }

  /** Returns the next line that is not blank, or nothing at the end. */
  Optional<Line> next() throws IOException {
    while (at < end || fill()) {
      number++;
      byte[] bytes = line();
      if (bytes.length > longest || !isBlank(bytes)) {
        return Optional.of(new Line(number, bytes));
      }
    }
    return Optional.empty();
  }

  private boolean fill() throws IOException {
    at = 0;
    end = Math.max(0, in.read(chunk));
    return end > 0;
  }

  private byte[] line() throws IOException {
    ByteArrayOutputStream held = new ByteArrayOutputStream();
    do {
      int feed = at;
      while (feed < end && chunk[feed] != '\n') {
        feed++;
      }
      // One more than is allowed, to be known as too long, and one for the carriage return.
      held.write(chunk, at, Math.min(feed - at, longest + 2 - held.size()));
      at = Math.min(feed + 1, end);
      if (feed < end) {
        break;
      }
    } while (fill());
    return cleared(held.toByteArray());
  }

  private byte[] cleared(byte[] bytes) {
    int mark = BYTE_ORDER_MARK.length;
    int from = number == 1 && bytes.length >= mark && Arrays.equals(bytes, 0, mark, BYTE_ORDER_MARK, 0, mark) ? mark : 0;
    int to = bytes.length > from && bytes[bytes.length - 1] == '\r' ? bytes.length - 1 : bytes.length;
    byte[] cleared = Arrays.copyOfRange(bytes, from, Math.min(to, from + longest + 1));
    for (int i = 0; i < cleared.length; i++) {
      // White space of JSON as well, and as wrong within a text: so that places in the line count from its start.
      cleared[i] = cleared[i] == '\r' ? (byte) '\t' : cleared[i];
    }
    return cleared;
  }

  private static boolean isBlank(byte[] bytes) {
    for (byte one : bytes) {
      if (one != ' ' && one != '\t') {
        return false;
      }
    }
    return true;
  }
}
