package floorcalc.examples;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.audit.PlanAudit;
import floorcalc.examples.job.Tape;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Room;
import floorcalc.working.Finding;
import java.io.IOException;
import org.junit.jupiter.api.Test;

/** The demo scenario: an invented house with four rooms. */
class DemoTest {
  @Test
  void jobsKeepToTheSchemaAndSayThatTheyAreInvented() throws IOException {
    assertThat(Demo.names()).containsExactly(Demo.HOUSE, Demo.LOFT, Demo.PARLOUR);
    for (String name : Demo.names()) {
      assertThat(Docs.faultsOfJob(Demo.bytes(name))).isEmpty();
      assertThat(Demo.job(name).job().title()).endsWith("(invented)");
    }
  }

  @Test
  void plansAreCleanByTheAudit() throws IOException {
    for (String name : Demo.names()) {
      assertThat(PlanAudit.of(Demo.job(name).job(), Demo.plan(name)).breaches()).as(name).isEmpty();
    }
  }

  @Test
  void studyIsOutOfSquare() throws IOException {
    Room study = Demo.job(Demo.HOUSE).job().rooms().get(0);
    // the far wall rises by 15 mm over 4195 mm, so the first and the last row cannot be of one width throughout
    assertThat(study.outline().shell().corners().get(2).y()).isNotEqualTo(study.outline().shell().corners().get(3).y());
  }

  @Test
  void livingRoomMustBeSplit() throws IOException {
    FloorPlan plan = Demo.plan(Demo.HOUSE);
    assertThat(plan.bays()).hasSize(2);
    assertThat(plan.findings().stream().filter(finding -> finding.code().equals("bay-must-be-split")).map(Finding::where))
        .containsExactly("living-room-1");
  }

  @Test
  void loftIsMeasuredInFeetAndInches() throws IOException {
    assertThat(Demo.job(Demo.LOFT).tape()).isEqualTo(Tape.FEET_AND_INCHES);
    assertThat(Demo.job(Demo.HOUSE).tape()).isEqualTo(Tape.METRIC);
  }
}
