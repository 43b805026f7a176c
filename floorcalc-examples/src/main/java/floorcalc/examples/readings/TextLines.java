package floorcalc.examples.readings;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** The lines of a text file that hold something, each with its number: blank lines and remarks behind {@code #} are left out. */
final class TextLines {
  private static final int MOST_BYTES = 5_000_000;

  /** A line and its number, from 1. */
  record Line(int number, String text) {}

  private TextLines() {}

  static List<Line> of(byte[] bytes, LineMistakes mistakes) {
    if (bytes.length > MOST_BYTES) {
      mistakes.add("the file is larger than 5 MB; give the readings of one floor alone");
    } else if (bytes.length > 1 && (bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF
        || bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE)) {
      mistakes.add("the file is UTF-16 text; save it as CSV in UTF-8");
    }
    mistakes.check();
    String text = "";
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException fault) {
      mistakes.add("the file is not UTF-8 text; save it as CSV in UTF-8");
    }
    mistakes.check();
    List<Line> lines = new ArrayList<>();
    String[] all = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\n|\r", -1);
    for (int i = 0; i < all.length; i++) {
      if (!all[i].isBlank() && !all[i].stripLeading().startsWith("#")) {
        lines.add(new Line(i + 1, all[i]));
      }
    }
    return lines;
  }
}
