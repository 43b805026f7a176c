package floorcalc.examples.stock;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.measure.Length;
import java.io.IOException;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;

/** Plans some thousand rooms on the engine, and holds each row and each sum against a loop without it. */
class SparkStockTest {
  private static final int ROOMS = Integer.getInteger("stock.rooms", 3000);

  @Test
  void theEngineGivesTheRowsOfALoop() throws IOException {
    List<StockRow> loop = IntStream.range(0, ROOMS).mapToObj(StockRow::of).toList();
    List<StockRow> rows;
    StockTotals totals;
    List<Row> sums;
    try (SparkSession spark = SparkStock.session("local[2]")) {
      Dataset<Row> planned = SparkStock.rows(spark, ROOMS).cache();
      rows = planned.collectAsList().stream().map(SparkStock::of).toList();
      totals = SparkStock.totals(planned);
      sums = SparkStock.byDistrictAndKind(planned).collectAsList();
    }
    assertThat(rows).isEqualTo(loop);
    assertThat(loop.stream().filter(row -> !row.refused().isEmpty())).isNotEmpty();
    assertThat(totals).isEqualTo(StockTotals.of(loop.stream()));
    TreeMap<String, StockTotals> expected = loop.stream().collect(Collectors.toMap(row -> row.district() + ";" + row.kind(),
        StockTotals::of, StockTotals::plus, TreeMap::new));
    assertThat(sums).extracting(SparkStockTest::line)
        .isEqualTo(expected.entrySet().stream().map(group -> line(group.getKey(), group.getValue())).toList());
  }

  private static String line(Row sum) {
    return sum.getString(0) + ";" + sum.getString(1) + " " + sum.getLong(2) + " " + sum.getLong(3) + " " + sum.getLong(4) + " "
        + sum.getLong(5) + " " + sum.getLong(6) + " " + sum.getLong(7) + " " + (sum.isNullAt(8) ? "" : sum.getLong(8));
  }

  private static String line(String group, StockTotals sum) {
    return group + " " + sum.rooms() + " " + sum.refused() + " " + sum.boards() + " " + sum.boardsAtLeast() + " " + sum.packs() + " "
        + sum.findings() + " " + sum.narrowest().map(Length::toNanometres).map(String::valueOf).orElse("");
  }
}
