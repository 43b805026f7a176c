package floorcalc.deviations;

import floorcalc.boards.Construction;
import floorcalc.measure.Area;
import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.math.BigDecimal;
import java.util.List;

/** What each source permits, one set for each. Nothing here is mixed from two sources. */
final class PublishedDeviations {
  private static final Length THREE_INCHES = Length.ofInches(3, 0, 1);
  private static final Length THREE_AND_A_QUARTER = Length.ofInches(3, 1, 4);
  private static final BigDecimal HALF = new BigDecimal("0.5");
  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  static final List<DeviationSet> ALL = List.of(unfinished(), factoryFinished(), multilayer(), floating(), nailed(), glued(), onEdge(),
      german(), snip());

  private PublishedDeviations() {}

  private static DeviationSet unfinished() {
    Source source = new Source("Unfinished solid strip and plank", "NWFA/NOFMA", 2009, "04.2009, as given in a copy", Standing.QUOTED);
    return DeviationSet.of("NWFA/NOFMA unfinished", "unfinished solid boards, 3/4 in thick", Stage.GOODS, List.of(
        DeviationLimit.atMost(Deviation.WIDTH, thousandths(10), source),
        DeviationLimit.atMost(Deviation.MATCH_POSITION, thousandths(8), source),
        DeviationLimit.atMost(Deviation.TONGUE_FIT, thousandths(16), source).andAtLeast(thousandths(3)),
        DeviationLimit.atMost(Deviation.OUT_OF_SQUARE, thousandths(16), source).withBeyond(5).forWidths(BoardWidths.under(THREE_INCHES)))).forBoards(Construction.SOLID);
  }

  /** Of two bounds with a share each, both are kept: "2 % of pieces at one, or 5 % at the other" is read as neither to be exceeded. */
  private static DeviationSet factoryFinished() {
    Source source = new Source("Factory finished solid wood flooring", "NWFA/NOFMA", 2011, "03.2011, as given in a copy", Standing.QUOTED);
    BoardWidths narrow = BoardWidths.upTo(THREE_AND_A_QUARTER);
    BoardWidths wide = BoardWidths.over(THREE_AND_A_QUARTER);
    return DeviationSet.of("NWFA/NOFMA factory finished", "factory finished solid boards", Stage.GOODS, List.of(
        DeviationLimit.atMost(Deviation.WIDTH, thousandths(5), source).forWidths(narrow),
        DeviationLimit.atMost(Deviation.WIDTH, thousandths(8), source).forWidths(wide),
        DeviationLimit.atMost(Deviation.OUT_OF_SQUARE, thousandths(31), source).withBeyond(2).forWidths(narrow),
        DeviationLimit.atMost(Deviation.OUT_OF_SQUARE, thousandths(16), source).withBeyond(5).forWidths(narrow),
        DeviationLimit.ofWidth(Deviation.OUT_OF_SQUARE, BigDecimal.ONE, source).withBeyond(2).forWidths(wide),
        DeviationLimit.ofWidth(Deviation.OUT_OF_SQUARE, HALF, source).withBeyond(5).forWidths(wide))).atMoisture(6, 10).forBoards(Construction.SOLID);
  }

  private static DeviationSet multilayer() {
    return DeviationSet.of("EN 13489", "multilayer parquet", Stage.GOODS, List.of(DeviationLimit.atMost(Deviation.LIPPING,
        Length.ofMillimetres("0.2"), new Source("EN 13489", "CEN", 0, "clause 4.5.2, as given by an expert of the trade",
            Standing.QUOTED)))).forBoards(Construction.ENGINEERED);
  }

  private static DeviationSet floating() {
    Source general = dtu("51.11", 2009, "9.1");
    Source panels = dtu("51.11", 2009, "9.4.1");
    Source bond = dtu("51.11", 2009, "9.4.2");
    return DeviationSet.of("NF DTU 51.11", "floating multilayer parquet as laid", Stage.LAID, List.of(
        DeviationLimit.atMost(Deviation.LIPPING, Length.ofMillimetres("0.2"), general),
        DeviationLimit.ofWidth(Deviation.CUPPING, HALF, general).andAtMost(Length.ofMillimetres("0.5")),
        DeviationLimit.atMost(Deviation.JOINT, mm(1), dtu("51.11", 2009, "9.3")),
        DeviationLimit.atMost(Deviation.CORNER_OFFSET, mm(2), panels).on("panels"),
        DeviationLimit.atMost(Deviation.JOINT_ALIGNMENT, mm(5), panels).on("panels"),
        DeviationLimit.atMost(Deviation.END_JOINT_LINE, mm(2), bond).on("in half bond"),
        DeviationLimit.atMost(Deviation.HALF_OFFSET, mm(3), bond).on("in half bond")));
  }

  private static DeviationSet nailed() {
    Source joints = dtu("51.1", 2010, "7.5.1");
    return DeviationSet.of("NF DTU 51.1", "nailed solid parquet as laid", Stage.LAID, List.of(
        DeviationLimit.ofWidth(Deviation.CUPPING, HALF, dtu("51.1", 2010, "7.4")).andAtMost(Length.ofMillimetres("0.5"))
            .on("after finishing"),
        DeviationLimit.ofWidth(Deviation.JOINT, TWO, joints).andAtMost(mm(2)),
        DeviationLimit.ofWidth(Deviation.PANEL_JOINT, HALF, joints).on("panels"))).atMoisture(9, 9);
  }

  /** At least 95 % of the readings of a room within limits, none beyond twice the limit; but a single joint of strips has its own bound. */
  private static DeviationSet glued() {
    Length strip = mm(25);
    Length broad = mm(140);
    Source strips = dtu("51.2", 2020, "7.2.1, share by clause 7.1");
    return DeviationSet.of("NF DTU 51.2", "glued parquet as laid, room by room", Stage.LAID, List.of(
        share(DeviationLimit.ofWidth(Deviation.JOINT, TWO, strips).asMeanOf(5).forWidths(BoardWidths.upTo(strip))),
        DeviationLimit.ofWidth(Deviation.JOINT, BigDecimal.valueOf(4), strips).forWidths(BoardWidths.upTo(strip)),
        share(DeviationLimit.ofWidth(Deviation.JOINT, TWO, dtu("51.2", 2020, "7.2.2, share by clause 7.1")).andAtMost(mm(2))
            .forWidths(BoardWidths.between(strip, broad))),
        share(DeviationLimit.atMost(Deviation.JOINT, mm(3), dtu("51.2", 2020, "7.2.3, share by clause 7.1"))
            .forWidths(BoardWidths.over(broad)).on("solid wood"))));
  }

  private static DeviationSet onEdge() {
    return DeviationSet.of("NF DTU 51.2 on edge", "glued strips on edge as laid, room by room", Stage.LAID,
        List.of(share(DeviationLimit.atMost(Deviation.JOINT, mm(1), dtu("51.2", 2020, "7.2.4, share by clause 7.1")))));
  }

  private static DeviationLimit share(DeviationLimit limit) {
    return limit.withBeyond(5).withNoneBeyond(2);
  }

  private static DeviationSet german() {
    return DeviationSet.of("German parquet industry", "parquet over the year: joints from 0.1 mm to 0.5 mm are regarded as normal", Stage.LAID,
        List.of(DeviationLimit.atMost(Deviation.JOINT, Length.ofMillimetres("0.5"), new Source("Raumklima und Holzfeuchte",
            "Verband der deutschen Parkettindustrie", 0, "page on the climate of rooms and the moisture of wood", Standing.QUOTED))
            .on("over the year")));
  }

  /** The source asks for 5 readings for each 50 to 70 square metres; the larger area, which asks for fewer, is taken. */
  private static DeviationSet snip() {
    return DeviationSet.of("SNiP 3.04.01", "parquet boards and panels as laid", Stage.LAID, List.of(
        DeviationLimit.atMost(Deviation.JOINT, Length.ofMillimetres("0.5"), new Source("SNiP 3.04.01-87", "", 1987,
            "Table 25, as restated on a page", Standing.QUOTED)))).asking(5, Area.ofSquareMetres("70"));
  }

  private static Source dtu(String number, int year, String clause) {
    return new Source("NF DTU " + number + " P1-1", "AFNOR", year, "clause " + clause, Standing.READ);
  }

  private static Length thousandths(int ofAnInch) {
    return Length.ofNanometres(25_400L * ofAnInch);
  }

  private static Length mm(int millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
