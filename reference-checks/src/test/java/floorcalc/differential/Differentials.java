package floorcalc.differential;

import floorcalc.differential.OutlineSizeDifferential.Size;
import floorcalc.differential.RandomOutlines.Place;
import java.util.ArrayList;
import java.util.List;

/** Every comparison with another library. */
public final class Differentials {
  private static final String SHOELACE = "a library adds up to 62 products of at most 40 m by 40 m, each rounded to 53 bits:"
      + " 62 x 2^-53 x 40 m is 0.0003 nm";
  private static final String WALLS = "the core rounds each wall to the nearest nanometre; the library's own rounding is a thousandth of that";

  private Differentials() {}

  /** {@return all comparisons, in the order of the report} */
  public static List<Differential> all() {
    List<Differential> all = new ArrayList<>();
    addRooms(all);
    addFlatness(all);
    addCutting(all);
    addUnits(all);
    addSurveys(all);
    addChances(all);
    return List.copyOf(all);
  }

  private static void addRooms(List<Differential> all) {
    for (Plane plane : List.of(new JtsPlane(), new EsriPlane())) {
      all.add(OutlineSizeDifferential.of(plane, Size.AREA, Place.NEAR, 2000, 0.001, SHOELACE));
      all.add(OutlineSizeDifferential.of(plane, Size.AREA, Place.FAR, 2000, 0.001, SHOELACE));
      all.add(OutlineSizeDifferential.of(plane, Size.PERIMETER, Place.NEAR, 2000, 0.501, WALLS));
    }
    all.add(OutlineSizeDifferential.of(new CommonsPlane(), Size.AREA, Place.NEAR, 2000, 0.001,
        "corners are only told apart to the picometre that it is given"));
    all.add(OutlineSizeDifferential.of(new CommonsPlane(), Size.PERIMETER, Place.NEAR, 2000, 0.501, WALLS));
    all.add(new ContainmentDifferential(2000));
    all.add(new TurnDifferential(2000));
    all.add(new InsetDifferential(new JtsInset(), 2000));
    all.add(new InsetDifferential(new EsriInset(), 500));
    all.add(new InsetDifferential(new CommonsInset(), 2000));
    all.add(new PartedDifferential(new CommonsPlane(), 1000));
    all.add(new PartedDifferential(new EsriPlane(), 600));
    all.add(new BreakGapDifferential(600));
    all.add(new PlanCoverDifferential(new EsriPlane(), 20));
  }

  private static void addFlatness(List<Differential> all) {
    all.add(new StraightedgeDifferential(2000));
    all.add(new PlacementDifferential(200));
    all.add(new FNumberDifferential(2000));
    all.add(new PlaneFitDifferential(Library.HIPPARCHUS, 1000));
    all.add(new PlaneFitDifferential(Library.OJALGO, 1000));
  }

  private static void addCutting(List<Differential> all) {
    all.add(new TrimsDifferential(600));
    all.add(new TrimStockDifferential(500));
    all.add(new BoardPairsDifferential(1000));
    all.add(new RollsDifferential(150));
    all.add(new JointLayoutDifferential(3000));
    all.add(new JointPatternDifferential(1000));
  }

  private static void addUnits(List<Differential> all) {
    all.add(new LengthUnitsDifferential(5000));
    all.add(new TapeWritingDifferential(2000));
    all.add(new AreaUnitsDifferential(2000));
    all.add(new TemperatureDifferential(3000));
  }

  private static void addSurveys(List<Differential> all) {
    all.add(new TraverseDifferential(1000));
    all.add(new NetworkDifferential(720));
    all.add(new ExactNetworkDifferential(180));
  }

  private static void addChances(List<Differential> all) {
    all.add(new StripRiskDifferential(5000));
    all.add(new StripChanceDifferential(200));
    all.add(new ErrorBudgetDifferential(3000));
    all.add(new ErrorShareDifferential(300));
    all.add(new MoistureBalanceDifferential(1000));
  }
}
