package floorcalc.deviations;

import floorcalc.measure.Length;
import floorcalc.working.Source;
import floorcalc.working.Standing;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What each product standard says on the sizes of boards. Nothing here is mixed from two sources. */
final class PublishedSizes {
  private static final String CATALOGUE = "as given in a catalogue of timber building products";
  private static final List<String> SOFTWOODS = List.of("softwood", "pine", "spruce", "fir", "larch", "cedar", "hemlock", "redwood");

  private PublishedSizes() {}

  static List<SizeLimit> solid() {
    Source source = new Source("EN 13226", "CEN", 0, CATALOGUE, Standing.QUOTED);
    return List.of(SizeLimit.atLeast(BoardSize.THICKNESS, mm(14), source), SizeLimit.moreThan(BoardSize.LENGTH, mm(250), source),
        SizeLimit.atLeast(BoardSize.WIDTH, mm(40), source));
  }

  static List<Length> usualThicknesses() {
    return Stream.of(15, 16, 19, 20, 22, 23).map(PublishedSizes::mm).toList();
  }

  static List<SizeLimit> softwood() {
    Source source = new Source("EN 13990", "CEN", 0, CATALOGUE, Standing.QUOTED);
    return List.of(SizeLimit.between(BoardSize.THICKNESS, mm(18), mm(34), source).usual(),
        SizeLimit.between(BoardSize.WIDTH, mm(70), mm(192), source).usual(), SizeLimit.atLeast(BoardSize.LENGTH, mm(1500), source));
  }

  static List<SizeLimit> multilayer(String boards, int thinnest) {
    Source source = new Source("EN 13489", "CEN", 0, boards + ", " + CATALOGUE, Standing.QUOTED);
    return List.of(SizeLimit.between(BoardSize.THICKNESS, mm(thinnest), mm(22), source),
        SizeLimit.atLeast(BoardSize.WEAR_LAYER, Length.ofMillimetres("2.5"), source));
  }

  static List<SizeLimit> austrian() {
    Source source = new Source("EN 13489", "CEN", 0, "Austrian foreword, " + CATALOGUE, Standing.QUOTED);
    return List.of(SizeLimit.between(BoardSize.WIDTH, mm(100), mm(240), source),
        SizeLimit.between(BoardSize.LENGTH, mm(1200), mm(2400), source));
  }

  /** Whether the name of a wood says that it is a softwood: one of its words is that of a conifer. */
  static boolean isSoftwood(String species) {
    return Stream.of(species.toLowerCase(Locale.ROOT).split("[^a-z]+")).anyMatch(SOFTWOODS::contains);
  }

  private static Length mm(int millimetres) {
    return Length.ofMillimetres(millimetres);
  }
}
