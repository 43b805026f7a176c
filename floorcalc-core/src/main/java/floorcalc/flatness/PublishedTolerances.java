package floorcalc.flatness;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.ArrayList;
import java.util.List;

/** What each source says on flatness, one set for each kind of floor. Nothing here is mixed from two sources. */
final class PublishedTolerances {
  private static final String REPORT = "as given in a report of the US Access Board, Dimensional Tolerances in Construction"
      + " and for Surface Accessibility";
  private static final String UNSEEN = "not seen";
  private static final Length TWO_METRES = Length.ofMillimetres(2000);
  private static final Length THREE_METRES = Length.ofMillimetres(3000);
  private static final Length TEN_FEET = Length.ofInches(120, 0, 1);
  private static final Length SIX_FEET = Length.ofInches(72, 0, 1);
  private static final Length ONE_FOOT = Length.ofInches(12, 0, 1);

  static final List<ToleranceSet> ALL = all();

  private PublishedTolerances() {}

  private static List<ToleranceSet> all() {
    List<ToleranceSet> sets = new ArrayList<>();
    sets.add(ToleranceSet.COMMON_PRACTICE);
    german(sets);
    british(sets);
    french(sets);
    american(sets);
    americanConcrete(sets);
    others(sets);
    return List.copyOf(sets);
  }

  private static void german(List<ToleranceSet> sets) {
    din(sets, "1", "unfinished upper surfaces of slabs, sub-concrete and subfloors", 10, 15, 20, 25, 30);
    din(sets, "2a", "upper surfaces to receive a floor build-up: floating or bonded screed, tiles; the line is split in 2a and 2b"
        + " since 2013 (from memory), with the figures of line 2", 5, 8, 12, 15, 20);
    din(sets, "2b", "finished upper surfaces for minor purposes, such as stores and cellars; the line is split in 2a and 2b since"
        + " 2013 (from memory), with the figures of line 2", 5, 8, 12, 15, 20);
    din(sets, "3", "finished floors: screeds to receive coverings, and floor coverings", 2, 4, 10, 12, 15);
    din(sets, "4", "finished floors as in line 3, with increased requirements", 1, 3, 9, 12, 15);
    din(sets, "5", "no floor: unfinished walls and soffits", 5, 10, 15, 25, 30);
    din(sets, "6", "no floor: finished walls and soffits", 3, 5, 10, 20, 25);
    din(sets, "7", "no floor: finished walls and soffits, with increased requirements", 2, 3, 8, 15, 20);
  }

  private static void din(List<ToleranceSet> sets, String line, String floor, int... millimetres) {
    Source source = new Source("DIN 18202", "DIN", 2005, "Table 3, line " + line
        + ", as given in a handbook of the screed and flooring trade", Standing.QUOTED);
    int[] distances = {100, 1000, 4000, 10_000, 15_000};
    List<SpanLimit> limits = new ArrayList<>();
    for (int i = 0; i < distances.length; i++) {
      limits.add(SpanLimit.of(Length.ofMillimetres(distances[i]), Length.ofMillimetres(millimetres[i]), source));
    }
    sets.add(ToleranceSet.byDistance("DIN 18202 line " + line, floor, new DistanceTable(limits)));
  }

  private static void british(List<ToleranceSet> sets) {
    String[] classes = {"high", "normal", "utility"};
    int[] gaps = {3, 5, 10};
    for (int i = 0; i < gaps.length; i++) {
      String name = "SR" + (i + 1);
      add(sets, "BS 8204 " + name, "screeds and bases, " + classes[i] + " standard", limit(TWO_METRES, mm(gaps[i]),
          new Source("BS 8204", "BSI", 0, "class " + name + ", as given by the Concrete Society", Standing.QUOTED)));
    }
    for (int i = 0; i < gaps.length; i++) {
      String name = "SR" + (i + 1);
      add(sets, "BS 8204:1987 " + name, "screeds and bases, " + classes[i] + " standard of the first edition; history only",
          limit(THREE_METRES, mm(gaps[i]), new Source("BS 8204", "BSI", 1987, "class " + name
              + ", as given by the Concrete Society", Standing.QUOTED)));
    }
    sets.add(ToleranceSet.published("NHBC 9.1.5", "finished floors of new homes", EdgeMethod.EQUAL_OFFSETS,
        List.of(limit(TWO_METRES, mm(5), new Source("NHBC Standards", "NHBC", 2020, "clause 9.1.5", Standing.READ)))));
  }

  private static void french(List<ToleranceSet> sets) {
    dtu(sets, "NF DTU 51.11 finished", "finished floor of floating multilayer parquet",
        new Source("NF DTU 51.11 P1-1", "AFNOR", 2009, "clause 9.1", Standing.READ));
    dtu(sets, "NF DTU 51.11 subfloor", "subfloor for floating parquet",
        new Source("NF DTU 51.11", "AFNOR", 2009, "as given in an encyclopedia", Standing.QUOTED));
    dtu(sets, "NF DTU 51.1", "nailed parquet after sanding",
        new Source("NF DTU 51.1 P1-1", "AFNOR", 2010, "clause 7.1", Standing.READ));
  }

  private static void dtu(List<ToleranceSet> sets, String name, String floor, Source source) {
    add(sets, name, floor, limit(TWO_METRES, mm(5), source), limit(mm(200), mm(1), source));
  }

  private static void american(List<ToleranceSet> sets) {
    Source nwfa = new Source("Installation guidelines", "NWFA", 0, "chapter 4, part III, as given in an article",
        Standing.QUOTED);
    add(sets, "NWFA long fasteners", "wood subfloor, fasteners of 1 1/2 in and longer", limit(TEN_FEET, in(1, 4), nwfa),
        limit(SIX_FEET, in(3, 16), nwfa));
    add(sets, "NWFA glued", "floors glued down, or with fasteners shorter than 1 1/2 in", limit(TEN_FEET, in(3, 16), nwfa),
        limit(SIX_FEET, in(1, 8), nwfa));
    add(sets, "NFCA", "slab to receive a covering, typical requirement", limit(TEN_FEET, in(3, 16),
        new Source("Best practice, 10-foot straightedge", "NFCA", 2023, "", Standing.READ)));
    add(sets, "MFMA", "slab under a maple gymnasium floor", limit(TEN_FEET, in(1, 8),
        new Source("Ff/Fl Numbers and Concrete Slab Flatness", "MFMA", 2005, "position statement", Standing.READ)));
    Source tile = new Source("ANSI A108.02", "TCNA", 2009, REPORT, Standing.QUOTED);
    add(sets, "ANSI A108.02", "tiled floor and its substrate", limit(TEN_FEET, in(1, 4), tile),
        limit(ONE_FOOT, in(1, 16), tile));
    Source f710 = new Source("ASTM F710", "ASTM", 0, UNSEEN, Standing.FROM_MEMORY);
    add(sets, "ASTM F710", "concrete to receive resilient flooring", limit(TEN_FEET, in(3, 16), f710),
        limit(ONE_FOOT, in(1, 32), f710));
  }

  private static void americanConcrete(List<ToleranceSet> sets) {
    add(sets, "ACI 117 outdoors", "exterior ramps and sidewalks", limit(TEN_FEET, in(1, 4),
        new Source("ACI 117", "ACI", 0, "exterior ramps and sidewalks, " + REPORT, Standing.QUOTED)));
    String[] classes = {"conventional", "moderately flat", "flat"};
    Length[] most = {in(1, 2), in(3, 8), in(1, 4)};
    Length[] all = {in(3, 4), in(5, 8), in(3, 8)};
    Source ten = new Source("ACI 117-10", "ACI", 2010, "Table 4.8.6.1, " + UNSEEN, Standing.FROM_MEMORY);
    for (int i = 0; i < classes.length; i++) {
      add(sets, "ACI 117-10 " + classes[i], "slab, class " + classes[i], new SpanLimit(TEN_FEET, most[i], 90, ten),
          limit(TEN_FEET, all[i], ten));
    }
    Source ninety = new Source("ACI 117-90", "ACI", 1990, "clause 4.5.7, " + UNSEEN, Standing.FROM_MEMORY);
    String[] old = {"conventional, bullfloated", "conventional, straightedged", "flat", "very flat"};
    Length[] gaps = {in(1, 2), in(5, 16), in(3, 16), in(1, 8)};
    for (int i = 0; i < old.length; i++) {
      add(sets, "ACI 117-90 " + old[i], "slab, class " + old[i] + "; replaced in 2010", limit(TEN_FEET, gaps[i], ninety));
    }
  }

  private static void others(List<ToleranceSet> sets) {
    Source as = new Source("AS 1884", "Standards Australia", 2021, "clause 3.1.4, as given on a page that quotes it",
        Standing.QUOTED);
    add(sets, "AS 1884", "concrete subfloor for a resilient covering; the short span is for abrupt changes",
        limit(TWO_METRES, mm(4), as), limit(mm(150), Length.ofMillimetres("0.5"), as));
    Source natspec = new Source("NATSPEC concrete finishes", "NATSPEC", 0, REPORT, Standing.QUOTED);
    add(sets, "NATSPEC class A", "concrete floors, class A", limit(THREE_METRES, mm(3), natspec));
    add(sets, "NATSPEC class B", "concrete floors, class B", limit(THREE_METRES, mm(6), natspec));
    add(sets, "NATSPEC class C", "concrete floors, class C", limit(mm(600), mm(6), natspec));
    Source nzs = new Source("NZS 3114", "Standards New Zealand", 0, REPORT, Standing.QUOTED);
    add(sets, "NZS 3114", "concrete floors, most classes; the short span is for abrupt changes, which must stay below it",
        limit(THREE_METRES, mm(5), nzs), limit(mm(200), mm(3), nzs));
    add(sets, "SNiP 3.04.01", "wood and parquet floors", limit(TWO_METRES, mm(2), new Source("SNiP 3.04.01-87", "", 1987,
        "Table 25, as restated on a page", Standing.QUOTED)));
    String[] woods = {"solid strip, pine", "solid strip, hardwood", "parquet block", "engineered"};
    int[] gaps = {3, 2, 2, 2};
    for (int i = 0; i < woods.length; i++) {
      add(sets, "GB 50209 " + woods[i], "finished wood floor, " + woods[i], limit(TWO_METRES, mm(gaps[i]),
          new Source("GB 50209", "", 0, "Table 7.1.8, " + UNSEEN, Standing.FROM_MEMORY)));
    }
  }

  private static void add(List<ToleranceSet> sets, String name, String floor, SpanLimit... limits) {
    sets.add(ToleranceSet.published(name, floor, EdgeMethod.SPAN, List.of(limits)));
  }

  private static SpanLimit limit(Length span, Length gap, Source source) {
    return SpanLimit.of(span, gap, source);
  }

  private static Length mm(int millimetres) {
    return Length.ofMillimetres(millimetres);
  }

  private static Length in(int numerator, int denominator) {
    return Length.ofInches(0, numerator, denominator);
  }
}
