package floorcalc.laying;

import floorcalc.plan.FloorJob;
import floorcalc.plan.Room;
import floorcalc.plan.Subfloor;
import java.util.ArrayList;
import java.util.List;

/** Warnings for those who do the work: common practice, no source. They never replace the maker's instructions. */
final class Cautions {
  private Cautions() {}

  static List<String> of(FloorJob job) {
    List<String> cautions = new ArrayList<>();
    cautions.add("The maker's instructions, local codes and licensed trades come before anything on this sheet.");
    cautions.add("Sawing: wear eye and ear protection and a dust mask, take the dust off at the saw, keep hands clear.");
    cautions.add("Before drilling, sawing or fixing into the subfloor: find out where cables, pipes and floor heating run.");
    if (job.rooms().stream().map(Room::subfloor).anyMatch(s -> s == Subfloor.CONCRETE || s == Subfloor.SCREED)) {
      cautions.add("Grinding concrete or screed sets free silica dust, which harms the lungs: extract it at the tool and"
          + " wear a fitting mask.");
    }
    if (job.rooms().stream().map(Room::subfloor)
        .anyMatch(s -> s == Subfloor.OLD_FLOOR || s == Subfloor.NOT_STATED)) {
      cautions.add("Old floor coverings and their glue may hold asbestos: have them tested before anything is sanded,"
          + " broken or lifted.");
    }
    if (job.rooms().stream().anyMatch(room -> !room.doors().isEmpty())) {
      cautions.add("Never cut a fire door or its frame; ask whoever answers for fire safety. Keep ways out free while"
          + " you work.");
    }
    if (job.rooms().stream().anyMatch(room -> !room.pipes().isEmpty())) {
      cautions.add("Pipes may be hot or under pressure: know where to shut them off before you drill beside them.");
    }
    cautions.add("Packs are heavy: lift with two, and spread stacks over the floor.");
    cautions.add("Wood floors are not for wet rooms. Over a heated floor keep to the maker's limits.");
    cautions.add("Subfloor moisture, flatness and room climate are not judged here unless readings were given: measure"
        + " them before a pack is opened.");
    return cautions;
  }
}
