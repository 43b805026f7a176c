package floorcalc.reference.report;

import floorcalc.reference.cases.Topic;
import floorcalc.reference.check.Check;
import floorcalc.reference.check.Checks;
import floorcalc.reference.check.Implementation;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Remark;
import floorcalc.reference.check.Verdict;
import floorcalc.reference.data.DataFile;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** All figures of the suite held against one implementation. */
public final class ReferenceReport {
  private final String implementation;
  private final Map<Topic, List<FileResult>> topics;
  private final Map<String, List<String>> underTest;
  private final List<Comparison> comparisons;

  private ReferenceReport(String implementation, Map<Topic, List<FileResult>> topics, Map<String, List<String>> underTest,
      List<Comparison> comparisons) {
    this.implementation = implementation;
    this.topics = topics;
    this.underTest = underTest;
    this.comparisons = comparisons;
  }

  /**
   * Asks an implementation all questions.
   *
   * @param topics the topics, not null
   * @param implementation who answers, not null
   * @param underTest which classes of the core stand behind each calculation; empty for an implementation that is not this library; not null
   * @param comparisons comparisons with general-purpose libraries, may be empty, not null
   * @return the report, not null
   */
  public static ReferenceReport of(List<Topic> topics, Implementation implementation, Map<String, List<String>> underTest,
      List<Comparison> comparisons) {
    Map<Topic, List<FileResult>> results = new LinkedHashMap<>();
    for (Topic topic : topics) {
      List<Check> checks = Checks.run(topic.cases(), implementation);
      results.put(topic, topic.files().stream().map(file -> new FileResult(DataFile.read(file),
          checks.stream().filter(check -> check.of().file().equals(file)).toList())).toList());
    }
    return new ReferenceReport(implementation.name(), Collections.unmodifiableMap(results), underTest, List.copyOf(comparisons));
  }

  /**
   * Returns whether every figure agrees.
   *
   * @return false if one differs or was not answered
   */
  public boolean allAgree() {
    return checks().stream().allMatch(check -> check.verdict() == Verdict.AGREES);
  }

  /**
   * Returns all checks in the order of the topics.
   *
   * @return one for each figure, not null
   */
  public List<Check> checks() {
    return topics.values().stream().flatMap(List::stream).flatMap(file -> file.checks().stream()).toList();
  }

  String implementation() {
    return implementation;
  }

  Map<Topic, List<FileResult>> topics() {
    return topics;
  }

  List<Comparison> comparisons() {
    return comparisons;
  }

  List<Remark> remarks(Remark.Sort sort) {
    return topics.keySet().stream().flatMap(topic -> topic.remarks().stream()).filter(remark -> remark.sort() == sort).toList();
  }

  /** Whether it is this library that was asked, so that the core's classes can be listed. */
  boolean isOfTheLibrary() {
    return !underTest.isEmpty();
  }

  List<CoverageRow> coverage() {
    List<CoverageRow> rows = new ArrayList<>();
    for (CoreCalculation calculation : CoreCalculation.all()) {
      List<String> questions = underTest.entrySet().stream().filter(entry -> entry.getValue().contains(calculation.type()))
          .map(Map.Entry::getKey).toList();
      Map<Kind, Integer> figures = new EnumMap<>(Kind.class);
      checks().stream().filter(check -> questions.contains(check.of().question().calculation()))
          .forEach(check -> figures.merge(check.of().kind(), 1, Integer::sum));
      rows.add(new CoverageRow(calculation, questions, figures, comparisons.stream()
          .filter(comparison -> comparison.underTest().contains(calculation.type())).toList()));
    }
    return rows;
  }
}
