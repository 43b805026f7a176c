package floorcalc.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The exact model is right on tiny cases, and a live run agrees with the file of its results and with the library. */
class ExactBoardsTest {
  private static final int WORKERS = 2;

  /** Boards of 7 to 14, rows up to three boards long and some shorter than one, tried in every way. */
  static Stream<BoardCase> tiny() {
    return IntStream.range(0, 150).mapToObj(ExactBoardsTest::tiny);
  }

  private static BoardCase tiny(int number) {
    SplittableRandom random = new SplittableRandom(77 + number);
    int board = random.nextInt(7, 15);
    int minimum = random.nextInt(1, 4);
    int offset = random.nextInt(0, board / 2 + 1);
    int kerf = random.nextInt(0, 3);
    int length = random.nextInt(board * 2 / 3 + 1, 3 * board + 1);
    List<Integer> rows = new ArrayList<>();
    int count = random.nextInt(1, 5);
    for (int k = 0; k < count; k++) {
      rows.add(Math.max(board * 2 / 3 + 1, length + random.nextInt(-3, 4)));
    }
    return new BoardCase(number, board, kerf, offset, minimum, rows);
  }

  @ParameterizedTest
  @MethodSource("tiny")
  void asFewAsByTryingAllWays(BoardCase given) {
    int fewest = AllWays.fewest(given);
    SolvedBoards solved = ExactBoards.solve(given, WORKERS, 20);

    if (fewest == Integer.MAX_VALUE) {
      assertThat(solved.status()).isEqualTo("INFEASIBLE");
    } else {
      assertThat(solved.status()).isEqualTo("OPTIMAL");
      assertThat(solved.boards()).isEqualTo(fewest);
      assertThat(solved.bound()).isEqualTo(fewest);
    }
  }

  /** Cases that the solver settled soon. What it proves live must be what it proved before. */
  static Stream<SolvedBoards> settled() {
    return SolverResults.read().stream().filter(SolvedBoards::isProven).filter(solved -> solved.seconds() < 1).limit(6);
  }

  @ParameterizedTest
  @MethodSource("settled")
  void liveAsInTheFileAndAsTheSearch(SolvedBoards before) {
    BoardCase given = BoardCases.largeCase(before.number());
    SolvedBoards live = ExactBoards.solve(given, WORKERS, 8);

    // On a busy machine time may run out before the proof, but never is anything else proven.
    assertThat(live.bound()).isLessThanOrEqualTo(before.boards());
    assertThat(live.boards()).isGreaterThanOrEqualTo(before.bound());
    LaidCase search = LaidCase.bySearch(given);
    assertThat(search.boards()).isLessThanOrEqualTo(live.boards());
    assertThat(search.bound()).isLessThanOrEqualTo(live.boards());
    assertThat(search.boards()).isGreaterThanOrEqualTo(live.bound());
  }
}
