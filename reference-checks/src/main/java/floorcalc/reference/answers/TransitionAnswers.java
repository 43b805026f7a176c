package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.transitions.Casing;
import floorcalc.transitions.CasingWork;
import floorcalc.transitions.DoorLeaf;
import floorcalc.transitions.DoorLimit;
import floorcalc.transitions.DoorSet;
import floorcalc.transitions.DoorSpace;
import floorcalc.transitions.EdgeType;
import floorcalc.transitions.FireRating;
import floorcalc.transitions.HeightDifference;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.LevelChangeLimit;
import floorcalc.transitions.LevelChangeSet;
import floorcalc.transitions.LevelChangeVerdict;
import floorcalc.transitions.ProfileChoice;
import floorcalc.transitions.Risers;
import floorcalc.transitions.Slope;
import floorcalc.transitions.StairSet;
import floorcalc.working.Judgement;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Changes of level, spaces at doors, risers. */
final class TransitionAnswers {
  /** What a question calls a source, and the set that rests on it. */
  static final Map<String, LevelChangeSet> LEVELS = Map.of("common practice", LevelChangeSet.COMMON_PRACTICE,
      "ADA/ANSI as quoted by TCNA 2009", LevelChangeSet.ADA_ANSI, "NF DTU 51.11 P1-1 cl. 9.2", LevelChangeSet.NF_DTU_51_11);
  /** Likewise. */
  static final Map<String, DoorSet> DOORS = Map.of("common practice", DoorSet.COMMON_PRACTICE,
      "UK ventilation guidance (Approved Document F practice)", DoorSet.UK_VENTILATION, "UK warranty tolerances", DoorSet.UK_WARRANTY);
  /** Likewise. */
  static final Map<String, StairSet> STAIRS = Map.of("common practice, US", StairSet.COMMON_PRACTICE_US,
      "common practice, Canada", StairSet.COMMON_PRACTICE_CANADA);

  void addTo(Answers answers) {
    answers.add("change-of-level", TransitionAnswers::level, LevelChangeSet.class, HeightDifference.class, LevelChangeVerdict.class);
    answers.add("space-at-door", TransitionAnswers::door, DoorSet.class, DoorLimit.class);
    answers.add("space-under-leaf", TransitionAnswers::leaf, DoorLeaf.class, HeightStack.class);
    answers.add("profile-at-edge", TransitionAnswers::profile, ProfileChoice.class);
    answers.add("undercut-of-casing", TransitionAnswers::undercut, CasingWork.class, HeightStack.class);
    answers.add("risers-after-floor", TransitionAnswers::risersAfterFloor, Risers.class, HeightStack.class);
    answers.add("risers-of-stairs", TransitionAnswers::risers, StairSet.class);
  }

  private static Answer level(Question question) {
    LevelChangeSet set = MoistureLimitAnswers.known(LEVELS, question.text("source"));
    LevelChangeVerdict verdict = set.judge(new HeightDifference(Length.parse(question.text("difference")))).value();
    String steeper = verdict.steeper().stream().map(LevelChangeLimit::slope).flatMap(Optional::stream).map(Slope::toString)
        .collect(Collectors.joining(", "));
    return Answer.of("treatment", verdict.treatment().words()).with("slope", verdict.slope().map(Slope::toString).orElse("none"))
        .with("steeperWhereSpaceIsLimited", steeper.isEmpty() ? "none" : steeper).with("standing", verdict.source().standing().words());
  }

  private static Answer door(Question question) {
    DoorSpace space = MoistureLimitAnswers.inWords(DoorSpace.values(), DoorSpace::words, question.text("space"));
    DoorLimit limit = MoistureLimitAnswers.known(DOORS, question.text("source")).limits().stream().filter(one -> one.space() == space).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("nothing is said in " + question));
    return Answer.of("leastMillimetres", limit.least().map(Length::toMillimetreString).orElse("none"))
        .with("mostMillimetres", limit.most().map(Length::toMillimetreString).orElse("none"))
        .with("standing", limit.source().standing().words());
  }

  private static HeightStack stack(List<String> layers) {
    HeightStack stack = HeightStack.BARE;
    for (String layer : layers) {
      stack = stack.on("layer " + (stack.layers().size() + 1), Length.parse(layer));
    }
    return stack;
  }

  private static Answer leaf(Question question) {
    DoorLeaf leaf = DoorLeaf.of(Length.parse(question.text("leafAboveSubfloor")), stack(question.list("layers")),
        List.of(MoistureLimitAnswers.known(DOORS, question.text("source"))), FireRating.NO_FIRE_DOOR).value();
    Judgement finished = leaf.judgements().stream().filter(one -> one.check().startsWith(DoorSpace.OVER_FINISHED_FLOOR.words())).findFirst()
        .orElseThrow();
    return Answer.of("millimetres", leaf.clearance().toMillimetreString()).with("verdict", finished.isMet() ? "met" : "not met");
  }

  private static Answer profile(Question question) {
    EdgeType edge = question.text("beyond").equals("a fixed edge") ? EdgeType.FIXED_EDGE : EdgeType.SAME_FLOOR;
    return Answer.of("profile", ProfileChoice.of(edge, new HeightDifference(Length.parse(question.text("difference"))),
        MoistureLimitAnswers.known(LEVELS, question.text("source"))).value().kind().word());
  }

  private static Answer undercut(Question question) {
    return Answer.of("millimetres", CasingWork.of(stack(question.list("layers")), CasingWork.CLEARANCE, Casing.CUT, FireRating.NO_FIRE_DOOR).value()
        .height().orElseThrow().toMillimetreString());
  }

  private static Answer risersAfterFloor(Question question) {
    Risers risers = Risers.of(question.list("risers").stream().map(Length::parse).toList(), stack(List.of(question.text("floorAtFoot"))),
        HeightStack.BARE, HeightStack.BARE, MoistureLimitAnswers.known(STAIRS, question.text("source"))).value();
    return Answer.of("spreadMillimetres", risers.spread().toMillimetreString())
        .with("highestMillimetres", Collections.max(risers.after()).toMillimetreString())
        .with("verdict", risers.judgements().get(0).isMet() ? "met" : "not met");
  }

  private static Answer risers(Question question) {
    StairSet set = MoistureLimitAnswers.known(STAIRS, question.text("source"));
    return Answer.of("spreadMillimetres", set.spread().toMillimetreString())
        .with("highestMillimetres", set.highest().map(Length::toMillimetreString).orElse("none"))
        .with("standing", set.source().standing().words());
  }
}
