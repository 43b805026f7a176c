package floorcalc.transitions;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Optional;

/** What each source says on differences of height, one method a source. Nothing here is mixed from two sources. */
final class PublishedLevelChanges {
  private static final Source ADA = new Source("ADA and ANSI figures on changes in level", "TCNA", 2009,
      "as given in a report of the US Access Board, Dimensional Tolerances in Construction and for Surface Accessibility, part III",
      Standing.QUOTED);
  private static final Source DTU = new Source("NF DTU 51.11 P1-1", "AFNOR", 2009, "clause 9.2", Standing.READ);

  private PublishedLevelChanges() {}

  static List<LevelChangeLimit> commonPractice() {
    return List.of(upTo(LevelTreatment.T_PROFILE, Length.ofInches(0, 1, 8), 0, Source.COMMON_PRACTICE),
        upTo(LevelTreatment.REDUCER, Length.ofInches(0, 3, 8), 0, Source.COMMON_PRACTICE),
        upTo(LevelTreatment.BEVEL, Length.ofInches(0, 1, 2), 2, Source.COMMON_PRACTICE));
  }

  static List<LevelChangeLimit> adaAnsi() {
    return List.of(upTo(LevelTreatment.NONE, Length.ofInches(0, 1, 4), 0, ADA),
        upTo(LevelTreatment.BEVEL, Length.ofInches(0, 1, 2), 2, ADA),
        new LevelChangeLimit(LevelTreatment.RAMP, Optional.empty(), Optional.of(new Slope(12)), LevelChangeLimit.Space.ANY, ADA),
        limited(Length.ofInches(6, 0, 1), 10), limited(Length.ofInches(3, 0, 1), 8));
  }

  static List<LevelChangeLimit> dtu() {
    return List.of(upTo(LevelTreatment.NONE, Length.ZERO, 0, DTU), new LevelChangeLimit(LevelTreatment.THRESHOLD, Optional.empty(),
        Optional.empty(), LevelChangeLimit.Space.ANY, DTU));
  }

  private static LevelChangeLimit upTo(LevelTreatment treatment, Length most, int run, Source source) {
    return new LevelChangeLimit(treatment, Optional.of(most), run == 0 ? Optional.empty() : Optional.of(new Slope(run)),
        LevelChangeLimit.Space.ANY, source);
  }

  private static LevelChangeLimit limited(Length most, int run) {
    return new LevelChangeLimit(LevelTreatment.RAMP, Optional.of(most), Optional.of(new Slope(run)), LevelChangeLimit.Space.LIMITED, ADA);
  }
}
