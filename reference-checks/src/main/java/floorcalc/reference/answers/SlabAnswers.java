package floorcalc.reference.answers;

import floorcalc.flatness.EdgePlacement;
import floorcalc.flatness.EdgeRest;
import floorcalc.flatness.FNumber;
import floorcalc.flatness.FNumbers;
import floorcalc.flatness.FreeMovementClass;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.MidChord;
import floorcalc.flatness.ProfilePoint;
import floorcalc.flatness.Straightedge;
import floorcalc.levels.LevelPlane;
import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Heights read along lines: F-numbers, straightedges, chords, best fit. */
final class SlabAnswers {
  private static final String CURVATURES = "curvatures";
  private static final String DIFFERENCES = "differences";

  void addTo(Answers answers) {
    answers.add("f-numbers-of-line", SlabAnswers::line, FNumbers.class, HeightProfile.class);
    answers.add("f-numbers-of-section", SlabAnswers::section, FNumbers.class, FNumber.class, HeightProfile.class);
    answers.add("f-number-of-lines-together", SlabAnswers::together, FNumber.class);
    answers.add("free-movement-flatness", SlabAnswers::freeMovement, FreeMovementClass.class, HeightProfile.class);
    answers.add("straightedge-at-place", SlabAnswers::placement, Straightedge.class, HeightProfile.class);
    answers.add("straightedge-at-every-reading", SlabAnswers::greatest, Straightedge.class, HeightProfile.class);
    answers.add("deviations-from-chord", SlabAnswers::chord, MidChord.class, HeightProfile.class);
    answers.add("line-of-best-fit", SlabAnswers::fit, Levels.class, LevelPlane.class);
  }

  static HeightProfile spaced(String spacing, List<String> heights) {
    return HeightProfile.ofEqualSpacing(Length.parse(spacing), heights.stream().map(Length::parse).toList());
  }

  private static HeightProfile profile(Question question) {
    return HeightProfile.of(question.table("profile").stream().map(row -> new ProfilePoint(Length.parse(row.get(0)), Length.parse(row.get(1)))).toList());
  }

  private static Answer line(Question question) {
    Calculated<FNumbers> calculated = FNumbers.of(spaced(question.text("spacing"), question.list("heights")));
    FNumbers numbers = calculated.value();
    Answer answer = Answer.empty();
    for (int i = 0; i < numbers.curvatures().size(); i++) {
      answer = answer.with("q" + (i + 2), numbers.curvatures().get(i).toMillimetreString());
    }
    for (int i = 0; i < numbers.levelDifferences().size(); i++) {
      answer = answer.with("z" + (i + 10), numbers.levelDifferences().get(i).toMillimetreString());
    }
    return answer.with(CURVATURES, Integer.toString(numbers.curvatures().size()))
        .with(DIFFERENCES, Integer.toString(numbers.levelDifferences().size()))
        .with("meanCurvature", step(calculated, "mean-of-q")).with("deviationOfCurvatures", step(calculated, "deviation-of-q"))
        .with("meanDifference", step(calculated, "mean-of-z")).with("deviationOfDifferences", step(calculated, "deviation-of-z"))
        .with("ff", shown(numbers.flatness())).with("fl", shown(numbers.levelness()));
  }

  /** Means and deviations are shown in the working alone. */
  private static String step(Calculated<?> calculated, String id) {
    Object result = calculated.steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow().result();
    return ((Length) result).toMillimetreString();
  }

  /** A line without any curvature has no number: it is flat without end. */
  private static String shown(FNumber number) {
    return Double.isInfinite(number.value()) ? "infinite" : new java.math.BigDecimal(Double.toString(number.value())).toPlainString();
  }

  private static Answer section(Question question) {
    List<FNumbers> lines = question.table("lines").stream().map(heights -> FNumbers.of(spaced(question.text("spacing"), heights)).value()).toList();
    FNumber flatness = FNumber.byReadings(lines.stream().map(FNumbers::flatness).toList()).value();
    FNumber levelness = FNumber.byReadings(lines.stream().map(FNumbers::levelness).toList()).value();
    return Answer.of("ff", shown(flatness)).with("fl", shown(levelness)).with(CURVATURES, Integer.toString(flatness.readings()))
        .with(DIFFERENCES, Integer.toString(levelness.readings()));
  }

  private static Answer together(Question question) {
    List<String> numbers = question.list("numbers");
    List<String> values = question.list("values");
    List<FNumber> lines = new ArrayList<>();
    for (int i = 0; i < numbers.size(); i++) {
      lines.add(new FNumber(Double.parseDouble(numbers.get(i)), Integer.parseInt(values.get(i))));
    }
    FNumber joined = FNumber.byReadings(lines).value();
    return Answer.of("number", shown(joined)).with("values", Integer.toString(joined.readings()));
  }

  private static Answer freeMovement(Question question) {
    Judgement judgement = FreeMovementClass.named(question.text("class")).judgeFlatness(
        question.table("lines").stream().map(heights -> spaced(question.text("spacing"), heights)).toList());
    // "95 % keep within 2.667 mm" and "all of 62 values".
    String[] found = judgement.found().split(" within ");
    String[] where = judgement.where().split(" ");
    return Answer.of("keptBy95Percent", Length.parse(found[1]).toMillimetreString()).with("values", where[2])
        .with("isMet", judgement.isMet() ? "yes" : "no");
  }

  private static Answer placement(Question question) {
    return show(Straightedge.of(Length.parse(question.text("edge"))).at(profile(question), Length.parse(question.text("start"))))
        .with("start", question.text("start"));
  }

  private static Answer show(EdgePlacement placement) {
    List<Length> supports = outermost(placement);
    return Answer.of("gap", placement.gravity().gap().toMillimetreString()).with("leftSupport", supports.get(0).toMillimetreString())
        .with("rightSupport", supports.get(1).toMillimetreString()).with("tips", placement.isTipping() ? "yes" : "no")
        .with("worstGap", placement.worst().gap().toMillimetreString());
  }

  private static Answer greatest(Question question) {
    List<EdgePlacement> placements = Straightedge.of(Length.parse(question.text("edge"))).atReadings(profile(question));
    EdgePlacement greatest = placements.get(0);
    for (EdgePlacement placement : placements) {
      greatest = placement.gravity().gap().compareTo(greatest.gravity().gap()) > 0 ? placement : greatest;
    }
    List<Length> supports = outermost(greatest);
    return Answer.of("gap", greatest.gravity().gap().toMillimetreString()).with("start", greatest.start().toMillimetreString())
        .with("leftSupport", supports.get(0).toMillimetreString()).with("rightSupport", supports.get(1).toMillimetreString())
        .with("worstGap", placements.stream().map(placement -> placement.worst().gap()).reduce(Length.ZERO, Length::max).toMillimetreString());
  }

  /** Where an edge touches in three points in line the library tells each two neighbours apart; asked are the outer two. */
  private static List<Length> outermost(EdgePlacement placement) {
    List<EdgeRest> rests = placement.rests();
    int from = rests.indexOf(placement.gravity());
    int to = from;
    while (from > 0 && isInLine(rests.get(from - 1), placement.gravity())) {
      from--;
    }
    while (to + 1 < rests.size() && isInLine(rests.get(to + 1), placement.gravity())) {
      to++;
    }
    return List.of(rests.get(from).left().place(), rests.get(to).right().place());
  }

  private static boolean isInLine(EdgeRest one, EdgeRest other) {
    return rise(one).times(other.contactDistance()).equals(rise(other).times(one.contactDistance()));
  }

  private static Length rise(EdgeRest rest) {
    return rest.right().height().minus(rest.left().height());
  }

  private static Answer chord(Question question) {
    MidChord found = MidChord.of(profile(question), Length.parse(question.text("chord"))).value();
    return Answer.of("places", Integer.toString(found.deviations().size())).with("highest", found.highest().deviation().toMillimetreString())
        .with("lowest", found.lowest().deviation().toMillimetreString()).with("rootMeanSquare", found.rootMeanSquare().toMillimetreString());
  }

  /** A line read twice, a metre apart, has the plane of the line. */
  private static Answer fit(Question question) {
    Levels levels = Levels.of(question.table("profile").stream().flatMap(row -> Stream.of("0 mm", "1000 mm")
        .map(across -> SpotLevel.of(Length.parse(row.get(0)), Length.parse(across), Length.parse(row.get(1))))).toList());
    LevelPlane plane = levels.plane().value();
    if (plane.slopeAlongY().signum() != 0) {
      throw new IllegalStateException("two equal lines differ across by " + plane.slopeAlongY());
    }
    return Answer.of("slope", plane.slopeAlongX()).with("highestAbove", plane.residual(plane.highestAbove()).toMillimetreString())
        .with("deepestBelow", plane.residual(plane.deepestBelow()).toMillimetreString())
        .with("rangeOfHeights", levels.highest().height().minus(levels.lowest().height()).toMillimetreString());
  }
}
