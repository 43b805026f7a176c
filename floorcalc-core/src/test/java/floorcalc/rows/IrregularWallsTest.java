package floorcalc.rows;

import static floorcalc.working.StepChecks.assertStepsHold;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import floorcalc.measure.Length;
import floorcalc.outline.Outline;
import floorcalc.outline.Point;
import floorcalc.outline.Ring;
import floorcalc.rows.TaperedRows.Rip;
import floorcalc.rows.WallFace.Offset;
import floorcalc.working.Calculated;
import floorcalc.working.Finding;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class IrregularWallsTest {
  private static final Length PITCH = mm("185");
  private static final Length GAP = mm("10");

  private static Length mm(String decimal) {
    return Length.ofMillimetres(decimal);
  }

  private static Length nm(long nm) {
    return Length.ofNanometres(nm);
  }

  /** Pairs of place and distance, in millimetres. */
  static WallFace wall(String text) {
    List<Offset> offsets = new ArrayList<>();
    for (String pair : text.split(" ")) {
      String[] parts = pair.split(",");
      offsets.add(new Offset(mm(parts[0]), mm(parts[1])));
    }
    return WallFace.of(offsets);
  }

  /** A wall that bows by 14 mm over 4 m. */
  private static final WallFace BOWED = wall("0,0 1000,8 2000,14 3000,9 4000,2");

  @Test
  void howDeepIsTheScribeAtEachPlaceAndWhereDoesTheLineLie() {
    Calculated<Scribe> scribe = Scribe.of(BOWED, PITCH, mm("70"), GAP);
    // full where the wall is 14 away: the line lies 185 + 10 - 14 = 181 inside the string; at the ends 14 is scribed off
    assertThat(scribe.value().rowLine()).isEqualTo(mm("181"));
    assertThat(scribe.value().depths().stream().map(depth -> depth.depth().toMillimetreString()))
        .containsExactly("14", "6", "0", "5", "12");
    assertThat(scribe.value().depths().stream().map(depth -> depth.width().toMillimetreString()))
        .containsExactly("171", "179", "185", "180", "173");
    assertThat(scribe.value().deepest()).isEqualTo(mm("14"));
    // half way between 0 and 1000 the wall is 4 away, so 10 is taken off
    assertThat(scribe.value().at(mm("500")).depth()).isEqualTo(mm("10"));
    // 70 wide at the ends, where the wall is on the string: 80 inside it
    assertThat(scribe.value().nearestRowLine()).isEqualTo(mm("80"));
    assertThat(scribe.findings()).isEmpty();
    assertStepsHold(scribe);
  }

  @Test
  void trimTakesItsShareOfTheScribe() {
    // a skirting of 18 mm that rests on 3 and leaves 10 free: 5 more or less does not show
    TrimCover trim = new TrimCover(mm("18"), mm("3"), GAP);
    Calculated<Scribe> scribe = Scribe.of(BOWED, PITCH, mm("70"), trim);
    assertThat(scribe.value().rowLine()).isEqualTo(mm("186"));
    assertThat(scribe.value().depths().stream().map(depth -> depth.depth().toMillimetreString()))
        .containsExactly("9", "1", "0", "0", "7");
    assertStepsHold(scribe);
    Calculated<Scribe> hidden = Scribe.of(wall("0,0 2000,4.5 4000,1"), PITCH, mm("70"), trim);
    assertThat(hidden.value().deepest()).isEqualTo(Length.ZERO);
    assertThat(hidden.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("no-scribe-needed");
      assertThat(finding.message()).isEqualTo(
          "the wall varies by 4.5 mm, the trim hides 5 mm: a straight edge serves, with a gap from 10.5 mm to 15 mm");
    });
    assertStepsHold(hidden);
  }

  @Test
  void boardTooNarrowForTheBowIsSaid() {
    Calculated<Scribe> scribe = Scribe.of(BOWED, mm("80"), mm("70"), GAP);
    // 80 - 14 = 66
    assertThat(scribe.findings()).singleElement().satisfies(finding -> {
      assertThat(finding.code()).isEqualTo("scribe-too-deep");
      assertThat(finding.message()).startsWith("the wall varies by 14 mm: a board of 80 mm that covers where it is farthest is"
          + " left 66 mm wide where it is nearest, at least 70 mm is asked for");
    });
    assertThat(scribe.value().nearestRowLine()).isGreaterThan(scribe.value().rowLine());
  }

  @Test
  void howWideIsTheRipAtBothEndsOfEachTaperedRow() {
    // from 3720 + 10 to 3610 + 10: 20 rows are 3700, so row 21 is ripped from 20 to nothing, row 20 from full to 95
    Calculated<TaperedRows> rows = TaperedRows.of(wall("0,3730 5500,3620"), PITCH, GAP);
    // 20 of 110 mm of taper are 1000 of 5500 mm
    assertThat(rows.value().rips()).containsExactly(new Rip(21, mm("0"), mm("1000"), mm("20"), mm("0")),
        new Rip(20, mm("1000"), mm("5500"), mm("185"), mm("95")));
    assertThat(rows.findings()).extracting(Finding::code, Finding::where)
        .containsExactly(org.assertj.core.groups.Tuple.tuple("row-comes-to-a-point", "row 21"));
    assertThat(rows.value().straightRow()).isEmpty();
    assertStepsHold(rows);
  }

  @Test
  void taperOfMoreThanAPitchCrossesSeveralRows() {
    // 400 mm over 4 m, boards of 150: from 200 to 600, row lines at 300, 450 and 600
    Calculated<TaperedRows> rows = TaperedRows.of(wall("0,210 4000,610"), mm("150"), GAP);
    assertThat(rows.value().rips()).containsExactly(new Rip(2, mm("0"), mm("1000"), mm("50"), mm("150")),
        new Rip(3, mm("1000"), mm("2500"), mm("0"), mm("150")), new Rip(4, mm("2500"), mm("4000"), mm("0"), mm("150")));
    assertStepsHold(rows);
  }

  @Test
  void bowedWallIsRippedPartByPart() {
    // 1100 + 10: five rows of 200 and 100; bows out to 1150 in the middle, and lies straight for the last metre
    Calculated<TaperedRows> rows = TaperedRows.of(wall("0,1110 1500,1160 3000,1110 4000,1110"), mm("200"), GAP);
    assertThat(rows.value().rips()).containsExactly(new Rip(6, mm("0"), mm("1500"), mm("100"), mm("150")),
        new Rip(6, mm("1500"), mm("3000"), mm("150"), mm("100")), new Rip(6, mm("3000"), mm("4000"), mm("100"), mm("100")));
    // along a row line nothing is ripped
    assertThat(TaperedRows.of(wall("0,1010 4000,1010"), mm("200"), GAP).value().rips()).isEmpty();
  }

  @Test
  void doesTheTrimHideTheTaperWithoutARip() {
    TrimCover trim = new TrimCover(mm("20"), mm("4"), GAP);
    // it hides 20 - 4 - 10 = 6: a taper of 5 asks for no taper, the last row is 3609 - 19 * 185 = 94 all along
    Calculated<TaperedRows> rows = TaperedRows.of(wall("0,3624 4000,3619"), PITCH, trim);
    assertThat(rows.value().rips()).isEmpty();
    assertThat(rows.value().straightRow()).contains(mm("94"));
    assertThat(rows.findings()).extracting(Finding::code).containsExactly("trim-hides-all");
    assertThat(rows.findings().get(0).message()).isEqualTo(
        "the wall varies by 5 mm, the trim hides 6 mm: a straight edge serves, with a gap from 10 mm to 15 mm");
    assertStepsHold(rows);
    // 3712 to 3715: a full row of 20 * 185 = 3700 leaves 12 to 15
    Calculated<TaperedRows> full = TaperedRows.of(wall("0,3712 4000,3715"), PITCH, trim);
    assertThat(full.value().straightRow()).contains(PITCH);
    assertStepsHold(full);
    // 11 of taper: 5 too much
    Calculated<TaperedRows> ripped = TaperedRows.of(wall("0,3630 4000,3619"), PITCH, trim);
    assertThat(ripped.value().rips()).containsExactly(new Rip(20, mm("0"), mm("4000"), mm("105"), mm("94")));
    assertThat(ripped.findings().get(0).message()).isEqualTo("the wall varies by 11 mm, the trim hides 6 mm of it: up to 5 mm has"
        + " to be ripped or scribed, or a trim is needed that reaches 25 mm over the floor");
    assertStepsHold(ripped);
  }

  @Test
  void taperSplitOverBothWallsIsHiddenByBothTrims() {
    TrimCover trim = new TrimCover(mm("20"), mm("4"), GAP);
    Calculated<Length> each = trim.toSawAtEachOfTwo(mm("11"));
    assertThat(each.value()).isEqualTo(Length.ZERO);
    assertThat(each.steps().get(0).result()).isEqualTo(mm("5.5"));
    assertStepsHold(each);
    // 1 in over both, 1/2 in each: 12.7 - 6
    assertThat(trim.toSawAtEachOfTwo(mm("25.4")).value()).isEqualTo(mm("6.7"));
    assertStepsHold(trim.toSawAtEachOfTwo(mm("25.4")));
  }

  @Test
  void wallOfAnOutlineSeenFromALine() {
    // a room 4 m wide whose far wall, walls 3 and 4, bends at 2500,3620 from 3600 to 3590; walked with the room on the left
    Outline room = Outline.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0), Point.ofMillimetres(4000, 3600),
        Point.ofMillimetres(2500, 3620), Point.ofMillimetres(0, 3590)));
    WallFace face = WallFace.of(room, 3, 4, Point.ofMillimetres(4000, 100), Point.ofMillimetres(0, 100));
    assertThat(face.offsets()).containsExactly(new Offset(mm("0"), mm("3500")), new Offset(mm("1500"), mm("3520")),
        new Offset(mm("4000"), mm("3490")));
    assertThat(face.nearest().at()).isEqualTo(mm("4000"));
    assertThat(face.farthest().at()).isEqualTo(mm("1500"));
    assertThat(face.variation()).isEqualTo(mm("30"));
    // seen along a line at 3 : 4, places and distances of a 3-4-5 triangle: corner (4000, 3600) is 3200 + 2160 along, 2400 - 2880 off
    WallFace slanted = WallFace.of(room, 2, 2, Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 3000));
    assertThat(slanted.offsets()).containsExactly(new Offset(mm("3200"), mm("2400")), new Offset(mm("5360"), mm("-480")));
  }

  @Test
  void wallsThatCannotBeAreRefused() {
    assertThatThrownBy(() -> WallFace.of(List.of(new Offset(GAP, GAP))))
        .hasMessage("the face of a wall needs distances at two places at least, but has 1");
    assertThatThrownBy(() -> wall("0,1 1000,2 1000,3")).hasMessage("the places along the line must rise, but 1000 mm is followed by"
        + " 1000 mm; give each place once, in order");
    assertThatThrownBy(() -> BOWED.distanceAt(mm("4001"))).hasMessage("the wall was measured from 0 mm to 4000 mm, but 4001 mm was"
        + " asked for");
    Outline room = Outline.of(Ring.of(Point.ofMillimetres(0, 0), Point.ofMillimetres(4000, 0), Point.ofMillimetres(4000, 3600)));
    assertThatThrownBy(() -> WallFace.of(room, 0, 1, Point.ofMillimetres(0, 0), Point.ofMillimetres(1, 0)))
        .hasMessage("the room has walls 1 to 3, but 0 to 1 were asked for");
    assertThatThrownBy(() -> WallFace.of(room, 1, 1, Point.ofMillimetres(0, 0), Point.ofMillimetres(0, 0)))
        .hasMessageContaining("two different points");
    assertThatThrownBy(() -> TaperedRows.of(wall("0,10 1000,20"), PITCH, GAP)).hasMessage("at 0 mm the wall is 10 mm from the line,"
        + " no more than the gap of 10 mm; take a line that is farther from it");
    assertThatThrownBy(() -> TaperedRows.of(wall("0,20 1000,20020"), mm("1"), GAP)).hasMessageContaining("more than 10000 rows");
    assertThatThrownBy(() -> new TrimCover(mm("12"), mm("3"), GAP)).hasMessage("a trim that reaches 12 mm over the floor does not"
        + " cover a gap of 10 mm and rest on 3 mm of the boards; take a wider one");
  }

  @Provide
  Arbitrary<WallFace> walls() {
    return Combinators.combine(Arbitraries.integers().between(1, 40), Arbitraries.integers().between(30, 200))
        .as((step, distance) -> new int[] {step, distance}).list().ofMinSize(2).ofMaxSize(6).map(parts -> {
          List<Offset> offsets = new ArrayList<>();
          long at = 0;
          for (int[] part : parts) {
            at += part[0] * 1000L;
            offsets.add(new Offset(nm(at), nm(part[1] * 1000L)));
          }
          return WallFace.of(offsets);
        });
  }

  /** At every place the rows laid and what is left of the ripped one reach the wall less the gap. */
  @Property
  void rowsAndRipsReachTheWall(@ForAll("walls") WallFace wall, @ForAll @IntRange(min = 5, max = 60) int pitch,
      @ForAll @IntRange(max = 20) int gap) {
    long p = pitch * 1000L;
    long g = gap * 1000L;
    Calculated<TaperedRows> rows = TaperedRows.of(wall, nm(p), nm(g));
    if (rows.value().rips().isEmpty()) {
      assertThat(wall.variation()).isEqualTo(Length.ZERO);
      return;
    }
    assertStepsHold(rows);
    for (Rip rip : rows.value().rips()) {
      for (int tenth = 0; tenth <= 10; tenth++) {
        long x = rip.from().toNanometres() + (rip.to().toNanometres() - rip.from().toNanometres()) * tenth / 10;
        double share = rip.to().equals(rip.from()) ? 0
            : (double) (x - rip.from().toNanometres()) / (rip.to().toNanometres() - rip.from().toNanometres());
        double width = rip.widthFrom().toNanometres() + share * (rip.widthTo().toNanometres() - rip.widthFrom().toNanometres());
        // places are whole nanometres: a wall as steep as 170 in 1 moves by so much over half of one
        assertThat((rip.row() - 1) * p + width).isBetween(wall.distanceAt(nm(x)).toNanometres() - g - 200.0,
            wall.distanceAt(nm(x)).toNanometres() - g + 200.0);
        assertThat(width).isBetween(0.0, (double) p);
      }
    }
  }

  /** Along the wall each rip begins where the one before it ended, but for parts along a row line. */
  @Property
  void ripsFollowOneAnother(@ForAll("walls") WallFace wall, @ForAll @IntRange(min = 5, max = 60) int pitch) {
    List<Rip> rips = TaperedRows.of(wall, nm(pitch * 1000L), Length.ZERO).value().rips();
    for (int i = 1; i < rips.size(); i++) {
      assertThat(rips.get(i).from()).isGreaterThanOrEqualTo(rips.get(i - 1).to());
    }
    if (wall.offsets().stream().noneMatch(offset -> offset.distance().remainder(nm(pitch * 1000L)).isZero())) {
      assertThat(rips.get(0).from()).isEqualTo(wall.offsets().get(0).at());
      assertThat(rips.get(rips.size() - 1).to()).isEqualTo(wall.offsets().get(wall.offsets().size() - 1).at());
    }
  }

  /** What is left of a board and what is hidden never comes nearer to the wall than the gap, nor farther than the trim hides. */
  @Property
  void scribedEdgeStaysBeneathTheTrim(@ForAll("walls") WallFace wall, @ForAll @IntRange(max = 30) int span,
      @ForAll @IntRange(max = 20) int gap) {
    TrimCover trim = new TrimCover(nm((span + gap + 1) * 1000L), nm(1000), nm(gap * 1000L));
    Calculated<Scribe> scribe = Scribe.of(wall, nm(300_000), nm(1000), trim);
    assertStepsHold(scribe);
    assertThat(scribe.value().depths()).allSatisfy(depth -> {
      Length edge = depth.width().minus(scribe.value().rowLine());
      Length left = wall.distanceAt(depth.at()).minus(edge);
      assertThat(left).isBetween(trim.leastGap(), trim.leastGap().plus(trim.span()));
    });
  }
}
