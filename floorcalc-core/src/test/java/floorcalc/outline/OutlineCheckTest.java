package floorcalc.outline;

import static floorcalc.outline.RingTest.ring;
import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.outline.OutlineFault.Kind;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class OutlineCheckTest {
  private static final Ring ROOM = ring(0, 0, 4000, 0, 4000, 3000, 0, 3000);
  private static final String CLEAR_OF_WALLS =
      "; a void must lie inside the outline, clear of its walls; draw what stands against a wall as part of the outline";
  private static final String CLEAR_OF_VOIDS =
      "; voids must lie clear of each other; draw what stands together as one void";

  private static List<String> messages(Ring shell, Ring... voids) {
    return OutlineCheck.faultsOf(shell, Arrays.asList(voids)).stream().map(OutlineFault::message).toList();
  }

  private static List<Kind> kinds(Ring shell, Ring... voids) {
    return OutlineCheck.faultsOf(shell, Arrays.asList(voids)).stream().map(OutlineFault::kind).toList();
  }

  @Test
  void soundOutlinesHaveNoFaults() {
    Ring column = ring(1000, 1000, 1400, 1000, 1400, 1500);
    assertThat(messages(ROOM)).isEmpty();
    assertThat(messages(ROOM.reversed(), column, ring(2000, 1, 2100, 1, 2100, 2999, 2000, 2999))).isEmpty();
    assertThat(OutlineCheck.faultsOf(Outline.of(ROOM, List.of(column)))).isEmpty();
    // a corner on a straight wall is no fault, nor is a wall one nanometre from another
    assertThat(messages(ring(0, 0, 2000, 0, 4000, 0, 4000, 3000))).isEmpty();
    assertThat(messages(Ring.ofNanometres(new long[] {0, 9, 9, 5, 4, 0}, new long[] {0, 0, 9, 1, 9, 9}))).isEmpty();
  }

  @Test
  void wallsThatCross() {
    // a wall from (0, 0) to (4, 4) and one from (4, 0) to (0, 4) meet in the middle
    assertThat(OutlineCheck.faultsOf(ring(0, 0, 4000, 4000, 4000, 0, 0, 4000), List.of())).containsExactly(
        new OutlineFault(Kind.WALLS_CROSS, 0, List.of(1, 3), Optional.of(Point.ofMillimetres(2000, 2000)),
            "walls 1 and 3 cross at (2000 mm, 2000 mm); an outline must not cross itself"));
  }

  @Test
  void wallsAreNumberedAsGivenAlsoClockwise() {
    Ring given = ring(0, 0, 0, 3000, 2000, 3000, 2000, -500, 4000, -500, 4000, 1000, 1000, 1000, 1000, 0);
    assertThat(given.signedArea().isNegative()).isTrue();
    assertThat(messages(given))
        .containsExactly("walls 3 and 6 cross at (2000 mm, 1000 mm); an outline must not cross itself");
  }

  @Test
  void aCrossingIsRoundedToTheNanometre() {
    // from (0,0) to (3,1) and from (0,1) to (1,0) mm: x + y = 1 and y = x / 3 give x = 3/4, y = 1/4
    assertThat(messages(ring(0, 0, 3, 1, 0, 1, 1, 0)))
        .containsExactly("walls 1 and 3 cross at (0.75 mm, 0.25 mm); an outline must not cross itself");
    // from (0,0) to (3,1) and from (0,1) to (2,0): y = 1 − x / 2 = x / 3 gives x = 6/5, y = 2/5
    assertThat(messages(ring(0, 0, 3, 1, 0, 1, 2, 0)))
        .containsExactly("walls 1 and 3 cross at (1.2 mm, 0.4 mm); an outline must not cross itself");
    // from (0,0) to (1,1) and from (0,2) to (1,0): y = 2 − 2 x = x gives 2/3, rounded up
    assertThat(messages(ring(0, 0, 1, 1, 0, 2, 1, 0)))
        .containsExactly("walls 1 and 3 cross at (0.666667 mm, 0.666667 mm); an outline must not cross itself");
  }

  @Test
  void allCrossingsAreListed() {
    // a five-pointed star: each wall crosses two others, five crossings in all
    assertThat(kinds(ring(0, 0, 60, 90, 120, 0, -30, 60, 150, 60))).hasSize(5).containsOnly(Kind.WALLS_CROSS);
  }

  @Test
  void wallsThatTouch() {
    assertThat(messages(ring(0, 0, 4, 0, 4, 4, 2, 0, 0, 4)))
        .containsExactly("walls 1, 3 and 4 touch at (2 mm, 0 mm); an outline must not touch itself");
    assertThat(messages(ring(0, 0, 2, 2, 4, 0, 4, 4, 2, 2, 0, 4)))
        .containsExactly("walls 1, 2, 4 and 5 touch at (2 mm, 2 mm); an outline must not touch itself");
  }

  @Test
  void wallsThatRunAlongEachOther() {
    assertThat(messages(ring(0, 0, 6, 0, 6, 4, 4, 4, 4, 0, 2, 0, 2, 4, 0, 4))).containsExactly(
        "walls 1 and 5 run along each other from (2 mm, 0 mm) to (4 mm, 0 mm); an outline must not touch itself");
  }

  @Test
  void wallsThatFoldBack() {
    assertThat(messages(ring(0, 0, 4, 0, 4, 3, 4, 5, 4, 3, 0, 3))).contains(
        "wall 4 folds back along wall 3 at (4 mm, 5 mm); leave out that corner");
    // between the last wall and the first
    assertThat(messages(ring(0, 0, 4, 0, 4, 3, 2, 3, 2, 0))).contains(
        "wall 1 folds back along wall 5 at (0 mm, 0 mm); leave out that corner");
  }

  @Test
  void wallsWithoutLength() {
    assertThat(messages(ring(0, 0, 4, 0, 4, 0, 4, 3, 0, 3, 0, 0))).containsExactly(
        "wall 2 has no length: corners 2 and 3 are both at (4 mm, 0 mm); list each corner once",
        "wall 6 has no length: corners 6 and 1 are both at (0 mm, 0 mm);"
            + " the last corner is joined to the first, so do not repeat it");
  }

  @Test
  void tooFewCorners() {
    assertThat(messages(Ring.of())).containsExactly("the outline has 0 corners; it needs at least 3");
    assertThat(messages(ring(1, 1))).containsExactly("the outline has 1 corner; it needs at least 3");
    assertThat(messages(ROOM, ring(1, 1, 2, 2))).containsExactly("void 1 has 2 corners; it needs at least 3");
  }

  @Test
  void noArea() {
    assertThat(messages(ring(0, 0, 1, 1, 3, 3)))
        .containsExactly("the outline encloses no area: all its corners lie on one line");
    assertThat(kinds(ring(5, 5, 5, 5, 5, 5))).contains(Kind.NO_AREA);
    assertThat(kinds(ROOM, ring(5, 5, 5, 9, 5, 7))).containsExactly(Kind.NO_AREA);
  }

  @Test
  void cornersBeyondTheLimit() {
    assertThat(messages(ring(0, 0, 10_000_000, 0, 10_000_000, -10_000_000, -10_000_000, -10_000_000))).isEmpty();
    assertThat(messages(ring(0, 0, 10_000_001, 0, 0, 3000), ring(1, 1, 2, 1, 2, -10_000_001))).containsExactly(
        "corner 2 at (10000001 mm, 0 mm) is too far from the origin; coordinates may be up to 10000000 mm either way",
        "corner 3 of void 1 at (2 mm, -10000001 mm) is too far from the origin;"
            + " coordinates may be up to 10000000 mm either way");
    assertThat(kinds(Ring.ofNanometres(new long[] {Long.MIN_VALUE, Long.MAX_VALUE, 0}, new long[3])))
        .containsExactly(Kind.CORNER_BEYOND_LIMIT, Kind.CORNER_BEYOND_LIMIT);
  }

  @Test
  void voidsAndTheOutline() {
    assertThat(messages(ROOM, ring(-10, 100, 10, 100, 10, 200, -10, 200))).containsExactly(
        "wall 1 of void 1 crosses wall 4 of the outline at (0 mm, 100 mm)" + CLEAR_OF_WALLS,
        "wall 3 of void 1 crosses wall 4 of the outline at (0 mm, 200 mm)" + CLEAR_OF_WALLS);
    assertThat(messages(ROOM, ring(0, 100, 10, 50, 10, 150))).containsExactly(
        "wall 3 of void 1 touches wall 4 of the outline at (0 mm, 100 mm)" + CLEAR_OF_WALLS);
    assertThat(messages(ROOM, ring(0, 100, 10, 100, 10, 150, 0, 150))).containsExactly(
        "wall 4 of void 1 touches wall 4 of the outline at (0 mm, 100 mm)" + CLEAR_OF_WALLS);
    assertThat(messages(ROOM, ring(5000, 0, 5001, 0, 5001, 1), ring(-1, -1, 9000, -1, 9000, 9000, -1, 9000)))
        .startsWith("void 1 lies outside the outline, with a corner at (5000 mm, 0 mm); a void must lie inside it");
    assertThat(kinds(ROOM, ring(-1, -1, 9000, -1, 9000, 9000, -1, 9000))).containsExactly(Kind.VOID_OUTSIDE);
  }

  @Test
  void voidsAmongEachOther() {
    Ring column = ring(1000, 1000, 1400, 1000, 1400, 1400, 1000, 1400);
    assertThat(messages(ROOM, column, ring(1200, 1200, 1300, 1200, 1300, 1300))).containsExactly(
        "void 2 lies within void 1, with a corner at (1200 mm, 1200 mm); leave it out");
    assertThat(messages(ROOM, column, ring(1400, 1400, 1500, 1400, 1500, 1500))).containsExactly(
        "wall 3 of void 2 touches wall 2 of void 1 at (1400 mm, 1400 mm)" + CLEAR_OF_VOIDS);
    assertThat(messages(ROOM, ring(1300, 1100, 1500, 1100, 1500, 1200), column)).containsExactly(
        "wall 2 of void 2 crosses wall 1 of void 1 at (1400 mm, 1100 mm)" + CLEAR_OF_VOIDS,
        "wall 2 of void 2 crosses wall 3 of void 1 at (1400 mm, 1150 mm)" + CLEAR_OF_VOIDS);
    assertThat(kinds(ROOM, column, column)).isNotEmpty().containsOnly(Kind.VOIDS_TOUCH);
  }

  @Test
  void faultsAreListedTogetherInOrder() {
    assertThat(kinds(ring(0, 0, 4000, 4000, 4000, 4000, 4000, 0, 0, 4000), ring(9, 9, 9, 9, 9, 20, 9, 30)))
        .containsExactly(Kind.WALLS_CROSS, Kind.WALL_WITHOUT_LENGTH, Kind.NO_AREA, Kind.WALL_WITHOUT_LENGTH);
  }

  @Test
  void aTangleIsListedUpToALimit() {
    // a star of 101 walls, each from a corner of a ring to the one across: all cross each other
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 101; i++) {
      double angle = 2 * StrictMath.PI * i * 50 / 101;
      corners.add(Point.ofNanometres((long) (3e9 * StrictMath.cos(angle)), (long) (3e9 * StrictMath.sin(angle))));
    }
    List<OutlineFault> faults = OutlineCheck.faultsOf(Ring.of(corners), List.of());
    assertThat(faults).hasSize(OutlineCheck.MOST_FAULTS + 1);
    assertThat(faults.get(OutlineCheck.MOST_FAULTS).message())
        .isEqualTo("only the first 100 faults are listed; mend these first");
    assertThat(faults.get(OutlineCheck.MOST_FAULTS).kind()).isEqualTo(Kind.MORE_FAULTS);
  }

  @Test
  void asManyCornersAsAreAllowed() {
    assertThat(messages(saw(OutlineCheck.MOST_CORNERS))).isEmpty();
    assertThat(messages(saw(OutlineCheck.MOST_CORNERS + 2))).containsExactly("the outline and its voids have 10002 corners"
        + " together; at most 10000 are allowed; leave out corners that lie on a straight wall");
  }

  /** A strip whose long walls are both saws, of teeth 1 mm wide. */
  private static Ring saw(int corners) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < corners / 2; i++) {
      points.add(Point.ofMillimetres(i, i % 2));
    }
    for (int i = corners / 2 - 1; i >= 0; i--) {
      points.add(Point.ofMillimetres(i, 1000 + i % 2));
    }
    return Ring.of(points);
  }

  @Test
  void everyKindHasACodeOfItsOwn() {
    assertThat(Arrays.stream(Kind.values()).map(Kind::code)).doesNotHaveDuplicates()
        .allMatch(code -> code.matches("[a-z]+(-[a-z]+)*"));
  }
}
