package floorcalc.reference;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.flatness.ToleranceSet;
import floorcalc.reference.answers.Library;
import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import floorcalc.working.Standing;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Each row of a table is a case, or a remark says why it is none: what is gathered is used. */
@Tag("reference")
class RowsUsedTest {
  /**
   * A table, what a row's cases are called, and how a remark names it where it has none.
   *
   * @param file the table
   * @param begin what the name of a case of that row begins with
   * @param name what a remark has of a row that is left out
   */
  private record Table(String file, Function<DataRow, String> begin, Function<DataRow, String> name) {
    @Override
    public String toString() {
      return file;
    }
  }

  private static Table of(String file, Function<DataRow, String> begin) {
    return new Table(file, begin, begin);
  }

  private static Function<DataRow, String> column(String... columns) {
    return row -> String.join(", ", Arrays.stream(columns).map(row::text).toList());
  }

  static List<Table> tables() {
    return List.of(
        of("din18202_flatness.csv", row -> "line " + row.text("line") + (row.text("line").equals("2") ? " as" : ",")),
        of("din18202_flatness_interpolated.csv", row -> "line " + row.text("line") + (row.text("line").equals("2") ? " as 2a" : "")
            + ", at " + row.text("distance_m") + " m"),
        new Table("straightedge_limits.csv", row -> column("source", "applies_to").apply(row) + ", at " + row.text("span_mm") + " mm",
            column("source")),
        of("aci117_fnumbers.csv", column("class")),
        of("tr34_free_movement.csv", column("class")),
        of("e1155_rules.csv", column("item")),
        of("survey_area_by_coordinates.csv", column("id")),
        of("survey_squareness_rectangles.csv", column("id")),
        of("survey_quadrilaterals_constructed.csv", column("id")),
        of("survey_traverse_courses.csv", column("id")),
        of("survey_traverse_summary.csv", column("id")),
        of("survey_angle_balance.csv", column("id")),
        of("survey_distance_networks_obs.csv", column("net")),
        of("survey_distance_networks_results.csv", column("net")),
        of("survey_distance_networks_summary.csv", column("net")),
        of("survey_mixed_networks_points.csv", column("net")),
        of("survey_mixed_networks_summary.csv", column("net")),
        of("survey_tape_rooms_constructed_obs.csv", column("room")),
        of("survey_tape_rooms_constructed_results.csv", column("room")),
        of("tolerance_and_monte_carlo.csv", column("id")),
        of("strip_chances_computed.csv", column("strip_mm", "pitch_mm", "minimum_mm", "taper_mm", "standard_deviation_mm")));
  }

  private static List<ReferenceCase> cases(String file) {
    return Suite.cases().stream().filter(one -> one.file().equals(file)).toList();
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyRowIsACaseOrNamedInARemark(Table table) {
    List<ReferenceCase> cases = cases(table.file());
    List<String> remarks = Suite.topics().stream().flatMap(topic -> topic.remarks().stream())
        .filter(remark -> remark.file().equals(table.file()) && remark.sort() == Remark.Sort.LEFT_OUT).map(Remark::text).toList();
    List<DataRow> rows = DataFile.read(table.file()).rows();
    int used = 0;
    int leftOut = 0;
    for (DataRow row : rows) {
      String begin = table.begin().apply(row);
      if (cases.stream().anyMatch(one -> one.id().startsWith(begin))) {
        used++;
      } else if (remarks.stream().anyMatch(text -> text.contains(table.name().apply(row)))) {
        leftOut++;
      }
    }
    assertThat(used + leftOut).as(table.file() + ": used " + used + ", left out " + leftOut).isEqualTo(rows.size());
  }

  /** How many figures of a kind are asked for. */
  private static long figures(String file, Kind kind) {
    return cases(file).stream().filter(one -> one.kind() == kind).mapToLong(one -> one.expected().size()).sum();
  }

  /** Where one case takes many rows, the figures are counted. */
  @Test
  void everyFigureOfTheMeasuredSlabIsAsked() {
    long readings = DataFile.read("e1155_slac_elevations.csv").rows().size();
    assertThat(readings).isEqualTo(85);
    assertThat(cases("e1155_slac_elevations.csv").stream().flatMap(one -> one.expected().stream()).filter(each -> each.figure().equals("curvatures"))
        .mapToInt(each -> Integer.parseInt(each.printed())).sum()).isEqualTo(85 - 6 * 2);
    // 62 published, 11 of the line that was reconstructed, all 73 again; three figures for each class of TR34.
    assertThat(DataFile.read("e1155_slac_q.csv").rows()).hasSize(73);
    assertThat(figures("e1155_slac_q.csv", Kind.READ)).isEqualTo(62);
    assertThat(figures("e1155_slac_q.csv", Kind.CONSTRUCTED)).isEqualTo(11);
    assertThat(figures("e1155_slac_q.csv", Kind.WORKED_APART)).isEqualTo(73 + 4 * 3);
    assertThat(cases("e1155_slac_fnumbers_computed.csv")).hasSameSizeAs(DataFile.read("e1155_slac_fnumbers_computed.csv").rows());
    assertThat(cases("slac_straightedge_placements_computed.csv")).hasSameSizeAs(DataFile.read("slac_straightedge_placements_computed.csv").rows());
    assertThat(cases("slac_straightedge_computed.csv")).hasSameSizeAs(DataFile.read("slac_straightedge_computed.csv").rows());
    assertThat(cases("slac_chord_deviation_computed.csv")).hasSameSizeAs(DataFile.read("slac_chord_deviation_computed.csv").rows());
    assertThat(cases("slac_line_fit_computed.csv")).hasSameSizeAs(DataFile.read("slac_line_fit_computed.csv").rows());
  }

  @Test
  void everyStationOfTheWorksheetIsAsked() {
    List<DataRow> stations = DataFile.read("moody_profile_from_tilts.csv").rows();
    assertThat(stations).hasSize(21);
    assertThat(figures("moody_profile_from_tilts.csv", Kind.QUOTED)).isEqualTo(2 * 21);
    assertThat(figures("moody_profile_from_tilts.csv", Kind.WORKED_APART)).isEqualTo(21 + 4);
  }

  private static long filled(String file, String... columns) {
    return DataFile.read(file).rows().stream().mapToLong(row -> Arrays.stream(columns).filter(column -> !row.isEmpty(column)).count()).sum();
  }

  /** Each printed figure of the courses but one, which is a misprint; each that was worked again. */
  @Test
  void everyFigureOfTheTraversesIsAsked() {
    String courses = "survey_traverse_courses.csv";
    assertThat(figures(courses, Kind.READ)).isEqualTo(
        filled(courses, "lat_published", "dep_published", "adj_lat_published", "adj_dep_published", "adj_len_published") - 1);
    assertThat(figures(courses, Kind.WORKED_APART)).isEqualTo(filled(courses, "lat_recomputed", "dep_recomputed", "adj_lat_recomputed",
        "adj_dep_recomputed", "adj_len_recomputed", "N_from", "E_from"));
    String summary = "survey_traverse_summary.csv";
    // All but the area of T3, which is from memory; and the closing error of T6, which stands in its note.
    assertThat(figures(summary, Kind.READ)).isEqualTo(
        filled(summary, "misclosure_lat_published", "misclosure_dep_published", "precision_published", "area_published"));
    assertThat(figures(summary, Kind.WORKED_APART)).isEqualTo(7 * DataFile.read(summary).rows().size());
    assertThat(figures("survey_angle_balance.csv", Kind.READ)).isEqualTo(filled("survey_angle_balance.csv", "adjusted_published_dms", "azimuth_from_station_dms") + 1);
    assertThat(figures("survey_angle_balance.csv", Kind.WORKED_APART)).isEqualTo(filled("survey_angle_balance.csv", "adjusted_recomputed_dms") + 1);
  }

  @Test
  void everyFigureOfTheNetworksIsAsked() {
    String results = "survey_distance_networks_results.csv";
    assertThat(figures(results, Kind.QUOTED)).isEqualTo(filled(results, "x_published", "y_published", "sx_published_milli", "sy_published_milli"))
        .isGreaterThan(60);
    assertThat(figures(results, Kind.WORKED_APART)).isEqualTo(filled(results, "x_recomputed", "y_recomputed", "sx_milli", "sy_milli"));
    assertThat(figures("survey_distance_networks_obs.csv", Kind.WORKED_APART)).isEqualTo(filled("survey_distance_networks_obs.csv", "residual_recomputed"));
    assertThat(figures("survey_distance_networks_summary.csv", Kind.WORKED_APART)).isEqualTo(filled("survey_distance_networks_summary.csv", "redundancy", "s0"));
    String mixed = "survey_mixed_networks_points.csv";
    assertThat(figures(mixed, Kind.QUOTED)).isEqualTo(filled(mixed, "x_published", "y_published"));
    assertThat(figures(mixed, Kind.WORKED_APART)).isEqualTo(filled(mixed, "x_recomputed", "y_recomputed", "sx_mm", "sy_mm"));
    assertThat(figures("survey_mixed_networks_summary.csv", Kind.WORKED_APART)).isEqualTo(filled("survey_mixed_networks_summary.csv", "redundancy", "s0"));
    assertThat(figures("survey_braced_quadrilateral.csv", Kind.WORKED_APART)).isEqualTo(
        filled("survey_braced_quadrilateral.csv", "adjusted_m", "residual_mm") + 2 + 1);
  }

  /** What was measured goes into the questions whole: each distance and angle, each point. */
  @Test
  void everyMeasurementIsAnInput() {
    for (String[] net : new String[][] {{"survey_distance_networks_results.csv", "survey_distance_networks_points.csv", "survey_distance_networks_obs.csv"},
        {"survey_mixed_networks_points.csv", "survey_mixed_networks_points.csv", "survey_mixed_networks_obs.csv"}}) {
      List<ReferenceCase> cases = cases(net[0]).stream().filter(one -> one.kind() == Kind.QUOTED).toList();
      assertThat(cases.stream().mapToInt(one -> one.question().table("points").size()).sum()).isEqualTo(DataFile.read(net[1]).rows().size());
      assertThat(cases.stream().mapToInt(one -> one.question().table("observations").size()).sum()).isEqualTo(DataFile.read(net[2]).rows().size());
    }
    assertThat(cases("survey_tape_rooms_constructed_obs.csv").stream()
        .mapToInt(one -> one.question().list("walls").size() + one.question().table("ties").size()).sum())
        .isEqualTo(DataFile.read("survey_tape_rooms_constructed_obs.csv").rows().size());
  }

  /** Corners of the tape rooms, two coordinates each, and three figures a room. */
  @Test
  void everyCornerOfTheTapeRoomsIsAsked() {
    long corners = DataFile.read("survey_tape_rooms_constructed_results.csv").rows().stream().mapToLong(row -> row.count("corners")).sum();
    assertThat(figures("survey_tape_rooms_constructed_results.csv", Kind.WORKED_APART)).isEqualTo(2 * corners + 3 * 3);
  }

  /** The two odd cells are the only ones whose printed limit is not asked for. */
  @Test
  void twoCellsOfTheInterpolatedTableAreOdd() {
    List<DataRow> rows = DataFile.read("din18202_flatness_interpolated.csv").rows();
    assertThat(rows).hasSize(91);
    assertThat(rows.stream().filter(row -> !row.text("agrees").equals("yes")).map(column("line", "distance_m"))).containsExactly("2, 3.5", "7, 0.6");
    // Line 2, of 13 cells, is asked twice: as 2a and as 2b.
    assertThat(figures("din18202_flatness_interpolated.csv", Kind.WORKED_APART)).isEqualTo(91 + 13);
    assertThat(figures("din18202_flatness_interpolated.csv", Kind.QUOTED)).isEqualTo(91 + 13 - 3);
  }

  /** Every set of limits that is not from memory has a question. */
  @Test
  void noSetOfLimitsWithoutARow() {
    Library library = new Library();
    Set<String> asked = new TreeSet<>();
    for (ReferenceCase one : Suite.cases()) {
      if (one.question().calculation().equals("flatness-limit")) {
        asked.add(library.answer(one.question()).orElseThrow().figure("setHere").orElseThrow());
      }
    }
    assertThat(ToleranceSet.all()).filteredOn(set -> set.limits().get(0).source().standing() != Standing.FROM_MEMORY)
        .extracting(ToleranceSet::name).containsExactlyInAnyOrderElementsOf(asked);
  }

  @Test
  void namesOfFiguresAreUniqueInACase() {
    assertThat(Suite.cases()).allSatisfy(one -> assertThat(one.expected().stream().map(Expected::figure)).as(one.id()).doesNotHaveDuplicates());
  }
}
