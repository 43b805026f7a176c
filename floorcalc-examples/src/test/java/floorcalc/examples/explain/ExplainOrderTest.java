package floorcalc.examples.explain;

import static floorcalc.examples.explain.Explained.explained;
import static floorcalc.examples.explain.Explained.refused;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Underlay, skirting and cost on the command line; the sums stand in RollOrderTest, TrimRunsTest and CostSheetTest. */
class ExplainOrderTest {
  /** Four strips of 4200, three to a roll of 15 m; seams 3 * 4200, walls 15 600. */
  @Test
  void underlay() {
    assertThat(explained("underlay", "--room", "Study: 0,0 4200,0 4200,3600 0,3600", "--roll-width", "1000", "--roll-length",
        "15 m")).contains("1: Study, strip 1 4200 mm + Study, strip 2 4200 mm + Study, strip 3 4200 mm, left 2400 mm")
        .endsWith("seams: 12600 mm, edges: 15600 mm\n");
    // five strips of 3600 in the other direction
    assertThat(explained("underlay", "--room", "Study: 0,0 4200,0 4200,3600 0,3600", "--roll-width", "1000", "--roll-length",
        "15 m", "--direction", "90")).contains("= 18000 mm");
    // by a named source, or as given
    assertThat(explained("underlay", "--room", "Study: 0,0 4200,0 4200,3600 0,3600", "--roll-width", "2000", "--roll-length",
        "25 m", "--overlap", "NWFA magazine", "--upturn", "50")).contains("o = 101.6 mm").contains("u = 50 mm");
    assertThat(explained("underlay", "--room", "Study: 0,0 4200,0 4200,3600 0,3600", "--roll-width", "2000", "--roll-length",
        "25 m", "--overlap", "8 in")).contains("o = 203.2 mm");
    assertThat(refused("underlay", "--room", "Study: 0,0 4200,0 4200,3600 0,3600", "--roll-width", "2000", "--roll-length",
        "25 m", "--overlap", "3 m")).contains("an overlap must be from 0 mm to 1000 mm");
  }

  /** 14 000 less 900; six bars of 2400, see TrimRunsTest. */
  @Test
  void skirting() {
    String room = "0,0 4000,0 4000,3000 0,3000";
    assertThat(explained("skirting", "--outline", room, "--opening", "1000,0 1900,0", "--bar", "2400"))
        .contains("= 13100 mm").contains("room, wall 1: 1000 mm, 985 mm, 1000 mm; from inside corner, saw at 45° to opening")
        .contains("2400 mm: 2100 mm (room, wall 1), left 297 mm");
    assertThat(explained("skirting", "--outline", room, "--bar", "5 m", "--scribed", "--thickness", "20"))
        .contains("room, wall 1: 4000 mm, 3980 mm, 4000 mm");
    assertThat(explained("skirting", "--outline", room, "--opening", "1000,50 1900,50", "--bar", "5 m"))
        .contains("warning: room: opening 'opening 1'");
    assertThat(refused("skirting", "--outline", room, "--bar", "50")).contains("length of a bar must be from 100 mm");
  }

  /** 19 * 118.40 = 2249.60; 50.25 * 1.105 = 55.52625; together 2305.12625. */
  @Test
  void cost() {
    assertThat(explained("cost", "--line", "19 x 118.40 EUR, packs of boards", "--line", "50.25 x 1.105 EUR, film"))
        .contains("= 55.52625 EUR").contains("= 2305.13 EUR");
    assertThat(refused("cost", "--line", "19 packs")).contains("write a line as \"19 x 118.40 EUR, packs of boards\"");
  }
}
