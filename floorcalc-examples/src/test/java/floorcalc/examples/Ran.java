package floorcalc.examples;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * What the runner did with a command line.
 *
 * @param exit its exit code
 * @param out what it wrote to standard output
 * @param err what it wrote to standard error
 */
public record Ran(int exit, String out, String err) {
  public static Ran with(String... args) {
    return reading(new byte[0], args);
  }

  public static Ran reading(byte[] standardInput, String... args) {
    return reading(new ByteArrayInputStream(standardInput), args);
  }

  public static Ran reading(InputStream in, String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int exit = Main.run(args, in, new PrintStream(out, true, StandardCharsets.ISO_8859_1),
        new PrintStream(err, true, StandardCharsets.ISO_8859_1));
    return new Ran(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  /** The lines of standard error but for progress, which depends on how fast the machine is. */
  public List<String> complaints() {
    return err.lines().filter(line -> !line.matches("(planning|drawing) .* … [0-9]+ s")).toList();
  }
}
