package floorcalc.examples.explain;

import static floorcalc.examples.explain.Explained.explained;
import static floorcalc.examples.explain.Explained.refused;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ExplainCommandTest {
  /** The line across is sqrt(3500² + 4000²) = 5315.07 long, the corner 3500 x 4000 / 5315.07 = 2634.02 behind it; to the left it is 2500. */
  @Test
  void bays() {
    String text = explained("bays", "--outline", "0,0 6000,0 6000,3000 2500,3000 2500,7000 0,7000");
    assertThat(text).contains("= 2634.018431 mm  [definition]").contains("length-of-breaks").contains("  = 2500 mm  [definition]")
        .contains("\n2 bays, no shorter breaks along the lines tried\n  bay 1: 18 m²").doesNotContain("serious:");
    assertThat(explained("bays", "--outline", "0,0 4000,0 4000,3000 0,3000")).endsWith("1 bay\n  bay 1: 12 m², (0 mm, 0 mm), (4000 mm, 0 mm),"
        + " (4000 mm, 3000 mm), (0 mm, 3000 mm)\n");
  }

  @Test
  void baysWithDoorwaysAndOtherLimits() {
    String[] twoRooms = {"bays", "--outline", "0,0 4000,0 4000,400 4100,400 4100,0 8000,0 8000,4000 4100,4000 4100,3600 4000,3600"
        + " 4000,4000 0,4000", "--opening", "4050,400 4050,3600"};
    assertThat(explained(twoRooms)).contains("doorway 1: the rules ask for a break at each doorway").contains("= 3200 mm");
    // Both reveals are 400 deep: up to 500 needs no break.
    assertThat(explained(with(twoRooms, "--run-through"))).contains("\n1 bay\n");
    assertThat(explained(with(twoRooms, "--run-through", "--recess", "300", "--void", "900"))).contains("\n2 bays");
    assertThat(explained(with(twoRooms, "--run-through", "--along", "4 m", "--across", "4 m"))).contains("long along the boards");
    assertThat(refused("bays", "--outline", "0,0 4000,0 4000,3000 0,3000", "--opening", "0,0"))
        .contains("found [0,0] with 1 places; a doorway has two sides");
    assertThat(refused("bays", "--outline", "0,0 4000,0 4000,3000 0,3000", "--opening", "10,10 20,20")).contains("must end on walls");
  }

  private static String[] with(String[] args, String... more) {
    String[] all = java.util.Arrays.copyOf(args, args.length + more.length);
    System.arraycopy(more, 0, all, args.length, more.length);
    return all;
  }

  /** 12 ft 7 5/8 in = (144 + 7.625) x 25.4 mm = 3851.275 mm. */
  @Test
  void length() {
    String text = explained("length", "12' 7 5/8\"");
    assertThat(text).contains("L = 3851.275 mm").contains("  = 3.851275 m  [definition]").contains("  = 151 5/8\"  [definition]")
        .contains("  = 12' 7 5/8\"  [definition]").contains("quoted by another");
  }

  /** 3600 mm of 185 mm: 19 rows are 3515 mm, 85 mm are left, more than 70 mm. */
  @Test
  void rows() {
    String text = explained("rows", "--width", "3.6 m", "--pitch", "185");
    assertThat(text).contains("= 20").contains("85 mm");
  }

  @Test
  void rowsBalanced() {
    // 3600 - 18 x 185 = 270 mm for the first and the last row: 135 mm each
    assertThat(explained("rows", "--width", "3600", "--pitch", "185", "--way", "balanced")).contains("135 mm");
  }

  @Test
  void findingsFollowTheWorking() {
    assertThat(explained("rows", "--width", "150 mm", "--pitch", "185")).contains("\nnote: the floor is one row");
  }

  /** 10 boards measure 1853 mm where 1850 mm are nominal: 0.3 mm a row, 6 mm in 20 rows. */
  @Test
  void drift() {
    assertThat(explained("drift", "--width", "185", "--stack", "1853", "--boards", "10", "--rows", "20")).contains("= 6 mm");
  }

  /** 4 m by 3 m: 12 m² less 14 m x 0.01 m, plus 4 x 0.01² m²: 11.8604 m². */
  @Test
  void gapFromCornersAndFromWellKnownText() {
    String corners = explained("gap", "--outline", "0,0 4000,0 4000,3000 0,3000");
    assertThat(corners).contains("= 14000 mm").contains("= 11.8604 m²").contains("= 0.1396 m²");
    assertThat(explained("gap", "--outline", "0,0 4m,0 4m,3m 0,3m", "--gap", "1 cm")).isEqualTo(corners);
    assertThat(explained("gap", "--outline", "POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))")).isEqualTo(corners);
  }

  /** The nearest are 2200 and 2050: 150 mm. */
  @Test
  void widthsOfARoom() {
    String text = explained("widths", "--outline", "0,0 4000,0 4000,3000 0,3000");
    assertThat(text).contains("widest-circle: ", "w = 2 * min(d1, d2)", "  = 3000 mm", "least-width: ");
    assertThat(text).doesNotContain("warning");
  }

  @Test
  void spreadOfJoints() {
    String text = explained("joints", "--row", "1100", "--row", "0,2200", "--board", "2200");
    // Sorted 0, 0, 1100 of 2200: off by 1/6, 3/6 and 5/6 - 1/2; D = 1/6 + 1/2.
    assertThat(text).contains("joint-spread: ").contains("D = 1 / (2 * n) + abs(x / L - (2 * i - 1) / (2 * n))").contains("= 0.666666666667");
  }

  @Test
  void joints() {
    String text = explained("joints", "--row", "2200,4400", "--row", "850,2050", "--row", "");
    assertThat(text).contains("= 150 mm").contains("warning: row 1: end joints at 2200 mm and, in row 2, at 2050 mm");
  }

  /** 57 boards, 2 % are 1.14, so 2 spare: 59 boards are 10 packs of 6. */
  @Test
  void packs() {
    assertThat(explained("packs", "--boards", "57", "--per-pack", "6")).contains("  = 2  [").contains("  = 10  [");
  }

  /** Each 1290 mm has a bar of its own, as 1290 + 3 + 1290 = 2583 mm; 2400 - 1290 - 3 - 520 - 3 = 584 mm. */
  @Test
  void trims() {
    String text = explained("trims", "--piece", "3 x 1290, long wall", "--piece", "520, niche", "--bar", "2400");
    assertThat(text).contains("bars-by-long-pieces: ").endsWith("""
        cut list: 3 bars, 3 of them bought, proven to be the least; 4 cuts
          1: 2400 mm gives 1290 mm (long wall) + 520 mm (niche), left 584 mm
          2 to 3: 2400 mm gives 1290 mm (long wall), left 1107 mm
        """);
  }

  /** 2 x 1500 mm: one bar of 3000 mm at 12.50 is less than two of 2400 mm at 7.80 = 15.60 EUR. */
  @Test
  void trimsAtAPriceAndFromWhatIsOnHand() {
    assertThat(explained("trims", "--piece", "2 x 1500", "--bar", "2400, 7.80 EUR", "--bar", "3 m, 12.50 EUR", "--kerf", "0"))
        .contains("cut list: 1 bar, 1 of them bought, proven to be the least; 1 cut; 12.50 EUR");
    assertThat(explained("trims", "--piece", "1290", "--bar", "5 x 2400", "--on-hand", "2 x 1300"))
        .endsWith("cut list: 1 bar, 0 of them bought, proven to be the least; 1 cut\n"
            + "  1: 1300 mm on hand gives 1290 mm, left 7 mm\n");
  }

  /** 5000 mm of bars of 2400 mm: 200 mm would be left for the third part, so it gets 600 and the second 2000 mm. */
  @Test
  void trimsOfLongWalls() {
    String text = explained("trims", "--piece", "5 m, hall", "--bar", "2400", "--least-part", "600");
    assertThat(text).contains("k = ceil(W / (P - a))").contains("2000 mm (hall, part 2 of 3)");
    assertThat(refused("trims", "--piece", "5 m, hall", "--bar", "2400"))
        .contains("piece 'hall' is 5000 mm long with its allowance, the longest bar is 2400 mm");
  }

  @Test
  void trimsWronglyTyped() {
    assertThat(refused("trims", "--piece", "1290")).contains("give --bar or --on-hand");
    assertThat(refused("trims", "--piece", ",", "--bar", "2400")).contains("found [,]");
    assertThat(refused("trims", "--piece", "3 x wall", "--bar", "2400")).contains("--piece");
    assertThat(refused("trims", "--piece", "1290", "--bar", "2400, cheap")).contains("write it as 7.80 EUR");
    assertThat(refused("trims", "--piece", "1290", "--on-hand", "1300, 2 EUR")).contains("neither price nor name");
    assertThat(refused("trims", "--piece", "0 x 1290", "--bar", "2400")).contains("must be at least 1, but was 0");
  }

  /** Published: 9.27 % at 20 °C and 50 %; 8 % there at 41.83 %. */
  @Test
  void moistureContent() {
    assertThat(explained("moisture-content", "--temperature", "20 °C", "--humidity", "50"))
        .contains("W = 349 + 1.29 * T + 0.0135 * T * T").contains("  = 9.2711 %  [Wood Handbook");
    assertThat(explained("moisture-content", "--temperature", "20C", "--moisture", "8 %"))
        .startsWith("humidity-in-balance: ").contains("  = 41.8292 %");
    assertThat(explained("moisture-content", "--temperature", "20 °C", "--humidity", "97"))
        .contains("\nwarning: air of 20 °C and 97 % relative humidity is beyond the range");
    assertThat(refused("moisture-content", "--temperature", "20 °C")).contains("--humidity");
    assertThat(refused("moisture-content", "--temperature", "20", "--humidity", "50")).contains("write it as 21 °C or 70 °F");
    assertThat(refused("moisture-content", "--temperature", "20 C", "--humidity", "half")).contains("found [half]");
    assertThat(refused("moisture-content", "--temperature", "20 C", "--humidity", "101")).contains("from 0 % to 100 %");
  }

  /** 5 in of red oak, 6 to 9 %: 0.05535 in = 1.40589 mm. 185 mm at 0.03 %, 9 to 7 %: -0.111 mm. */
  @Test
  void movement() {
    assertThat(explained("movement", "--width", "5 in", "--wood", "red oak", "--from", "6", "--to", "9"))
        .contains("  = 1.40589 mm  [");
    assertThat(explained("movement", "--width", "185", "--percent", "0.03", "--from", "9", "--to", "7"))
        .contains("  = -0.111 mm  [");
    // 0.00158 * 127 * 3 = 0.60198
    assertThat(explained("movement", "--width", "5 in", "--wood", "red oak", "--grain", "quarter-sawn", "--from", "6", "--to",
        "9")).contains("  = 0.60198 mm  [");
    assertThat(refused("movement", "--width", "1 m", "--wood", "oak", "--from", "6", "--to", "9"))
        .contains("there is no wood 'oak' in any table; near it are: ");
    assertThat(refused("movement", "--width", "1 m", "--wood", "red oak", "--grain", "any", "--from", "6", "--to", "9"))
        .contains("must be one of flat-sawn, quarter-sawn, mixed");
    assertThat(refused("movement", "--width", "1 m", "--from", "6", "--to", "9")).contains("--wood");
  }

  /** 8000 * 0.0003 * 3 = 7.2 mm, half of it 3.6; with 3 mm: 2 * 3 / 0.0009 = 6666.67 mm, 2 bays. */
  @Test
  void movementGap() {
    assertThat(explained("movement-gap", "--width", "8 m", "--percent", "0.03", "--now", "8", "--dampest", "11", "--gap", "3"))
        .contains("  = 3.6 mm  [").contains("  = 6666.666666 mm  [").contains("bays: ").contains("leave 4 mm on each side");
    assertThat(explained("movement-gap", "--width", "8 m", "--percent", "0.03", "--now", "8", "--dampest", "11", "--one-side"))
        .contains("  = 7.2 mm  [").doesNotContain("warning");
    assertThat(explained("movement-gap", "--width", "8 m", "--percent", "0.03", "--now", "11", "--dampest", "8"))
        .contains("  = 0 mm  [");
  }

  @Test
  void rules() {
    assertThat(explained("rules", "--thickness", "15", "--width", "185"))
        .contains("minimumEndPiece: ").contains("  = 500 mm  [common practice, no source]");
    assertThat(refused("rules", "--thickness", "15", "--width", "185", "--set", "nobody's")).contains("the sets are: 'common practice'");
  }

  @Test
  void wrongValuesAreRefusedWithWhatIsAllowed() {
    assertThat(refused("rows", "--width", "3,2 m", "--pitch", "185")).contains("write the decimal sign as a point");
    assertThat(refused("rows", "--width", "-1", "--pitch", "185")).contains("-1 mm");
    assertThat(refused("rows", "--pitch", "185")).contains("--width");
    assertThat(refused("rows", "--width", "1 m", "--pitch", "185", "--way", "best"))
        .contains("found [best]; must be one of as-needed, least-cut, balanced, widest-strip, fewest-boards");
    assertThat(refused("gap", "--outline", "0,0 4000,3000 4000,0 0,3000")).contains("walls 1 and 3 cross");
    assertThat(refused("gap", "--outline", "0 0 4000 0")).contains("found [0] as a corner");
    assertThat(refused("gap", "--outline", "POLYGON ((0 0, 1 0")).contains("--outline");
    assertThat(refused("drift", "--width", "185", "--stack", "1853", "--boards", "0", "--rows", "20"))
        .contains("--boards must be at least 1, but was 0");
    assertThat(refused("packs", "--boards", "57", "--per-pack", "0")).contains("must be at least 1, but was 0");
    assertThat(refused()).startsWith("say what to explain: ");
  }
}
