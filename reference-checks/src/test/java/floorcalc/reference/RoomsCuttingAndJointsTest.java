package floorcalc.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import floorcalc.reference.cases.CuttingCases;
import floorcalc.reference.cases.JointCases;
import floorcalc.reference.cases.RoomCases;
import floorcalc.reference.cases.Topic;
import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.data.DataFile;
import floorcalc.reference.data.DataRow;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every row of the files on rooms, cutting and joints becomes a case; and what the cases do not ask is right among the files themselves. */
class RoomsCuttingAndJointsTest {
  private static final List<Topic> TOPICS = List.of(new RoomCases(), new CuttingCases(), new JointCases());
  /** How the first case of a row is called. */
  private static final Map<String, Function<DataRow, String>> NAMES = Map.of(
      "offset_area_formulas.csv", row -> row.text("shape") + " with a gap of " + row.number("d").movePointRight(3).stripTrailingZeros().toPlainString(),
      "stagger_offcut_carry.csv", row -> "boards of " + row.text("L") + " in rows of " + row.text("W"),
      "stagger_three_gap.csv", row -> row.text("sequence") + ", " + row.text("N") + " rows",
      "stagger_van_der_corput.csv", row -> "base " + row.text("base") + ", " + row.text("N") + " places");

  private static List<String> names(String file) {
    if (!file.endsWith(".csv")) {
      return DataFile.read(file).lines().stream().map(line -> line.split("[,;]")[0]).toList();
    }
    Function<DataRow, String> name = NAMES.getOrDefault(file, row -> row.text(row.columns().iterator().next()));
    return DataFile.read(file).rows().stream().map(name).toList();
  }

  @TestFactory
  Stream<DynamicTest> everyRowIsUsed() {
    return TOPICS.stream().flatMap(topic -> topic.files().stream().map(file -> dynamicTest(file, () -> {
      List<String> cases = topic.cases().stream().filter(one -> one.file().equals(file)).map(ReferenceCase::id).toList();
      List<String> names = names(file);
      assertThat(names).isNotEmpty().doesNotHaveDuplicates()
          .allSatisfy(name -> assertThat(cases).anyMatch(id -> id.equals(name) || id.startsWith(name + " ") || id.startsWith(name + ",")));
      assertThat(cases).allSatisfy(id ->
          assertThat(names).anyMatch(name -> id.equals(name) || id.startsWith(name + " ") || id.startsWith(name + ",")));
    })));
  }

  @Test
  void asManyRowsAsEver() {
    Map<String, Integer> rows = new LinkedHashMap<>();
    TOPICS.forEach(topic -> topic.files().forEach(file -> rows.put(file, names(file).size())));
    assertThat(rows).containsExactlyInAnyOrderEntriesOf(Map.ofEntries(Map.entry("offset_area_formulas.csv", 78),
        Map.entry("rectilinear_partition.csv", 18), Map.entry("rooms_cc_by.csv", 21), Map.entry("rooms_expected.csv", 21),
        Map.entry("inscribed_circle.csv", 9), Map.entry("inscribed_circle_published.wkt", 2), Map.entry("bpp_index.csv", 28),
        Map.entry("bpp_instances_small.txt", 5), Map.entry("bpp_instances_falkenauer.txt", 10), Map.entry("bpp_instances_scholl.txt", 13),
        Map.entry("csp_textbook.csv", 6), Map.entry("two_per_bin_from_published.csv", 7), Map.entry("two_per_bin_left_right_constructed.csv", 12),
        Map.entry("usable_leftover_constructed.csv", 6), Map.entry("stagger_offcut_carry.csv", 11), Map.entry("stagger_three_gap.csv", 72),
        Map.entry("stagger_van_der_corput.csv", 38)));
  }

  /** The index, the lists themselves and the table of pairs say the same of bars, numbers of pieces, lengths and optimum. */
  @Test
  void theFilesOfCuttingAgreeWithEachOther() {
    Map<String, String[]> lists = new LinkedHashMap<>();
    for (String file : List.of("bpp_instances_small.txt", "bpp_instances_falkenauer.txt", "bpp_instances_scholl.txt")) {
      DataFile.read(file).lines().forEach(line -> lists.put(line.split(",")[0], line.split(",")));
    }
    assertThat(DataFile.read("bpp_index.csv").rows()).hasSameSizeAs(lists.keySet()).allSatisfy(row -> {
      String[] list = lists.get(row.text("name"));
      long[] lengths = Arrays.stream(list[3].trim().split(" ")).mapToLong(Long::parseLong).toArray();
      assertThat(row.text("capacity")).isEqualTo(list[1]);
      assertThat(row.text("optimum")).isEqualTo(list[2]);
      assertThat(row.count("n")).isEqualTo(lengths.length);
      assertThat(row.number("sum").longValueExact()).isEqualTo(Arrays.stream(lengths).sum());
    });
    assertThat(DataFile.read("two_per_bin_from_published.csv").rows()).allSatisfy(row -> {
      assertThat(row.text("capacity")).isEqualTo(lists.get(row.text("instance"))[1]);
      assertThat(row.text("optimum_unlimited")).isEqualTo(lists.get(row.text("instance"))[2]);
    });
  }

  /** The number of places of b^m is the inverse of the discrepancy, as the head of the file says. */
  @Test
  void aFullRoundOfVanDerCorputIsEven() {
    assertThat(DataFile.read("stagger_van_der_corput.csv").rows().stream().filter(row -> List.of("2 16", "2 32", "2 64", "3 9", "3 27")
        .contains(row.text("base") + " " + row.text("N")))).hasSize(5)
        .allSatisfy(row -> assertThat(row.text("star_discrepancy")).isEqualTo("1/" + row.text("N")));
  }
}
