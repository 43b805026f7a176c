package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.check.Remark;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Packs, the money in them, what order lists cost, where boards go, and stacks of packs. */
public final class PackCases extends GatheredTopic {
  private static final String PACKS = "packs_computed.csv";
  private static final String COST = "cost_computed.csv";
  private static final String LEDGERS = "ledgers_computed.csv";
  private static final String STACKS = "pack_stacks_computed.csv";

  /** Makes the topic. */
  public PackCases() {}

  @Override
  public String name() {
    return "Packs and money";
  }

  @Override
  public List<String> files() {
    return List.of(PACKS, COST, LEDGERS, STACKS);
  }

  @Override
  List<FileCases> gather() {
    return List.of(packs(), costs(), ledgers(), stacks());
  }

  private static List<String> list(DataRow row, String column, String unit) {
    return Arrays.stream(row.text(column).split(" ")).map(number -> number + unit).toList();
  }

  private static Question goods(String calculation, DataRow row) {
    return Question.of(calculation).withList("lengths", list(row, "lengths_mm", " mm")).withList("boardsPerPack", list(row, "per_pack", ""));
  }

  private static FileCases packs() {
    FileCases file = new FileCases(PACKS);
    for (DataRow row : file.rows()) {
      String id = row.text("id");
      Question asked = goods("packs-to-order", row).withList("used", list(row, "used", "")).with("spareShare", row.text("spare_share"));
      List<Expected> figures = new ArrayList<>(List.of(Expected.exactly("packs", row.text("packs")), Expected.exactly("spare", row.text("spare")),
          Expected.exactly("packRounding", row.text("pack_rounding")), Expected.text("spareByLength", row.text("spare_by_length")),
          Expected.text("leftOverByLength", row.text("left_over_by_length")), Expected.exactly("overUsedPercent", row.text("over_used_pct"))));
      if (!row.isEmpty("pack_mass_kg")) {
        asked = asked.with("packMass", row.text("pack_mass_kg"));
        figures.add(Expected.exactly("kilograms", row.text("mass_kg")));
      }
      if (!row.isEmpty("pack_price")) {
        asked = asked.with("packPrice", row.text("pack_price"));
        figures.add(Expected.exactly("price", row.text("price")));
        file.add(row, id + ", money", Kind.WORKED_APART, goods("money-in-boards", row).withList("used", list(row, "used", ""))
            .with("spareShare", row.text("spare_share")).with("packPrice", row.text("pack_price")).with("currency", row.text("currency"))
            .with("areaBought", row.text("bought_mm2")).with("areaLaid", row.text("laid_mm2")).with("packsKeptBack", row.text("kept_back"))
            .with("returnShare", row.text("return_share")),
            Expected.exactly("boards", row.text("boards_price")), Expected.exactly("waste", row.text("waste_price")),
            Expected.exactly("unopened", row.text("unopened")), Expected.exactly("returned", row.text("returned")),
            Expected.exactly("keptBack", row.text("kept_back_price")));
      }
      file.add(row, id, Kind.WORKED_APART, asked, figures.toArray(Expected[]::new));
    }
    return file;
  }

  private static FileCases costs() {
    FileCases file = new FileCases(COST);
    for (DataRow row : file.rows()) {
      List<List<String>> lines = Arrays.stream(row.text("lines").split("; ")).filter(line -> !line.isEmpty())
          .map(line -> List.of((line + "  ").split(" ", 4))).map(parts -> List.of(parts.get(0), parts.get(1), parts.get(2))).toList();
      file.add(row, row.text("id"), Kind.WORKED_APART, Question.of("cost-of-lines").withTable("lines", lines),
          Expected.text("totals", row.text("totals")), Expected.exactly("unpriced", row.text("unpriced")));
    }
    return file;
  }

  private static FileCases ledgers() {
    FileCases file = new FileCases(LEDGERS);
    for (DataRow row : file.rows()) {
      file.add(row, row.text("id"), Kind.WORKED_APART, Question.of("ledger-of-boards").with("bought", row.text("bought_mm2")).with("laid", row.text("laid_mm2"))
          .with("trimmedToShape", row.text("trimmed_mm2")).with("sawKerf", row.text("kerf_mm2")).with("usableOffcuts", row.text("usable_mm2"))
          .with("shortOffcuts", row.text("short_mm2")).with("spare", row.text("spare_mm2")).with("packRounding", row.text("rounding_mm2")),
          Expected.exactly("difference", row.text("difference_mm2")), Expected.exactly("cuttingWaste", row.text("cutting_waste_mm2")),
          Expected.exactly("wastePercentOfBought", row.text("waste_of_bought_pct")),
          Expected.exactly("wastePercentOfLaid", row.text("waste_of_laid_pct")));
    }
    return file;
  }

  private static FileCases stacks() {
    FileCases file = new FileCases(STACKS);
    for (DataRow row : file.rows()) {
      Question asked = goods("stack-of-packs", row).with("coverWidth", row.text("width_mm") + " mm").with("thickness", row.text("thickness_mm") + " mm")
          .with("packs", row.text("packs")).with("highestStack", row.text("highest_mm") + " mm");
      List<Expected> figures = new ArrayList<>(List.of(Expected.exactly("packHeight", row.text("pack_height_mm")),
          Expected.exactly("cubicMetres", row.text("volume_m3")), Expected.exactly("stacks", row.text("stacks")),
          Expected.exactly("floorSpace", row.text("floor_mm2"))));
      if (!row.isEmpty("pack_mass_kg")) {
        asked = asked.with("packMass", row.text("pack_mass_kg"));
        figures.add(Expected.exactly("kilograms", row.text("mass_kg")));
        figures.add(Expected.text("tooHeavyForOne", row.text("heavy")));
      }
      file.add(row, row.text("id"), Kind.WORKED_APART, asked, figures.toArray(Expected[]::new));
    }
    return file;
  }

  @Override
  List<Remark> moreRemarks() {
    return List.of(new Remark(Remark.Sort.NO_SOURCE, PACKS, "No source prints worked figures of packs, of the money in them or of stacks with all that they "
        + "rest on: the figures are made up and were worked out apart."));
  }
}
