package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import floorcalc.measure.Area;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PlanAuditTest {

  @ParameterizedTest
  @MethodSource("floorcalc.audit.HandPlan#names")
  void handMadePlansAreClean(String name) {
    Draft draft = HandPlan.named(name);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.toString()).startsWith("clean: ").doesNotContain("\n");
    assertThat(report.isClean()).isTrue();
    assertThat(report.breaches()).isEmpty();
    assertThat(report.notes()).isEmpty();
  }

  @Test
  void countsWhatWasChecked() {
    Draft draft = HandPlan.bond(0);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.summary()).isEqualTo("clean: 1 bay, 3 rows, 10 pieces, 9 boards and 7 end joints checked");
    assertThat(report.bays()).isEqualTo(1);
    assertThat(report.rows()).isEqualTo(3);
    assertThat(report.pieces()).isEqualTo(10);
    assertThat(report.boards()).isEqualTo(9);
    assertThat(report.joints()).isEqualTo(7);
    // 5 m by 0.6 m
    assertThat(report.pieceArea()).isEqualTo(Area.ofSquareMetres("3"));
    assertThat(report.laidArea()).isEqualTo(Area.ofSquareMetres("3"));
  }

  @Test
  void showsTheSumsThatItCompared() {
    Draft draft = HandPlan.slantedWall(0);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    // 5 m by 0.6 m less a triangle of 450 mm by 600 mm
    assertThat(report.steps().get(0).explain()).isEqualTo("""
        audit-area: Do the pieces together have the area that is to be laid?
          difference = pieces - laid
            pieces = 2.865 m²  (the sum over all pieces, each by its own corners)
            laid = 2.865 m²  (the sum over all bays, each by the corners of its laid area)
          = 0 m²  [definition]""");
    assertThat(report.steps().get(1).id()).isEqualTo("audit-ledger");
    // 2 packs of 5 boards of 2 m by 0.2 m
    assertThat(report.steps().get(1).result()).isEqualTo(Area.ofSquareMetres("4"));
  }

  @Test
  void refusesNull() {
    Draft draft = HandPlan.twoBoards();
    assertThatNullPointerException().isThrownBy(() -> PlanAudit.of(null, draft.plan())).withMessage("job");
    assertThatNullPointerException().isThrownBy(() -> PlanAudit.of(draft.job, null)).withMessage("plan");
  }
}
