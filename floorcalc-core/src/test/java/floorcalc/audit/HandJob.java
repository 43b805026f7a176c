package floorcalc.audit;

import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;

/** Jobs that differ from another in one thing. */
final class HandJob {
  private HandJob() {
  }

  static FloorJobBuilder of(FloorJob job) {
    FloorJobBuilder builder = FloorJob.of(job.title(), job.board()).rules(job.rules()).direction(job.direction())
        .offcuts(job.offcuts()).rowWay(job.rowWay()).pattern(job.pattern());
    job.rooms().forEach(builder::room);
    return builder;
  }
}
