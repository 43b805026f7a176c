package floorcalc.levels;

import floorcalc.measure.Length;
import floorcalc.working.Finding;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Readings that are probably mistakes. Each is held against the plane through all others: if it is off by a whole 100 mm, 1 in or 1 m, give
 * or take twice how uneven the others are, somebody misread a staff; if it fits once it is read in another unit, somebody wrote the
 * wrong one; if it merely stands far out, it should be read again. The limits are of our own making.
 */
final class LevelDoubts {
  private static final Length FAR = Length.ofMillimetres(20);
  private static final Length NEAR = Length.ofMillimetres("0.5");
  private static final int TIMES = 5;
  private static final int LOOKED_AT = 20;
  private static final int STEEP = 100;

  private static final Slip[] SLIPS = {new Slip("reading-off-by-100-mm", Length.ofMillimetres(100), "100 mm"),
      new Slip("reading-off-by-1-in", Length.ofInches(1, 0, 1), "1 in (25.4 mm)"),
      new Slip("reading-off-by-1-m", Length.ofMillimetres(1000), "1 m")};
  private static final Unit[] UNITS = {new Unit(10, 1, "centimetres"), new Unit(254, 10, "inches"),
      new Unit(1000, 1, "metres")};

  private record Slip(String code, Length size, String words) {}

  private record Unit(long times, long over, String words) {}

  private LevelDoubts() {}

  static List<Finding> of(List<SpotLevel> spots) {
    List<Finding> findings = new ArrayList<>();
    PlaneFit all = PlaneFit.of(spots);
    PlaneFit.Surface surface = all.surface();
    units(spots, surface, findings);
    if (spots.size() < 5) {
      return findings;
    }
    // A slip pulls the plane towards itself, but stays among the furthest from it.
    List<Integer> furthest = IntStream.range(0, spots.size()).boxed().sorted(Comparator.comparing(
        (Integer i) -> above(surface, spots.get(i)).abs()).reversed()).limit(LOOKED_AT).toList();
    for (int i : furthest) {
      one(spots, i, all, findings);
    }
    return findings;
  }

  private static Length above(PlaneFit.Surface surface, SpotLevel spot) {
    return spot.height().minus(surface.at(spot.place()));
  }

  private static void one(List<SpotLevel> spots, int i, PlaneFit all, List<Finding> findings) {
    SpotLevel spot = spots.get(i);
    PlaneFit others = all.without(spot);
    if (others.isInLine()) {
      return;
    }
    PlaneFit.Surface surface = others.surface();
    Length uneven = Length.ZERO;
    for (int k = 0; k < spots.size(); k++) {
      if (k != i) {
        uneven = uneven.max(above(surface, spots.get(k)).abs());
      }
    }
    Length off = above(surface, spot);
    if (off.abs().compareTo(uneven.multipliedBy(TIMES)) <= 0 || off.isZero()) {
      return;
    }
    String found = "reading " + (i + 1) + " (" + spot.height() + ") lies " + off.abs()
        + (off.isNegative() ? " below" : " above") + " the plane through all others, which are within " + uneven + " of it";
    Length expected = surface.at(spot.place());
    for (Slip slip : SLIPS) {
      if (off.abs().minus(slip.size()).abs().compareTo(uneven.multipliedBy(2).max(NEAR)) <= 0 && uneven.multipliedBy(8).compareTo(slip.size()) < 0) {
        findings.add(doubt(slip.code(), spot, found + ": " + slip.words() + " misread? Read it again"));
        return;
      }
    }
    for (Unit unit : UNITS) {
      if (spot.height().multipliedBy(unit.times()).minus(expected.multipliedBy(unit.over())).abs()
          .compareTo(uneven.multipliedBy(2 * unit.over())) <= 0) {
        findings.add(doubt("reading-in-other-unit", spot, found + "; read as " + unit.words()
            + " it would fit: was it written in " + unit.words() + "? Read it again"));
        return;
      }
    }
    if (off.abs().compareTo(FAR) >= 0) {
      findings.add(doubt("reading-stands-out", spot, found + "; read it again"));
    }
  }

  private static Finding doubt(String code, SpotLevel spot, String message) {
    return new Finding(code, Severity.WARNING, "x = " + spot.place().x() + ", y = " + spot.place().y(), message,
        Source.DEFINITION);
  }

  /** A floor of half a metre, or one that is steep everywhere, was given in the wrong unit. */
  private static void units(List<SpotLevel> spots, PlaneFit.Surface surface, List<Finding> findings) {
    Length wide = spread(spots, 0).max(spread(spots, 1));
    if (wide.compareTo(Length.ofMillimetres(500)) < 0 || wide.compareTo(Length.ofMillimetres(500_000)) > 0) {
      findings.add(new Finding("floor-in-other-unit", Severity.WARNING, "", "the readings lie within " + wide
          + ", which is hardly a floor; were the places given in the right unit?", Source.DEFINITION));
    }
    Length high = spread(spots, 2);
    double steep = 1000 * Math.max(Math.abs(surface.alongX().doubleValue()), Math.abs(surface.alongY().doubleValue()));
    if (steep > STEEP) {
      findings.add(new Finding("heights-in-other-unit", Severity.WARNING, "", "the floor would slope by more than " + STEEP
          + " mm per m, with heights that differ by " + high + "; were the heights given in the right unit?", Source.DEFINITION));
    } else if (high.isPositive() && high.compareTo(Length.ofMillimetres("0.1")) < 0) {
      findings.add(new Finding("heights-in-other-unit", Severity.WARNING, "", "all heights are within " + high
          + ", flatter than any floor; were they given in the right unit?", Source.DEFINITION));
    }
  }

  private static Length spread(List<SpotLevel> spots, int axis) {
    Length low = value(spots.get(0), axis);
    Length high = low;
    for (SpotLevel spot : spots) {
      low = low.min(value(spot, axis));
      high = high.max(value(spot, axis));
    }
    return high.minus(low);
  }

  private static Length value(SpotLevel spot, int axis) {
    return axis == 0 ? spot.place().x() : axis == 1 ? spot.place().y() : spot.height();
  }
}
