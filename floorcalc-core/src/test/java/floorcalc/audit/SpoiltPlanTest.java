package floorcalc.audit;

import static floorcalc.audit.Spoiling.compromise;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.working.Finding;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Clean plans spoilt in one place each. The audit must report the codes that follow from the spoilt place, and no other.
 * Unless the sums themselves are spoilt, order and ledger are made right again afterwards.
 */
class SpoiltPlanTest {

  static Stream<SpoiltCase> cases() {
    return Stream.concat(SpoiltFloors.cases(), SpoiltPapers.cases());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isReportedAndNothingElse(SpoiltCase spoilt) {
    Draft draft = HandPlan.named(spoilt.plan());
    assertThat(PlanAudit.of(draft.job, draft.plan()).isClean()).as("the plan before it is spoilt").isTrue();
    spoilt.spoil().accept(draft);
    if (!draft.sumsAreSpoilt) {
      draft.countOrder();
      draft.addUpLedger();
    }
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(codes(report)).as(report.toString()).isEqualTo(spoilt.codes());
    assertThat(report.breaches()).allSatisfy(breach -> {
      assertThat(breach.where()).isNotBlank();
      assertThat(breach.message()).doesNotContain("NaN").doesNotContain("Infinity").doesNotContain("null");
    });
  }

  /** Each code is reported by at least one case here; the four that are notes have tests of their own below. */
  @Test
  void everyCodeHasACase() {
    Set<String> reported = cases().flatMap(c -> c.codes().stream()).collect(Collectors.toCollection(TreeSet::new));
    Set<String> all = Stream.of(Code.values())
        .filter(code -> code != Code.BOUND_WEAK && code != Code.COMPROMISE_NOT_NEEDED && code != Code.CRUMBS
            && code != Code.SPUR && code != Code.BREAK_GAP)
        .map(Code::text).collect(Collectors.toCollection(TreeSet::new));
    assertThat(reported).isEqualTo(all);
  }

  @Test
  void aCompromiseThatIsNotNeededIsNoted() {
    Draft draft = HandPlan.bond(0);
    draft.compromises.add(compromise("minimumJointOffset", "study-1 row 2", 300, 290));
    draft.compromises.add(compromise("minimumJointOffset", "the landing", 300, 290));
    draft.compromises.add(compromise("of the customer's own", "study-1 row 2", 300, 290));
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.isClean()).isTrue();
    assertThat(report.notes()).extracting(Finding::code, Finding::where).containsExactly(
        org.assertj.core.groups.Tuple.tuple("compromise-not-needed", "study-1 row 2"),
        org.assertj.core.groups.Tuple.tuple("compromise-not-needed", "the landing"));
  }

  @Test
  void aBoundBelowTheAreaIsNoted() {
    Draft draft = HandPlan.bond(0);
    // 3 m² of floor from boards of 0.4 m²: at least 8 boards.
    draft.boardsAtLeast = 8;
    assertThat(PlanAudit.of(draft.job, draft.plan()).notes()).isEmpty();
    draft.boardsAtLeast = 7;
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.isClean()).isTrue();
    assertThat(report.notes()).singleElement().extracting(Finding::message)
        .isEqualTo("boardsAtLeast is 7, but the laid area alone fills 8 boards");
  }

  private static Set<String> codes(AuditReport report) {
    return report.breaches().stream().map(Finding::code).collect(Collectors.toCollection(TreeSet::new));
  }
}
