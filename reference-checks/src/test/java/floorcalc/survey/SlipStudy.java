package floorcalc.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Predicate;

/** How often a slip in a survey is found: thousands of rooms made by chance, a table of them. */
public final class SlipStudy {
  /** A slip of so many standard deviations is to be found. */
  static final double TO_BE_FOUND = 5;

  private SlipStudy() {}

  /**
   * Prints the table.
   *
   * @param arguments how many rooms of each kind with each slip; 300 if there is none
   */
  public static void main(String[] arguments) {
    int each = arguments.length == 0 ? 300 : Integer.parseInt(arguments[0]);
    List<PlantedSlip> all = new ArrayList<>();
    for (RandomRoom.Kind kind : RandomRoom.Kind.values()) {
      for (PlantedSlip.Kind slip : PlantedSlip.Kind.values()) {
        List<PlantedSlip> cases = cases(kind, slip, each);
        all.addAll(cases);
        print(kind + " " + slip, cases);
      }
    }
    for (PlantedSlip.Kind slip : PlantedSlip.Kind.values()) {
      print("all rooms " + slip, all.stream().filter(one -> one.kind() == slip).toList());
    }
    print("all", all);
    List<PlantedSlip> usual = all.stream().filter(one -> one.kind() != PlantedSlip.Kind.JUST_FIVE).toList();
    print("all usual slips", usual);
    double[] bounds = {0, 2, 3.29, 5, 6, 8, 12, 20, 50, Double.MAX_VALUE};
    for (int i = 1; i < bounds.length; i++) {
      double from = bounds[i - 1];
      double to = bounds[i];
      List<PlantedSlip> part = usual.stream().filter(one -> one.deviations() >= from && one.deviations() < to).toList();
      System.out.printf(Locale.ROOT, "s/sqrt(r) from %.2f to %.4g: %d, found %.2f %%%n", from, to, part.size(), percent(part, SlipStudy::isFound));
    }
  }

  /** Returns so many cases, the same ones each time. */
  static List<PlantedSlip> cases(RandomRoom.Kind kind, PlantedSlip.Kind slip, int count) {
    SplittableRandom random = new SplittableRandom(1000 + 10 * kind.ordinal() + slip.ordinal());
    List<PlantedSlip> cases = new ArrayList<>();
    while (cases.size() < count) {
      Optional<PlantedSlip> made = PlantedSlip.of(random.split(), kind, slip);
      made.ifPresent(cases::add);
    }
    return cases;
  }

  static boolean isFound(PlantedSlip one) {
    return one.outcome() == PlantedSlip.Outcome.FIRST || one.outcome() == PlantedSlip.Outcome.AMONG;
  }

  static double percent(List<PlantedSlip> cases, Predicate<PlantedSlip> which) {
    return 100.0 * cases.stream().filter(which).count() / Math.max(1, cases.size());
  }

  private static void print(String name, List<PlantedSlip> cases) {
    List<PlantedSlip> large = cases.stream().filter(one -> one.deviations() >= TO_BE_FOUND - 1e-3).toList();
    List<PlantedSlip> plain = cases.stream().filter(one -> one.plainDeviations() >= TO_BE_FOUND).toList();
    List<PlantedSlip> found = large.stream().filter(SlipStudy::isFound).toList();
    System.out.printf(Locale.ROOT, "%-32s 5 s/sqrt(r): %5d, found %6.2f %%, first %6.2f %%, others %.2f %%, none %.2f %%, no room %.2f %%;"
            + " named rightly %6.2f %% of found; 5 s: %5d, found %6.2f %%%n", name, large.size(), percent(large, SlipStudy::isFound),
        percent(large, one -> one.outcome() == PlantedSlip.Outcome.FIRST), percent(large, one -> one.outcome() == PlantedSlip.Outcome.OTHERS),
        percent(large, one -> one.outcome() == PlantedSlip.Outcome.NONE), percent(large, one -> one.outcome() == PlantedSlip.Outcome.NO_ROOM),
        percent(found, PlantedSlip::named), plain.size(), percent(plain, SlipStudy::isFound));
  }
}
