package floorcalc.differential;

import floorcalc.levels.LevelPlane;
import floorcalc.levels.Levels;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.ojalgo.matrix.decomposition.QR;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;

/** The plane that fits levels best: exact fractions in the core, QR decompositions in floating point in the libraries. */
final class PlaneFitDifferential extends Comparison {
  private static final double TO_MILLIMETRES = 1000;

  PlaneFitDifferential(Library library, int cases) {
    super("plane of best fit through levels", library, cases, LevelPlane.class, Levels.class);
  }

  @Override
  public String unit() {
    return "mm/m of slope; mm of the greatest residual";
  }

  @Override
  public double tolerance() {
    return 0.51e-6;
  }

  @Override
  public String argument() {
    return "the core rounds slopes to six decimals of a mm/m and heights to the nanometre";
  }

  @Override
  void compare(int upTo, Answers answers, Worst worst) {
    SplittableRandom random = new SplittableRandom(261);
    for (int k = 0; k < upTo; k++) {
      List<SpotLevel> spots = spots(random);
      double[][] places = new double[spots.size()][];
      double[] heights = new double[spots.size()];
      for (int i = 0; i < heights.length; i++) {
        SpotLevel spot = spots.get(i);
        places[i] = new double[] {spot.place().x().toMillimetres() / TO_MILLIMETRES, spot.place().y().toMillimetres() / TO_MILLIMETRES};
        heights[i] = spot.height().toMillimetres();
      }
      double[] plane = library() == Library.HIPPARCHUS ? hipparchus(places, heights) : ojalgo(places, heights);
      LevelPlane mine = Levels.of(spots).plane().value();
      worst.nextCase();
      double x = answers == Answers.AS_GIVEN ? mine.slopeAlongX().doubleValue() : alone(places, heights);
      worst.see(x - plane[1], () -> "slope along x of " + spots);
      worst.see(mine.slopeAlongY().doubleValue() - plane[2], () -> "slope along y of " + spots);
      double highest = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < heights.length; i++) {
        highest = Math.max(highest, heights[i] - plane[0] - plane[1] * places[i][0] - plane[2] * places[i][1]);
      }
      worst.see(mine.residual(mine.highestAbove()).toMillimetres() - highest, () -> "highest above the plane of " + spots);
    }
  }

  /** Levels at places that are well apart, none twice. */
  private static List<SpotLevel> spots(SplittableRandom random) {
    int n = random.nextInt(4, 60);
    long size = random.nextLong(2000, 20_000);
    double alongX = random.nextDouble(-5, 5);
    double alongY = random.nextDouble(-5, 5);
    Map<String, SpotLevel> spots = new LinkedHashMap<>();
    // Three corners keep the places from lying nearly in line.
    long[][] corners = {{0, 0}, {size, 0}, {0, size}};
    for (int i = 0; i < n; i++) {
      long x = i < corners.length ? corners[i][0] : random.nextLong(size);
      long y = i < corners.length ? corners[i][1] : random.nextLong(size);
      double height = (alongX * x + alongY * y) / TO_MILLIMETRES + random.nextDouble(-6, 6);
      spots.putIfAbsent(x + " " + y, SpotLevel.of(Length.ofMillimetres(x), Length.ofMillimetres(y),
          Length.ofNanometres(Math.round(height * 1e6))));
    }
    return new ArrayList<>(spots.values());
  }

  private static double[] hipparchus(double[][] places, double[] heights) {
    OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
    regression.newSampleData(heights, places);
    return regression.estimateRegressionParameters();
  }

  private static double[] ojalgo(double[][] places, double[] heights) {
    QuietOjalgo.beQuiet();
    R064Store body = R064Store.FACTORY.make(heights.length, 3);
    R064Store side = R064Store.FACTORY.make(heights.length, 1);
    for (int i = 0; i < heights.length; i++) {
      body.set(i, 0, 1);
      body.set(i, 1, places[i][0]);
      body.set(i, 2, places[i][1]);
      side.set(i, 0, heights[i]);
    }
    QR<Double> qr = QR.R064.make(body);
    qr.decompose(body);
    MatrixStore<Double> solution = qr.getSolution(side);
    return new double[] {solution.doubleValue(0, 0), solution.doubleValue(1, 0), solution.doubleValue(2, 0)};
  }

  /** A fault: the slope along x as though y did not matter. */
  private static double alone(double[][] places, double[] heights) {
    double sx = 0;
    double sz = 0;
    double sxx = 0;
    double sxz = 0;
    for (int i = 0; i < heights.length; i++) {
      sx += places[i][0];
      sz += heights[i];
      sxx += places[i][0] * places[i][0];
      sxz += places[i][0] * heights[i];
    }
    return (heights.length * sxz - sx * sz) / (heights.length * sxx - sx * sx);
  }
}
