package floorcalc.reference.cases;

import floorcalc.reference.check.Remark;
import java.util.List;

/** How a width is divided into rows, how rows drift, rows both ways from a line, strips at all stops, arms that meet again, floors through several rooms. */
public final class RowCases extends GatheredTopic {
  private static final String DIVISION = "row_division_computed.csv";
  private static final String DRIFT = "row_drift_computed.csv";
  private static final String BOTH_WAYS = "rows_both_ways_computed.csv";
  private static final String STRIPS = "strip_table_computed.csv";
  private static final String ARMS = "arms_that_meet_computed.csv";
  private static final String STOPS = "floor_stops_computed.csv";
  private static final String ORDER = "laying_order_constructed.csv";

  /** Makes the topic. */
  public RowCases() {}

  @Override
  public String name() {
    return "Rows";
  }

  @Override
  public List<String> files() {
    return List.of(DIVISION, DRIFT, BOTH_WAYS, STRIPS, ARMS, STOPS, ORDER);
  }

  @Override
  List<FileCases> gather() {
    return List.of(
        WorkedTable.of(DIVISION, "rows-of-a-width").inputs("width", "pitch", "minimum", "way")
            .exact("rows", "firstRowMillimetres", "lastRowMillimetres", "minimumInForceMillimetres", "fullRows").texts("findings").cases(),
        WorkedTable.of(DRIFT, "drift-of-rows").inputs("width", "nominalPitch", "laidPitch", "minimum", "way")
            .exact("rows", "driftMillimetres", "lastRowMillimetres").texts("findings").cases(),
        WorkedTable.of(BOTH_WAYS, "rows-both-ways").inputs("before", "beyond", "pitch", "minimum").texts("joint")
            .exact("rowsBefore", "rowsBeyond", "rows", "stripBeforeMillimetres", "stripBeyondMillimetres").texts("findings").cases(),
        WorkedTable.of(STRIPS, "strips-at-all-stops").tables("stops").inputs("lowest", "pitch", "minimum", "step", "plusMinus")
            .exact("bestFirstRowMillimetres", "bestNarrowestMillimetres", "entries").texts("strips").cases(),
        WorkedTable.of(ARMS, "arms-that-meet").inputs("oneStart", "oneRows", "onePitch", "onePlusMinus", "oneRunOff", "oneOver", "otherStart", "otherRows",
            "otherPitch", "otherPlusMinus", "otherRunOff", "otherOver", "joined", "allowed").exact("oneArrivalMillimetres", "otherArrivalMillimetres",
            "mismatchMillimetres", "plusMinusMillimetres", "partingMillimetres").texts("findings").cases(),
        WorkedTable.of(STOPS, "stops-of-a-floor").lists("line").textLists("parts").exact("count").texts("stops").exact("lowMillimetres", "highMillimetres").cases(),
        WorkedTable.constructed(ORDER, "order-of-laying").lists("line").textLists("parts").inputs("pitch", "firstRow").exact("tongueAtLineMillimetres")
            .texts("turns", "meetings", "findings").cases());
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, DIVISION, "No source prints how a floor is divided into rows, figure by figure; the rows are counted by "
        + "other code, from the definitions on the page."));
  }
}
