package floorcalc;

import floorcalc.measure.Length;
import floorcalc.moisture.Substrate;
import floorcalc.movement.GapPoint;
import floorcalc.movement.PipePoints;
import floorcalc.movement.WallPoints;
import floorcalc.outline.Outline;
import floorcalc.plan.Bay;
import floorcalc.plan.Check;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Pipe;
import floorcalc.plan.Room;
import floorcalc.rules.LayingRules;
import floorcalc.site.Readiness;
import floorcalc.site.SiteFloor;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.List;

/** Judges the site of each room of a job, as it is planned. */
final class SiteChecks {
  private SiteChecks() {}

  static List<Calculated<Readiness>> of(FloorJob job, FloorPlan plan) {
    return job.rooms().stream().map(room -> Readiness.of(floor(job, plan, room), room.site())).toList();
  }

  /** The plan with all judgements among its checks, all that was noticed among its findings, and the working. */
  static FloorPlan added(FloorJob job, FloorPlan plan) {
    List<Check> checks = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    List<Worked> working = new ArrayList<>();
    for (Calculated<Readiness> judged : of(job, plan)) {
      Readiness readiness = judged.value();
      if (!judged.steps().isEmpty()) {
        working.add(new Worked(readiness.room() + ": site", judged.steps()));
      }
      for (Judgement judgement : readiness.judgements()) {
        checks.add(new Check(readiness.room(), judgement));
      }
      for (Finding finding : readiness.findings()) {
        String where = finding.where().isEmpty() ? readiness.room() : readiness.room() + ", " + finding.where();
        findings.add(new Finding(finding.code(), finding.severity(), where, finding.message(), finding.source()));
      }
    }
    return plan.with(checks, findings, working);
  }

  private static SiteFloor floor(FloorJob job, FloorPlan plan, Room room) {
    return SiteFloor.of(room.name(), room.outline().area(), job.board()).withSubfloor(substrate(room))
        .withGaps(gaps(plan.bays().stream().filter(bay -> bay.room().equals(room.name())).toList(), room,
            job.rules().value(LayingRules.EXPANSION_GAP)));
  }

  /**
   * The ends of all walls and the sides of all pipes. A room in one bay moves as one between its walls; of several, each moves within its own laid area, a gap
   * short of the walls.
   */
  private static List<GapPoint> gaps(List<Bay> bays, Room room, Length gap) {
    List<GapPoint> points = new ArrayList<>();
    if (bays.size() == 1) {
      points.addAll(WallPoints.of(room.outline(), bays.get(0).direction(), gap));
      points.addAll(pipes(room.outline(), bays.get(0), room, gap));
      return points;
    }
    for (Bay bay : bays) {
      for (GapPoint point : WallPoints.of(bay.laid(), bay.direction(), gap)) {
        points.add(GapPoint.of(bay.bay() + ", " + point.name(), point.across(), gap).along(point.along())
            .angle(point.angle()));
      }
      points.addAll(pipes(bay.laid(), bay, room, gap));
    }
    return points;
  }

  /** The sides of the pipes that come through a bay or stand at its edge. */
  private static List<GapPoint> pipes(Outline floor, Bay bay, Room room, Length gap) {
    List<GapPoint> points = new ArrayList<>();
    for (int i = 0; i < room.pipes().size(); i++) {
      Pipe pipe = room.pipes().get(i);
      if (bay.laid().isNear(pipe.at(), pipe.diameter().plus(gap))) {
        points.addAll(PipePoints.of(floor, bay.direction(), "pipe " + (i + 1), pipe.at(), pipe.diameter(), gap));
      }
    }
    return points;
  }

  private static Substrate substrate(Room room) {
    return switch (room.subfloor()) {
      case CONCRETE -> Substrate.CONCRETE;
      case SCREED -> Substrate.SCREED;
      case TIMBER -> Substrate.TIMBER;
      case SHEET -> Substrate.SHEET;
      case OLD_FLOOR, NOT_STATED -> Substrate.NOT_STATED;
    };
  }
}
