package floorcalc.reference.examples;

import static floorcalc.reference.examples.Printed.in;

import floorcalc.flatness.FNumbers;
import floorcalc.flatness.HeightProfile;
import floorcalc.flatness.RestRule;
import floorcalc.flatness.Straightedge;
import floorcalc.flatness.TiltReadings;
import floorcalc.measure.Length;
import floorcalc.moisture.MoistureDifference;
import floorcalc.moisture.Percent;
import floorcalc.movement.Coefficient;
import floorcalc.movement.WidthChange;
import floorcalc.reference.check.Expected;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import floorcalc.reference.examples.WorkedExample.Maker;
import floorcalc.rules.LayingRules;
import floorcalc.rules.RuleSet;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Flatness, and rules of the trade. */
final class FloorExamples {
  private static final String SLAB = "e1155_slac_elevations.csv";
  private static final Length THICKNESS = Length.ofMillimetres(14);

  private FloorExamples() {}

  static List<WorkedExample> all() {
    return List.of(slab(), straightedge(), tilts(), gapOfALargeRoom(), jointOffset(), boardsOverWood(), dtuBoard());
  }

  private static HeightProfile line() {
    return HeightProfile.ofEqualSpacing(Length.ofMillimetres(300), Printed.rows(SLAB, "line", "0").stream()
        .map(row -> Length.ofMillimetres(row.text("elevation_mm"))).toList());
  }

  private static String heights() {
    return "14 heights, 300 mm apart: " + String.join(", ", Printed.rows(SLAB, "line", "0").stream().map(row -> row.text("elevation_mm")).toList()) + " mm.";
  }

  private static WorkedExample slab() {
    Maker maker = new Maker("f-numbers-of-a-slab", "How flat and how level is one line of a measured slab?", Printed.source(SLAB),
        heights());
    FNumbers numbers = maker.shown(FNumbers.of(line()));
    List<DataRow> curvatures = Printed.rows("e1155_slac_q.csv", "line", "0");
    for (int i = 0; i < curvatures.size(); i++) {
      maker.figure(Expected.within("curvature q" + curvatures.get(i).text("i") + " [mm]", curvatures.get(i).text("q_published_mm"), "0.001",
          "the printed heights are rounded"), in(numbers.curvatures().get(i), "mm"), Printed.READ);
    }
    DataRow found = Printed.row("e1155_slac_fnumbers_computed.csv", "line", "0");
    return maker.figure(Expected.printed("FF", found.text("FF")), fixed(numbers.flatness().value(), 6), Printed.APART)
        .figure(Expected.printed("FL", found.text("FL")), fixed(numbers.levelness().value(), 6), Printed.APART)
        .done("The curvatures are printed in the source. Its F-numbers could not be read; they were worked out apart from the library, with the standard's "
            + "constants from memory.");
  }

  private static WorkedExample straightedge() {
    String file = "slac_straightedge_computed.csv";
    List<DataRow> rows = Printed.rows(file, "line", "0").stream().filter(row -> row.text("straightedge_mm").equals("3000")).toList();
    Maker maker = new Maker("straightedge-of-3-m", "How large is the gap under a straightedge of 3 m on a line of a measured slab?", Printed.source(SLAB),
        heights() + " The edge begins at each reading in turn and lies on its two high points.");
    var greatest = maker.shown(Straightedge.of(Length.parse("3 m")).calculate(line(), RestRule.GRAVITY));
    return maker.figure(Expected.printed("greatest gap [mm]", rows.get(0).text("gravity_gap_mm")), in(greatest.gap(), "mm"), Printed.APART)
        .done("The gap is the largest distance down from the edge between its two supports; floor beyond them does not count.");
  }

  private static WorkedExample tilts() {
    String file = "moody_profile_from_tilts.csv";
    List<DataRow> stations = DataFile.read(file).rows();
    Maker maker = new Maker("heights-from-tilts", "How does a line of tilts become a line of heights?", Printed.source(file),
        "20 tilts in arc-seconds, read every 4 in: " + String.join(", ", stations.stream().skip(1).map(row -> row.text("reading_arcsec")).toList()) + ".");
    TiltReadings tilts = TiltReadings.of(Length.parse("4 in"), stations.stream().skip(1).map(row -> row.number("reading_arcsec")).toList());
    maker.shown(tilts.profile());
    for (int station : new int[] {0, 5, 9, 10, 16, 20}) {
      maker.figure(Expected.printed("levelled sum at station " + station + " [arc-seconds]", tenths(stations.get(station).text("profile_arcsec"))),
          tilts.levelled().get(station).setScale(6, RoundingMode.HALF_EVEN), Printed.QUOTED);
    }
    return maker.done("One step of 4 in that leans by one arc-second rises by 4 in × 4.8481e-6. The worksheet prints sums to tenths.");
  }

  private static String tenths(String number) {
    return new BigDecimal(number).setScale(1, RoundingMode.UNNECESSARY).toPlainString();
  }

  private static WorkedExample gapOfALargeRoom() {
    String file = "expansion_gaps.csv";
    Maker maker = new Maker("gap-of-a-large-room", "How wide is the gap round a floating floor in a room of 7 m, by NF DTU 51.11?",
        "NF DTU 51.11 P1-1, AFNOR, 2009, clause 8.2; see `" + file + "`", "Multilayer boards of 14 mm; the largest dimension to be covered is 7 m.");
    LayingRules rules = maker.shown(RuleSet.NF_DTU_51_11.resolve(THICKNESS, Length.ofMillimetres(185), Length.parse("7 m")));
    LayingRules small = RuleSet.NF_DTU_51_11.forBoardAndRoom(THICKNESS, Length.ofMillimetres(185), Length.parse("5 m"));
    return maker.figure(Expected.exactly("gap in a room of 7 m [mm]", "10.5"), in(rules.value(LayingRules.EXPANSION_GAP), "mm"), Printed.APART)
        .figure(Expected.exactly("gap in a room of 5 m [mm]", "8"), in(small.value(LayingRules.EXPANSION_GAP), "mm"), Printed.APART)
        .done("0.15 % of 7 m is 10.5 mm; 0.15 % of 5 m would be 7.5 mm, so the least of 8 mm holds. The rule was read in the source, the values follow from it.");
  }

  private static WorkedExample jointOffset() {
    String file = "end_joint_offsets.csv";
    Maker maker = new Maker("joints-of-wide-planks", "How far apart are the end joints of planks 12 in wide, by three widths?",
        "NWFA technical advice, as quoted in `" + file + "`", "Planks 12 in wide, 3/4 in thick.");
    LayingRules rules = maker.shown(RuleSet.NWFA_THREE_WIDTHS.resolve(Length.parse("3/4 in"), Length.parse("12 in")));
    return maker.figure(Expected.exactly("least offset [in]", "36"), in(rules.value(LayingRules.MINIMUM_JOINT_OFFSET), "in"), Printed.READ)
        .done("The source prints the same figure: 12 in plank gives 36 in.");
  }

  private static WorkedExample boardsOverWood() {
    Maker maker = new Maker("boards-over-a-wood-subfloor", "A wood subfloor is at 10 %. Which boards may be laid?", MoistureDifference.SOURCE.toString(),
        "Strips of 2 1/4 in, and planks of 5 in.");
    Percent strip = maker.shown(MoistureDifference.allowed(Length.parse("2 1/4 in")));
    Percent plank = maker.shown(MoistureDifference.allowed(Length.parse("5 in")));
    BigDecimal subfloor = new BigDecimal("10");
    return maker.figure(Expected.exactly("strips, from [%]", "6"), subfloor.subtract(strip.number()), Printed.READ)
        .figure(Expected.exactly("strips, to [%]", "14"), subfloor.add(strip.number()), Printed.READ)
        .figure(Expected.exactly("planks, from [%]", "8"), subfloor.subtract(plank.number()), Printed.APART)
        .figure(Expected.exactly("planks, to [%]", "12"), subfloor.add(plank.number()), Printed.APART)
        .done("The source works the strips; the planks follow from its other limit, 2 points from 3 in on.");
  }

  private static WorkedExample dtuBoard() {
    Maker maker = new Maker("hardwood-board-drying", "How much does a hardwood board of 140 mm shrink from 9 to 7 %, by the rate of NF DTU 51.2?",
        "NF DTU 51.2 P1-1, AFNOR, 2020, clause 7.2", "0.33 % of the width for each percentage point; 140 mm wide.");
    Length hard = maker.shown(WidthChange.of(Length.ofMillimetres(140), Coefficient.NF_DTU_HARDWOOD, Percent.of("9"), Percent.of("7")));
    Length soft = maker.shown(WidthChange.of(Length.ofMillimetres(140), Coefficient.NF_DTU_SOFTWOOD, Percent.of("9"), Percent.of("7")));
    return maker.figure(Expected.exactly("hardwood [mm]", "0.924"), in(hard, "mm").abs(), Printed.APART)
        .figure(Expected.exactly("softwood [mm]", "0.7"), in(soft, "mm").abs(), Printed.APART)
        .done("140 mm × 0.33 % × 2 = 0.924 mm. The rates were read in the source; the products are arithmetic.");
  }

  private static BigDecimal fixed(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_EVEN);
  }
}
