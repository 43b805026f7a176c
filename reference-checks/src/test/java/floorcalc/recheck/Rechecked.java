package floorcalc.recheck;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.planfile.PlanWriter;
import floorcalc.plan.Bay;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Row;
import java.nio.charset.StandardCharsets;

/**
 * A plan on its way through both files, checked a second time.
 *
 * @param jobText the job as text
 * @param planText the plan as text
 * @param job the job as it was read from its text, or as it was given
 * @param plan the plan
 * @param report what the second auditor says
 */
public record Rechecked(String jobText, String planText, FloorJob job, FloorPlan plan, RecheckReport report) {

  /** Reads a job, plans it, writes the plan and checks both texts. */
  public static Rechecked ofText(String jobText) {
    FloorJob job = JobReader.read(jobText.getBytes(StandardCharsets.UTF_8)).job();
    return of(jobText, job, FloorPlanner.plan(job));
  }

  /** A plan of a job that was made by calls; what its text cannot say, such as a pattern, is left out of it. */
  public static Rechecked of(FloorJob job, FloorPlan plan) {
    return of(JobText.of(job), job, plan);
  }

  private static Rechecked of(String jobText, FloorJob job, FloorPlan plan) {
    String planText = text(plan);
    return new Rechecked(jobText, planText, job, plan, PlanRecheck.of(jobText, planText));
  }

  static String text(FloorPlan plan) {
    return new String(PlanWriter.write(plan), StandardCharsets.UTF_8);
  }

  /** Nothing was found, and everything that the plan has was looked at. */
  public Rechecked assertSound(String of) {
    assertThat(report.faults()).as("%s%n%s", of, jobText).isEmpty();
    Checked checked = report.checked();
    long surveyed = job.rooms().stream().filter(room -> room.survey().isPresent()).count();
    assertThat(checked.rooms()).as(of).isEqualTo(job.rooms().size());
    assertThat((long) checked.walls()).as(of).isEqualTo(job.rooms().size() - surveyed);
    assertThat(checked.bays()).as(of).isEqualTo(plan.bays().size());
    assertThat(checked.rows()).as(of).isEqualTo(plan.bays().stream().mapToInt(bay -> bay.rows().size()).sum());
    assertThat(checked.pieces()).as(of).isEqualTo(pieces());
    assertThat(checked.joints()).as(of).isEqualTo(joints());
    assertThat(checked.boards()).as(of).isEqualTo(plan.boards().size());
    assertThat(checked.profiles()).as(of).isEqualTo(plan.profiles().size());
    assertThat(checked.compromises()).as(of).isEqualTo(plan.compromises().size());
    assertThat(checked.checks()).as(of).isEqualTo(plan.checks().size() + plan.findings().size());
    return this;
  }

  /** The pieces of the plan. */
  public int pieces() {
    return plan.bays().stream().flatMap(bay -> bay.rows().stream()).mapToInt(row -> row.pieces().size()).sum();
  }

  /** The end joints of the plan: one less than pieces in each run. */
  public int joints() {
    int joints = 0;
    for (Bay bay : plan.bays()) {
      for (Row row : bay.rows()) {
        joints += row.pieces().size() - (int) row.pieces().stream().map(piece -> piece.run()).distinct().count();
      }
    }
    return joints;
  }
}
