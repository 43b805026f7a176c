package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Strips off rolls, wedges, sealant, long walls in parts and bars for given pieces. */
public final class StripCases extends GatheredTopic {
  private static final String STRIPS = "strips_computed.csv";
  private static final String WEDGES = "wedges_computed.csv";
  private static final String SEALANT = "sealant_computed.csv";
  private static final String WALLS = "long_walls_computed.csv";
  private static final String BARS = "bar_orders_computed.csv";

  /** Makes the topic. */
  public StripCases() {}

  @Override
  public String name() {
    return "Strips, bars and what is used up";
  }

  @Override
  public List<String> files() {
    return List.of(STRIPS, WEDGES, SEALANT, WALLS, BARS);
  }

  @Override
  List<FileCases> gather() {
    return List.of(strips(), wedges(), sealant(), walls(), bars());
  }

  private static String millimetres(DataRow row, String column) {
    return row.text(column) + " mm";
  }

  private static FileCases strips() {
    FileCases file = new FileCases(STRIPS);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("room") + ", strips " + row.text("width_mm") + " mm wide along " + row.text("along"), Kind.WORKED_APART,
          Question.of("strips-of-a-floor").with("outline", row.text("outline_mm")).with("along", row.text("along"))
              .with("rollWidth", millimetres(row, "width_mm")).with("rollLength", millimetres(row, "roll_mm"))
              .with("overlap", millimetres(row, "lap_mm")).with("upturn", millimetres(row, "upturn_mm")),
          Expected.exactly("stripsAcross", row.text("strips_across")), Expected.exactly("length", row.text("length_mm")),
          Expected.exactly("seam", row.text("seam_mm")), Expected.exactly("cutLength", row.text("cut_mm")),
          Expected.exactly("cutArea", row.text("cut_mm2")));
    }
    return file;
  }

  private static FileCases wedges() {
    FileCases file = new FileCases(WEDGES);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("room") + ", " + row.text("spacing_mm") + " mm apart", Kind.WORKED_APART, Question.of("wedges-of-a-room")
          .with("outline", row.text("outline_mm")).with("spacing", millimetres(row, "spacing_mm")), Expected.exactly("wedges", row.text("wedges")));
    }
    return file;
  }

  private static FileCases sealant() {
    FileCases file = new FileCases(SEALANT);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("bead_m") + " m of " + row.text("width_mm") + " by " + row.text("depth_mm") + " mm, " + row.text("cartridge_ml") + " ml",
          Kind.WORKED_APART, Question.of("cartridges-of-sealant").with("bead", row.text("bead_m") + " m").with("width", millimetres(row, "width_mm"))
              .with("depth", millimetres(row, "depth_mm")).with("cartridge", row.text("cartridge_ml")).with("loss", row.text("loss")),
          Expected.exactly("millilitres", row.text("volume_ml")), Expected.exactly("cartridges", row.text("cartridges")));
    }
    return file;
  }

  private static FileCases walls() {
    FileCases file = new FileCases(WALLS);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("length_mm") + " mm from " + row.text("bar_mm") + " mm, allowance " + row.text("allowance_mm") + " mm, at least "
          + row.text("least_mm") + " mm", Kind.WORKED_APART, Question.of("parts-of-a-long-wall").with("length", millimetres(row, "length_mm"))
          .with("longestBar", millimetres(row, "bar_mm")).with("allowance", millimetres(row, "allowance_mm"))
          .with("leastPart", millimetres(row, "least_mm")),
          Expected.exactly("parts", row.text("parts")), Expected.text("lengths", row.text("lengths_mm")));
    }
    return file;
  }

  private static FileCases bars() {
    FileCases file = new FileCases(BARS);
    for (DataRow row : file.rows()) {
      List<Expected> figures = new ArrayList<>(List.of(Expected.exactly("netLength", row.text("net_mm")),
          Expected.exactly("lengthBought", row.text("bought_mm"))));
      if (!row.isEmpty("bars")) {
        figures.add(Expected.exactly("bars", row.text("bars")));
      }
      file.add(row, row.text("id"), Kind.WORKED_APART, Question.of("bars-to-order").withList("sold", list(row, "sold_mm"))
          .withList("pieces", list(row, "pieces_mm")).with("thickness", millimetres(row, "thickness_mm")).with("sawKerf", millimetres(row, "kerf_mm"))
          .with("allowance", millimetres(row, "allowance_mm")).with("leastPart", millimetres(row, "least_mm")), figures.toArray(Expected[]::new));
    }
    return file;
  }

  private static List<String> list(DataRow row, String column) {
    return Arrays.stream(row.text(column).split(" ")).map(number -> number + " mm").toList();
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, STRIPS, "No source prints strips of a floor that is no rectangle, nor bars of a skirting with all that they "
        + "rest on: rooms and pieces are made up, and were worked out apart."));
  }
}
