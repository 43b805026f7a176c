package floorcalc.recheck;

import floorcalc.recheck.AskedJob.Door;
import floorcalc.recheck.AskedJob.Room;
import floorcalc.recheck.AskedJob.Segment;
import floorcalc.recheck.ToldPlan.Bay;
import floorcalc.recheck.ToldPlan.Profile;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * Where profiles lie: at a door of the job, or, those of kind T, over a break between bays. The T profiles over breaks tell where a
 * plan has its breaks.
 */
final class ProfileCheck {
  private static final String T = "T";
  /** Millimetres within which a door's ends and a break's are put onto the wall. */
  private static final double ONTO_WALL = 1 + PlanRecheck.ROUNDING;
  /** Millimetres beyond its half of the gap at which floor must lie on either side of a break. */
  private static final double BESIDE = 1;

  private final AskedJob job;
  private final ToldPlan plan;
  private final Faults faults;
  private final Map<String, List<Segment>> breaks = new LinkedHashMap<>();

  private ProfileCheck(AskedJob job, ToldPlan plan, Faults faults) {
    this.job = job;
    this.plan = plan;
    this.faults = faults;
    job.rooms().forEach(room -> breaks.put(room.name(), new ArrayList<>()));
  }

  /** The breaks by the names of their rooms. */
  static Map<String, List<Segment>> breaks(AskedJob job, ToldPlan plan, Faults faults) {
    ProfileCheck check = new ProfileCheck(job, plan, faults);
    plan.profiles().forEach(check::profile);
    job.rooms().forEach(check::given);
    faults.tally.profiles += plan.profiles().size();
    return check.breaks;
  }

  private void profile(Profile profile) {
    double length = profile.line().from().distance(profile.line().to());
    if (Math.abs(length - profile.length() / Lengths.PER_MILLIMETRE) > PlanRecheck.ROUNDING) {
      profile.at().get("length").fault(Rule.FORMAT, Faults.mm(profile.length()), "from its one end to its other it is " + Faults.mm(length));
    }
    if (isAtDoor(profile.line())) {
      return;
    }
    Optional<String> room = profile.kind().equals(T) ? roomOfBreak(profile) : Optional.empty();
    if (room.isPresent()) {
      breaks.get(room.get()).add(profile.line());
    } else if (job.rooms().stream().flatMap(each -> each.doors().stream()).anyMatch(door -> door.place().isEmpty())) {
      faults.leaveOut("whether " + profile.at().place().strip() + " lies at a door",
          "it lies at no door whose place is known, but where the doors of a surveyed room are only the survey tells");
    } else {
      profile.at().fault(Rule.FORMAT, "a profile of kind " + profile.kind() + " from " + profile.line(),
          "a profile lies at a door of the job" + (profile.kind().equals(T) ? ", or between two bays of a room" : ""));
    }
  }

  private boolean isAtDoor(Segment line) {
    for (Room room : job.rooms()) {
      for (Door door : room.doors()) {
        if (door.place().isPresent() && door.place().get().isAt(line, ONTO_WALL)) {
          return true;
        }
      }
    }
    return false;
  }

  /** The room with floor on both sides of the line and none on it; where rooms are drawn over each other, the one that the reason names. */
  private Optional<String> roomOfBreak(Profile profile) {
    List<String> rooms = job.rooms().stream().map(Room::name).filter(room -> isBetweenBays(profile.line(), room)).toList();
    return rooms.stream().filter(room -> profile.because().startsWith(room + ":")).findFirst().or(() -> rooms.stream().findFirst());
  }

  private boolean isBetweenBays(Segment line, String room) {
    List<Polygon> bays = plan.bays().stream().filter(bay -> bay.room().equals(room)).map(Bay::laid).toList();
    double half = job.breakGap() / Lengths.PER_MILLIMETRE / 2;
    Geometry left = strip(line, half + BESIDE);
    Geometry right = strip(line, -half - BESIDE);
    boolean beside = bays.stream().anyMatch(left::intersects) && bays.stream().anyMatch(right::intersects);
    Geometry strip = strip(line, half).union(strip(line, -half));
    return beside && bays.stream().mapToDouble(bay -> Overlay.overlap(strip, bay)).sum() <= PlanRecheck.NO_AREA;
  }

  /** What lies along a line as far as a distance to its left, or to its right if that is negative. */
  static Polygon strip(Segment line, double distance) {
    double length = line.from().distance(line.to());
    double x = -(line.to().y - line.from().y) / length * distance;
    double y = (line.to().x - line.from().x) / length * distance;
    return Shapes.polygon(List.of(line.from(), line.to(), new Coordinate(line.to().x + x, line.to().y + y),
        new Coordinate(line.from().x + x, line.from().y + y)), List.of());
  }

  private static String breaks(List<Segment> lines) {
    return lines.size() == 1 ? "1 break, " + lines.get(0) : lines.size() + " breaks"
        + (lines.isEmpty() ? "" : ", " + lines.stream().map(Segment::toString).collect(Collectors.joining("; ")));
  }

  /** The breaks that a job gives are those of the plan. */
  private void given(Room room) {
    room.breaks().ifPresent(given -> {
      List<Segment> found = breaks.get(room.name());
      boolean same = found.size() == given.size()
          && given.stream().allMatch(line -> found.stream().anyMatch(other -> other.isAt(line, ONTO_WALL)));
      if (!same) {
        faults.add(Rule.FORMAT, room.name(), breaks(found), "the job gives " + breaks(given));
      }
    });
  }
}
