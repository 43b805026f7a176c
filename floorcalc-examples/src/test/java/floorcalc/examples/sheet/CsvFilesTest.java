package floorcalc.examples.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.examples.Demo;
import floorcalc.examples.HandMade;
import floorcalc.materials.OrderLine;
import floorcalc.plan.FloorPlan;
import java.io.IOException;
import java.io.StringReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvFilesTest {
  private static List<CSVRecord> read(byte[] csv) throws IOException {
    return CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get()
        .parse(new StringReader(text(csv))).getRecords();
  }

  /** The text of a file, without the mark by which spreadsheets know UTF-8. */
  private static String text(byte[] csv) {
    String text = new String(csv, StandardCharsets.UTF_8);
    assertThat(text).startsWith("\ufeff");
    return text.substring(1);
  }

  /** The lines were checked by hand against the plan: a regression value. */
  @Test
  void cutCardOfTheHandMadePlan() {
    String csv = text(CsvFiles.cutCard(CutCard.of(HandMade.job("Hall", "Hall").job(), HandMade.plan("Hall", "Hall"))));
    assertThat(csv.split("\r\n")).containsExactly(
        "bay,row,run,piece,kind,board,board_length_mm,opens_board,cut_length_mm,rip_width_mm,board_end,keeps_edge,"
            + "along_from_mm,along_to_mm,across_from_mm,across_to_mm,corners_mm,rest_mm,rest_kept_for,cut_out_mm",
        "hall-1,1,1,hall-1.1.1,start,1,2200,yes,1000,185,right end,both edges,1200,2200,0,185,,1197 x 185,"
            + "hall-1.2.1 hall-1.2.2,",
        "hall-1,1,1,hall-1.1.2,full,2,2200,yes,2200,185,whole length,both edges,0,2200,0,185,,,,",
        "hall-1,1,1,hall-1.1.3,end,3,2200,yes,1800,185,left end,both edges,0,1800,0,185,"
            + "0 0; 1800 0; 1790 185; 0 185,397 x 185,over,"
            + "\"far end sawn at a slant, 86.9 degrees to the edge; saw through (1800, 0) (1790, 185)\"",
        "hall-1,2,1,hall-1.2.1,single,1,2200,no,1000,95,left end,near edge,0,1000,0,95,"
            + "0 0; 1000 0; 1000 90; 0 95,1000 x 87; 194 x 185,hall-1.2.2; over,"
            + "\"tapered at the far edge, 0.3 degrees to the edge; saw through (1000, 90) (0, 95)\"",
        "hall-1,2,2,hall-1.2.2,single,1,2200,no,100,87,middle,far edge,100,200,98,185,"
            + "0 0; 100 0; 100 95; 50 95; 50 55; 0 55,797 x 87; 97 x 87,over; over,"
            + "\"corner out at start end and far edge, 50 along, 40 across\"");
  }

  @Test
  void cutCardOfTheDemoHasALineForEachPiece() throws IOException {
    CutCard card = CutCard.of(Demo.job(Demo.LOFT).job(), Demo.plan(Demo.LOFT));
    List<CSVRecord> lines = read(CsvFiles.cutCard(card));
    assertThat(lines).hasSameSizeAs(card.lines());
    assertThat(lines).allMatch(CSVRecord::isConsistent);
    assertThat(new BigDecimal(lines.get(0).get("cut_length_mm")))
        .isEqualByComparingTo(new BigDecimal(card.lines().get(0).length().toMillimetreString()));
  }

  @Test
  void orderOfTheHandMadePlan() {
    assertThat(text(CsvFiles.order(HandMade.plan("Hall", "Hall"))))
        .isEqualTo("item,net,quantity,unit,price_of_one,price,currency,working\r\nboards,3 boards,10,pack,,,,"
            + "\"How many packs? ceil(b / k), with b = 3 (boards), k = 6 (boards in a pack): 1\"\r\n");
  }

  @ParameterizedTest
  @CsvSource({"=1+2,'''=1+2'", "+1,'''+1'", "-1,'''-1'", "@SUM,'''@SUM'", "\uff1d1,'''\uff1d1'", "Study,Study", "a=b,a=b", "'',''"})
  void noTextStartsAFormula(String text, String cell) {
    assertThat(CsvFiles.text(text)).isEqualTo(cell);
  }

  @Test
  void orderThatStartsWithAFormulaOrHoldsQuotesAndLineBreaks() throws IOException {
    FloorPlan plan = HandMade.plan("Hall", "Hall");
    FloorPlan odd = new FloorPlan(plan.title(), plan.bays(), plan.boards(), plan.order(), plan.ledger(),
        List.of(OrderLine.of("=HYPERLINK(\"x\")", "a \"b\", c\nd", BigDecimal.ONE, "\tpack", List.of())),
        plan.profiles(), plan.checks(), plan.compromises(), plan.findings(), plan.cautions(), plan.working());
    CSVRecord line = read(CsvFiles.order(odd)).get(0);
    assertThat(line.get("item")).isEqualTo("'=HYPERLINK(\"x\")");
    assertThat(line.get("net")).isEqualTo("a \"b\", c\nd");
    assertThat(line.get("unit")).isEqualTo("'\tpack");
  }
}
