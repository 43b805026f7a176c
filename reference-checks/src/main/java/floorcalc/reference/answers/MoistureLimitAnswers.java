package floorcalc.reference.answers;

import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.moisture.Acclimatisation;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.BoardMoistureLimits;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureDifference;
import floorcalc.moisture.MoistureLimit;
import floorcalc.moisture.MoistureLimits;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.moisture.ReadingCount;
import floorcalc.moisture.SubfloorMoisture;
import floorcalc.moisture.Substrate;
import floorcalc.moisture.Temperature;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Limits of moisture for subfloors and boards, and of the air. */
final class MoistureLimitAnswers {
  /** What a question calls a source, and the set that rests on it. */
  static final Map<String, MoistureLimits> SUBFLOORS = Map.of("common practice", MoistureLimits.COMMON_PRACTICE,
      "German practice", MoistureLimits.GERMAN_PARQUET, "German parquet practice", MoistureLimits.GERMAN_PARQUET,
      "TKB data sheet 16", MoistureLimits.GERMAN_PARQUET, "DIN 18560-1:2015", MoistureLimits.DIN_18560_1,
      "NF DTU 51.11 (2009)", MoistureLimits.NF_DTU_51_11, "BS 8201 Annex A (as cited by NBS K21)", MoistureLimits.BS_8201_1987,
      "BS 8201:1987", MoistureLimits.BS_8201_1987, "BS 8201:2011", MoistureLimits.BS_8201_2011,
      "NWFA guidelines", MoistureLimits.NWFA_GUIDELINES);
  /** What a question calls a source, and the range that rests on it. */
  static final Map<String, ClimateLimits> AIR = Map.of("common practice", ClimateLimits.COMMON_PRACTICE,
      "NF DTU 51.2 P1-1 (May 2020) cl. 5.1 note", ClimateLimits.NF_DTU_51_2, "NWFA guidelines", ClimateLimits.NWFA_GUIDELINES,
      "Verband der deutschen Parkettindustrie", ClimateLimits.GERMAN_PARQUET_INDUSTRY, "adhesive-trade guide, 2004", ClimateLimits.ADHESIVE_GUIDE);
  /** What a question calls a source, and the name of the range that rests on it. */
  static final Map<String, String> BOARDS = Map.ofEntries(Map.entry("EN 13226:2002: solid parquet", "EN 13226:2002"),
      Map.entry("EN 13489:2002: multilayer parquet", "EN 13489:2002"), Map.entry("DIN 280: parquet", "DIN 280"),
      Map.entry("Verband der deutschen Parkettindustrie: solid parquet", "German parquet industry, solid"),
      Map.entry("Verband der deutschen Parkettindustrie: multilayer parquet", "German parquet industry, multilayer"),
      Map.entry("NWFA: wood flooring from US mills", "NWFA, US mills"),
      Map.entry("Wood Handbook, table 13-2: interior, most areas of the US", "Wood Handbook table 13-2"),
      Map.entry("BS 8201:1987: unheated building", "BS 8201:1987, unheated"),
      Map.entry("BS 8201:1987: intermittent heating", "BS 8201:1987, intermittent heating"),
      Map.entry("Australian industry guide: as supplied", "Australian industry guide"),
      Map.entry("Australian industry guide: dry inland or air-conditioned", "Australian industry guide, dry inland"));
  private static final Pattern AVERAGE = Pattern.compile("average ([0-9.]+) %");
  private static final BigDecimal A_LITTLE = new BigDecimal("0.000000001");

  void addTo(Answers answers) {
    answers.add("most-moisture-of-subfloor", MoistureLimitAnswers::most, MoistureLimits.class, MoistureLimit.class, SubfloorMoisture.class,
        MoistureReading.class);
    answers.add("difference-of-boards-and-subfloor", MoistureLimitAnswers::difference, MoistureDifference.class);
    answers.add("boards-against-wood-subfloor", MoistureLimitAnswers::against, MoistureDifference.class);
    answers.add("air-for-wood-floors", MoistureLimitAnswers::air, ClimateLimits.class);
    answers.add("moisture-of-boards", MoistureLimitAnswers::boards, BoardMoistureLimits.class);
    answers.add("number-of-moisture-readings", MoistureLimitAnswers::count, ReadingCount.class);
    answers.add("acclimatised", MoistureLimitAnswers::acclimatised, Acclimatisation.class);
    answers.add("calcium-chloride-in-pounds", MoistureLimitAnswers::pounds, MoistureReading.class);
  }

  static <T> T known(Map<String, T> byName, String name) {
    T found = byName.get(name);
    if (found == null) {
      throw new IllegalArgumentException("nothing is known of " + name);
    }
    return found;
  }

  static <T extends Enum<T>> T inWords(T[] values, Function<T, String> words, String text) {
    return Arrays.stream(values).filter(one -> words.apply(one).equals(text)).findFirst()
        .orElseThrow(() -> new IllegalArgumentException("there is no " + text + " among " + Arrays.toString(values)));
  }

  /** The figure of the set that a reading just keeps and anything above it breaks. */
  private static Answer most(Question question) {
    MoistureLimits set = known(SUBFLOORS, question.text("source"));
    MoistureMethod method = inWords(MoistureMethod.values(), MoistureMethod::words, question.text("method"));
    List<BigDecimal> edges = set.limits().stream().filter(limit -> limit.method() == method).map(MoistureLimit::most).distinct()
        .filter(most -> judge(question, set, method, most).outcome() == Outcome.MET
            && judge(question, set, method, most.add(A_LITTLE)).outcome() == Outcome.NOT_MET).toList();
    if (edges.size() != 1) {
      throw new IllegalArgumentException("not one limit but " + edges + " for " + question);
    }
    return Answer.of("most", edges.get(0)).with("standing", judge(question, set, method, edges.get(0)).source().standing().words());
  }

  private static Judgement judge(Question question, MoistureLimits set, MoistureMethod method, BigDecimal value) {
    Substrate on = inWords(Substrate.values(), Substrate::words, question.text("substrate"));
    Heating heating = question.text("heating").equals("not stated") ? Heating.NOT_STATED
        : inWords(Heating.values(), Heating::words, question.text("heating"));
    MoistureReading plain = MoistureReading.of(method, value);
    MoistureReading reading = question.has("depth") ? plain.depth(Length.parse(question.text("depth"))) : plain;
    return SubfloorMoisture.judge(List.of(reading), on, heating, Area.ofSquareMetres("10"), set).value().judgements().get(0);
  }

  private static Answer difference(Question question) {
    return Answer.of("points", MoistureDifference.allowed(Length.parse(question.text("boardWidth"))).value().number())
        .with("standing", MoistureDifference.SOURCE.standing().words());
  }

  private static Answer against(Question question) {
    Outcome outcome = MoistureDifference.judge(List.of(Percent.of(question.text("boardMoisture"))),
        List.of(MoistureReading.of(MoistureMethod.METER, question.text("subfloorMoisture"))), Length.parse(question.text("boardWidth")))
        .value().outcome();
    return Answer.of("verdict", outcome == Outcome.MET ? "met" : "not met");
  }

  private static Answer air(Question question) {
    ClimateLimits limits = known(AIR, question.text("source"));
    Answer answer = Answer.of("driestPercent", limits.driest().number()).with("dampestPercent", limits.dampest().number())
        .with("standing", limits.source().standing().words());
    return degrees(degrees(answer, "coldest", limits.coldest()), "warmest", limits.warmest());
  }

  /** In the scale that the source states; none in both where it states nothing. */
  private static Answer degrees(Answer answer, String name, Optional<Temperature> limit) {
    if (limit.isEmpty()) {
      return answer.with(name + "Celsius", "none").with(name + "Fahrenheit", "none");
    }
    return answer.with(name + (limit.get().scale() == Temperature.Scale.CELSIUS ? "Celsius" : "Fahrenheit"), limit.get().degrees());
  }

  private static Answer boards(Question question) {
    BoardMoistureLimits range = BoardMoistureLimits.named(known(BOARDS, question.text("source") + ": " + question.text("boards")));
    Answer answer = Answer.of("lowPercent", range.low().number()).with("highPercent", range.high().number())
        .with("standing", range.source().standing().words());
    Matcher average = AVERAGE.matcher(range.about());
    return average.find() ? answer.with("averagePercent", average.group(1)) : answer;
  }

  private static Answer count(Question question) {
    ReadingCount count = question.text("of").equals("subfloor") ? ReadingCount.NWFA_SUBFLOOR : ReadingCount.NWFA_BOARDS;
    return Answer.of("readings", BigDecimal.valueOf(count.wanted(Length.parse(question.text("length")).times(Length.parse(question.text("width"))))
        .value())).with("standing", count.source().standing().words());
  }

  private static Answer acclimatised(Question question) {
    Acclimatisation stated = Acclimatisation.notStated().days(question.number("daysInRoom"))
        .air(AirClimate.of(Temperature.parse(question.text("temperature")), Percent.of(question.text("relativeHumidity"))))
        .boards(List.of(Percent.of(question.text("boardMoisture"))));
    List<Judgement> judged = (question.text("packs").equals("closed") ? stated.packsClosed() : stated.packsOpened()).judge().value();
    return Answer.of("packs", verdict(judged, "packs-closed")).with("days", verdict(judged, "days-in-room"))
        .with("agreement", verdict(judged, "boards-room-agreement"));
  }

  private static String verdict(List<Judgement> judged, String code) {
    return judged.stream().filter(one -> one.code().equals(code)).findFirst().orElseThrow().outcome() == Outcome.MET ? "met" : "not met";
  }

  private static Answer pounds(Question question) {
    return Answer.of("pounds", MoistureReading.ofCalciumChlorideGrams(question.number("grams")).value());
  }
}
