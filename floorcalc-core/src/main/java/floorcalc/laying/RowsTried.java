package floorcalc.laying;

import floorcalc.measure.Length;
import floorcalc.rows.StartLine;
import floorcalc.working.Source;
import floorcalc.working.Step;
import floorcalc.working.Term;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A way to run the boards of a job and to begin its rows, and what came of it.
 *
 * @param rows the rows of each room
 * @param firstRows the width of the first row of each bay
 * @param boards boards opened
 * @param packs whole packs to order
 * @param apart how often joints are set against the rules
 * @param compromises how often a rule is broken that pieces and rows are held against
 * @param breaks the same, strips at stops that are too narrow counted too
 * @param strip the narrowest strip at any stop
 */
record RowsTried(List<RoomRows> rows, List<Length> firstRows, int boards, int packs, int apart, int compromises,
    int breaks, Length strip) {
  private static final Comparator<RowsTried> FEWEST =
      Comparator.comparingInt(RowsTried::packs).thenComparingInt(RowsTried::boards)
          .thenComparing(RowsTried::strip, Comparator.reverseOrder());
  /** Joints against the rules last, then fewest packs and fewest boards first, then the widest narrowest strip. */
  static final Comparator<RowsTried> BEST_FIRST = Comparator.comparingInt(RowsTried::apart).thenComparing(FEWEST);

  static RowsTried of(List<RoomRows> rows, JobLaying laying) {
    List<StartLine> lines = laying.bays().stream().map(plan -> plan.startLine().value()).toList();
    int compromises = Breaches.of(laying).found.size();
    return new RowsTried(rows, lines.stream().map(StartLine::firstRowWidth).toList(), laying.cutting().boardCount(),
        laying.packs(), laying.joints().breaches(), compromises, compromises + lines.stream().mapToInt(RowsTried::narrow).sum(),
        lines.stream().map(StartLine::narrowestStrip).reduce(laying.job().board().laidPitch(), Length::min));
  }

  private static int narrow(StartLine line) {
    return (int) line.strips().stream().filter(strip -> strip.certain().compareTo(line.minimum()) < 0).count();
  }

  /**
   * Tells whether this breaks no more rules than another and takes fewer packs, as many with fewer boards, or as many of both
   * with a wider narrowest strip.
   */
  boolean beats(RowsTried other) {
    return apart <= other.apart && compromises <= other.compromises && breaks <= other.breaks
        && FEWEST.compare(this, other) < 0;
  }

  boolean isAlong(RowsTried other) {
    return rows.get(0).direction().equals(other.rows.get(0).direction());
  }

  /** What was compared: the best few by the quick search, then those that were laid with all effort. */
  static List<Step> comparison(List<RowsTried> quick, List<RowsTried> finished, RowsTried chosen) {
    List<Term> terms = new ArrayList<>();
    quick.forEach(tried -> terms.add(tried.term("b" + (terms.size() + 1), "by the quick search")));
    for (int i = 0; i < finished.size(); i++) {
      terms.add(finished.get(i).term("n" + (i + 1), "by the search that was asked for"));
    }
    return List.of(new Step("rows-compared", "Which way to run the boards and to begin the rows takes the fewest boards?"
        + " The room laid alone; of ways that take as many, the one with the widest narrowest strip. Chosen: "
        + chosen.words() + ".", "n = the least of the n that break no more rules", terms, chosen.boards, Source.DEFINITION));
  }

  private Term term(String symbol, String how) {
    return Term.of(symbol, "boards " + words() + ", narrowest strip " + strip
        + (breaks > 0 ? ", rules broken " + breaks : "") + ", " + how, boards);
  }

  private String words() {
    return "along " + rows.get(0).direction() + " with a first row of "
        + firstRows.stream().map(Length::toString).reduce((a, b) -> a + " and " + b).orElse("nothing");
  }
}
