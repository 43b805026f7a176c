package floorcalc.examples.explain;

import floorcalc.levels.GridFlatness;
import floorcalc.levels.LevelPlane;
import floorcalc.levels.SpotWork;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.measure.Length;
import floorcalc.measure.PlainNumber;
import floorcalc.outline.Point;
import floorcalc.working.Judgement;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.function.Function;

/** Level, flat, grind, fill, buy: what stands below the working of a room's levels. */
final class LevelsSummary {
  private static final int MOST_LISTED = 200;

  private final ExplainLevels.Found found;
  private final Lines lines;

  LevelsSummary(ExplainLevels.Found found) {
    this.found = found;
    this.lines = new Lines(found.tape());
  }

  String text() {
    lines.doubts(found.levels().doubts().size());
    lines.add("readings: " + found.levels());
    level();
    lines.add("flat, by tolerance set '" + found.set() + "' (" + found.set().floor() + "), whatever the slope:");
    found.flatness().ifPresentOrElse(this::flat, () -> lines.add("  not judged: " + found.why()));
    found.preparation().ifPresent(this::work);
    if (found.flatness().isPresent() && found.preparation().isEmpty()) {
      lines.add("grinding and filling: not worked out: " + found.why());
    }
    return lines.toString();
  }

  private void level() {
    LevelPlane plane = found.plane();
    lines.add("level: the plane of best fit falls " + lines.depth(plane.fall()) + " over the readings"
        + plane.directionOfFall().map(direction -> ", " + plane.slope().stripTrailingZeros().toPlainString() + " mm per m, towards "
            + PlainNumber.text(direction.degrees(), 1)
            + "° (anticlockwise from x)").orElse("") + "; this is no matter for flatness");
    lines.add("  farthest above it " + lines.depth(plane.residual(plane.highestAbove())) + " at " + at(plane.highestAbove().place())
        + ", farthest below " + lines.depth(plane.residual(plane.deepestBelow())) + " at " + at(plane.deepestBelow().place()));
    for (Judgement judgement : found.level()) {
      lines.add("  " + judgement.check() + ": " + (judgement.found().isEmpty() ? "" : judgement.found() + " at " + judgement.where() + ", ")
          + judgement.limit() + ", " + Lines.words(judgement.outcome()) + "  [" + judgement.source() + "]");
      lines.addIfAny("    ", judgement.advice());
    }
  }

  private void flat(GridFlatness flatness) {
    for (Judgement judgement : flatness.judgements()) {
      lines.add("  " + judgement.check() + ": " + (judgement.found().isEmpty() ? "" : judgement.found() + " at " + judgement.where()
          + ", ") + (judgement.limit().isEmpty() ? "" : "allowed " + judgement.limit() + ", ") + Lines.words(judgement.outcome())
          + "  [" + judgement.source() + "]");
      lines.addIfAny("    ", judgement.advice());
    }
  }

  private void work(SubfloorPreparation work) {
    spots("to grind", work.toGrind(), SpotWork::grind, work.groundLitres());
    spots("to fill", work.toFill(), SpotWork::fill, work.fillerLitres());
    String filler = "filler: " + litres(work.fillerLitres());
    if (work.fillerMass().isPresent() && work.bags().isPresent()) {
      filler += ", " + work.fillerMass().get() + ", " + work.bags().get() + (work.bags().get() == 1 ? " bag" : " bags");
    }
    lines.add(filler + ", for " + work.area() + " that the readings stand for; floor beyond them is not counted");
    lines.add("two usual mistakes: worst depth times area " + litres(work.worstDepthTimesArea())
        + times(work.worstDepthTimesArea(), work.fillerLitres()) + "; mean depth below the highest reading times area "
        + litres(work.meanDepthTimesArea()) + times(work.meanDepthTimesArea(), work.fillerLitres()));
  }

  private void spots(String what, List<SpotWork> spots, Function<SpotWork, Length> depth, BigDecimal litres) {
    if (spots.isEmpty()) {
      lines.add(what + ": nothing");
      return;
    }
    lines.add(what + ": " + spots.size() + (spots.size() == 1 ? " reading" : " readings") + ", " + litres(litres) + ", at most "
        + lines.depth(spots.stream().map(depth).reduce(Length.ZERO, Length::max)) + " deep");
    spots.stream().limit(MOST_LISTED).forEach(spot -> lines.add("  " + at(spot.place()) + ": " + lines.depth(depth.apply(spot))));
    if (spots.size() > MOST_LISTED) {
      lines.add("  and " + (spots.size() - MOST_LISTED) + " more");
    }
  }

  /** How many times as much as is needed. */
  private static String times(BigDecimal litres, BigDecimal needed) {
    return needed.signum() == 0 ? "" : ", " + litres.divide(needed, 1, RoundingMode.HALF_UP).toPlainString() + " times as much";
  }

  private static String litres(BigDecimal litres) {
    return litres.toPlainString() + " l";
  }

  private String at(Point place) {
    return "x = " + lines.place(place.x()) + ", y = " + lines.place(place.y());
  }
}
