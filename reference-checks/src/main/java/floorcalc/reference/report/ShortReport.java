package floorcalc.reference.report;

import floorcalc.reference.cases.Topic;
import floorcalc.reference.check.Check;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Remark;
import floorcalc.reference.check.Verdict;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The report without single figures: sources, remarks, what checks each calculation, comparisons. */
public final class ShortReport {
  private ShortReport() {}

  /**
   * Writes the report as Markdown.
   *
   * @param report what was found, not null
   * @return the page, its lines separated by {@code \n}, not null
   */
  public static String markdown(ReferenceReport report) {
    Page page = new MarkdownPage();
    write(report, page);
    return page.end();
  }

  static void write(ReferenceReport report, Page page) {
    page.heading(1, "Reference report");
    page.paragraph("What outside sources say, and what " + report.implementation() + " answers. This page is made by the reference suite "
        + "and compared with it when the project is built.");
    totals(report, page);
    differing(report, page);
    sources(report, page);
    for (Remark.Sort sort : Remark.Sort.values()) {
      List<Remark> remarks = report.remarks(sort);
      if (!remarks.isEmpty()) {
        page.heading(2, sort.words());
        page.list(remarks.stream().map(remark -> (remark.file().isEmpty() ? "" : "`" + remark.file() + "`: ") + remark.text()).toList());
      }
    }
    if (report.isOfTheLibrary()) {
      coverage(report.coverage(), page);
    }
    comparisons(report, page);
  }

  private static void totals(ReferenceReport report, Page page) {
    List<List<String>> rows = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      List<Check> checks = report.checks().stream().filter(check -> check.of().kind() == kind).toList();
      if (!checks.isEmpty()) {
        rows.add(List.of(kind.words(), count(checks.stream().map(Check::of).distinct().count()), count(checks.size()), count(checks.stream().filter(Check::isOnTheSource).count()),
            count(of(checks, Verdict.AGREES)), alertIfAny(of(checks, Verdict.DIFFERS)), alertIfAny(of(checks, Verdict.NOT_ANSWERED))));
      }
    }
    page.table(List.of("Kind of figure", "Cases", "Figures", "of these, statements on a source", "Agree", "Differ", "Not answered"), rows);
    page.paragraph("Kinds are never mixed. A figure agrees within half a unit of its last printed digit; a wider margin has a reason, which "
        + "stands beside the figure in the full report.");
  }

  private static void differing(ReferenceReport report, Page page) {
    List<Check> wrong = report.checks().stream().filter(check -> check.verdict() == Verdict.DIFFERS).toList();
    if (!wrong.isEmpty()) {
      page.heading(2, "Figures that differ");
      page.list(wrong.stream().map(Check::toString).toList());
    }
  }

  private static void sources(ReferenceReport report, Page page) {
    page.heading(2, "Sources");
    for (Map.Entry<Topic, List<FileResult>> topic : report.topics().entrySet()) {
      page.heading(3, topic.getKey().name());
      page.table(List.of("File", "Source", "How known", "Figures", "Agree", "Farthest off, in units of the last digit"),
          topic.getValue().stream().map(file -> List.of("`" + file.file().name() + "`", file.source(), file.file().head("known"),
              byKind(file.byKind()), count(file.count(Verdict.AGREES)), farthest(file))).toList());
    }
  }

  private static String farthest(FileResult file) {
    return file.worst().map(check -> {
      String reason = check.expected().reason();
      String off = check.lastDigitsOff().orElseThrow().stripTrailingZeros().toPlainString();
      return off.equals("0") ? "0" : off + " (" + check.of().id() + ")" + (reason.isEmpty() ? "" : ": " + reason);
    }).orElse("exact texts or ranges");
  }

  private static void coverage(List<CoverageRow> rows, Page page) {
    page.heading(2, "Public calculations and what checks them");
    long unchecked = rows.stream().filter(CoverageRow::isUnchecked).count();
    Map<Kind, Integer> none = new EnumMap<>(Kind.class);
    long published = rows.stream().filter(row -> row.figures().keySet().stream().anyMatch(Kind::isPublished)).count();
    page.paragraph("Of " + rows.size() + " public calculations of the core " + published + " are held against published figures, "
        + (rows.size() - published - unchecked) + " others against figures that were constructed or worked out apart, or against a general-purpose library, and "
        + unchecked + " against nothing from outside; each of these has a reason. Whole plans are checked a second time, from their files alone: see second-check.md.");
    page.table(List.of("Calculation", "Works out", "Questions", "Figures", "Other libraries"), rows.stream().map(row -> List.of(
        "`" + row.calculation().shortName() + "`", row.calculation().worksOut(), row.questions().stream().map(name -> "`" + name + "`").collect(Collectors.joining(", ")),
        row.isUnchecked() ? Page.ALERT + "nothing from outside: " + row.calculation().uncheckedBecause() + (row.figures().equals(none) ? "" : "; " + byKind(row.figures()))
            : byKind(row.figures()),
        row.comparisons().stream().map(comparison -> comparison.library() + ", " + comparison.cases() + " cases").distinct()
            .collect(Collectors.joining("; ")))).toList());
  }

  private static void comparisons(ReferenceReport report, Page page) {
    if (!report.comparisons().isEmpty()) {
      page.heading(2, "Against general-purpose libraries");
      page.paragraph("Cases made by chance with fixed seeds; the largest difference is rounded up to a power of ten.");
      page.table(List.of("Calculation", "Library", "Cases", "Must come within", "Largest difference"), report.comparisons().stream()
          .map(one -> List.of(one.calculation(), one.library(), count(one.cases()), one.tolerance(), one.worst())).toList());
    }
  }

  static String byKind(Map<Kind, Integer> figures) {
    return Arrays.stream(Kind.values()).filter(figures::containsKey).map(kind -> figures.get(kind) + " " + kind.words())
        .collect(Collectors.joining("; "));
  }

  private static long of(List<Check> checks, Verdict verdict) {
    return checks.stream().filter(check -> check.verdict() == verdict).count();
  }

  private static String count(long number) {
    return Long.toString(number);
  }

  private static String alertIfAny(long number) {
    return (number == 0 ? "" : Page.ALERT) + number;
  }
}
