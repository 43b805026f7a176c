package floorcalc.examples;

import floorcalc.FloorPlanner;
import floorcalc.examples.job.BadJobException;
import floorcalc.examples.job.JobReader;
import floorcalc.examples.job.Mistake;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.UnsoundJobException;
import floorcalc.site.SiteReadings;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;

/** What a plan of a job says of strips whose width hangs on the survey of their room. */
final class SurveyRows {
  private static final String STRIP = "strip-within-survey";

  private final FloorPlan plan;

  private SurveyRows(FloorPlan plan) {
    this.plan = plan;
  }

  /**
   * Plans the job.
   *
   * @throws Refusal with all that is in the way of a plan
   */
  static SurveyRows of(Console console, String typed, byte[] utf8) {
    List<String> lines = new ArrayList<>();
    lines.add(typed + ": --rows needs a plan, and the job cannot be planned");
    try {
      FloorJob job = JobReader.read(utf8).job();
      FloorJob bare = job.withRooms(job.rooms().stream().map(room -> room.withSite(SiteReadings.NONE)).toList());
      return new SurveyRows(Heartbeat.during(console, "planning " + typed, () -> FloorPlanner.plan(bare)));
    } catch (BadJobException bad) {
      bad.mistakes().stream().map(Mistake::toString).forEach(lines::add);
    } catch (UnsoundJobException unsound) {
      unsound.faults().forEach(fault -> lines.add(PlanCommand.place(fault) + ": " + fault.message()));
    }
    throw new Refusal(lines);
  }

  /** What it says of a room. */
  List<Finding> of(String room) {
    List<String> bays = plan.bays().stream().filter(bay -> bay.room().equals(room)).map(bay -> bay.bay() + ", ").toList();
    return plan.findings().stream().filter(finding -> finding.code().equals(STRIP))
        .filter(finding -> bays.stream().anyMatch(finding.where()::startsWith)).toList();
  }
}
