package floorcalc.reference.answers;

import floorcalc.moisture.Percent;
import floorcalc.movement.Coefficient;
import floorcalc.movement.Grain;
import floorcalc.movement.Shrinkage;
import floorcalc.movement.Species;
import floorcalc.movement.SpeciesTable;
import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Question;
import java.math.BigDecimal;
import java.util.Map;

/** How much woods shrink and move. */
final class ShrinkageAnswers {
  /** What a question calls a source, and the table that rests on it. */
  static final Map<String, SpeciesTable> TABLES = Map.of("Wood Handbook, table 13-5", SpeciesTable.WOOD_HANDBOOK,
      "DIN 68100", SpeciesTable.DIN_68100, "Technical Publication A200", SpeciesTable.TRADE_LIST_A200);
  /** European woods go by their bare names in a European table; the library asks for more. */
  private static final Map<String, String> EUROPEAN = Map.of("spruce", "Norway spruce", "larch", "European larch", "birch", "European birch",
      "beech", "European beech", "ash", "European ash", "poplar", "European poplar", "elm", "European elm");

  void addTo(Answers answers) {
    answers.add("coefficient-of-wood", ShrinkageAnswers::coefficient, SpeciesTable.class, Species.class, Coefficient.class, Grain.class);
    answers.add("number-of-woods", ShrinkageAnswers::count, SpeciesTable.class, Shrinkage.class);
    answers.add("coefficient-from-shrinkage", ShrinkageAnswers::fromShrinkage, Shrinkage.class);
    answers.add("shrinkage-of-wood", ShrinkageAnswers::shrinkage, Shrinkage.class);
    answers.add("coefficient-from-shrinkage-of-wood", ShrinkageAnswers::fromShrinkageOfWood, Shrinkage.class);
    answers.add("shrinkage-down-to", ShrinkageAnswers::downTo, Shrinkage.class);
  }

  /** The wood of a table, by the names that the table's own readers use. */
  static Species species(String table, String wood) {
    SpeciesTable found = table(table);
    return found.species(found == SpeciesTable.DIN_68100 ? EUROPEAN.getOrDefault(wood, wood) : wood);
  }

  private static SpeciesTable table(String name) {
    SpeciesTable found = TABLES.get(name);
    if (found == null) {
      throw new IllegalArgumentException("no table of coefficients is called " + name);
    }
    return found;
  }

  private static Answer coefficient(Question question) {
    Species wood = species(question.text("table"), question.text("wood"));
    Answer answer = Answer.of("tangentialShare", wood.coefficient(Grain.FLAT_SAWN).share())
        .with("tangentialPercent", wood.coefficient(Grain.FLAT_SAWN).share().movePointRight(2));
    if (wood.has(Grain.QUARTER_SAWN)) {
      BigDecimal radial = wood.coefficient(Grain.QUARTER_SAWN).share();
      answer = answer.with("radialShare", radial).with("radialPercent", radial.movePointRight(2));
    } else {
      answer = answer.with("radialShare", "none").with("radialPercent", "none");
    }
    // A note starts with its gist; what follows is its reason.
    return answer.with("warning", wood.note().isEmpty() ? "none" : wood.note().split("[:,]")[0])
        .with("standing", wood.source().standing().words());
  }

  private static Answer count(Question question) {
    String table = question.text("table");
    int woods = table.equals("Wood Handbook, tables 4-3 and 4-4") ? Shrinkage.all().size() : table(table).species().size();
    return Answer.of("woods", BigDecimal.valueOf(woods));
  }

  private static Answer fromShrinkage(Question question) {
    return Answer.of("share", Shrinkage.coefficient(Percent.of(question.text("shrinkage")), Percent.of(question.text("shrinkageStart"))).value());
  }

  private static Shrinkage named(Question question) {
    Shrinkage found = Shrinkage.named(question.text("wood"));
    if (!question.text("table").endsWith(found.source().locator())) {
      throw new IllegalArgumentException(found + " stands in " + found.source() + ", not in " + question.text("table"));
    }
    return found;
  }

  private static Answer shrinkage(Question question) {
    Shrinkage wood = named(question);
    return Answer.of("radialPercent", wood.radial().number())
        .with("tangentialPercent", wood.tangential().map(percent -> percent.number().toPlainString()).orElse("none"))
        .with("volumetricPercent", wood.byVolume().number()).with("standing", wood.source().standing().words());
  }

  private static Answer fromShrinkageOfWood(Question question) {
    Shrinkage wood = named(question);
    return Answer.of("radialShare", Shrinkage.coefficient(wood.radial(), wood.start()).value())
        .with("tangentialShare", Shrinkage.coefficient(wood.tangential().orElseThrow(), wood.start()).value());
  }

  private static Answer downTo(Question question) {
    return Answer.of("percent", Shrinkage.downTo(Percent.of(question.text("shrinkage")), Percent.of(question.text("shrinkageStart")),
        Percent.of(question.text("moistureContent"))).value().number());
  }
}
