package floorcalc.finishing;

import floorcalc.plan.Beyond;
import floorcalc.plan.Check;
import floorcalc.plan.Door;
import floorcalc.plan.FloorJob;
import floorcalc.plan.Profile;
import floorcalc.plan.Room;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.DoorLeaf;
import floorcalc.transitions.DoorLimit;
import floorcalc.transitions.DoorSet;
import floorcalc.transitions.DoorSpace;
import floorcalc.transitions.EdgeType;
import floorcalc.transitions.Fall;
import floorcalc.transitions.HeightDifference;
import floorcalc.transitions.LevelChangeSet;
import floorcalc.transitions.ProfileChoice;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Works out one opening after another. Used by one thread. */
final class DoorWorks {
  /** A leaf that stands higher than usual keeps nobody from laying a floor. */
  private static final List<DoorSet> LEAF_SETS = List.of(leastOver(DoorSet.COMMON_PRACTICE));

  private final FloorJob job;
  private final FloorHeights heights;
  private final Set<String> rooms;
  private final List<DoorEdge> found = new ArrayList<>();
  private final List<Check> checks = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<Worked> working = new ArrayList<>();

  DoorWorks(FloorJob job) {
    this.job = job;
    this.heights = FloorHeights.of(job);
    this.rooms = job.rooms().stream().map(Room::name).collect(Collectors.toCollection(TreeSet::new));
  }

  private static DoorSet leastOver(DoorSet set) {
    return DoorSet.of(set.name(), set.limits().stream().filter(one -> one.space() == DoorSpace.OVER_FINISHED_FLOOR)
        .map(one -> new DoorLimit(one.space(), one.least(), Optional.empty(), one.source())).toList());
  }

  /** An opening; of a step between two rooms the upper one has the nosing, whichever comes first. */
  void add(DoorPlace place) {
    boolean fromBelow = place.back().isPresent() && edge(place) == EdgeType.STEP
        && difference(place).value().fall() == Fall.TO_HERE;
    place(fromBelow ? place.turned() : place);
  }

  private void place(DoorPlace place) {
    doubts(place);
    List<Step> steps = new ArrayList<>();
    Calculated<HeightDifference> difference = difference(place);
    steps.addAll(difference.steps());
    EdgeType edge = edge(place);
    Calculated<ProfileChoice> choice = ProfileChoice.of(edge, difference.value(), LevelChangeSet.COMMON_PRACTICE);
    steps.addAll(choice.steps());
    choice.findings().forEach(finding -> note(place.name(), finding));
    Optional<Profile> profile = place.door().width().isZero() ? Optional.empty() : Optional.of(profile(place, edge, choice.value()));
    side(place, choice.value(), profile, place.back().map(DoorPlace::name).orElse(""), steps);
    place.back().ifPresent(back -> {
      Calculated<ProfileChoice> seen = ProfileChoice.of(edge, difference.value().fromBeyond(), LevelChangeSet.COMMON_PRACTICE);
      side(back, seen.value(), Optional.empty(), place.name(), new ArrayList<>(seen.steps()));
    });
  }

  /** What one side of an opening asks for. */
  private void side(DoorPlace place, ProfileChoice choice, Optional<Profile> profile, String shared, List<Step> steps) {
    Door door = place.door();
    Calculated<CasingWork> casing = CasingWork.of(heights.stack(), CasingWork.CLEARANCE, door.casing(), door.fire());
    steps.addAll(casing.steps());
    casing.findings().forEach(finding -> note(place.name(), finding));
    Optional<Calculated<DoorLeaf>> leaf =
        door.leaf().map(height -> DoorLeaf.of(height, heights.stack(), LEAF_SETS, door.fire()));
    leaf.ifPresent(one -> {
      one.steps().stream().filter(step -> !steps.contains(step)).forEach(steps::add);
      one.value().judgements().forEach(judgement -> check(place, judgement));
      one.findings().stream().filter(finding -> casing.findings().stream().noneMatch(other -> other.equals(finding)))
          .forEach(finding -> note(place.name(), finding));
    });
    found.add(new DoorEdge(place.room().name(), door, choice, profile, shared, casing.value(), leaf.map(Calculated::value)));
    working.add(new Worked(place.name() + ": heights", steps));
  }

  /** A space that suffices only as long as no more is laid than was stated is no pass. */
  private void check(DoorPlace place, Judgement one) {
    boolean open = one.isMet() && !heights.notStated().isEmpty();
    checks.add(new Check(place.room().name(), new Judgement(one.code(), one.check(), "door " + place.door().name(),
        open ? "" : one.found(), one.limit(), open ? Outcome.NOT_MEASURED : one.outcome(), one.source(),
        open ? "state how thick it is: " + String.join("; ", heights.notStated()) + "; without it " + one.found() + " is left" : one.advice())));
  }

  private Calculated<HeightDifference> difference(DoorPlace place) {
    Beyond here = place.door().beyond();
    if (place.back().isPresent() && here.equals(Beyond.UNKNOWN)) {
      Calculated<HeightDifference> there = seen(place.back().get().door().beyond());
      return Calculated.of(there.value().fromBeyond(), there.steps());
    }
    return seen(here);
  }

  /** What the two sides of an opening say otherwise, and a finish that a room of the job should not have. */
  private void doubts(DoorPlace place) {
    if (isLaid(place) && edge(place) == EdgeType.OTHER_FINISH) {
      note(place.name(), new Finding("finish-beyond-doubtful", Severity.NOTE, "", "it leads to " + place.door().leadsTo()
          + ", which is laid with the same boards, but another finish is given there; the finish is taken as given", Source.DEFINITION));
    }
    place.back().ifPresent(back -> {
      Beyond here = place.door().beyond();
      Beyond there = back.door().beyond();
      HeightDifference seenHere = seen(here).value();
      HeightDifference seenThere = seen(there).value();
      if (!here.equals(Beyond.UNKNOWN) && !there.equals(Beyond.UNKNOWN) && !seenThere.fromBeyond().equals(seenHere)) {
        note(place.name(), new Finding("door-heights-disagree", Severity.WARNING, "", "seen from here it is " + seenHere
            + ", seen from " + back.name() + " it is " + seenThere + "; the first is taken: measure both", Source.DEFINITION));
      }
      if (!back.door().width().equals(place.door().width())) {
        note(place.name(), new Finding("door-widths-differ", Severity.NOTE, "", "the opening is " + place.door().width()
            + " wide here and " + back.door().width() + " as " + back.name() + "; the first is taken: measure it where the profile"
            + " lies", Source.DEFINITION));
      }
    });
  }

  private Calculated<HeightDifference> seen(Beyond beyond) {
    return beyond.aboveSubfloor().map(height -> HeightDifference.toHeight(heights.stack(), height))
        .orElseGet(() -> Calculated.of(new HeightDifference(beyond.higherBy()), List.of()));
  }

  /** A room of the job is laid with its boards, whatever is not said. */
  private EdgeType edge(DoorPlace place) {
    EdgeType edge = place.door().beyond().edge();
    if (edge == EdgeType.NOT_STATED) {
      edge = place.back().map(back -> back.door().beyond().edge()).orElse(edge);
    }
    return edge == EdgeType.NOT_STATED && isLaid(place) ? EdgeType.SAME_FLOOR : edge;
  }

  private boolean isLaid(DoorPlace place) {
    return rooms.contains(place.door().leadsTo()) && !place.door().leadsTo().equals(place.room().name());
  }

  private static Profile profile(DoorPlace place, EdgeType edge, ProfileChoice choice) {
    Door door = place.door();
    String to = door.leadsTo().isEmpty() ? "" : " to " + door.leadsTo();
    String finish = edge == EdgeType.OTHER_FINISH && !door.beyond().finish().isBlank() ? " (" + door.beyond().finish() + ")" : "";
    String shared = place.back().map(back -> "; the same opening as " + back.name() + ", which leads back here").orElse("");
    return new Profile(choice.kind().word(), door.from(), door.to(), door.width(), place.name() + to + finish + ": "
        + choice.because() + shared);
  }

  private void note(String where, Finding finding) {
    findings.add(new Finding(finding.code(), finding.severity(), where, finding.message(), finding.source()));
  }

  /** The doors in the order of the job. */
  List<DoorEdge> edges() {
    List<DoorEdge> ordered = new ArrayList<>();
    for (Room room : job.rooms()) {
      for (Door door : room.doors()) {
        found.stream().filter(edge -> edge.room().equals(room.name()) && edge.door() == door).findFirst().ifPresent(ordered::add);
      }
    }
    return ordered;
  }

  List<Check> checks() {
    return checks;
  }

  List<Finding> findings() {
    return findings;
  }

  List<Worked> working() {
    return working;
  }
}
