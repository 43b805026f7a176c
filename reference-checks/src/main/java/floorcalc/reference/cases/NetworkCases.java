package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Points placed by least squares from distances, angles and azimuths. */
public final class NetworkCases implements Topic {
  private static final String POINTS = "survey_distance_networks_points.csv";
  private static final String OBSERVED = "survey_distance_networks_obs.csv";
  private static final String RESULTS = "survey_distance_networks_results.csv";
  private static final String SUMMARY = "survey_distance_networks_summary.csv";
  private static final String MIXED_POINTS = "survey_mixed_networks_points.csv";
  private static final String MIXED_OBSERVED = "survey_mixed_networks_obs.csv";
  private static final String MIXED_SUMMARY = "survey_mixed_networks_summary.csv";
  private static final String BRACED = "survey_braced_quadrilateral.csv";
  private static final int DECIMALS = 4;

  /** Makes the topic. */
  public NetworkCases() {}

  @Override
  public String name() {
    return "Points by least squares";
  }

  @Override
  public List<String> files() {
    return List.of(POINTS, OBSERVED, RESULTS, SUMMARY, MIXED_POINTS, MIXED_OBSERVED, MIXED_SUMMARY, BRACED);
  }

  @Override
  public List<ReferenceCase> cases() {
    List<ReferenceCase> cases = new ArrayList<>();
    DataFile.read(SUMMARY).rows().forEach(row -> addDistances(row, cases));
    DataFile.read(MIXED_SUMMARY).rows().forEach(row -> addMixed(row, cases));
    addBlunders(cases);
    addBraced(cases);
    return cases;
  }

  private static List<DataRow> rows(String file, String net) {
    return DataFile.read(file).rows().stream().filter(row -> row.text("net").equals(net)).toList();
  }

  private static Question network(List<DataRow> points, String x, String y, List<List<String>> observations) {
    return Question.of("adjusted-network").withTable("points",
        points.stream().map(row -> List.of(row.text("point"), row.text(x), row.text(y), row.text("held"))).toList())
        .withTable("observations", observations);
  }

  private static Question distances(String net) {
    return network(rows(POINTS, net), "x", "y", rows(OBSERVED, net).stream()
        .map(row -> List.of("distance", "", row.text("from"), row.text("to"), row.text("distance"), row.text("sigma"))).toList());
  }

  /** Decimals that the table drops where they are noughts. */
  private static String full(String coordinate) {
    return new BigDecimal(coordinate).setScale(DECIMALS).toPlainString();
  }

  private static void addDistances(DataRow summary, List<ReferenceCase> cases) {
    String net = summary.text("net");
    Question question = distances(net);
    List<Expected> held = new ArrayList<>();
    for (DataRow row : rows(POINTS, net)) {
      if (row.text("held").contains("x")) {
        held.add(Expected.exactly(row.text("point") + ".x", row.text("x")));
      }
      if (row.text("held").contains("y")) {
        held.add(Expected.exactly(row.text("point") + ".y", row.text("y")));
      }
    }
    if (!held.isEmpty()) {
      cases.add(new ReferenceCase(net + ", what is held", POINTS, Kind.CONSTRUCTED, question, held));
    }
    addResults(RESULTS, net, question, new String[] {"sx_milli", "sy_milli"}, new String[] {"sx_published_milli", "sy_published_milli"}, cases);
    List<Expected> residuals = new ArrayList<>();
    List<DataRow> observed = rows(OBSERVED, net);
    for (int i = 0; i < observed.size(); i++) {
      residuals.add(Expected.printed("residual" + (i + 1), observed.get(i).text("residual_recomputed")));
    }
    cases.add(new ReferenceCase(net, OBSERVED, Kind.WORKED_APART, question, residuals));
    cases.add(new ReferenceCase(net, SUMMARY, Kind.WORKED_APART, question,
        List.of(Expected.exactly("redundancy", summary.text("redundancy")), Expected.printed("factor", summary.text("s0")))));
  }

  private static void addResults(String file, String net, Question question, String[] deviations, String[] publishedDeviations,
      List<ReferenceCase> cases) {
    List<Expected> published = new ArrayList<>();
    List<Expected> again = new ArrayList<>();
    for (DataRow row : rows(file, net)) {
      String point = row.text("point");
      again.add(Expected.printed(point + ".x", full(row.text("x_recomputed"))));
      again.add(Expected.printed(point + ".y", full(row.text("y_recomputed"))));
      again.add(Expected.printed(point + ".deviationX", row.text(deviations[0])));
      again.add(Expected.printed(point + ".deviationY", row.text(deviations[1])));
      if (!row.isEmpty("x_published")) {
        published.add(Expected.printed(point + ".x", full(row.text("x_published"))));
        published.add(Expected.printed(point + ".y", full(row.text("y_published"))));
        if (publishedDeviations.length > 0) {
          published.add(Expected.printed(point + ".deviationX", row.text(publishedDeviations[0])));
          published.add(Expected.printed(point + ".deviationY", row.text(publishedDeviations[1])));
        }
      }
    }
    cases.add(new ReferenceCase(net, file, Kind.QUOTED, question, published));
    cases.add(new ReferenceCase(net + ", worked again", file, Kind.WORKED_APART, question, again));
  }

  private static Question mixed(String calculation, String net) {
    List<List<String>> observations = new ArrayList<>();
    for (DataRow row : rows(MIXED_OBSERVED, net)) {
      String at = row.text("station_or_from");
      observations.add(switch (row.text("kind")) {
        case "dist" -> List.of("distance", "", at, row.text("a"), row.text("value"), row.text("sigma"));
        case "angle" -> List.of("angle", at, row.text("a"), row.text("b"), row.text("value"), row.text("sigma"));
        case "azimuth" -> List.of("azimuth", "", at, row.text("a"), row.text("value"), row.text("sigma"));
        case "azimuth_fixed" -> List.of("fixed azimuth", "", at, row.text("a"), row.text("value"), "0");
        default -> throw new IllegalStateException(row.toString());
      });
    }
    Question network = network(rows(MIXED_POINTS, net), "x_approx", "y_approx", observations);
    return Question.of(calculation).withTable("points", network.table("points")).withTable("observations", observations);
  }

  private static void addMixed(DataRow summary, List<ReferenceCase> cases) {
    String net = summary.text("net");
    Question question = mixed("adjusted-network", net);
    addResults(MIXED_POINTS, net, question, new String[] {"sx_mm", "sy_mm"}, new String[0], cases);
    cases.add(new ReferenceCase(net, MIXED_SUMMARY, Kind.WORKED_APART, question,
        List.of(Expected.exactly("redundancy", summary.text("redundancy")), Expected.printed("factor", summary.text("s0")))));
  }

  /** The two blunders that were put into M4, as the collection says; the larger one stands out first. */
  private static void addBlunders(List<ReferenceCase> cases) {
    cases.add(new ReferenceCase("M4, its blunders", MIXED_OBSERVED, Kind.QUOTED, mixed("blunders-of-network", "M4").with("beyond", "3.29"),
        List.of(Expected.text("blunder1", "distance 3 4"), Expected.text("blunder2", "angle 103 102 1"), Expected.exactly("blunders", "2"))));
  }

  private static void addBraced(List<ReferenceCase> cases) {
    List<DataRow> rows = DataFile.read(BRACED).rows();
    List<List<String>> lengths = new ArrayList<>();
    List<Expected> adjusted = new ArrayList<>();
    List<Expected> closing = new ArrayList<>();
    for (DataRow row : rows) {
      String side = row.text("side");
      switch (side) {
        case "CD_computed_from_other_five" -> closing.add(Expected.printed("CDfromTheOthers", row.text("measured_m")));
        case "misclosure_mm" -> closing.add(Expected.printed("misclosure", row.text("measured_m")));
        default -> {
          lengths.add(List.of(side.substring(0, 1), side.substring(1), row.text("measured_m")));
          adjusted.add(Expected.printed(side + ".adjusted", row.text("adjusted_m")));
          adjusted.add(Expected.printed(side + ".residual", row.text("residual_mm")));
        }
      }
    }
    adjusted.add(Expected.exactly("redundancy", "1"));
    Question question = Question.of("braced-quadrilateral").withTable("lengths", lengths);
    cases.add(new ReferenceCase("all six lengths", BRACED, Kind.WORKED_APART, question, adjusted));
    cases.add(new ReferenceCase("CD from the other five", BRACED, Kind.WORKED_APART, question, closing));
  }

  @Override
  public List<Remark> remarks() {
    return List.of(
        new Remark(Remark.Sort.LEFT_OUT, BRACED, "The corrections that the paper prints were not in the text that was seen: its lengths are published, what follows from "
            + "them was worked out apart."),
        new Remark(Remark.Sort.DISAGREEMENT, RESULTS, "Two standard deviations of D5 are printed 6.41 and 6.40 for points that are alike by symmetry, 6.405: the last digit "
            + "may be one off."),
        new Remark(Remark.Sort.LEFT_OUT, MIXED_POINTS, "Standard deviations of networks with angles stand there as they were worked out apart, not as published."));
  }
}
