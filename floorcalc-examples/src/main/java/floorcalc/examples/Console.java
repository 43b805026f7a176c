package floorcalc.examples;

import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where the runner reads and writes; always UTF-8 with lines ended by a line feed, whatever the machine's own habit is. */
final class Console {
  private final InputStream in;
  private final PrintStream out;
  private final PrintStream err;

  Console(InputStream in, PrintStream out, PrintStream err) {
    this.in = in;
    this.out = new PrintStream(out, true, StandardCharsets.UTF_8);
    this.err = new PrintStream(err, true, StandardCharsets.UTF_8);
  }

  InputStream in() {
    return in;
  }

  PrintStream out() {
    return out;
  }

  PrintStream err() {
    return err;
  }

  void say(String line) {
    out.print(line + "\n");
    out.flush();
  }

  void warn(String line) {
    err.print(line + "\n");
    err.flush();
  }
}
