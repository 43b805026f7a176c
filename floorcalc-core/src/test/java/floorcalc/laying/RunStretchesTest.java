package floorcalc.laying;

import static org.assertj.core.api.Assertions.assertThat;

import floorcalc.boards.Edges;
import floorcalc.boards.Stretch;
import floorcalc.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Runs of boards 200 mm wide, drawn in millimetres; the least piece is 300 mm. Widths and lengths by hand. */
class RunStretchesTest {
  private static final long MM = 1_000_000;
  private static final Length PITCH = Length.ofMillimetres(200);

  private static FrameRun run(long[] low, long[] high, long... xy) {
    long[] x = new long[xy.length / 2];
    long[] y = new long[xy.length / 2];
    for (int i = 0; i < x.length; i++) {
      x[i] = xy[2 * i] * MM;
      y[i] = xy[2 * i + 1] * MM;
    }
    return new FrameRun(0, new Patch(Loop.of(x, y), List.of()), scaled(low), scaled(high));
  }

  private static long[] scaled(long[] places) {
    return java.util.Arrays.stream(places).map(place -> place * MM).toArray();
  }

  private static List<Stretch> stretches(FrameRun run, long minimumPiece) {
    return new RunStretches(run, run.from(), run.to(), minimumPiece * MM, PITCH).all();
  }

  private static long[] at(long... places) {
    return places;
  }

  private static void assertStretch(Stretch stretch, long length, double width, Edges edges) {
    assertThat(stretch.length()).isEqualTo(Length.ofMillimetres(length));
    assertThat(stretch.edges()).isEqualTo(edges);
    // Never more than by hand, and less by no more than where sections are looked at makes out: a sixteenth of the least piece.
    assertThat(stretch.width().toMillimetres()).isLessThanOrEqualTo(width).isGreaterThan(width - 1);
  }

  @Test
  void aFullRowIsOneStretch() {
    List<Stretch> found = stretches(run(at(0, 4000), at(0, 4000), 0, 0, 4000, 0, 4000, 200, 0, 200), 300);
    assertThat(found).containsExactly(Stretch.full(Length.ofMillimetres(4000), PITCH));
  }

  @Test
  void aLastRowThatTapersIsAsWideAsWhereAPieceIsNarrowest() {
    // The wall falls from 120 to 60 over 6000: 10 mm a metre. It is divided by 300 into 20 stretches; a piece that only just reaches
    // into the last but one begins at 5700 or ends there; the narrowest ends the run: it is widest where it begins, at 5700: 63 mm.
    List<Stretch> found = stretches(run(at(0, 6000), at(), 0, 0, 6000, 0, 6000, 60, 0, 120), 300);
    assertThat(found).hasSize(20);
    assertStretch(found.get(19), 300, 63, Edges.LOW);
    // The first: pieces in it reach from 0 on, or begin at its end, at 300: 117 mm.
    assertStretch(found.get(0), 300, 117, Edges.LOW);
  }

  @Test
  void withNoLeastPieceARowIsAsNarrowAsItsTip() {
    assertThat(stretches(run(at(0, 250), at(), 0, 0, 250, 0, 250, 60, 0, 120), 0)).singleElement()
        .satisfies(stretch -> assertStretch(stretch, 250, 60, Edges.LOW));
  }

  @Test
  void aSlantedEndBelongsToAPieceThatReachesFurtherIn() {
    // From 0 to 100 the run has no line, from 100 to 200 only the low one: pieces of 300 or more reach into both.
    FrameRun run = run(at(100, 4000), at(200, 4000), 100, 0, 4000, 0, 4000, 200, 200, 200, 0, 150);
    assertThat(stretches(run, 300)).containsExactly(Stretch.full(Length.ofMillimetres(4000), PITCH));
    // With no least piece, the end is what it looks like: nothing, then low, then both.
    List<Stretch> found = stretches(run, 0);
    assertThat(found).hasSize(2);
    assertStretch(found.get(1), 3800, 200, Edges.BOTH);
    assertThat(found.get(0).edges()).isEqualTo(Edges.LOW);
    assertThat(found.get(0).length()).isEqualTo(Length.ofMillimetres(100));
  }

  @Test
  void aRowBesideARecessHasStretchesOfItsOwn() {
    // 6000 long; the floor above it is there from 4000 on; before that it is 150 wide and borders on a wall.
    FrameRun run = run(at(0, 6000), at(4000, 6000), 0, 0, 6000, 0, 6000, 200, 4000, 200, 4000, 150, 0, 150);
    List<Stretch> found = stretches(run, 300);
    assertThat(found.get(found.size() - 1)).isEqualTo(Stretch.full(Length.ofMillimetres(2000), PITCH));
    List<Stretch> strips = found.subList(0, found.size() - 1);
    assertThat(strips).allSatisfy(strip -> assertThat(strip.edges()).isEqualTo(Edges.LOW))
        .allSatisfy(strip -> assertThat(strip.width().toMillimetres()).isBetween(149.9, 150.0));
    assertThat(strips.stream().map(Stretch::length).reduce(Length.ZERO, Length::plus)).isEqualTo(Length.ofMillimetres(4000));
  }

  @Test
  void ofTheSectionsBesideAColumnTheLowestCounts() {
    // A column from 1000 to 2000 leaves 60 below it and 50 above; pieces of 300 may lie beside it alone.
    long[] x = {1000 * MM, 1000 * MM, 2000 * MM, 2000 * MM};
    long[] y = {60 * MM, 150 * MM, 150 * MM, 60 * MM};
    FrameRun plain = run(at(0, 4000), at(), 0, 0, 4000, 0, 4000, 200, 0, 200);
    FrameRun run = new FrameRun(0, new Patch(plain.floor().shell(), List.of(Loop.of(x, y))), plain.lowContacts(), plain.highContacts());
    List<Stretch> found = stretches(run, 300);
    assertThat(found.stream().mapToDouble(stretch -> stretch.width().toMillimetres()).min()).hasValueCloseTo(50.0,
        org.assertj.core.data.Offset.offset(0.001));
  }
}
