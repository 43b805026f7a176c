package floorcalc.examples.explain;

import static floorcalc.examples.explain.Explained.explained;
import static floorcalc.examples.explain.Explained.refused;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Heights, transitions and risers on the command line. */
class ExplainEdgesTest {
  /** 2 + 14 = 16; 16 + 1 = 17; 24 - 16 = 8, and 10 - 8 = 2. */
  @Test
  void heights() {
    assertThat(explained("heights", "--layer", "underlay: 2", "--layer", "board: 14", "--leaf", "24", "--limits", "UK ventilation"))
        .contains("= 16 mm").contains("= 17 mm").contains("= 8 mm").contains("= 2 mm")
        .contains("not met: space under the leaf, over the finished floor, by 'UK ventilation': 8 mm, at least 10 mm")
        .contains("  to do: 2 mm would have to come off the leaf").doesNotContain("common practice': 8 mm");
  }

  /** Nothing is cut: the height of the floor alone, and whom to ask. */
  @Test
  void fireDoorAndFrame() {
    assertThat(explained("heights", "--layer", "board: 14", "--fire-door", "--leaf", "18"))
        .contains("= 14 mm").contains("warning: a fire door: leave leaf, frame and casings").doesNotContain("undercut-height")
        .doesNotContain("come off");
    assertThat(explained("heights", "--layer", "board: 14", "--frame-stays")).contains("note: the frame cannot be cut")
        .doesNotContain("undercut-height");
  }

  /** 12 - 16 = -4: a reducer that falls to the floor beyond. 20 mm at 1:12 are 240 mm. */
  @Test
  void transition() {
    assertThat(explained("transition", "--edge", "same-floor", "--layer", "underlay:2", "--layer", "board:14", "--beyond",
        "adhesive:8", "--beyond", "tile:10", "--subfloor-beyond", "-6")).contains("= -4 mm")
        .contains("\nprofile: reducer, 4 mm lower beyond, falls to the floor beyond  [common practice, no source]");
    assertThat(explained("transition", "--edge", "same-floor", "--higher-by", "20", "--set", "ADA and ANSI"))
        .contains("= 240 mm").contains("a ramp of at least 240 mm is needed beside it");
  }

  /** Two right angles, 40 mm wide: 500 + 20, 1200 + 40, 500 + 20. */
  @Test
  void mitres() {
    assertThat(explained("transition", "--edge", "fixed-edge", "--higher-by", "0", "--along", "0,0 500,0 500,1200 0,1200"))
        .endsWith("""
            piece 1: 520 mm off the bar, 500 mm along its middle; sawn 0 and 45 degrees from square
            piece 2: 1240 mm off the bar, 1200 mm along its middle; sawn 45 and 45 degrees from square
            piece 3: 520 mm off the bar, 500 mm along its middle; sawn 45 and 0 degrees from square
            """);
  }

  /** 6 1/2 + 3/4 = 7 1/4, 7 3/4, 7 1/2 - 3/4 = 6 3/4: 1 in = 25.4 mm apart. */
  @Test
  void risers() {
    assertThat(explained("risers", "--riser", "6 1/2\"", "--riser", "7 x 7 3/4\"", "--riser", "7 1/2\"", "--treads", "3/4\""))
        .contains("= 25.4 mm").contains("serious: risers are 25.4 mm apart").contains("met: highest riser")
        .endsWith("Stairs are where people fall: the local building code comes first.\n");
  }

  @Test
  void refuses() {
    assertThat(refused("heights", "--layer", "14")).contains("write a name, a colon and the thickness");
    assertThat(refused("heights", "--layer", "board: -1")).contains("thickness of layer 'board' must be from 0 mm");
    assertThat(refused("transition", "--edge", "door", "--higher-by", "0"))
        .contains("must be one of same-floor, other-finish, fixed-edge, step, not-stated");
    assertThat(refused("transition", "--edge", "step")).contains("give either --higher-by, or the layers");
    assertThat(refused("transition", "--edge", "step", "--higher-by", "0", "--set", "mine"))
        .contains("the sets are: 'common practice', 'ADA and ANSI', 'NF DTU 51.11'");
    assertThat(refused("risers", "--riser", "0")).contains("riser 1 must be more than 0 mm");
  }
}
