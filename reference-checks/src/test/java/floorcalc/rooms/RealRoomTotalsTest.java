package floorcalc.rooms;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.FloorPlanner;
import floorcalc.plan.Order;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Boards, bound and proofs over all rooms of the project, products of one length and directions, rooms that bend split into bays:
 * regression values. Boards may only fall, the bound and the number of proofs only rise.
 */
@Tag("reference")
class RealRoomTotalsTest {
  private static final int PLANS = 189;
  private static final int BOARDS_AT_MOST = 8568;
  private static final int BOUND_AT_LEAST = 8505;
  private static final int PROVEN_AT_LEAST = 131;

  @Test
  void totalsOnlyGetBetter() {
    List<Order> orders = RealRooms.withTheProject().parallelStream().flatMap(room -> List.of(Product.values()).stream()
        .filter(product -> product != Product.MIXED_STRIP)
        .flatMap(product -> Product.directions(room).stream()
            .map(direction -> FloorPlanner.plan(product.in(room, direction)).order()))).toList();

    assertThat(orders).hasSize(PLANS).allMatch(order -> order.boardsAtLeast() <= order.boardsUsed());
    assertThat(orders.stream().mapToInt(Order::boardsUsed).sum()).as("boards").isLessThanOrEqualTo(BOARDS_AT_MOST);
    assertThat(orders.stream().mapToInt(Order::boardsAtLeast).sum()).as("bound").isGreaterThanOrEqualTo(BOUND_AT_LEAST);
    assertThat(orders.stream().filter(Order::provenFewest)).as("proven").hasSizeGreaterThanOrEqualTo(PROVEN_AT_LEAST);
  }
}
