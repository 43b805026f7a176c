package floorcalc.rules;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import floorcalc.working.Term;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** What each source says, one method a source. Nothing here is mixed from two sources. */
final class Published {
  private static final Source PRACTICE = Source.COMMON_PRACTICE;
  private static final String DTU = "NF DTU 51.11 P1-1";

  private Published() {}

  /** Figures for 15 mm and for 10 mm boards are in use; boards in between are taken as the thinner. */
  static void commonPractice(Situation job) {
    Length limit = Length.ofMillimetres(15);
    Length ends = Length.ofMillimetres(job.thickness().compareTo(limit) >= 0 ? 500 : 300);
    String byThickness = "d = 500 mm if t >= 15 mm, else 300 mm";
    Term t = Term.of("t", "thickness of the boards", job.thickness());
    job.put(LayingRules.EXPANSION_GAP, Length.ofMillimetres(10), PRACTICE);
    job.put(LayingRules.MINIMUM_ROW_WIDTH, Length.ofMillimetres(70), PRACTICE);
    job.put(LayingRules.MINIMUM_END_PIECE, ends, PRACTICE, byThickness, t);
    job.put(LayingRules.MINIMUM_JOINT_OFFSET, ends, PRACTICE, byThickness, t);
    job.put(LayingRules.SAW_KERF, Length.ofMillimetres(3), PRACTICE);
    job.put(LayingRules.SPARE_SHARE, new BigDecimal("0.02"), PRACTICE);
    job.put(LayingRules.MAXIMUM_RUN_ALONG, Length.ofMillimetres(12_000), PRACTICE);
    job.put(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(8_000), PRACTICE);
    job.put(LayingRules.BREAK_GAP, Length.ZERO, PRACTICE);
    job.put(LayingRules.DEEPEST_RECESS, Length.ofMillimetres(500), PRACTICE);
    job.put(LayingRules.WIDEST_VOID, Length.ofMillimetres(1_000), PRACTICE);
    job.put(LayingRules.AT_DOORWAYS, AtDoorways.BREAK, PRACTICE);
  }

  /** Floating multilayer parquet: gap by the largest dimension, width across the boards for boards under 20 mm. */
  static void dtu(Situation job) {
    if (job.thickness().compareTo(Length.ofMillimetres(20)) < 0) {
      job.put(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(8_000),
          new Source(DTU, "AFNOR", 2009, "clause 8.1.3, boards under 20 mm thick", Standing.READ));
    }
    Source source = new Source(DTU, "AFNOR", 2009, "clause 8.2", Standing.READ);
    Length least = Length.ofMillimetres(8);
    Length largest = job.largestDimension();
    Length share = largest.multipliedBy(15).dividedBy(10_000, RoundingMode.CEILING);
    Length most = LayingRules.EXPANSION_GAP.most();
    Term l = Term.of("l", "largest length or width to be covered", largest);
    if (share.compareTo(most) > 0) {
      job.put(LayingRules.EXPANSION_GAP, most, source, "g = min(gmax, 0.0015 * l)",
          Term.of("gmax", "largest gap that is taken", most), l);
      job.note(new Finding("gap-beyond-rule", Severity.SERIOUS, "", "a floor of " + largest + " asks for a gap of "
          + share + ", more than the " + most + " that can be left; split the floor with expansion breaks", source));
    } else {
      job.put(LayingRules.EXPANSION_GAP, least.max(share), source,
          "g = max(g0, 0.0015 * l), rounded up to a whole nanometre", new Term("g0", "least gap", least, source), l);
    }
  }

  /** Strip and plank: joint offset by width. */
  static void nwfa(Situation job) {
    Source source = new Source("Installation guidelines", "NWFA", 2008,
        "end joints, as given by its technical advisor in a published answer on end joint spacing", Standing.READ);
    Length width = job.coverWidth();
    int inches = width.compareTo(Length.ofInches(3, 0, 1)) < 0 ? 6 : width.compareTo(Length.ofInches(5, 0, 1)) <= 0
        ? 8 : 10;
    job.put(LayingRules.MINIMUM_JOINT_OFFSET, Length.ofInches(inches, 0, 1), source,
        "d = 6 in if b < 3 in, 8 in if b <= 5 in, else 10 in", Term.of("b", "cover width of the boards", width));
  }

  /** Plank, preferred: joint offset of two widths. */
  static void twoWidths(Situation job) {
    widths(job, 2, new Source("Installing wide plank floors", "NWFA", 2017, "magazine, December 2017/January 2018",
        Standing.READ));
  }

  /** Wide plank, preferred: joint offset of three widths. */
  static void threeWidths(Situation job) {
    widths(job, 3, new Source("End joint spacing", "NWFA", 0, "technical advisor's published answer", Standing.READ));
  }

  private static void widths(Situation job, int times, Source source) {
    job.put(LayingRules.MINIMUM_JOINT_OFFSET, job.coverWidth().multipliedBy(times), source,
        "d = " + times + " * b", Term.of("b", "cover width of the boards", job.coverWidth()));
  }

  /** Parquet: a fixed gap. */
  static void nwfaParquet(Situation job) {
    job.put(LayingRules.EXPANSION_GAP, Length.ofInches(0, 1, 2),
        new Source("Installation guidelines", "NWFA", 0, "chapter 7, parquet", Standing.QUOTED));
  }

  /** Strip timber floors: a fixed gap, and an intermediate gap in wide floors. */
  static void australian(Situation job) {
    Source source = new Source("AS 1684 and building code, strip timber floors", "Standards Australia", 0, "",
        Standing.QUOTED);
    job.put(LayingRules.EXPANSION_GAP, Length.ofMillimetres(10), source);
    job.put(LayingRules.MAXIMUM_RUN_ACROSS, Length.ofMillimetres(6_000), source);
  }
}
