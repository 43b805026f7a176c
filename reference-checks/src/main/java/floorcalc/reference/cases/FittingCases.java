package floorcalc.reference.cases;

import floorcalc.reference.check.Remark;
import java.util.List;

/** Borders, profiles with mitres, holes for pipes, notches of pieces and what is thin beside them. */
public final class FittingCases extends GatheredTopic {
  private static final String APRON = "apron_computed.csv";
  private static final String PIPE = "pipe_allowance_computed.csv";
  private static final String BORDER = "mitred_border_computed.csv";
  private static final String PROFILE = "profile_line_computed.csv";
  private static final String NOTCHES = "piece_notches_computed.csv";
  private static final String THIN = "thin_parts_constructed.csv";
  private static final String HOLES = "pipe_holes_computed.csv";

  /** Makes the topic. */
  public FittingCases() {}

  @Override
  public String name() {
    return "Fittings";
  }

  @Override
  public List<String> files() {
    return List.of(APRON, PIPE, BORDER, PROFILE, NOTCHES, THIN, HOLES);
  }

  @Override
  List<FileCases> gather() {
    return List.of(
        WorkedTable.of(APRON, "field-between-equal-borders").inputs("width", "pitch", "least").exact("boards", "firstMillimetres", "secondMillimetres").cases(),
        WorkedTable.of(PIPE, "hole-for-a-pipe").inputs("diameter", "allRound", "collar").exact("holeMillimetres", "overlapMillimetres").cases(),
        WorkedTable.of(BORDER, "border-with-mitres").inputs("way").tables("line").inputs("width", "rows").exact("count").texts("boards")
            .printed("stockMillimetres").texts("field").cases(),
        WorkedTable.of(PROFILE, "profile-with-mitres").tables("line").inputs("width").texts("pieces").printed("lengthMillimetres").texts("findings").cases(),
        WorkedTable.of(NOTCHES, "notches-of-a-piece").tables("outline").textLists("holes").exact("count").texts("notches")
            .exact("lengthMillimetres", "widthMillimetres", "squareMillimetres").cases(),
        WorkedTable.constructed(THIN, "thin-parts-of-a-piece").tables("outline").textLists("holes").inputs("least").texts("parts", "findings").cases(),
        WorkedTable.of(HOLES, "holes-for-pipes").tables("pipes").inputs("allRound").exact("count").texts("holes", "pieces").cases());
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, BORDER, "No source prints a border or a profile with the lengths of its boards; the lines are moved and cut "
        + "with each other by other code."));
  }
}
