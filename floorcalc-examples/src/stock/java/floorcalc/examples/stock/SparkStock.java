package floorcalc.examples.stock;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.count;
import static org.apache.spark.sql.functions.length;
import static org.apache.spark.sql.functions.lit;
import static org.apache.spark.sql.functions.min;
import static org.apache.spark.sql.functions.sum;
import static org.apache.spark.sql.functions.when;

import floorcalc.measure.Length;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.types.StructType;
import org.apache.spark.storage.StorageLevel;

/**
 * Plans the invented housing stock on Apache Spark: a table of numbers becomes a table of figures, one row for each room, and the
 * table is added up by district and by kind of room. What is sent to a worker is the number of a room, and what comes back is a row;
 * the engine decides where and when, and does a part again that was lost.
 */
public final class SparkStock {
  private static final StructType COLUMNS = new StructType().add("number", "int", false).add("district", "string", false)
      .add("kind", "string", false).add("refused", "string", false).add("boards", "int", false)
      .add("boardsAtLeast", "int", false).add("packs", "int", false).add("findings", "int", false)
      .add("compromises", "int", false).add("narrowest", "long", true);
  private static final int SHARES = 16;
  /** A share of so many rooms takes some seconds: small enough that all cores end together. */
  private static final int ROOMS_IN_A_SHARE = 2000;

  private SparkStock() {
  }

  /**
   * Plans rooms and prints the totals, by district and kind and of all.
   *
   * @param args how many rooms, and the machines to use, such as {@code local[2]} for two cores of this one
   * @throws IOException if the engine cannot be ended
   */
  public static void main(String[] args) throws IOException {
    int rooms = Integer.parseInt(args[0]);
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    try (SparkSession spark = session(args[1])) {
      long start = System.nanoTime();
      Dataset<Row> rows = rows(spark, rooms).persist(StorageLevel.MEMORY_AND_DISK());
      StockTotals totals = totals(rows);
      long planned = System.nanoTime();
      byDistrictAndKind(rows).collectAsList().forEach(out::println);
      out.print(totals.toText());
      out.println("took " + (planned - start) / 1_000_000 + " ms on " + args[1]);
    }
  }

  /** {@return an engine without its web pages and without a word on standard output} */
  static SparkSession session(String machines) {
    return SparkSession.builder().appName("housing stock").master(machines).config("spark.ui.enabled", "false")
        .config("spark.sql.shuffle.partitions", SHARES).config("spark.driver.bindAddress", "127.0.0.1")
        .config("spark.driver.host", "127.0.0.1").getOrCreate();
  }

  /** {@return a row for each of the first rooms} */
  static Dataset<Row> rows(SparkSession spark, int rooms) {
    int shares = Math.max(SHARES, rooms / ROOMS_IN_A_SHARE);
    return spark.range(0, rooms, 1, shares)
        .map((MapFunction<Long, Row>) number -> row(StockRow.of(Math.toIntExact(number))), Encoders.row(COLUMNS));
  }

  private static Row row(StockRow row) {
    return RowFactory.create(row.number(), row.district(), row.kind(), row.refused(), row.boards(), row.boardsAtLeast(), row.packs(),
        row.findings(), row.compromises(), row.narrowest().map(Length::toNanometres).orElse(null));
  }

  /** {@return a row for each district and kind of room, in their order, added up by the engine} */
  static Dataset<Row> byDistrictAndKind(Dataset<Row> rows) {
    return rows.groupBy("district", "kind")
        .agg(count(lit(1)).as("rooms"), sum(when(length(col("refused")).gt(0), 1).otherwise(0)).as("refused"),
            sum("boards").as("boards"), sum("boardsAtLeast").as("boardsAtLeast"), sum("packs").as("packs"),
            sum("findings").as("findings"), min("narrowest").as("narrowest"))
        .orderBy("district", "kind");
  }

  /** {@return the totals with their digest, added up where the rows are} */
  static StockTotals totals(Dataset<Row> rows) {
    return rows.toJavaRDD().map(row -> StockTotals.of(of(row))).fold(StockTotals.NONE, StockTotals::plus);
  }

  /** {@return the row of the table as a row of figures} */
  static StockRow of(Row row) {
    return new StockRow(row.getInt(0), row.getString(1), row.getString(2), row.getString(3), row.getInt(4), row.getInt(5),
        row.getInt(6), row.getInt(7), row.getInt(8),
        row.isNullAt(9) ? Optional.empty() : Optional.of(Length.ofNanometres(row.getLong(9))));
  }
}
