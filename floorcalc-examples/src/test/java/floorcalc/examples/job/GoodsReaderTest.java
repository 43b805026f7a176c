package floorcalc.examples.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import floorcalc.materials.FloorGoods;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.measure.UnitPrice;
import floorcalc.plan.FloorJob;
import floorcalc.trims.BarGoods;
import floorcalc.underlay.Lap;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.RoomUse;
import floorcalc.underlay.TapeGoods;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class GoodsReaderTest {
  private static FloorJob job(String goods, String more) {
    return JobReader.read("""
        {"format": "floorcalc-job/1", "title": "Invented",
         "board": {"length": 2200, "coverWidth": 185, "thickness": 14, "perPack": 6, "construction": "engineered"},
         "goods": %s,
         "rooms": [{"name": "Hall", "outline": [[0, 0], [4000, 0], [4000, 3000], [0, 3000]]%s}]}
        """.formatted(goods, more).getBytes(StandardCharsets.UTF_8)).job();
  }

  private static FloorGoods goods(String goods) {
    return job(goods, "").goods();
  }

  private static List<String> mistakes(String goods) {
    return catchThrowableOfType(BadJobException.class, () -> goods(goods)).mistakes().stream().map(Object::toString).toList();
  }

  @Test
  void nothingIsNeeded() {
    FloorGoods none = goods("{}");
    assertThat(none.layers()).isEmpty();
    assertThat(none.skirting()).isEmpty();
    assertThat(none.stackHeight()).isEqualTo(Length.ofMillimetres(1000));
    assertThat(job("{}", "").rooms().get(0).use()).isEqualTo(RoomUse.DRY);
    assertThat(job("{}", ", \"wet\": true").rooms().get(0).use()).isEqualTo(RoomUse.WET);
  }

  @Test
  void rolls() {
    FloorGoods goods = goods("""
        {"underlay": {"width": 1000, "length": "10 m"},
         "barrier": {"name": "film", "width": "2 m", "length": "25 m", "overlap": "NBS K21", "upturn": "2 in", "thickness": 0.2,
                     "permeance": 0.1, "price": "1.10 EUR/m2"},
         "tape": {"length": "25 m", "along": "seams-and-walls", "price": "8.50 EUR"}}""");
    // the barrier lies below, however the file is ordered
    assertThat(goods.layers()).extracting(RollGoods::layer).containsExactly(RollGoods.Layer.BARRIER, RollGoods.Layer.UNDERLAY);
    RollGoods film = goods.layers().get(0);
    assertThat(film.lap()).isEqualTo(Lap.NBS_K21);
    assertThat(film.upturn()).isEqualTo(Length.parse("50.8 mm"));
    assertThat(film.permeance()).contains(new BigDecimal("0.1"));
    assertThat(film.price()).contains(new UnitPrice(new Price(new BigDecimal("1.10"), "EUR"), UnitPrice.Per.SQUARE_METRE));
    assertThat(goods.layers().get(1).name()).isEqualTo("underlay");
    assertThat(goods.tape().orElseThrow().along()).isEqualTo(TapeGoods.Along.SEAMS_AND_WALLS);
  }

  @Test
  void barsAndWhatIsUsedUp() {
    FloorGoods goods = goods("""
        {"skirting": {"lengths": [2400, 3000], "thickness": 16, "insideCorners": "scribed", "openEnds": "returned",
                      "longRuns": "in-one-piece", "atVoids": "left-out", "allowance": 10, "price": "4.20 EUR / m"},
         "profiles": {"T": {"lengths": [900], "price": "12 EUR"}, "nosing": {"name": "stair edge", "lengths": [1000]}},
         "wedges": {"perPack": 40}, "glue": {"content": "0.25 l"}, "sealant": {"width": 10, "depth": 6, "beads": "2 m"},
         "filler": {"kilogramsPerLitre": 1.7, "bag": "20 kg"}, "casing": 60, "keepBackPacks": 2, "returnShare": 0.8,
         "stackHeight": "1.2 m"}""");
    BarGoods skirting = goods.skirting().orElseThrow();
    assertThat(skirting.lengths()).containsExactly(Length.ofMillimetres(3000), Length.ofMillimetres(2400));
    assertThat(skirting.inside()).isEqualTo(BarGoods.InsideCorners.SCRIBED);
    assertThat(skirting.openEnds()).isEqualTo(BarGoods.OpenEnds.RETURNED);
    assertThat(skirting.longRuns()).isEqualTo(BarGoods.LongRuns.IN_ONE_PIECE);
    assertThat(skirting.voids()).isEqualTo(BarGoods.AtVoids.LEFT_OUT);
    assertThat(goods.profile("T").orElseThrow().name()).isEqualTo("T profile");
    assertThat(goods.profile("nosing").orElseThrow().name()).isEqualTo("stair edge");
    assertThat(goods.profile("end")).isEmpty();
    assertThat(goods.glue().orElseThrow().millilitres()).isEqualByComparingTo("250");
    assertThat(goods.sealant().orElseThrow().millilitres()).isEqualByComparingTo("310");
    assertThat(goods.filler().orElseThrow().goods().bag().kilograms()).isEqualByComparingTo("20");
    assertThat(goods.wedges().orElseThrow().spacing()).isEqualTo(Length.ofMillimetres(500));
    assertThat(goods.keepBack()).isEqualTo(2);
    assertThat(goods.returnShare()).isEqualByComparingTo("0.8");
    assertThat(goods.casing()).isEqualTo(Length.ofMillimetres(60));
    assertThat(goods.stackHeight()).isEqualTo(Length.ofMillimetres(1200));
  }

  @Test
  void allMistakesAreListedWithTheirPlaces() {
    assertThat(mistakes("""
        {"underlay": {"width": 10, "overlap": "two hands", "price": "cheap"},
         "skirting": {"lengths": [], "thickness": 16, "insideCorners": "butted"},
         "profiles": {"ramp": {}},
         "tape": {"along": "edges"},
         "glue": {"content": "0 ml"},
         "casing": -1, "keepBackPacks": 1.5, "returnShare": 2}""")).anyMatch(line -> line.startsWith("/goods/underlay/width: found 10 mm"))
        .anyMatch(line -> line.startsWith("/goods/underlay/length: missing"))
        .anyMatch(line -> line.startsWith("/goods/underlay/overlap: cannot read [two hands]"))
        .anyMatch(line -> line.startsWith("/goods/underlay/price: found text \"cheap\""))
        .anyMatch(line -> line.startsWith("/goods/skirting/lengths: "))
        .anyMatch(line -> line.startsWith("/goods/skirting/insideCorners: found text \"butted\""))
        .anyMatch(line -> line.startsWith("/goods/profiles/ramp: unknown field"))
        .anyMatch(line -> line.startsWith("/goods/tape/along: "))
        .anyMatch(line -> line.startsWith("/goods/glue/content: "))
        .anyMatch(line -> line.startsWith("/goods/casing: "))
        .anyMatch(line -> line.startsWith("/goods/keepBackPacks: "))
        .anyMatch(line -> line.startsWith("/goods/returnShare: "));
  }

  @Test
  void whatDoesNotGoTogetherIsAMistakeOfTheGoods() {
    assertThat(mistakes("{\"underlay\": {\"width\": 200, \"length\": 5000, \"overlap\": 200}}")).containsExactly(
        "/goods/underlay: the overlap must be less than width and length of the roll, 200 mm, but was 200 mm");
    assertThat(mistakes("{\"skirting\": {\"lengths\": [2400, 3000], \"thickness\": 15, \"price\": \"9 EUR\"}}")).singleElement().asString()
        .startsWith("/goods/skirting: skirting: bars are priced by the metre, or by the bar if one length is sold");
    assertThat(mistakes("{\"filler\": {\"kilogramsPerLitre\": 0, \"bag\": \"20 kg\"}}")).singleElement().asString()
        .startsWith("/goods/filler: kilograms per litre must be more than 0");
  }
}
