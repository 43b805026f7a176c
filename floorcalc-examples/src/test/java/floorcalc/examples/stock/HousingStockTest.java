package floorcalc.examples.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.FloorPlanner;
import floorcalc.measure.Length;
import floorcalc.plan.JobFault;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HousingStockTest {
  private static final int FEW = 60;

  @Test
  void aParallelStreamGivesTheRowsOfALoop() {
    List<String> loop = new ArrayList<>();
    StockTotals totals = StockTotals.NONE;
    for (int number = FEW - 1; number >= 0; number--) {
      StockRow row = StockRow.of(number);
      loop.add(row.toLine());
      totals = totals.plus(StockTotals.of(row));
    }
    Collections.reverse(loop);
    List<StockRow> rows = IntStream.range(0, FEW).parallel().mapToObj(StockRow::of).toList();
    assertThat(rows).extracting(StockRow::toLine).isEqualTo(loop);
    assertThat(StockTotals.of(rows.parallelStream())).isEqualTo(totals);
    assertThat(totals.rooms()).isEqualTo(FEW);
    assertThat(totals.boards()).isEqualTo(rows.stream().mapToLong(StockRow::boards).sum()).isGreaterThan(FEW);
    assertThat(totals.boardsAtLeast()).isEqualTo(rows.stream().mapToLong(StockRow::boardsAtLeast).sum())
        .isBetween(1L, totals.boards());
    assertThat(totals.packs()).isEqualTo(rows.stream().mapToLong(StockRow::packs).sum()).isLessThan(totals.boards());
    assertThat(totals.narrowest()).isEqualTo(rows.stream().flatMap(row -> row.narrowest().stream()).min(Length::compareTo));
  }

  @Test
  void theStockIsMixed() {
    List<StockRoom> rooms = IntStream.range(0, 3000).mapToObj(StockRoom::of).toList();
    assertThat(rooms.stream().map(StockRoom::district).distinct()).hasSize(12);
    assertThat(rooms.stream().map(StockRoom::kind).distinct()).hasSize(6);
    assertThat(rooms.stream().map(room -> room.job().board()).distinct()).hasSize(4);
    // One in two hundred: 15 of 3000 are expected, and fewer than 4 or more than 30 would be a wonder.
    assertThat(rooms.stream().filter(room -> !FloorPlanner.faultsOf(room.job()).isEmpty()).count()).isBetween(4L, 30L);
    assertThat(rooms.stream().map(room -> room.job().rooms().get(0).outline().shell().size()).distinct()).contains(4, 6, 8);
    assertThat(rooms.stream().filter(room -> !room.job().rooms().get(0).outline().voids().isEmpty()).count()).isGreaterThan(100);
    assertThat(rooms.stream().map(room -> room.job().rooms().get(0).doors().size()).distinct()).containsExactlyInAnyOrder(1, 2);
  }

  @Test
  void aRoomThatCannotBePlannedBecomesARowWithItsReason() {
    List<StockRoom> unsound = IntStream.range(0, 2000).mapToObj(StockRoom::of)
        .filter(room -> !FloorPlanner.faultsOf(room.job()).isEmpty()).toList();
    assertThat(unsound).isNotEmpty();
    for (StockRoom room : unsound) {
      StockRow row = StockRow.of(room.number());
      assertThat(row).isEqualTo(new StockRow(room.number(), room.district(), room.kind(), FloorPlanner.faultsOf(room.job()).stream()
          .map(JobFault::message).collect(Collectors.joining(" ")), 0, 0, 0, 0, 0, Optional.empty()));
      assertThat(StockTotals.of(row).refused()).isEqualTo(1);
    }
    assertThatThrownBy(() -> StockRoom.of(-1)).hasMessage("the number of a room must be 0 or more, but was -1");
  }

  @Test
  void theDigestIsTheSumOfTheRows() throws Exception {
    StockRow one = new StockRow(1, "Marram", "study", "", 40, 39, 7, 2, 0, Optional.of(Length.ofMillimetres("84.5")));
    StockRow two = new StockRow(2, "Fennick", "hall", "too narrow", 0, 0, 0, 0, 0, Optional.empty());
    assertThat(one.toLine()).isEqualTo("1;Marram;study;;40;39;7;2;0;84.5");
    assertThat(two.toLine()).isEqualTo("2;Fennick;hall;too narrow;0;0;0;0;0;");
    BigInteger sum = sha256(one.toLine()).add(sha256(two.toLine())).mod(BigInteger.TWO.pow(256));
    assertThat(StockTotals.of(List.of(two, one).stream()))
        .isEqualTo(new StockTotals(2, 1, 40, 39, 7, 2, Length.ofMillimetres("84.5").toNanometres(), sum));
    assertThat(StockTotals.of(two).toText()).startsWith("rooms 1, of which 1 cannot be planned\nboards 0, at least 0\npacks 0\n"
        + "findings 0\nnarrowest row none\ndigest ").hasLineCount(6);
  }

  private static BigInteger sha256(String line) throws Exception {
    return new BigInteger(1, MessageDigest.getInstance("SHA-256").digest(line.getBytes(StandardCharsets.UTF_8)));
  }
}
