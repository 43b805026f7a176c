package floorcalc.working;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CalculatedTest {
  private static final Source TABLE = new Source("Laying boards", "Example Institute", 2019, "table 4", Standing.READ);

  /** A run of 3480 mm in boards of 140 mm: 24 whole ones take 3360 mm, 120 mm are left. */
  private static Calculated<Long> rows() {
    Length run = Length.ofMillimetres(3480);
    Length width = Length.ofMillimetres(140);
    long n = run.dividedBy(width);
    Step count = new Step("full-rows", "How many whole rows fit?", "n = floor(run / width)", List.of(
        Term.of("run", "clear width across the rows", run),
        new Term("width", "cover width of a board", width, TABLE)), n, Source.DEFINITION);
    Step rest = new Step("rest", "What is left over?", "r = run - n * width", List.of(
        Term.of("run", "clear width across the rows", run), new Term("n", "whole rows", n, Source.DEFINITION),
        new Term("width", "cover width of a board", width, Source.COMMON_PRACTICE)),
        run.remainder(width), TABLE);
    Finding narrow = new Finding("narrow-row", Severity.WARNING, "last row", "the last row is 120 mm", TABLE);
    return Calculated.of(n, List.of(count, rest), List.of(narrow));
  }

  @Test
  void explain() {
    assertThat(rows().explain()).isEqualTo("""
        full-rows: How many whole rows fit?
          n = floor(run / width)
            run = 3480 mm  (clear width across the rows)
            width = 140 mm  (cover width of a board; Laying boards, Example Institute, 2019, table 4 (read in the source))
          = 24  [definition]
        rest: What is left over?
          r = run - n * width
            run = 3480 mm  (clear width across the rows)
            n = 24  (whole rows)
            width = 140 mm  (cover width of a board; common practice, no source)
          = 120 mm  [Laying boards, Example Institute, 2019, table 4 (read in the source)]""");
    assertThat(Calculated.of(1, List.of()).explain()).isEmpty();
  }

  @Test
  void stepsHold() {
    StepChecks.assertStepsHold(rows());
  }

  @Test
  void aStepThatDoesNotHoldIsFound() {
    Step wrong = new Step("w", "?", "n = a + b", List.of(Term.of("a", "", 1), Term.of("b", "", 2)), 4, Source.DEFINITION);
    assertThatThrownBy(() -> StepChecks.assertHolds(wrong)).isInstanceOf(AssertionError.class);
    Step idle = new Step("w", "?", "n = a", List.of(Term.of("a", "", 1), Term.of("b", "", 2)), 1, Source.DEFINITION);
    assertThatThrownBy(() -> StepChecks.assertHolds(idle)).isInstanceOf(AssertionError.class);
  }

  @Test
  void parts() {
    assertThat(rows().value()).isEqualTo(24);
    assertThat(rows().steps()).extracting(Step::id).containsExactly("full-rows", "rest");
    assertThat(rows().findings()).extracting(Finding::code).containsExactly("narrow-row");
    assertThat(Calculated.of("x", rows().steps()).findings()).isEmpty();
  }

  @Test
  void keepsCopies() {
    List<Step> steps = new ArrayList<>(rows().steps());
    List<Finding> findings = new ArrayList<>(rows().findings());
    Calculated<String> calculated = Calculated.of("x", steps, findings);
    steps.clear();
    findings.clear();
    assertThat(calculated.steps()).hasSize(2);
    assertThat(calculated.findings()).hasSize(1);
    assertThatThrownBy(() -> calculated.steps().clear()).isInstanceOf(UnsupportedOperationException.class);
    List<Term> terms = new ArrayList<>(steps(1).terms());
    Step step = new Step("a", "b", "c", terms, 1, TABLE);
    terms.clear();
    assertThat(step.terms()).hasSize(3);
  }

  private static Step steps(int index) {
    return rows().steps().get(index);
  }

  @Test
  void refusesNull() {
    assertThatThrownBy(() -> Calculated.of(null, List.of())).isInstanceOf(NullPointerException.class).hasMessage("value");
    assertThatThrownBy(() -> Term.of("a", "b", null)).isInstanceOf(NullPointerException.class).hasMessage("value");
    assertThatThrownBy(() -> new Step("a", "b", null, List.of(), 1, TABLE)).hasMessage("formula");
    assertThatThrownBy(() -> new Finding("a", null, "", "", TABLE)).hasMessage("severity");
    assertThatThrownBy(() -> new Worked(null, List.of())).hasMessage("about");
  }

  @Test
  void worked() {
    Worked worked = new Worked("study-1: rows", rows().steps());
    assertThat(worked.about()).isEqualTo("study-1: rows");
    assertThat(worked.steps()).hasSize(2);
  }
}
