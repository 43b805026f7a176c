package floorcalc.differential;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.ojalgo.OjAlgoUtils;
import org.ojalgo.netio.BasicLogger;

/**
 * Keeps ojAlgo from printing to the log of the tests: it tells of the machine when it is loaded, and of nodes that it gives up while it
 * solves. It takes the streams to print on when its logger is loaded.
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
    PrintStream err = System.err;
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    System.setOut(nowhere);
    System.setErr(nowhere);
    try {
      return BasicLogger.DEBUG != null && BasicLogger.ERROR != null && OjAlgoUtils.ENVIRONMENT != null;
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }
}
