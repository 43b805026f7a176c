package floorcalc.reference;

import floorcalc.reference.cases.AcclimatisationCases;
import floorcalc.reference.cases.BayCases;
import floorcalc.reference.cases.ContinuousCases;
import floorcalc.reference.cases.CuttingCases;
import floorcalc.reference.cases.DeviationCases;
import floorcalc.reference.cases.EquilibriumCases;
import floorcalc.reference.cases.ErrorCases;
import floorcalc.reference.cases.FilmCases;
import floorcalc.reference.cases.FittingCases;
import floorcalc.reference.cases.FlatnessLimitCases;
import floorcalc.reference.cases.GridCases;
import floorcalc.reference.cases.HeightReadingCases;
import floorcalc.reference.cases.JointCases;
import floorcalc.reference.cases.MoistureLimitCases;
import floorcalc.reference.cases.MovementCases;
import floorcalc.reference.cases.NetworkCases;
import floorcalc.reference.cases.PackCases;
import floorcalc.reference.cases.RoomCases;
import floorcalc.reference.cases.RoomToMoveCases;
import floorcalc.reference.cases.RowCases;
import floorcalc.reference.cases.RuleCases;
import floorcalc.reference.cases.ShapeCases;
import floorcalc.reference.cases.ShrinkageCases;
import floorcalc.reference.cases.SlabCases;
import floorcalc.reference.cases.SquarenessCases;
import floorcalc.reference.cases.StripCases;
import floorcalc.reference.cases.TapeRoomCases;
import floorcalc.reference.cases.Topic;
import floorcalc.reference.cases.TransitionCases;
import floorcalc.reference.cases.TraverseCases;
import floorcalc.reference.cases.UnitCases;
import floorcalc.reference.cases.WallRowCases;
import floorcalc.reference.check.ReferenceCase;
import java.util.List;

/** All topics of the reference suite. */
public final class Suite {
  private Suite() {}

  /**
   * Returns the topics in the order of the report.
   *
   * @return the topics, not null
   */
  public static List<Topic> topics() {
    return List.of(new UnitCases(), new EquilibriumCases(), new ShrinkageCases(), new MovementCases(), new RoomToMoveCases(),
        new MoistureLimitCases(), new RuleCases(), new FilmCases(), new TransitionCases(), new DeviationCases(), new FlatnessLimitCases(),
        new HeightReadingCases(), new SlabCases(), new RoomCases(), new ShapeCases(), new CuttingCases(),
        new PackCases(), new StripCases(),
        new JointCases(),
        new RowCases(), new WallRowCases(), new FittingCases(), new TraverseCases(),
        new BayCases(), new GridCases(), new ContinuousCases(), new AcclimatisationCases(),
        new SquarenessCases(), new NetworkCases(), new TapeRoomCases(), new ErrorCases());
  }

  /**
   * Makes the cases of all topics.
   *
   * @return the cases, not null
   */
  public static List<ReferenceCase> cases() {
    return topics().stream().flatMap(topic -> topic.cases().stream()).toList();
  }
}
