package floorcalc.reference.cases;

import floorcalc.reference.check.Remark;
import java.util.List;

/** Arcs, walls that are not straight from corner to corner, lengths between readings of one tape. */
public final class ShapeCases extends GatheredTopic {
  private static final String ARC = "arc_computed.csv";
  private static final String CHAIN = "arc_chain_computed.csv";
  private static final String OFFSETS = "wall_offsets_computed.csv";
  private static final String BAY = "bay_computed.csv";
  private static final String RUNNING = "running_dimensions_computed.csv";

  /** Makes the topic. */
  public ShapeCases() {}

  @Override
  public String name() {
    return "Shapes of walls";
  }

  @Override
  public List<String> files() {
    return List.of(ARC, CHAIN, OFFSETS, BAY, RUNNING);
  }

  @Override
  List<FileCases> gather() {
    return List.of(
        WorkedTable.of(ARC, "arc-of-chord-and-rise").inputs("chord", "rise").exact("radiusMillimetres").printed("degrees")
            .exact("lengthMillimetres", "segmentSquareMillimetres").cases(),
        WorkedTable.of(CHAIN, "arc-as-straight-walls").lists("wall").inputs("rise", "within").exact("count").texts("points").cases(),
        WorkedTable.of(OFFSETS, "wall-by-offsets").lists("wall").inputs("measured").tables("offsets").exact("count").texts("points").cases(),
        WorkedTable.of(BAY, "bay-of-three-walls").lists("wall").inputs("depth", "front").exact("count").texts("points").cases(),
        WorkedTable.of(RUNNING, "running-dimensions").lists("readings").inputs("overall", "step")
            .texts("lengths", "roundedReadings", "roundedLengths", "findings").cases());
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, CHAIN, "Into how few straight walls an arc can be divided is in no source; the parts are tried one after the "
        + "other by other code."));
  }
}
