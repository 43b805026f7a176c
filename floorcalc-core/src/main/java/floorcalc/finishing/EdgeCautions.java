package floorcalc.finishing;

import floorcalc.moisture.Heating;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Profile;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.FireRating;
import floorcalc.transitions.ProfileKind;
import java.util.ArrayList;
import java.util.List;

/** What can hurt people, or spoil a house, at the edges of a floor. */
final class EdgeCautions {
  private EdgeCautions() {}

  static List<String> of(FloorJob job, List<DoorEdge> doors, List<Profile> profiles) {
    List<String> cautions = new ArrayList<>();
    for (DoorEdge edge : doors) {
      if (edge.door().fire() == FireRating.FIRE_DOOR) {
        cautions.add(edge.room() + ", door " + edge.door().name() + " is a fire door: leaf, frame and casings stay as they are"
            + " until whoever answers for fire safety has said what may be done.");
      }
    }
    if (doors.stream().anyMatch(edge -> edge.casing().treatment() == CasingWork.Treatment.UNDERCUT)) {
      cautions.add("Old paint on casings and doors may hold lead: have it tested before it is sawn or sanded.");
    }
    if (profiles.stream().anyMatch(profile -> profile.kind().equals(ProfileKind.NOSING.word()))) {
      cautions.add("People fall where a step changes: fix its nosing as its maker says, leave no edge proud, and keep the risers"
          + " even by the local code.");
    }
    if (!profiles.isEmpty() && job.rooms().stream().anyMatch(room -> room.site().heating() == Heating.HEATED)) {
      cautions.add("Over a heated floor drill no hole for a profile: glue it, or fix it where no pipe or cable can run.");
    }
    return cautions;
  }
}
