package floorcalc.audit;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.laying.FloorLaying;
import floorcalc.plan.FloorJob;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Plans of this library for random rooms are clean; the numbers are seeds. */
class PlannedFloorAuditTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void plansOfRandomRoomsAreClean(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 15; i++) {
      FloorJob job = RandomJobs.next(random);
      AuditReport report = PlanAudit.of(job, FloorLaying.of(job));
      assertThat(report.toString()).as("seed %s, room %s", seed, i).startsWith("clean: ");
    }
  }
}
