package floorcalc.reference.answers;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.deviations.BoardSize;
import floorcalc.deviations.Deviation;
import floorcalc.deviations.DeviationLimit;
import floorcalc.deviations.DeviationReadings;
import floorcalc.deviations.DeviationSet;
import floorcalc.deviations.MeasuredBoards;
import floorcalc.deviations.SizeLimit;
import floorcalc.deviations.SizeSet;
import floorcalc.deviations.Stage;
import floorcalc.deviations.WoodMoisture;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Sizes of boards, and what boards and laid floors may deviate. */
final class DeviationAnswers {
  /** What a question calls a source and its boards, and the set that rests on it. */
  static final Map<String, SizeSet> SIZES = Map.of("EN 13226: solid elements with groove/tongue", SizeSet.EN_13226,
      "EN 13990: softwood floorboards", SizeSet.EN_13990, "EN 13489: multilayer parquet", SizeSet.EN_13489_TWO_LAYERS,
      "EN 13489: two-layer", SizeSet.EN_13489_TWO_LAYERS, "EN 13489: three-layer", SizeSet.EN_13489_THREE_LAYERS,
      "EN 13489 (Austrian foreword): multilayer parquet, rectangular", SizeSet.EN_13489_AUSTRIA);
  /** What the name of a source begins with, and the set that rests on it. */
  private static final Map<String, String> SETS = Map.of("NWFA/NOFMA unfinished solid", "NWFA/NOFMA unfinished", "NWFA/NOFMA factory finished",
      "NWFA/NOFMA factory finished", "EN 13489", "EN 13489", "NF DTU 51.11", "NF DTU 51.11", "NF DTU 51.1 ", "NF DTU 51.1", "NF DTU 51.2",
      "NF DTU 51.2", "Verband der deutschen Parkettindustrie", "German parquet industry", "SNiP 3.04.01-87", "SNiP 3.04.01");

  void addTo(Answers answers) {
    answers.add("size-of-boards", DeviationAnswers::size, SizeSet.class, SizeLimit.class);
    answers.add("board-of-a-size", DeviationAnswers::board, SizeSet.class);
    answers.add("permitted-deviation", DeviationAnswers::permitted, DeviationSet.class, DeviationLimit.class);
    answers.add("readings-of-deviations", DeviationAnswers::judged, DeviationSet.class, DeviationReadings.class, MeasuredBoards.class);
    answers.add("moisture-when-sizes-are-measured", DeviationAnswers::moisture, DeviationSet.class, WoodMoisture.class);
    answers.add("readings-asked-for", DeviationAnswers::number, DeviationSet.class);
  }

  private static SizeLimit limit(Question question) {
    SizeSet set = MoistureLimitAnswers.known(SIZES, question.text("source") + ": " + question.text("product"));
    return set.limit(size(question.text("size"))).orElseThrow(() -> new IllegalArgumentException("nothing is said in " + question));
  }

  private static BoardSize size(String word) {
    return BoardSize.valueOf(word.toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  private static Answer size(Question question) {
    SizeLimit limit = limit(question);
    SizeSet set = MoistureLimitAnswers.known(SIZES, question.text("source") + ": " + question.text("product"));
    return Answer.of("leastMillimetres", limit.least().map(Length::toMillimetreString).orElse("none"))
        .with("leastItself", limit.least().map(least -> limit.allows(least) ? "allowed" : "not allowed").orElse("none"))
        .with("mostMillimetres", limit.most().map(Length::toMillimetreString).orElse("none"))
        .with("force", limit.force().name().toLowerCase(Locale.ROOT))
        .with("usualMillimetres", set.usualThicknesses().stream().map(Length::toMillimetreString).collect(Collectors.joining("/")))
        .with("standing", limit.source().standing().words());
  }

  /** A board of one size, the others well inside. */
  private static Answer board(Question question) {
    SizeSet set = MoistureLimitAnswers.known(SIZES, question.text("source") + ": " + question.text("product"));
    BoardSize size = size(question.text("size"));
    Length value = Length.parse(question.text("value"));
    BoardGoods goods = BoardGoods.of(size == BoardSize.LENGTH ? value : Length.ofMillimetres(2000),
        size == BoardSize.WIDTH ? value : Length.ofMillimetres(120), size == BoardSize.THICKNESS ? value : Length.ofMillimetres(20), 1);
    Calculated<List<Judgement>> judged = set.judge(goods.withConstruction(Construction.SOLID));
    int place = set.limits().indexOf(limit(question));
    return Answer.of("verdict", words(judged.value().get(place))).with("findings", Integer.toString(judged.findings().size()));
  }

  static String words(Judgement judgement) {
    return judgement.outcome().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** The set of a source; strips on edge have one of their own. */
  static DeviationSet set(Question question) {
    String source = question.text("source");
    String name = SETS.entrySet().stream().filter(entry -> (source + " ").startsWith(entry.getKey())).map(Map.Entry::getValue).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no set rests on " + source));
    return DeviationSet.named(question.text("product").equals("strips on edge") ? name + " on edge" : name);
  }

  private static Deviation deviation(Question question) {
    return Deviation.valueOf(question.text("deviation").toUpperCase(Locale.ROOT).replace(' ', '_'));
  }

  private static Length width(Question question) {
    return Length.parse(question.text("boardWidth"));
  }

  private static DeviationLimit permits(Question question) {
    return set(question).limits().stream().filter(one -> one.deviation() == deviation(question) && one.widths().contains(width(question))
        && (!question.has("beyondPercent") || one.beyondPercent() == question.count("beyondPercent"))
        && (!question.has("meanOf") || one.meanOf() == question.count("meanOf"))).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("nothing is said in " + question));
  }

  private static Length base(Question question) {
    return question.has("panel") ? Length.parse(question.text("panel")) : width(question);
  }

  private static Answer permitted(Question question) {
    DeviationLimit limit = permits(question);
    Length allowed = limit.allowed(base(question));
    return Answer.of("millimetres", allowed.toMillimetreString()).with("inches", inches(allowed))
        .with("leastMillimetres", limit.least().map(Length::toMillimetreString).orElse("none"))
        .with("leastInches", limit.least().map(DeviationAnswers::inches).orElse("none"))
        .with("percentOfWidth", limit.percentOfWidth().map(BigDecimal::toPlainString).orElse("none"))
        .with("atMostMillimetres", limit.most().map(Length::toMillimetreString).orElse("none"))
        .with("withinPercent", Integer.toString(100 - limit.beyondPercent()))
        .with("noneBeyondTimes", limit.utmostTimes() == 0 ? "none" : Integer.toString(limit.utmostTimes()))
        .with("meanOf", Integer.toString(limit.meanOf())).with("standing", limit.source().standing().words());
  }

  /** To twelve decimals. */
  static String inches(Length length) {
    return BigDecimal.valueOf(length.toNanometres()).divide(BigDecimal.valueOf(25_400_000), 12, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
  }

  /** What is read is judged by the whole set, and answered for one of its limits. */
  private static Answer judged(Question question) {
    DeviationSet set = set(question);
    Deviation deviation = deviation(question);
    List<Length> values = question.list("readings").stream().map(Length::parse).toList();
    DeviationReadings readings = set.stage() == Stage.LAID ? DeviationReadings.ofWidth(width(question))
        : DeviationReadings.of(BoardGoods.of(Length.ofMillimetres(1000), width(question), Length.ofMillimetres(19), 1));
    readings = question.has("panel") ? readings.withPanel(Length.parse(question.text("panel"))) : readings;
    readings = readings.with(deviation, values);
    String bound = permits(question).at(base(question));
    List<Judgement> all = (set.stage() == Stage.LAID ? set.judge(readings) : new MeasuredBoards(readings, set).judge()).value();
    return Answer.of("verdict", all.stream().filter(one -> one.limit().equals(bound)).map(DeviationAnswers::words).findFirst().orElseThrow());
  }

  private static Answer moisture(Question question) {
    Optional<WoodMoisture> range = set(question).moisture();
    return Answer.of("lowPercent", range.orElseThrow().low()).with("highPercent", range.orElseThrow().high());
  }

  private static Answer number(Question question) {
    return Answer.of("readings", Long.toString(set(question).number().orElseThrow().neededFor(Area.ofSquareMetres(question.text("squareMetres")))));
  }
}
