package floorcalc.materials;

import floorcalc.measure.Length;
import floorcalc.trims.BarGoods;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.TapeGoods;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** The parts of {@link FloorGoods}; null where nothing was given. Changed only before it is handed over. */
final class GoodsParts implements Serializable {
  private static final long serialVersionUID = 1L;

  @SuppressWarnings("serial")
  List<RollGoods> layers = List.of();
  BarGoods skirting;
  BarGoods quadrant;
  @SuppressWarnings("serial")
  Map<String, BarGoods> profiles = Map.of();
  TapeGoods tape;
  SealantGoods sealant;
  GlueGoods glue;
  WedgeGoods wedges;
  FillerStock filler;
  Length casing = Length.ZERO;
  int keepBack;
  BigDecimal returnShare = BigDecimal.ZERO;
  Length stackHeight = PackStack.STACK_HEIGHT;

  List<Object> all() {
    return Arrays.asList(layers, skirting, quadrant, profiles, tape, sealant, glue, wedges, filler, casing, keepBack, returnShare,
        stackHeight);
  }

  GoodsParts copy() {
    GoodsParts copy = new GoodsParts();
    copy.layers = layers;
    copy.skirting = skirting;
    copy.quadrant = quadrant;
    copy.profiles = profiles;
    copy.tape = tape;
    copy.sealant = sealant;
    copy.glue = glue;
    copy.wedges = wedges;
    copy.filler = filler;
    copy.casing = casing;
    copy.keepBack = keepBack;
    copy.returnShare = returnShare;
    copy.stackHeight = stackHeight;
    return copy;
  }
}
