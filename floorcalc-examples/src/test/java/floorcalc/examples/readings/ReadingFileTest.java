package floorcalc.examples.readings;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import floorcalc.examples.job.Mistake;
import floorcalc.examples.job.Tape;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.ProfilePoint;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import java.util.List;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReadingFileTest {
  private static HeightProfile line(String... lines) {
    return ReadingFile.line(bytes(lines)).profile();
  }

  private static List<SpotLevel> room(String... lines) {
    return ReadingFile.room(bytes(lines)).levels().spots();
  }

  private static byte[] bytes(String... lines) {
    return String.join("\n", lines).getBytes(UTF_8);
  }

  private static List<String> mistakes(Function<byte[], ?> reader, byte[] file) {
    BadReadingsException bad = catchThrowableOfType(BadReadingsException.class, () -> reader.apply(file));
    assertThat(bad).as("refused").isNotNull();
    assertThat(bad).hasMessage(String.join("\n", bad.mistakes().stream().map(Mistake::toString).toList()));
    return bad.mistakes().stream().map(Mistake::toString).toList();
  }

  private static List<String> ofLine(String... lines) {
    return mistakes(ReadingFile::line, bytes(lines));
  }

  private static List<String> ofRoom(String... lines) {
    return mistakes(ReadingFile::room, bytes(lines));
  }

  private static ProfilePoint point(String place, String height) {
    return new ProfilePoint(Length.parse(place), Length.parse(height));
  }

  private static SpotLevel spot(String x, String y, String z) {
    return SpotLevel.of(Length.parse(x), Length.parse(y), Length.parse(z));
  }

  @Test
  void heightsAlongALine() {
    assertThat(line("distance (m),height (mm)", "0,12.5", "0.3,-3", "0.65,\u22120.25").readings())
        .containsExactly(point("0", "12.5 mm"), point("300 mm", "-3 mm"), point("650 mm", "-0.25 mm"));
  }

  @Test
  void levelsOfARoom() {
    assertThat(room("x (cm),y (m),z (mm)", "0,0,1", "50,0,2", "0,1.5,3"))
        .containsExactly(spot("0", "0", "1 mm"), spot("500 mm", "0", "2 mm"), spot("0", "1500 mm", "3 mm"));
  }

  /** Columns in any order, capitals, blanks, a byte order mark, remarks, blank and empty lines, all line ends, quotation marks. */
  @Test
  void whatMayStandAroundTheValues() {
    assertThat(room("\uFEFF# an invented room\r\n\r\n Z (mm) ,x(m), y ( m )\r1,0,0\n \"2\" , 0.5 ,0\n,,\n# a door\n3,0,1.5\n\n"))
        .containsExactly(spot("0", "0", "1 mm"), spot("500 mm", "0", "2 mm"), spot("0", "1500 mm", "3 mm"));
  }

  /** 5 3/8 in = 5.375 * 25.4 = 136.525 mm; 12 ft 7 5/8 in = 151.625 * 25.4 = 3851.275 mm; 12.5 ft = 3810 mm. */
  @Test
  void inchesFeetAndTapeNotation() {
    assertThat(line("distance (ft),height (in)", "0,0", "12.5,5 3/8", "13,-1/4", "14,\u00bd").readings())
        .containsExactly(point("0", "0"), point("3810 mm", "136.525 mm"), point("13 ft", "-1/4 in"), point("14 ft", "1/2 in"));
    assertThat(line("distance (tape),height (tape)", "0,0", "12 ft 7 5/8 in,3 mm", "13' 1\",1/2\"", "\"13' 2\"\"\",-2 cm").readings())
        .containsExactly(point("0", "0"), point("3851.275 mm", "3 mm"), point("13 ft 1 in", "1/2 in"), point("13 ft 2 in", "-20 mm"));
  }

  @Test
  void whichTapeItWas() {
    assertThat(ReadingFile.line(bytes("distance (m),height (mm)", "0,0", "1,1")).tape()).isEqualTo(Tape.METRIC);
    assertThat(ReadingFile.line(bytes("distance (m),height (in)", "0,0", "1,1")).tape()).isEqualTo(Tape.FEET_AND_INCHES);
    assertThat(ReadingFile.line(bytes("distance (tape),height (mm)", "0,0", "1 m,1")).tape()).isEqualTo(Tape.METRIC);
    assertThat(ReadingFile.line(bytes("distance (tape),height (mm)", "0,0", "4',1")).tape()).isEqualTo(Tape.FEET_AND_INCHES);
  }

  @Test
  void decimalCommasBetweenSemicolons() {
    assertThat(line("distance (m);height (mm)", "0,000;1,5", "0,300;-2,25", "0,600;3").readings())
        .containsExactly(point("0", "1.5 mm"), point("300 mm", "-2.25 mm"), point("600 mm", "3 mm"));
    assertThat(line("distance (m);height (mm)", "0.5;1.234", "1;2").readings())
        .containsExactly(point("500 mm", "1.234 mm"), point("1 m", "2 mm"));
    // 0,5 shows that the comma is decimal, so 1,234 is 1.234 m.
    assertThat(line("distance (m);height (mm)", "0,5;1", "1,234;2").reading(1)).isEqualTo(point("1234 mm", "2 mm"));
  }

  @Test
  void decimalCommasThatMayGroupThousands() {
    assertThat(ofLine("distance (mm);height (mm)", "0;1", "1,000;2", "-2,500;3")).containsExactly(
        "line 3, distance (mm): found [1,000]; must be a number of mm such as 12.5: the comma may be decimal or group thousands, and no"
            + " other value of the file tells which; write a point, or one more or fewer decimals",
        "line 4, distance (mm): found [-2,500]; must be a number of mm such as 12.5: the comma may be decimal or group thousands, and no"
            + " other value of the file tells which; write a point, or one more or fewer decimals");
  }

  @Test
  void decimalCommasWhereTheyAreNone() {
    assertThat(ofLine("distance (m);height (mm)", "0;1.5", "0,3;2")).containsExactly("line 3, distance (m): found [0,3]; must be a"
        + " number of m such as 0.5: line 2 has [1.5] with a point; write one decimal sign in the whole file, and group no digits");
    assertThat(ofLine("distance (m),height (mm)", "0,1", "\"0,3\",2")).containsExactly("line 3, distance (m): found [0,3]; must be a"
        + " number of m such as 0.5: write the decimal sign as a point, or separate the columns by semicolons");
    assertThat(ofLine("distance (m),height (mm)", "0,1", "0,3,2,5")).containsExactly("line 3: found 4 values, must be 2 as in the"
        + " header; if the commas are decimal, write points, or separate the columns by semicolons");
    assertThat(ofLine("distance (m);height (mm)", "0,5;1", "1,;2")).containsExactly("line 3, distance (m): found [1,]; must be a number"
        + " of m such as 0.5: write one comma with digits on both sides");
    assertThat(ofLine("distance (m);height (mm)", "0,5;1", "1,000,5;2")).singleElement().asString().contains("found [1,000,5]");
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', value = {
      "12 mm | mm | the header names the unit; write the number alone",
      "1e3 | mm | the header names the unit",
      "+3 | mm | write it with the digits 0 to 9",
      "1 000 | mm | write it with the digits 0 to 9",
      "5 3/8 | mm | write it with the digits 0 to 9",
      "3. | m | write it with the digits 0 to 9",
      "nan | m | the header names the unit",
      "5 3/0 | in | the denominator of a fraction must be at least 1",
      "3 11 | in | two numbers stand side by side",
      "1/3 | in | this is not a whole number of nanometres; the nearest is 8.466667 mm",
      "0.1234567 | mm | this is not a whole number of nanometres",
      "12 | tape | a unit is missing",
      "20000000 | mm | is the unit right?",
      "'' | cm | the value is missing; must be a number of cm such as 1.25"})
  void valuesThatAreNone(String value, String unit, String message) {
    assertThat(ofLine("distance (m),height (" + unit + ")", "0,0", "1," + value, "2,0")).singleElement().asString()
        .startsWith("line 3, height (" + unit + "): ").contains(message);
  }

  @Test
  void headersThatAreNone() {
    String must = "; the header must name the columns distance, height, each with its unit, such as distance (m),height (mm)";
    assertThat(ofLine("0,0", "1,2")).containsExactly(
        "line 1: found [0], [0] as the name of a column" + must + "; x, y and z are levels of a room: see explain levels");
    assertThat(ofLine("# remark", "distance,height (yd)")).containsExactly(
        "line 2, distance: the unit is missing; write distance (mm), where the unit is one of mm, cm, m, in, ft, tape (tape: each"
            + " value with its own unit)",
        "line 2, height: found the unit [yd]; write height (mm), where the unit is one of mm, cm, m, in, ft, tape (tape: each"
            + " value with its own unit)");
    assertThat(ofLine("distance (m)", "1")).containsExactly(
        "line 1: there is no column height" + must + "; x, y and z are levels of a room: see explain levels");
    assertThat(ofLine("distance (m),height (mm),height (mm)")).containsExactly(
        "line 1, height: there are two columns of this name; leave one out");
    assertThat(ofRoom("distance (m),height (mm)")).singleElement().asString()
        .startsWith("line 1: found [distance (m)], [height (mm)] as the name of a column; the header must name the columns x, y, z")
        .endsWith("see explain flatness");
    assertThat(ofLine("distance (m);height (mm),x (m)")).singleElement().asString().contains("separates columns in two ways or by tabs");
    assertThat(ofLine("distance (m)\theight (mm)")).singleElement().asString().contains("separates columns in two ways or by tabs");
    assertThat(ofLine("# nothing else")).containsExactly(
        "readings: the file holds no line; the first must be a header such as distance (m),height (mm)");
  }

  @Test
  void filesThatAreNoText() {
    assertThat(mistakes(ReadingFile::line, "distance (m),height (mm)\n0,0\n1,1".getBytes(UTF_16)))
        .containsExactly("readings: the file is UTF-16 text; save it as CSV in UTF-8");
    assertThat(mistakes(ReadingFile::line, new byte[] {'x', (byte) 0xC3, '('}))
        .containsExactly("readings: the file is not UTF-8 text; save it as CSV in UTF-8");
    assertThat(mistakes(ReadingFile::line, new byte[5_000_001])).containsExactly(
        "readings: the file is larger than 5 MB; give the readings of one floor alone");
  }

  @Test
  void quotationMarksThatAreWrong() {
    assertThat(ofLine("distance (m),height (tape)", "0,\"1/2\"x", "1,\"1/2", "2,1 mm")).hasSize(2).allSatisfy(mistake ->
        assertThat(mistake).matches("line [23]: a quotation mark is not closed or stands within a value; .*"));
  }

  @Test
  void allMistakesAreSaidAtOnceInTheOrderOfTheFile() {
    assertThat(ofLine("distance (m),height (mm)", "0,zero", "0.3,1", "0.2,2", "0.3,4", "x,5", "0.6")).satisfiesExactly(
        first -> assertThat(first).startsWith("line 2, height (mm): found [zero]"),
        second -> assertThat(second).isEqualTo(
            "line 4, distance: 200 mm lies before 300 mm of line 3; list the readings in the order of the line"),
        third -> assertThat(third).isEqualTo("line 5, distance: 300 mm was read in line 3 already; heights there are 1 mm and 4 mm: keep"
            + " the one that is right"),
        fourth -> assertThat(fourth).startsWith("line 6, distance (m): found [x]"),
        fifth -> assertThat(fifth).isEqualTo("line 7: found 1 value, must be 2 as in the header"));
  }

  @Test
  void manyMistakesAreCounted() {
    String[] lines = new String[151];
    java.util.Arrays.fill(lines, "a,b");
    lines[0] = "distance (m),height (mm)";
    assertThat(ofLine(lines)).hasSize(101).last().isEqualTo("(and more): 200 more mistakes are not listed; mend these first");
  }

  @Test
  void levelsThatCannotBeWorkedWith() {
    assertThat(ofRoom("x (m),y (m),z (mm)", "0,0,0", "1,0,1", "0,0,3")).containsExactly(
        "line 4: x = 0 mm, y = 0 mm was read in line 2 already; heights there are 0 mm and 3 mm: keep the one that is right");
    assertThat(ofRoom("x (m),y (m),z (mm)", "0,0,0", "1,0,1", "2,0,3")).singleElement().asString()
        .startsWith("readings: all 3 readings lie in one line");
    assertThat(ofRoom("x (m),y (m),z (mm)", "0,0,0", "1,0,1")).containsExactly(
        "readings: there must be at least 3 readings, but there are 2; read the floor at more places");
    assertThat(ofRoom("x (mm),y (m),z (mm)", "0,0,0", "1,2000,1")).containsExactly("line 3, y (m): found [2000]; must be at most 1000000"
        + " mm from zero; is the unit right?");
  }

  @Test
  void tooFewAndTooManyReadings() {
    assertThat(ofLine("distance (m),height (mm)")).containsExactly(
        "readings: there must be at least 2 readings, better many more, but there is none");
    assertThat(ofLine("distance (m),height (mm)", "0,0")).containsExactly(
        "readings: there must be at least 2 readings, better many more, but there is 1");
    StringBuilder many = new StringBuilder("distance (mm),height (mm)\n");
    for (int i = 0; i <= 10_000; i++) {
      many.append(i).append(",0\n");
    }
    assertThat(ofLine(many.toString())).containsExactly("line 10002: there are more than 10000 readings; work in parts");
  }
}
