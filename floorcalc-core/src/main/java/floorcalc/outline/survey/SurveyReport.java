package floorcalc.outline.survey;

import floorcalc.outline.Outline;
import floorcalc.working.Calculated;
import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What the measurements of a room come to: one shape, or what is missing for one. Immutable and thread-safe.
 * <pre>{@code
 * Calculated<SurveyReport> report = SurveyReport.of(survey);
 * report.value().room().ifPresent(room -> System.out.println(room.area()));
 * report.findings().forEach(System.out::println);
 * }</pre>
 *
 * @since 0.1
 */
public final class SurveyReport implements Serializable {
  private static final long serialVersionUID = 1L;

  private final Survey survey;
  private final transient List<Outline> shapes;
  private final transient SurveyedRoom room;
  private final transient List<Misfit> misfits;
  private final transient List<ToMeasure> toMeasure;
  private final transient AreaRange areas;
  private final transient Traverse walk;

  SurveyReport(Survey survey, List<Outline> shapes, SurveyedRoom room, List<Misfit> misfits, List<ToMeasure> toMeasure,
      AreaRange areas, Traverse walk) {
    this.survey = survey;
    this.shapes = List.copyOf(shapes);
    this.room = room;
    this.misfits = List.copyOf(misfits);
    this.toMeasure = List.copyOf(toMeasure);
    this.areas = areas;
    this.walk = walk;
  }

  /**
   * Works out a survey: finds the shapes that its lengths and turns allow, fits the corners to all measurements by least
   * squares, looks for measurements that do not fit, and says what is worth measuring.
   *
   * @param survey what was measured, not null
   * @return the report, with the steps {@code redundancy} and {@code factor} where the shape is fixed, those of the walk where it is known, and
   *     the findings {@code survey-shape-not-fixed}, {@code survey-several-shapes}, {@code survey-no-shape},
   *     {@code survey-misfit}, {@code survey-closes-badly}, {@code survey-not-checked}, {@code survey-weakly-checked}, {@code survey-right-angles}; not
   *     null
   * @throws IllegalArgumentException if too many corners leave open which way their right angle turns
   */
  public static Calculated<SurveyReport> of(Survey survey) {
    return new Reporting(survey).report();
  }

  /**
   * Returns what was measured.
   *
   * @return the survey, not null
   */
  public Survey survey() {
    return survey;
  }

  /**
   * Returns the room, if the measurements fix one shape.
   *
   * @return the room; empty if a measurement is missing, if several shapes fit, or if none does
   */
  public Optional<SurveyedRoom> room() {
    return Optional.ofNullable(room);
  }

  /**
   * Returns about the shape that the measurements allow, if they do not fix it.
   *
   * @return a sketch with straight walls; empty if one or several shapes are fixed, or none fits
   */
  public Optional<Outline> sketch() {
    return room == null && shapes.size() == 1 ? Optional.of(shapes.get(0)) : Optional.empty();
  }

  /**
   * Returns the shapes that fit equally well, if there is more than one.
   *
   * @return two or more outlines with straight walls, or none; unmodifiable, not null
   */
  public List<Outline> possible() {
    return shapes.size() > 1 ? shapes : List.of();
  }

  /**
   * Returns the measurements that do not fit, each with those that it cannot be told from.
   *
   * @return an unmodifiable list, the worst first; not null
   */
  public List<Misfit> misfits() {
    return misfits;
  }

  /**
   * Returns what is worth measuring, or measuring again.
   *
   * @return an unmodifiable list, what matters most first; not null
   */
  public List<ToMeasure> toMeasure() {
    return toMeasure;
  }

  /**
   * Returns between what the area of the room must be as its straight walls alone allow, if the measurements do not fix it.
   *
   * @return the range of all shapes that have these walls; empty if one or several shapes are fixed, or none fits
   */
  public Optional<AreaRange> areas() {
    return Optional.ofNullable(areas);
  }

  /**
   * Returns the walls as they were walked from corner 1, with the closing error, where each turn was measured or is a right
   * angle; that of the last wall is not needed.
   *
   * @return the walk, not adjusted; empty if a turn is not known or no shape is fixed
   */
  public Optional<Traverse> walk() {
    return Optional.ofNullable(walk);
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    return of(survey).value();
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof SurveyReport other && parts().equals(other.parts());
  }

  @Override
  public int hashCode() {
    return parts().hashCode();
  }

  private List<Object> parts() {
    return Arrays.asList(survey);
  }
}
