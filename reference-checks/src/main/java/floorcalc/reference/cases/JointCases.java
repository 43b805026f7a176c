package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.List;

/** End joints that go round a board length: offcuts carried on, fixed steps, and how evenly places are spread. */
public final class JointCases implements Topic {
  private static final String CARRY = "stagger_offcut_carry.csv";
  private static final String STEPS = "stagger_three_gap.csv";
  private static final String VAN_DER_CORPUT = "stagger_van_der_corput.csv";
  private static final int ROWS = 12;

  /** Makes the topic. */
  public JointCases() {}

  @Override
  public String name() {
    return "End joints";
  }

  @Override
  public List<String> files() {
    return List.of(CARRY, STEPS, VAN_DER_CORPUT);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    DataFile.read(CARRY).rows().forEach(row -> addCarry(row, cases));
    DataFile.read(STEPS).rows().forEach(row -> addSteps(row, cases));
    DataFile.read(VAN_DER_CORPUT).rows().forEach(row -> addVanDerCorput(row, cases));
    return cases;
  }

  private static void addCarry(DataRow row, List<ReferenceCase> cases) {
    cases.add(new ReferenceCase("boards of " + row.text("L") + " in rows of " + row.text("W"), CARRY, Kind.WORKED_APART,
        Question.of("offcut-carried-on").with("board", row.text("L") + " mm").with("rowLength", row.text("W") + " mm").with("rows", ROWS),
        List.of(Expected.exactly("restOfRow", row.text("W_mod_L")), Expected.exactly("jointOffset", row.text("neighbour_stagger")),
            Expected.exactly("rowsUntilRepeated", row.text("period_rows")), Expected.text("firstPieces", row.text("first_piece_rows_0_to_11")),
            Expected.text("distances", row.text("distinct_gaps_of_first_12")))));
  }

  /** Printed to 12 decimals, a step may be off by half of the last; over 100 rows that adds up to 5e-11. */
  private static void addSteps(DataRow row, List<ReferenceCase> cases) {
    String reason = "the step is printed to 12 decimals, and what is cut off adds up over 100 rows";
    List<Expected> expected = new ArrayList<>(List.of(Expected.exactly("distinctDistances", row.text("distinct_gaps"))));
    String[] gaps = row.text("gaps").split(" ");
    for (int i = 0; i < gaps.length; i++) {
      String[] lengthAndCount = gaps[i].replace(")", "").split("\\(x");
      expected.add(Expected.within("distance" + (i + 1), lengthAndCount[0], "0.0000000006", reason));
      expected.add(Expected.exactly("timesOfDistance" + (i + 1), lengthAndCount[1]));
    }
    expected.add(Expected.within("smallestDistanceTimesRows", row.text("min_gap_xN"), "0.00000051", reason));
    expected.add(Expected.within("largestDistanceTimesRows", row.text("max_gap_xN"), "0.00000051", reason));
    expected.add(Expected.within("starDiscrepancy", row.text("star_discrepancy"), "0.0000000006", reason));
    cases.add(new ReferenceCase(row.text("sequence") + ", " + row.text("N") + " rows", STEPS, Kind.WORKED_APART,
        Question.of("joints-of-a-fixed-step").with("stepAsShareOfBoard", row.text("alpha")).with("rows", row.text("N")), expected));
  }

  /** The places are whole parts of a board of b^k parts, k the number of digits of the last one in base b. */
  private static void addVanDerCorput(DataRow row, List<ReferenceCase> cases) {
    int base = row.count("base");
    int n = row.count("N");
    int parts = 1;
    while (parts < n) {
      parts *= base;
    }
    List<String> places = new ArrayList<>();
    for (int k = 0; k < n; k++) {
      places.add(radicalInverse(k, base, parts) + " mm");
    }
    // Fractions in lowest terms: the last place as the table has it.
    String last = row.text("last_point");
    String[] fraction = (last + "/1").split("/");
    if (Integer.parseInt(fraction[0]) * parts != Integer.parseInt(fraction[1]) * radicalInverse(n - 1, base, parts)) {
      throw new IllegalArgumentException(row.place() + ": the last place is not " + last);
    }
    cases.add(new ReferenceCase("base " + base + ", " + n + " places", VAN_DER_CORPUT, Kind.WORKED_APART,
        Question.of("spread-of-joints").with("board", parts + " mm").withList("joints", places),
        List.of(Expected.text("starDiscrepancyAsFraction", row.text("star_discrepancy")), Expected.printed("starDiscrepancy", row.text("decimal")))));
  }

  /** The digits of a number mirrored at the point, in parts of the whole. */
  private static int radicalInverse(int number, int base, int parts) {
    int inverse = 0;
    int weight = parts;
    for (int rest = number; rest > 0; rest /= base) {
      weight /= base;
      inverse += rest % base * weight;
    }
    return inverse;
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.NO_SOURCE, CARRY, "No published table of joints that an offcut carried on makes was found; the theorem that joints then lie at most "
            + "three distances apart is published, and every row of both tables keeps it."),
        new Remark(Remark.Sort.LEFT_OUT, VAN_DER_CORPUT, "Column last_point belongs to the question: the places are made from it and compared with it."));
  }
}
