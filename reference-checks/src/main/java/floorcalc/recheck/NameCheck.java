package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Room;
import floorcalc.recheck.ToldPlan.Bay;
import floorcalc.recheck.ToldPlan.Piece;
import floorcalc.recheck.ToldPlan.Row;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** What the format says of names, numbers and directions: each name once, rows numbered, boards run the way that the job asks for. */
final class NameCheck {
  /** Degrees: half of the ninth decimal, to which directions are given. */
  private static final double DEGREES = 1e-9;

  private NameCheck() {}

  static void check(AskedJob job, ToldPlan plan, Faults faults) {
    if (!job.title().equals(plan.title())) {
      plan.file().get("title").fault(Rule.FORMAT, "'" + plan.title() + "'", "the title of the job is '" + job.title() + "'");
    }
    Set<String> rooms = new HashSet<>();
    for (Room room : job.rooms()) {
      if (!rooms.add(room.name())) {
        faults.add(Rule.FORMAT, "job", "two rooms with the name '" + room.name() + "'", "each room has a name of its own");
      }
    }
    Set<String> names = new HashSet<>();
    for (Bay bay : plan.bays()) {
      unique(names, bay.at().get("bay"), bay.name());
      Optional<Room> room = job.room(bay.room());
      if (room.isEmpty()) {
        bay.at().get("room").fault(Rule.FORMAT, "'" + bay.room() + "'", "the job has no room of that name");
      } else {
        direction(job, room.get(), bay, faults);
      }
      for (int k = 0; k < bay.rows().size(); k++) {
        row(bay, k, names);
      }
    }
  }

  private static void unique(Set<String> names, Cursor at, String name) {
    if (!names.add(name)) {
      at.fault(Rule.FORMAT, "'" + name + "' for the second time", "bays and pieces have names of their own");
    }
  }

  private static void row(Bay bay, int k, Set<String> names) {
    Row row = bay.rows().get(k);
    if (row.number() != k + 1) {
      row.at().get("row").fault(Rule.FORMAT, "row " + row.number(), "rows are numbered from 1 upwards; here stands row " + (k + 1));
    }
    List<Cursor> at = row.at().get("pieces").items();
    int run = 0;
    for (int i = 0; i < row.pieces().size(); i++) {
      Piece piece = row.pieces().get(i);
      unique(names, at.get(i).get("piece"), piece.name());
      if (!piece.name().startsWith(bay.name() + "." + row.number() + ".")) {
        at.get(i).get("piece").fault(Rule.FORMAT, "'" + piece.name() + "'", "a piece is named after its bay and row: "
            + bay.name() + "." + row.number() + ".1 and so on");
      }
      if (piece.run() != run && piece.run() != run + 1 || piece.run() == 0) {
        at.get(i).get("run").fault(Rule.FORMAT, "run " + piece.run() + " after run " + run, "runs of a row are numbered from 1");
      }
      run = piece.run();
    }
  }

  /** Pieces that meet end to end are of one run, and all pieces of a run hang together. */
  static void runs(List<SeenPiece> row, List<Meetings.Joint> joints, Faults faults) {
    for (Meetings.Joint joint : joints) {
      if (joint.left().piece.run() != joint.right().piece.run()) {
        faults.add(Rule.FORMAT, joint.right().name(), "run " + joint.right().piece.run(), "it meets " + joint.left().name() + " of run "
            + joint.left().piece.run() + ", so both are of one run");
      }
    }
    long pairs = joints.stream().map(joint -> joint.left().name() + " " + joint.right().name()).distinct().count();
    long runs = row.stream().map(piece -> piece.piece.run()).distinct().count();
    if (!row.isEmpty() && row.size() - runs != pairs) {
      faults.add(Rule.FORMAT, row.get(0).name(), runs + " runs of " + row.size() + " pieces in its row",
          "there are " + pairs + " joints, so there are " + (row.size() - pairs) + " runs");
    }
  }

  private static void direction(AskedJob job, Room room, Bay bay, Faults faults) {
    double degrees = bay.degrees().doubleValue();
    Cursor at = bay.at().get("directionDegrees");
    if (job.direction().degrees().isPresent()) {
      double asked = job.direction().degrees().getAsDouble();
      if (apart(degrees, asked, 360) > DEGREES) {
        at.fault(Rule.FORMAT, degrees + " degrees", "the job asks for " + asked);
      }
    } else if (job.direction().word().equals("longest-wall")) {
      if (room.walls().isEmpty()) {
        faults.leaveOut("the direction of " + bay.name(), "the room was surveyed; which wall is longest only the survey tells");
      } else if (!isAlongLongest(room.walls().get(), degrees)) {
        at.fault(Rule.FORMAT, degrees + " degrees", "boards run along the longest wall");
      }
    }
  }

  /** Along a wall than which none is longer by more than rounding. */
  private static boolean isAlongLongest(Polygon walls, double degrees) {
    Coordinate[] at = walls.getExteriorRing().getCoordinates();
    double longest = 0;
    for (int i = 1; i < at.length; i++) {
      longest = Math.max(longest, at[i].distance(at[i - 1]));
    }
    for (int i = 1; i < at.length; i++) {
      double angle = StrictMath.toDegrees(StrictMath.atan2(at[i].y - at[i - 1].y, at[i].x - at[i - 1].x));
      if (at[i].distance(at[i - 1]) >= longest - PlanRecheck.ROUNDING && apart(degrees, angle, 180) <= DEGREES) {
        return true;
      }
    }
    return false;
  }

  private static double apart(double a, double b, double turn) {
    double rest = Math.abs(a - b) % turn;
    return Math.min(rest, turn - rest);
  }
}
