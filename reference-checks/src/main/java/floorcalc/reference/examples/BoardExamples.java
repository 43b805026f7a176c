package floorcalc.reference.examples;

import static floorcalc.reference.examples.Printed.in;

import floorcalc.bays.RectanglePartition;
import floorcalc.measure.Length;
import floorcalc.outline.ExpansionGap;
import floorcalc.outline.Outline;
import floorcalc.outline.Wkt;
import floorcalc.reference.check.Expected;
import floorcalc.reference.data.DataRow;
import floorcalc.reference.examples.WorkedExample.Maker;
import floorcalc.trims.TrimCutting;
import floorcalc.trims.TrimPiece;
import floorcalc.trims.TrimStock;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** Cutting and geometry. */
final class BoardExamples {
  private static final String CUTTING = "csp_textbook.csv";

  private BoardExamples() {}

  static List<WorkedExample> all() {
    return List.of(bars("small-cutting-list", "How many bars of 10 does a small cutting list take?", "CSP_MiniZinc",
            "Read as metres here. The sum alone asks for 4 bars, since 36 do not fit into three."),
        bars("reels", "How many reels does a list take whose sum says too little?", "CSP_paper4",
            "The sum of all pieces asks for 73 reels, but 77 are needed and proven: the bound by prices sees that much of what is left over is too short."),
        leftover(), gap(), rectangles());
  }

  private static WorkedExample bars(String name, String title, String id, String remark) {
    DataRow row = Printed.row(CUTTING, "name", id);
    Maker maker = new Maker(name, title, row.text("source"), "Bars of " + row.text("stock") + "; pieces, number × length: " + row.text("demand") + ". No saw kerf.");
    List<TrimPiece> pieces = new ArrayList<>();
    for (String demand : row.text("demand").split(" ")) {
      String[] parts = demand.split("x");
      pieces.add(TrimPiece.of("", Printed.metres(parts[1])).times(Integer.parseInt(parts[0])));
    }
    TrimCutting cutting = maker.shown(TrimCutting.of(pieces, List.of(TrimStock.sold(Printed.metres(row.text("stock")))), Length.ZERO));
    return maker.figure(Expected.exactly("fewest bars", row.text("optimum")), BigDecimal.valueOf(cutting.bars().size()), Printed.APART)
        .figure(Expected.exactly("no way needs fewer than", row.text("optimum")), BigDecimal.valueOf(cutting.leastBarsBought()), Printed.APART)
        .done(remark);
  }

  private static WorkedExample leftover() {
    DataRow row = Printed.row("usable_leftover_constructed.csv", "id", "UL1");
    Maker maker = new Maker("longest-leftover", "Which way leaves the longest single leftover?", Printed.source("usable_leftover_constructed.csv"),
        "Boards of " + row.text("board") + " mm; pieces of " + row.text("pieces").replace(" ", ", ") + " mm. No saw kerf.");
    List<TrimPiece> pieces = new ArrayList<>();
    for (String length : row.text("pieces").split(" ")) {
      pieces.add(TrimPiece.of("", Length.ofMillimetres(length)));
    }
    TrimCutting cutting = maker.shown(TrimCutting.of(pieces, List.of(TrimStock.sold(Length.ofMillimetres(row.text("board")))), Length.ZERO));
    return maker.figure(Expected.exactly("boards", row.text("min_boards")), BigDecimal.valueOf(cutting.bars().size()), Printed.CONSTRUCTED)
        .figure(Expected.exactly("longest leftover [mm]", row.text("max_single_leftover")), in(cutting.longestLeftover(), "mm"), Printed.CONSTRUCTED)
        .done("Fewest boards come first; among all ways with as few, the one that leaves the longest usable part.");
  }

  private static WorkedExample gap() {
    Maker maker = new Maker("gap-in-an-l-room", "How much floor does the expansion gap take from an L-shaped room?",
        "A definition: A(d) = A - P d + d² Σ cot(θ/2), and Σ cot(θ/2) = 4 in every room of right angles without a column",
        "An L of 4 by 3 m without a part of 2 by 1 m; a gap of 10 mm.");
    Outline room = Wkt.parse("POLYGON ((0 0, 4000 0, 4000 2000, 2000 2000, 2000 3000, 0 3000, 0 0))");
    ExpansionGap inset = maker.shown(ExpansionGap.inset(room, Length.ofMillimetres(10)));
    // A = 4 * 3 - 2 * 1 = 10 m2, P = 14 m: 10 - 14 * 0.01 + 4 * 0.0001 = 9.8604 m2.
    return maker.figure(Expected.exactly("laid area [m²]", "9.8604"), SurveyExamples.squareMetres(inset.laidArea()), Printed.CONSTRUCTED)
        .done("A = 10 m², P = 14 m: 10 − 14 × 0.01 + 4 × 0.01² = 9.8604 m².");
  }

  private static WorkedExample rectangles() {
    DataRow row = Printed.row("rectilinear_partition.csv", "shape", "T");
    Maker maker = new Maker("rectangles-of-a-t-room", "Into how few rectangles can a T-shaped room be parted?", Printed.source("rectilinear_partition.csv"),
        "Corners in metres: " + row.text("wkt") + ".");
    RectanglePartition partition = maker.shown(RectanglePartition.of(Wkt.parse(row.text("wkt").replaceAll("(\\d+)", "$1000"))));
    return maker.figure(Expected.exactly("rectangles", row.text("min_rectangles")), BigDecimal.valueOf(partition.rectangles()), Printed.CONSTRUCTED)
        .done("N = n/2 + h − g − 1, with n corners, h voids and g chords between inner corners that do not meet: 8/2 + 0 − 1 − 1 = 2.");
  }
}
