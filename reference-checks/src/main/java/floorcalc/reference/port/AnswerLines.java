package floorcalc.reference.port;

import floorcalc.reference.check.Implementation;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.Objects;

/** Answers questions line by line: the other end of {@link OtherProgram}. */
public final class AnswerLines {
  private AnswerLines() {}

  /**
   * Reads questions until the end and writes an answer to each at once. A line that is no question, or whose inputs are refused, is answered
   * by {@code {"refused": "why"}}.
   *
   * @param implementation who answers, not null
   * @param questions one question per line; empty lines are passed over; not null
   * @param answers where answers go, flushed after each, not null
   * @throws IOException if reading or writing fails
   */
  public static void serve(Implementation implementation, Reader questions, Writer answers) throws IOException {
    Objects.requireNonNull(implementation, "implementation");
    BufferedReader lines = new BufferedReader(questions);
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      if (!line.isBlank()) {
        answers.write(answer(implementation, line));
        answers.write('\n');
        answers.flush();
      }
    }
  }

  private static String answer(Implementation implementation, String line) {
    try {
      return JsonForm.line(implementation.answer(JsonForm.question(line)));
    } catch (IllegalArgumentException refused) {
      return JsonForm.refused(String.valueOf(refused.getMessage()));
    }
  }
}
