package floorcalc.examples.explain;

import static floorcalc.examples.explain.Explained.explained;
import static floorcalc.examples.explain.Explained.refused;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Calculations on measured rooms, typed. */
class ExplainSurveyTest {
  /** sqrt(938.4375) = 30.633927... m² on a circle; sqrt(14.4375) = 3.799671... m² folded. */
  @Test
  void areaRange() {
    assertThat(explained("area-range", "--walls", "4 m, 5 m, 8 m, 6 m"))
        .contains("greatest-area: ", "\nwarning: the walls alone leave the area open", "\narea: 3.799671 m² to 30.633928 m²")
        .endsWith("diagonal 1-3: 2000 mm to 9000 mm\ndiagonal 2-4: 3000 mm to 10000 mm\n");
    // 20 cos 2° = 19.98781...
    assertThat(explained("area-range", "--walls", "5 m,4 m,5 m,4 m", "--within", "2")).contains("\narea: 19.987816 m² to 20 m²");
    assertThat(refused("area-range", "--walls", "9 m,2 m,3 m,4 m")).contains("so the room does not close");
  }

  /** A half circle of 6 ft: 18 pi sq ft = 5.253543 m². */
  @Test
  void arc() {
    assertThat(explained("arc", "--chord", "12 ft", "--rise", "6 ft")).contains("= 5.253543 m²").contains("= 1828.8 mm");
    assertThat(refused("arc", "--chord", "12 ft", "--rise", "0")).contains("an arc without a rise is a straight wall");
  }

  @Test
  void squareness() {
    assertThat(explained("squareness", "--outline", "0,0 5000,0 5060,4000 0,4000"))
        .contains("\ncorner 2: 0.859 degrees more than square, 60.0 mm over 4000.4 mm\n");
    assertThat(explained("squareness", "--walls", "4 m,3 m,4 m,3 m", "--diagonals", "5 m,5002", "--tolerance", "3 mm"))
        .contains("\nnote: opposite walls are equal and so are the diagonals to within 3 mm");
    assertThat(refused("squareness")).contains("give either --outline, or --walls with four lengths and --diagonals with two");
    assertThat(refused("squareness", "--walls", "4 m,3 m,4 m,3 m")).contains("give either --outline");
    assertThat(refused("squareness", "--walls", "4 m,3 m,4 m,3 m", "--diagonals", "5 m")).contains("give either --outline");
  }

  /** 10 mm on a way of 18010 mm: 1 in 1801. */
  @Test
  void traverse() {
    assertThat(explained("traverse", "--walls", "5000,4000,5010,4000")).contains("  = 1801  [definition]",
        "where 1 in 2000 is asked for", "\ncorners: (0 mm, 0 mm), (5002.776235 mm, 0 mm)");
    assertThat(explained("traverse", "--walls", "5000,4000,5010,4000", "--turns", "90-00-00,90,90", "--limit", "1000"))
        .doesNotContain("warning");
    assertThat(refused("traverse", "--walls", "5000,4000,5010,4000", "--turns", "90,x,90")).contains("cannot read [x] as an angle");
  }

  /** 92 1/4 in less 55 5/8 in is 36 5/8 in. */
  @Test
  void running() {
    assertThat(explained("running", "--feet", "--readings", "4' 7 5/8\",7' 8 1/4\"", "--overall", "7' 9 1/4\""))
        .contains("read 1 in too short").endsWith("2: 2343.15 mm = 7' 8 1/4\", part 930.275 mm = 3' 0 5/8\"\n");
    assertThat(explained("running", "--readings", "1210,2140")).doesNotContain("warning").contains("= 930 mm");
    assertThat(refused("running", "--readings", "3210,3120")).contains("readings off one tape only grow");
  }
}
