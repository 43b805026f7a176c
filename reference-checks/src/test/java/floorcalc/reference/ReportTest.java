package floorcalc.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.compare.KeptComparisons;
import floorcalc.differential.Differential;
import floorcalc.differential.DifferentialResult;
import floorcalc.differential.DifferentialRuns;
import floorcalc.differential.Differentials;
import floorcalc.reference.answers.Library;
import floorcalc.reference.report.Comparison;
import floorcalc.reference.report.FullReport;
import floorcalc.reference.report.ReferenceReport;
import floorcalc.reference.report.ShortReport;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page in docs is what the suite finds now; {@code -Ddocs.write} writes it anew. */
class ReportTest {
  private static final Path PAGE = Path.of("..", "docs", "reference-report.md");

  @Test
  void thePageIsUpToDate() throws IOException {
    Library library = new Library();
    List<Comparison> comparisons = Stream.concat(Differentials.all().stream().map(ReportTest::comparison), KeptComparisons.all().stream()).toList();
    ReferenceReport report = ReferenceReport.of(Suite.topics(), library, library.underTest(), comparisons);
    Files.createDirectories(Path.of("target"));
    Files.writeString(Path.of("target", "reference-report.html"), FullReport.html(report), UTF_8);
    String page = ShortReport.markdown(report);
    if (System.getProperty("docs.write") != null) {
      Files.writeString(PAGE, page, UTF_8);
    }
    assertThat(Files.readString(PAGE, UTF_8)).as("mvn -pl reference-checks -am test -Dtest=ReportTest -Ddocs.write writes it").isEqualTo(page);
  }

  private static Comparison comparison(Differential differential) {
    DifferentialResult result = DifferentialRuns.of(differential);
    return new Comparison(differential.calculation(), differential.underTest().stream().map(Class::getName).toList(), differential.library().toString(),
        result.cases(), BigDecimal.valueOf(differential.tolerance()).stripTrailingZeros() + " " + differential.unit() + ": " + differential.argument(),
        result.worstRoundedUp() + " " + differential.unit());
  }
}
