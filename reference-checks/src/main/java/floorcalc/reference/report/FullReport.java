package floorcalc.reference.report;

import floorcalc.reference.cases.Topic;
import floorcalc.reference.check.Check;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Verdict;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The report with every figure on a line of its own. */
public final class FullReport {
  /** Longer inputs, such as a whole table of readings, are cut here; the file has them in full. */
  private static final int LONGEST_INPUT = 160;

  private FullReport() {}

  /**
   * Writes the report as HTML in one file.
   *
   * @param report what was found, not null
   * @return the page, not null
   */
  public static String html(ReferenceReport report) {
    Page page = new HtmlPage("Reference report: " + report.implementation());
    ShortReport.write(report, page);
    page.heading(2, "Every figure");
    for (Map.Entry<Topic, List<FileResult>> topic : report.topics().entrySet()) {
      for (FileResult file : topic.getValue()) {
        page.heading(3, topic.getKey().name() + ": " + file.file().name());
        page.paragraph(file.source() + ". " + file.file().head("known"));
        page.table(List.of("Case", "Kind", "Calculation and inputs", "Figure", "Printed", "Within", "Answer", "Verdict"),
            file.checks().stream().map(FullReport::row).toList());
      }
    }
    return page.end();
  }

  private static List<String> row(Check check) {
    return List.of(check.of().id(), check.of().kind().words(), asked(check.of().question()), check.expected().figure(), check.expected().printed(),
        check.expected().tolerance().map(margin -> margin.signum() == 0 ? "exact" : margin.toPlainString()).orElse("same text")
            + (check.expected().reason().isEmpty() ? "" : ": " + check.expected().reason()),
        check.answer().orElse(""), (check.verdict() == Verdict.AGREES ? "" : Page.ALERT) + check.verdict().words());
  }

  private static String asked(Question question) {
    return question.calculation() + ": " + question.inputs().entrySet().stream().map(input -> {
      String text = input.getValue().toString();
      return input.getKey() + " " + (text.length() > LONGEST_INPUT ? text.substring(0, LONGEST_INPUT) + " …" : text);
    }).collect(Collectors.joining(", "));
  }
}
