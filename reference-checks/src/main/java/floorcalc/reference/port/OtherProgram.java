package floorcalc.reference.port;

import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Implementation;
import floorcalc.reference.check.Question;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** An implementation that runs as a process of its own. Not thread-safe: one question at a time. */
public final class OtherProgram implements Implementation, AutoCloseable {
  private final String name;
  private final Process process;
  private final BufferedWriter questions;
  private final BufferedReader answers;

  private OtherProgram(String name, Process process) {
    this.name = name;
    this.process = process;
    this.questions = new BufferedWriter(new OutputStreamWriter(process.getOutputStream(), StandardCharsets.UTF_8));
    this.answers = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }

  /**
   * Starts a program. What it writes to its error output is shown as it comes.
   *
   * @param command the program and its arguments, not empty, not null
   * @return the running program, to be closed, not null
   * @throws IOException if it cannot be started
   */
  public static OtherProgram start(List<String> command) throws IOException {
    return new OtherProgram(String.join(" ", command), new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
  }

  @Override
  public String name() {
    return name;
  }

  /**
   * Writes the question on a line and waits for a line with the answer.
   *
   * @param question the question, not null
   * @return the answer, without figures if the inputs were refused; empty if the program does not know the calculation
   * @throws UncheckedIOException if the program ends
   * @throws IllegalArgumentException if its line is no answer
   */
  @Override
  public Optional<Answer> answer(Question question) {
    try {
      questions.write(JsonForm.line(question));
      questions.write('\n');
      questions.flush();
      String line = answers.readLine();
      if (line == null) {
        throw new IOException(name + " ended without an answer to " + question.calculation());
      }
      return JsonForm.answer(line);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  /** Ends the program's input, which ends the program, and waits for it. */
  @Override
  public void close() {
    try {
      questions.close();
      process.waitFor();
    } catch (IOException alreadyEnded) {
      process.destroy();
    } catch (InterruptedException stop) {
      process.destroy();
      Thread.currentThread().interrupt();
    }
  }
}
