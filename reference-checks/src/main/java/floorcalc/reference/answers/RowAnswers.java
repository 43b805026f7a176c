package floorcalc.reference.answers;

import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.rows.Closure;
import floorcalc.rows.RowDivision;
import floorcalc.rows.RowDrift;
import floorcalc.rows.RowWay;
import floorcalc.rows.RowsBothWays;
import floorcalc.rows.Stop;
import floorcalc.rows.StartLine;
import floorcalc.rows.StripTable;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleValue;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import floorcalc.working.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Rows of a floor. */
final class RowAnswers {
  void addTo(Answers answers) {
    answers.add("rows-of-a-width", RowAnswers::division, RowDivision.class);
    answers.add("drift-of-rows", RowAnswers::drift, RowDrift.class, RowDivision.class);
    answers.add("rows-both-ways", RowAnswers::bothWays, RowsBothWays.class);
    answers.add("strips-at-all-stops", RowAnswers::strips, StripTable.class, StartLine.class);
    answers.add("arms-that-meet", RowAnswers::arms, Closure.class);
  }

  static Length length(Question question, String input) {
    return Length.parse(question.text(input));
  }

  /** The findings by name, in the order of the alphabet. */
  static String findings(Calculated<?> result) {
    String names = result.findings().stream().map(Finding::code).distinct().sorted().collect(Collectors.joining(" "));
    return names.isEmpty() ? "none" : names;
  }

  private static Calculated<RowDivision> divided(Question question, String pitch) {
    return RowDivision.of(length(question, "width"), length(question, pitch), length(question, "minimum"), RowWay.valueOf(question.text("way")));
  }

  private static Answer division(Question question) {
    Calculated<RowDivision> result = divided(question, "pitch");
    RowDivision rows = result.value();
    return Answer.of("rows", BigDecimal.valueOf(rows.rows())).with("firstRowMillimetres", rows.firstRow().toMillimetreString())
        .with("lastRowMillimetres", rows.lastRow().toMillimetreString()).with("minimumInForceMillimetres", rows.minimum().toMillimetreString())
        .with("fullRows", BigDecimal.valueOf(rows.fullRows())).with("findings", findings(result));
  }

  private static Answer drift(Question question) {
    Calculated<RowDrift> result = RowDrift.of(divided(question, "nominalPitch").value(), length(question, "laidPitch"));
    RowDrift drift = result.value();
    return Answer.of("rows", BigDecimal.valueOf(drift.rows())).with("driftMillimetres", drift.drift().toMillimetreString())
        .with("lastRowMillimetres", drift.lastRowAsLaid().orElseThrow().toMillimetreString()).with("findings", findings(result));
  }

  private static Answer bothWays(Question question) {
    Calculated<RowsBothWays> result = RowsBothWays.from(length(question, "before"), length(question, "beyond"), length(question, "pitch"),
        length(question, "minimum"));
    RowsBothWays rows = result.value();
    return Answer.of("joint", rows.joint().name()).with("rowsBefore", BigDecimal.valueOf(rows.rowsBefore()))
        .with("rowsBeyond", BigDecimal.valueOf(rows.rowsBeyond())).with("rows", BigDecimal.valueOf(rows.rows()))
        .with("stripBeforeMillimetres", rows.stripBefore().toMillimetreString()).with("stripBeyondMillimetres", rows.stripBeyond().toMillimetreString())
        .with("findings", findings(result));
  }

  private static Stop stop(List<String> cells) {
    Length low = Length.ofMillimetres(cells.get(1));
    Length high = Length.ofMillimetres(cells.get(cells.size() - 1));
    return cells.get(0).equals("above") ? Stop.floorAbove("stop", low, high) : Stop.floorBelow("stop", low, high);
  }

  private static Answer strips(Question question) {
    List<Stop> stops = question.table("stops").stream().map(RowAnswers::stop).toList();
    StripTable table = StripTable.of(stops, length(question, "lowest"), length(question, "pitch"),
        new RuleValue<>(LayingRules.MINIMUM_ROW_WIDTH, length(question, "minimum"), Source.GIVEN), length(question, "step"),
        length(question, "plusMinus")).value();
    return Answer.of("bestFirstRowMillimetres", table.best().firstRowWidth().toMillimetreString())
        .with("bestNarrowestMillimetres", table.best().narrowestStrip().toMillimetreString())
        .with("entries", BigDecimal.valueOf(table.entries().size()))
        .with("strips", table.entries().stream().map(RowAnswers::entry).collect(Collectors.joining("; ")));
  }

  private static String entry(StripTable.Entry entry) {
    return entry.firstRow().toMillimetreString() + ": " + entry.strips().stream().map(Length::toMillimetreString).collect(Collectors.joining(" "))
        + Stream.of(entry.narrowest(), entry.within()).map(Length::toMillimetreString).collect(Collectors.joining(" ", " | ", ""));
  }

  private static Closure.Arm arm(Question question, String name) {
    return new Closure.Arm(name, length(question, name + "Start"), question.count(name + "Rows"), length(question, name + "Pitch"),
        length(question, name + "PlusMinus"), length(question, name + "RunOff"), length(question, name + "Over"));
  }

  private static Answer arms(Question question) {
    Closure.Arm one = arm(question, "one");
    Closure.Arm other = arm(question, "other");
    Calculated<Closure> result = Closure.of(one, other, length(question, "joined"), length(question, "allowed"));
    return Answer.of("oneArrivalMillimetres", one.arrival().toMillimetreString()).with("otherArrivalMillimetres", other.arrival().toMillimetreString())
        .with("mismatchMillimetres", result.value().mismatch().toMillimetreString())
        .with("plusMinusMillimetres", result.value().plusMinus().toMillimetreString())
        .with("partingMillimetres", result.value().parting().toMillimetreString()).with("findings", findings(result));
  }
}
