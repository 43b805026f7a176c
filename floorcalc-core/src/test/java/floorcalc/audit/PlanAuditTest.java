package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;

import floorcalc.measure.Area;
import floorcalc.outline.Ring;
import floorcalc.working.Finding;
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

  /** 2 mm wide and 0.0002 mm high: where such a tip rises above the last row line, no piece need be sawn for it. */
  @Test
  void aTipTooSmallToSawMayBeLeftOut() {
    Draft draft = HandPlan.bond(0);
    draft.bays.get(0).shell = HandPlan.ring(0, 0, 5000, 0, 5000, 600, 2501, 600, 2500, 600.0002, 2499, 600, 0, 600);
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.notes()).singleElement().satisfies(note -> {
      assertThat(note.code()).isEqualTo("tip-left-out");
      assertThat(note.message()).contains("1 tip of the laid area of study-1").contains("0.0002 mm²");
    });
    assertThat(report.breaches()).extracting(Finding::code).containsOnly("laid-astray", "laid-too-near", "laid-missing");
    draft.bays.get(0).shell = HandPlan.ring(0, 0, 5000, 0, 5000, 600, 2501, 600, 2500, 600.002, 2499, 600, 0, 600);
    assertThat(PlanAudit.of(draft.job, draft.plan()).breaches()).extracting(Finding::code).contains("hole");
  }

  @Test
  void aSpurOfTwoNanometresIsNoted() {
    Draft draft = HandPlan.bond(0);
    draft.bays.get(0).shell = Ring.ofNanometres(
        new long[] {0, 5_000_000_000L, 5_000_000_000L, 2_500_000_002L, 2_500_000_001L, 2_500_000_000L, 0},
        new long[] {0, 0, 600_000_000, 600_000_000, 605_000_000, 600_000_000, 600_000_000});
    AuditReport report = PlanAudit.of(draft.job, draft.plan());
    assertThat(report.notes()).extracting(Finding::code).contains("spur");
    assertThat(report.breaches()).extracting(Finding::code).doesNotContain("laid-outline", "hole");
  }

  @Test
  void nobodySawsTenThousandPiecesFromABoard() {
    Draft draft = HandPlan.twoBoards();
    Draft.PieceDraft piece = draft.piece(2, 1);
    for (int i = 0; i < 10_000; i++) {
      draft.row(2).pieces.add(piece);
    }
    assertThat(PlanAudit.of(draft.job, draft.plan()).breaches()).extracting(Finding::message).contains(
        "10001 pieces are cut from board 2; nobody saws more than 10000 from one board");
  }

  @Test
  void refusesNull() {
    Draft draft = HandPlan.twoBoards();
    assertThatNullPointerException().isThrownBy(() -> PlanAudit.of(null, draft.plan())).withMessage("job");
    assertThatNullPointerException().isThrownBy(() -> PlanAudit.of(draft.job, null)).withMessage("plan");
  }
}
