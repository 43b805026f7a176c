package floorcalc.audit;

import floorcalc.plan.FloorJob;

/** Jobs that differ from another in one thing. */
final class HandJob {
  private HandJob() {
  }

  static FloorJob.Builder of(FloorJob job) {
    FloorJob.Builder builder = FloorJob.of(job.title(), job.board()).rules(job.rules()).direction(job.direction())
        .offcuts(job.offcuts()).rowWay(job.rowWay()).pattern(job.pattern());
    job.rooms().forEach(builder::room);
    return builder;
  }
}
