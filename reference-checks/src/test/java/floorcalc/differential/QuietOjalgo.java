package floorcalc.differential;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.ojalgo.OjAlgoUtils;
import org.ojalgo.netio.BasicLogger;

/**
 * Keeps ojAlgo from printing to the log of the tests: it tells of the machine when it is loaded, and of nodes that it gives up while it
 * solves. It takes the stream to print on when its logger is loaded.
 */
final class QuietOjalgo {
  private static final boolean QUIET = load();

  private QuietOjalgo() {}

  /** Call before anything else of ojAlgo. */
  static void beQuiet() {
    if (!QUIET) {
      throw new AssertionError("ojAlgo has a logger once it is loaded");
    }
  }

  private static boolean load() {
    PrintStream out = System.out;
    System.setOut(new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
    try {
      return BasicLogger.DEBUG != null && OjAlgoUtils.ENVIRONMENT != null;
    } finally {
      System.setOut(out);
    }
  }
}
