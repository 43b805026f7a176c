package floorcalc.reference.answers;

import floorcalc.flatness.EdgeMethod;
import floorcalc.flatness.FNumberClass;
import floorcalc.flatness.FreeMovementClass;
import floorcalc.flatness.ToleranceSet;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.util.Map;
import java.util.Objects;

/** Named limits of flatness and level. */
final class FlatnessLimitAnswers {
  /** Which set stands for a source. */
  private static final Map<String, String> SETS = Map.ofEntries(
      Map.entry("BS 8204 class SR1", "BS 8204 SR1"), Map.entry("BS 8204 class SR2", "BS 8204 SR2"),
      Map.entry("BS 8204 class SR3", "BS 8204 SR3"), Map.entry("BS 8204:1987 class SR1", "BS 8204:1987 SR1"),
      Map.entry("BS 8204:1987 class SR2", "BS 8204:1987 SR2"), Map.entry("BS 8204:1987 class SR3", "BS 8204:1987 SR3"),
      Map.entry("NHBC Standards 2020 cl. 9.1.5", "NHBC 9.1.5"),
      Map.entry("NF DTU 51.11 P1-1 (Dec 2009) cl. 9.1", "NF DTU 51.11 finished"),
      Map.entry("NF DTU 51.11 (2009) substrate", "NF DTU 51.11 subfloor"),
      Map.entry("NF DTU 51.1 P1-1 (Dec 2010) cl. 7.1", "NF DTU 51.1"),
      Map.entry("AS 1884:2021 cl. 3.1.4(a)", "AS 1884"), Map.entry("AS 1884:2021 cl. 3.1.4(b)", "AS 1884"),
      Map.entry("NFCA best practice (Jan 2023)", "NFCA"), Map.entry("MFMA position statement (rev 02/05)", "MFMA"),
      Map.entry("ANSI A108.02 as quoted by TCNA 2009", "ANSI A108.02"),
      Map.entry("ACI 117 (exterior ramps, sidewalks)", "ACI 117 outdoors"),
      Map.entry("NATSPEC concrete finishes class A", "NATSPEC class A"), Map.entry("NATSPEC concrete finishes class B", "NATSPEC class B"),
      Map.entry("NATSPEC concrete finishes class C", "NATSPEC class C"), Map.entry("NZS 3114", "NZS 3114"),
      Map.entry("SNiP 3.04.01-87 Table 25", "SNiP 3.04.01"), Map.entry("common practice", "common practice"));

  void addTo(Answers answers) {
    answers.add("flatness-limit", FlatnessLimitAnswers::limit, ToleranceSet.class);
    answers.add("f-number-class", FlatnessLimitAnswers::numbers, FNumberClass.class);
    answers.add("free-movement-class", FlatnessLimitAnswers::freeMovement, FreeMovementClass.class);
  }

  private static String set(String source, String floor) {
    if (source.startsWith("DIN")) {
      return "DIN 18202 " + floor;
    }
    if (source.startsWith("NWFA")) {
      return floor.startsWith("glue-down") ? "NWFA glued" : "NWFA long fasteners";
    }
    return Objects.requireNonNull(SETS.get(source), source);
  }

  private static Answer limit(Question question) {
    ToleranceSet set = ToleranceSet.named(set(question.text("source"), question.text("floor")));
    Length allowed = set.gapAllowed(Length.parse(question.text("distance"))).orElseThrow();
    return Answer.of("gap", allowed.toMillimetreString()).with("distanceIsThatOf", words(set.method()))
        .with("setHere", set.name());
  }

  private static String words(EdgeMethod method) {
    return switch (method) {
      case CONTACT_DISTANCE -> "contacts";
      case EQUAL_OFFSETS -> "edge on equal offsets";
      case SPAN -> "edge";
    };
  }

  private static Answer numbers(Question question) {
    FNumberClass found = FNumberClass.named(question.text("class"));
    return Answer.of("flatness", found.leastFlatness()).with("levelness", found.leastLevelness())
        .with("localFlatness", found.leastLocalFlatness()).with("localLevelness", found.leastLocalLevelness());
  }

  private static Answer freeMovement(Question question) {
    FreeMovementClass found = FreeMovementClass.named(question.text("class"));
    return Answer.of("levelness", found.levelness().toMillimetreString()).with("flatness", found.flatness().toMillimetreString());
  }
}
