package floorcalc.compare;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What the solver made of the large cases, as it was written down by {@code SolveCases}. */
final class SolverResults {
  private static final String FILE = "/compare/solver_fewest_boards.csv";
  static final String[] COLUMNS = {"case", "rows", "length_mm", "board_mm", "offset_mm", "minimum_mm", "boards", "bound",
      "status", "seconds"};

  private SolverResults() {}

  static List<SolvedBoards> read() {
    List<SolvedBoards> results = new ArrayList<>();
    try (InputStream bytes = SolverResults.class.getResourceAsStream(FILE);
        Reader text = new InputStreamReader(bytes, StandardCharsets.UTF_8);
        CSVParser table = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get()
            .parse(text)) {
      for (CSVRecord line : table) {
        SolvedBoards solved = new SolvedBoards(number(line, "case"), number(line, "boards"), number(line, "bound"),
            line.get("status"), Double.parseDouble(line.get("seconds")));
        requireSameCase(BoardCases.largeCase(solved.number()), line);
        results.add(solved);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return results;
  }

  /** A line of the file for a case, in the order of {@link #COLUMNS}. */
  static String line(BoardCase given, SolvedBoards solved) {
    return String.format(Locale.ROOT, "%d,%d,%d,%d,%d,%d,%d,%d,%s,%.2f", given.number(), given.rows().size(), length(given),
        given.board(), given.offset(), given.minimum(), solved.boards(), solved.bound(), solved.status(), solved.seconds());
  }

  private static void requireSameCase(BoardCase given, CSVRecord line) {
    if (given.rows().size() != number(line, "rows") || length(given) != number(line, "length_mm")
        || given.board() != number(line, "board_mm") || given.offset() != number(line, "offset_mm")
        || given.minimum() != number(line, "minimum_mm")) {
      throw new IllegalStateException("the solver was given another case " + given.number() + ": " + line);
    }
  }

  private static int length(BoardCase given) {
    return given.rows().stream().mapToInt(Integer::intValue).sum();
  }

  private static int number(CSVRecord line, String column) {
    return Integer.parseInt(line.get(column));
  }
}
