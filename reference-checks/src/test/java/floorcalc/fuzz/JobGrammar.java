package floorcalc.fuzz;

import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes job documents by chance, rule by rule of the format. Without wildness they are floors as people have them; with a wildness of n
 * one value in n is something else.
 */
final class JobGrammar {
  /** Not wild at all. */
  static final int TAME = 0;
  private static final String[] WILD_NUMBERS = {"0", "-0", "-1", "1e400", "-1e400", "1e-400", "1E+2", "0.000001", "0.0000001", "1e6", "10000000",
      "10000001", "9223372036854775807", "-9223372036854775808", "99999999999999999999999999999", "0.1", "3.0000000000000000000", "NaN", "1e999999999",
      "1e-999999999", "2147483648", "4294967296", "1e2147483648", "1e-2147483648", "49.999999", "50", "1e5", "1000000", "300", "10", "0.3", "1"};
  private static final String[] WILD_TEXTS = {"\"\"", "\" \"", "\"1 m\"", "\"1e3 mm\"", "\"12' 7 5/8\\\"\"", "\"-3 in\"", "\"1/0 in\"", "\"½\"",
      "\"\\ud800\"", "\"\\u0000\"", "\"𝟙 mm\"", "\"<script>&amp;\"", "\"..\\/..\\/x\"", "\"" + "x".repeat(201) + "\"", "\"٣ mm\"", "\"0\"",
      "\"Infinity\"", "\"\\udc00\\ud800\"", "\"a\\nb\"", "\"99999999999999999999 m\"", "\"0.0000000001 mm\""};

  private final Chance chance;
  private final int wildness;
  private final Rings rings;
  private final HostileRings hostile;
  private final List<String> names = new ArrayList<>();

  JobGrammar(Chance chance, int wildness) {
    this.chance = chance;
    this.wildness = wildness;
    this.rings = new Rings(chance);
    this.hostile = new HostileRings(chance);
  }

  String text() {
    int rooms = chance.oneIn(5) ? 2 + chance.below(2) : 1;
    StringBuilder text = new StringBuilder("{\"format\": \"floorcalc-job/1\", \"title\": ").append(name("Invented"));
    text.append(",\n\"board\": ").append(board());
    if (!chance.oneIn(3)) {
      text.append(",\n\"laying\": ").append(laying());
    }
    if (chance.oneIn(4)) {
      text.append(",\n\"goods\": ").append(goods());
    }
    for (int i = 0; i < rooms; i++) {
      names.add("Room " + (i + 1));
    }
    List<String> written = new ArrayList<>();
    for (String room : names) {
      written.add(new RoomGrammar(this, room).text());
    }
    return text.append(",\n\"rooms\": [").append(String.join(",\n", written)).append("]}").toString();
  }

  Chance chance() {
    return chance;
  }

  Rings rings() {
    return rings;
  }

  boolean isTame() {
    return wildness == TAME;
  }

  boolean wild() {
    return wildness > 0 && chance.oneIn(wildness);
  }

  long[] ring() {
    return wildness > 0 && chance.oneIn(2) ? hostile.any() : rings.sound();
  }

  /** A room of the job, or another name. */
  String neighbour() {
    return chance.oneIn(2) ? names.get(chance.below(names.size())) : "Hall";
  }

  private String wildValue() {
    return switch (chance.below(10)) {
      case 0 -> chance.any("null", "true", "false", "[]", "{}", "[[]]", "{\"at\": 1}", "[1, 2]");
      case 1, 2, 3 -> chance.any(WILD_TEXTS);
      default -> chance.any(WILD_NUMBERS);
    };
  }

  String value(String tame) {
    return wild() ? wildValue() : tame;
  }

  /** A length in nanometres as a number of millimetres or in tape notation. */
  String length(long nanometres) {
    if (wild()) {
      return wildValue();
    }
    String millimetres = Length.ofNanometres(nanometres).toMillimetreString();
    return switch (chance.below(12)) {
      case 0 -> "\"" + millimetres + " mm\"";
      case 1 -> nanometres % (100_000_000L) == 0 ? "\"" + java.math.BigDecimal.valueOf(nanometres, 9).toPlainString() + " m\"" : millimetres;
      default -> millimetres;
    };
  }

  String millimetres(long least, long most) {
    return length(rings.size(least, most));
  }

  String whole(long least, long most) {
    return value(Long.toString(chance.between(least, most)));
  }

  String decimal(double least, double most) {
    return value(java.math.BigDecimal.valueOf(Math.round((least + (most - least) * chance.share()) * 100), 2).toPlainString());
  }

  String name(String start) {
    return value("\"" + start + chance.any("", " 1", " of Gullhaven", " äöü", " & Söhne", " <b>", " 木") + "\"");
  }

  String choice(String... choices) {
    return value(chance.any(choices));
  }

  private String board() {
    StringBuilder text = new StringBuilder("{");
    if (chance.oneIn(4)) {
      List<String> mix = new ArrayList<>();
      for (int i = 1 + chance.below(4); i > 0; i--) {
        mix.add("{\"length\": " + millimetres(300 * i, 300 * i + 250) + ", \"perPack\": " + whole(1, 8) + "}");
      }
      text.append("\"mix\": [").append(String.join(", ", mix)).append("]");
    } else {
      text.append("\"length\": ").append(millimetres(350, 2400)).append(", \"perPack\": ").append(whole(1, 12));
    }
    text.append(", \"coverWidth\": ").append(millimetres(60, 260)).append(", \"thickness\": ").append(millimetres(8, 22));
    text.append(", \"construction\": ").append(choice("\"engineered\"", "\"solid\""));
    optional(text, 3, "species", choice("\"white oak\"", "\"beech\"", "\"larch\"", "\"none such\""));
    optional(text, 4, "packMass", choice("\"19.4 kg\"", "\"42 lb\""));
    optional(text, 4, "packPrice", choice("\"118.40 EUR\"", "\"99 USD\"", "\"10000 JPY\""));
    return text.append("}").toString();
  }

  void optional(StringBuilder text, int oneIn, String field, String value) {
    if (chance.oneIn(oneIn)) {
      text.append(", \"").append(field).append("\": ").append(value);
    }
  }

  private String laying() {
    StringBuilder text = new StringBuilder("{\"expansionGap\": ").append(millimetres(0, 20));
    optional(text, 3, "minimumRowWidth", millimetres(0, 90));
    optional(text, 3, "minimumEndPiece", millimetres(0, 350));
    optional(text, 3, "minimumJointOffset", millimetres(0, 340));
    optional(text, 3, "sawKerf", millimetres(0, 5));
    optional(text, 3, "spareShare", decimal(0, 0.2));
    optional(text, 2, "direction", choice("0", "90", "37.5", "-12.25", "180", "\"longest-wall\"", "\"fewest-boards\"", "0.000000001", "360"));
    optional(text, 3, "offcuts", choice("\"in-laying-order\"", "\"cut-ahead\""));
    optional(text, 4, "maximumRun", "{\"alongBoards\": " + millimetres(2500, 12000) + ", \"acrossBoards\": " + millimetres(2500, 8000) + "}");
    optional(text, 5, "breakGap", millimetres(0, 30));
    optional(text, 5, "deepestRecess", millimetres(0, 5000));
    optional(text, 5, "widestVoid", millimetres(0, 3000));
    optional(text, 5, "atDoorways", choice("\"break\"", "\"run-through\""));
    optional(text, 5, "throughBreaks", choice("\"each-bay-its-own\"", "\"one-start-line\""));
    return text.append("}").toString();
  }

  private String goods() {
    StringBuilder text = new StringBuilder("{\"casing\": ").append(millimetres(0, 80));
    optional(text, 2, "underlay", "{\"width\": " + millimetres(500, 1500) + ", \"length\": " + millimetres(5000, 20000) + ", \"overlap\": "
        + choice("0", "100", "\"NBS K21\"") + ", \"price\": " + choice("\"29.90 EUR\"", "\"2.40 EUR/m2\"") + "}");
    optional(text, 2, "barrier", "{\"width\": " + millimetres(1000, 4000) + ", \"length\": " + millimetres(5000, 50000) + "}");
    optional(text, 2, "skirting", "{\"lengths\": [" + millimetres(1800, 2500) + "], \"thickness\": " + millimetres(9, 22) + ", \"longRuns\": "
        + choice("\"scarfed\"", "\"in-one-piece\"") + "}");
    optional(text, 3, "profiles", "{\"T\": {\"lengths\": [" + millimetres(900, 1000) + ", " + millimetres(1800, 2700) + "]}}");
    optional(text, 3, "wedges", "{\"perPack\": " + whole(10, 50) + ", \"spacing\": " + millimetres(300, 900) + "}");
    optional(text, 3, "keepBackPacks", whole(0, 3));
    return text.append("}").toString();
  }
}
