package floorcalc.finishing;

import floorcalc.outline.Point;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.Profile;
import floorcalc.plan.RoomBreak;
import floorcalc.transitions.ProfileKind;
import floorcalc.transitions.ProfileLine;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A T profile over each expansion break: both sides are the same floor at one height. */
final class BreakProfiles {
  private BreakProfiles() {}

  static List<Profile> of(FloorPlan plan) {
    List<Profile> profiles = new ArrayList<>();
    for (RoomBreak one : plan.breaks()) {
      profiles.add(new Profile(ProfileKind.T.word(), one.line().from(), one.line().to(), one.line().length(), one.room() + ": "
          + one.line().because() + "; both sides at one height, over a gap of " + one.gap() + meetings(plan, one)));
    }
    return profiles;
  }

  /** Where two breaks of a room end at the same point and no third does, their profiles are mitred. */
  private static String meetings(FloorPlan plan, RoomBreak one) {
    StringBuilder text = new StringBuilder();
    for (Point end : List.of(one.line().from(), one.line().to())) {
      List<RoomBreak> others = plan.breaks().stream().filter(other -> other != one && other.room().equals(one.room())
          && otherEnd(other, end).isPresent()).toList();
      if (others.size() == 1) {
        BigDecimal cut = ProfileLine.mitre(otherEnd(one, end).orElseThrow(), end, otherEnd(others.get(0), end).orElseThrow());
        text.append(cut.signum() == 0 ? "; butted at " + end
            : "; mitred at " + end + ", " + cut.stripTrailingZeros().toPlainString() + " degrees from a square cut");
      } else if (others.size() > 1) {
        text.append("; butted against the profiles that meet at ").append(end);
      }
    }
    return text.toString();
  }

  private static Optional<Point> otherEnd(RoomBreak line, Point end) {
    return line.line().from().equals(end) ? Optional.of(line.line().to())
        : line.line().to().equals(end) ? Optional.of(line.line().from()) : Optional.empty();
  }
}
