package floorcalc.reference.cases;

import floorcalc.reference.check.Remark;
import java.util.List;

/** Permitted deviations and sizes: of boards as sold, of laid floors, of corners, of level and of tapes. */
public final class DeviationCases extends GatheredTopic {
  private static final String GOODS = "goods_dimensions_and_tolerances.csv";
  private static final String LAID = "finished_floor_tolerances.csv";
  private static final String ANGLES = "din18202_angularity.csv";
  private static final String LEVELS = "level_and_datum_limits.csv";
  private static final String TAPES = "measuring_tools.csv";

  /** Makes the topic. */
  public DeviationCases() {}

  @Override
  public String name() {
    return "Permitted deviations and sizes";
  }

  @Override
  public List<String> files() {
    return List.of(GOODS, LAID, ANGLES, LEVELS, TAPES);
  }

  @Override
  List<FileCases> gather() {
    return List.of(GoodsRows.of(GOODS), LaidFloorRows.of(LAID), LevelRows.angles(ANGLES), LevelRows.levels(LEVELS), LevelRows.tapes(TAPES));
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(
        new Remark(Remark.Sort.MISPRINT, GOODS, "The copy of the NWFA/NOFMA standard for unfinished boards has lost the sign before .010 in; plus or minus is taken."),
        new Remark(Remark.Sort.DISAGREEMENT, GOODS, "NWFA/NOFMA lets the width of unfinished boards be .010 in off, of factory finished ones .005 in up to "
            + "3 1/4 in wide and .008 in beyond. Both are sets of their own."),
        new Remark(Remark.Sort.DISAGREEMENT, LAID, "A joint may be 1 mm in a floating floor (NF DTU 51.11), 2 % of the width and at most 2 mm in a nailed one "
            + "(NF DTU 51.1), 3 mm in a glued one of solid boards over 140 mm (NF DTU 51.2), and 0.5 mm by the German parquet industry and SNiP 3.04.01. None are averaged."),
        new Remark(Remark.Sort.DISAGREEMENT, LEVELS, "Out of level are 3 mm for each metre up to 6 m and 20 mm beyond allowed by NHBC, 4 mm and 25 mm by LABC."),
        new Remark(Remark.Sort.LEFT_OUT, LAID, "Verband der deutschen Parkettindustrie: that joints of 0.1 mm are normal bounds nothing, so only the upper end, "
            + "0.5 mm, is checked."),
        new Remark(Remark.Sort.NO_SOURCE, GOODS, "What EN 13226 and EN 13489 let width, thickness, length and squareness deviate was read in no text: the library has no "
            + "such figures, and takes those of the goods' papers."));
  }
}
