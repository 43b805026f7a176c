package floorcalc.compare;

import com.google.ortools.Loader;
import com.google.ortools.init.OrToolsVersion;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Solves the large cases and writes down what the solver found: file, then words on the machine for its head. */
final class SolveCases {
  private static final int WORKERS = 2;
  private static final double SECONDS = 8;

  private SolveCases() {}

  /**
   * Runs all cases, for up to forty minutes.
   *
   * @param args the file to write and a line on the machine
   * @throws IOException if the file cannot be written
   */
  public static void main(String[] args) throws IOException {
    Loader.loadNativeLibraries();
    try (PrintStream out = new PrintStream(Files.newOutputStream(Path.of(args[0])), true, StandardCharsets.UTF_8)) {
      out.println("# Fewest boards for the cases of floorcalc.compare.BoardCases.large(), by an exact model (ExactBoards).");
      out.printf(Locale.ROOT, "# Solver: OR-Tools %s, CP-SAT, %d workers, %.0f s a case, random seed 1; JDK %s.%n",
          OrToolsVersion.getVersionString(), WORKERS, SECONDS, System.getProperty("java.runtime.version"));
      out.println("# " + args[1]);
      out.println("# boards: fewest found. bound: no way takes fewer. seconds: by the clock, so they differ from run to run.");
      out.println(String.join(",", SolverResults.COLUMNS));
      BoardCases.large().forEach(given -> out.println(SolverResults.line(given, ExactBoards.solve(given, WORKERS, SECONDS))));
    }
  }
}
