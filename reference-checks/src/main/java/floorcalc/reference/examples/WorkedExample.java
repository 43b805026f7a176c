package floorcalc.reference.examples;

import floorcalc.reference.check.Expected;
import floorcalc.working.Calculated;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One example: what is given, what is asked, what the source prints, and the library's working.
 *
 * @param name the page's name, words in lower case joined by hyphens, not null
 * @param title the question as a heading, not null
 * @param source where the figures are printed, not null
 * @param given the inputs in a sentence or two, not null
 * @param working all steps as the library prints them, not null
 * @param figures each printed figure with what was worked out, at least one, not null
 * @param remark what to notice, may be empty, not null
 */
public record WorkedExample(String name, String title, String source, String given, List<String> working, List<Figure> figures, String remark) {
  /** Checks that nothing is null or missing. */
  public WorkedExample {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(title, "title");
    Objects.requireNonNull(source, "source");
    Objects.requireNonNull(given, "given");
    working = List.copyOf(working);
    figures = List.copyOf(figures);
    Objects.requireNonNull(remark, "remark");
    if (working.isEmpty() || figures.isEmpty()) {
      throw new IllegalArgumentException(name + " needs working and a figure");
    }
  }

  /**
   * A printed figure beside the one worked out.
   *
   * @param expected what is printed; its name says what it is, with the unit in brackets; not null
   * @param answer what was worked out, a plain decimal or a text, not null
   * @param standing what stands behind the printed figure, not null
   */
  public record Figure(Expected expected, String answer, String standing) {
    /** Checks that nothing is null. */
    public Figure {
      Objects.requireNonNull(expected, "expected");
      Objects.requireNonNull(answer, "answer");
      Objects.requireNonNull(standing, "standing");
    }
  }

  /** Puts an example together. Not thread-safe. */
  static final class Maker {
    private final String name;
    private final String title;
    private final String source;
    private final String given;
    private final List<String> working = new ArrayList<>();
    private final List<Figure> figures = new ArrayList<>();

    Maker(String name, String title, String source, String given) {
      this.name = name;
      this.title = title;
      this.source = source;
      this.given = given;
    }

    /** Takes the steps over and hands the value on. */
    <T> T shown(Calculated<T> calculated) {
      working.add(calculated.explain());
      return calculated.value();
    }

    Maker figure(Expected expected, BigDecimal answer, String standing) {
      return figure(expected, answer.stripTrailingZeros().toPlainString(), standing);
    }

    Maker figure(Expected expected, String answer, String standing) {
      figures.add(new Figure(expected, answer, standing));
      return this;
    }

    WorkedExample done(String remark) {
      return new WorkedExample(name, title, source, given, working, figures, remark);
    }
  }
}
