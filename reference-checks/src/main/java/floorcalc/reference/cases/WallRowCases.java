package floorcalc.reference.cases;

import floorcalc.reference.check.Remark;
import java.util.List;

/** Rows along walls that bow or run off: scribes, tapered rows, what a trim hides, right angles, cuts at a slanted wall. */
public final class WallRowCases extends GatheredTopic {
  private static final String SCRIBE = "scribe_computed.csv";
  private static final String TRIM = "trim_cover_computed.csv";
  private static final String TAPER = "tapered_rows_computed.csv";
  private static final String RIGHT_ANGLE = "right_angle_computed.csv";
  private static final String DIAGONAL = "diagonal_computed.csv";
  private static final String END_CUT = "end_cut_computed.csv";
  private static final String CORNERS = "corner_pieces_computed.csv";

  /** Makes the topic. */
  public WallRowCases() {}

  @Override
  public String name() {
    return "Rows along walls";
  }

  @Override
  public List<String> files() {
    return List.of(SCRIBE, TRIM, TAPER, RIGHT_ANGLE, DIAGONAL, END_CUT, CORNERS);
  }

  @Override
  List<FileCases> gather() {
    return List.of(
        WorkedTable.of(SCRIBE, "scribed-row").tables("wall").inputs("pitch", "minimum", "gap", "trimCover", "trimBearing", "place")
            .exact("rowLineMillimetres", "nearestRowLineMillimetres", "deepestMillimetres").texts("depths").exact("depthAtPlaceMillimetres")
            .texts("findings").cases(),
        WorkedTable.of(TRIM, "trim-over-a-gap").inputs("cover", "bearing", "leastGap", "variation")
            .exact("spanMillimetres", "toSawMillimetres", "toSawAtEachOfTwoMillimetres").texts("findings").cases(),
        WorkedTable.of(TAPER, "tapered-rows").tables("wall").inputs("pitch", "gap", "trimCover", "trimBearing")
            .texts("rips", "straightRowMillimetres", "findings").cases(),
        WorkedTable.of(RIGHT_ANGLE, "largest-right-angle").inputs("roomAlong", "roomSquare", "unit")
            .exact("alongMillimetres", "squareMillimetres", "diagonalMillimetres").cases(),
        WorkedTable.of(DIAGONAL, "diagonal-of-a-right-angle").inputs("one", "other", "measured").exact("diagonalMillimetres", "leanMillimetres").cases(),
        WorkedTable.of(END_CUT, "cut-at-a-slanted-wall").lists("line", "wall").inputs("pitch")
            .printed("offSquareDegrees", "runOffMillimetres", "cutMillimetres").cases(),
        WorkedTable.of(CORNERS, "pieces-at-corners").lists("line").tables("room").inputs("pitch").texts("pieces").cases());
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, SCRIBE, "No source prints how deep boards are scribed, or which rows a wall cuts off; the figures are worked "
        + "out by other code, from the definitions on the page."));
  }
}
