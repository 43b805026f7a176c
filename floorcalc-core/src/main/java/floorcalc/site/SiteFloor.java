package floorcalc.site;

import floorcalc.boards.BoardGoods;
import floorcalc.boards.Construction;
import floorcalc.measure.Area;
import floorcalc.moisture.Substrate;
import floorcalc.movement.Coefficient;
import floorcalc.movement.GapPoint;
import floorcalc.movement.Grain;
import floorcalc.movement.Species;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What of the floor to be laid bears on whether its site is fit: the room's name and area, the boards, the subfloor and the places
 * where the expansion gap is judged. Immutable and thread-safe.
 *
 * @since 0.1
 */
public final class SiteFloor {
  private final String room;
  private final Area area;
  private final BoardGoods boards;
  private final Substrate subfloor;
  private final List<GapPoint> gaps;
  private final Coefficient coefficient;

  private SiteFloor(String room, Area area, BoardGoods boards, Substrate subfloor, List<GapPoint> gaps,
      Coefficient coefficient) {
    this.room = room;
    this.area = area;
    this.boards = boards;
    this.subfloor = subfloor;
    this.gaps = List.copyOf(gaps);
    this.coefficient = coefficient;
  }

  /**
   * Returns a floor on a subfloor that is not stated, whose gap is not known.
   *
   * @param room the name of the room, not null
   * @param area the area of the floor, more than zero, not null
   * @param boards the boards to be laid, not null
   * @return the floor, not null
   * @throws IllegalArgumentException if the area is not more than zero
   */
  public static SiteFloor of(String room, Area area, BoardGoods boards) {
    Objects.requireNonNull(boards, "boards");
    Objects.requireNonNull(room, "room");
    if (!Objects.requireNonNull(area, "area").isPositive()) {
      throw new IllegalArgumentException("the area of the floor must be more than 0 m², but was " + area);
    }
    Objects.requireNonNull(boards, "boards");
    return new SiteFloor(room, area, boards, Substrate.NOT_STATED, List.of(), null);
  }

  /**
   * Returns the same floor on a subfloor.
   *
   * @param base what the floor is laid on, not null
   * @return the floor, not null
   */
  public SiteFloor withSubfloor(Substrate base) {
    return new SiteFloor(room, area, boards, Objects.requireNonNull(base, "base"), gaps, coefficient);
  }

  /**
   * Returns the same floor with the places where its gap is judged.
   *
   * @param places such as {@link GapPoint#bothSides} or {@link floorcalc.movement.WallPoints#of} give, not null
   * @return the floor, not null
   */
  public SiteFloor withGaps(List<GapPoint> places) {
    Objects.requireNonNull(places, "places");
    return new SiteFloor(room, area, boards, subfloor, places, coefficient);
  }

  /**
   * Returns the same floor with the maker's figure for how much the boards move across.
   *
   * @param across the coefficient, not null
   * @return the floor, not null
   */
  public SiteFloor withCoefficient(Coefficient across) {
    return new SiteFloor(room, area, boards, subfloor, gaps, Objects.requireNonNull(across, "across"));
  }

  /**
   * Returns how much the boards move across: the maker's figure if it was given; of engineered boards that of multilayer
   * boards in NF DTU 51.1; of solid boards that of their species, flat-sawn, which moves most.
   *
   * @return the coefficient, empty if the boards are solid and their species is not stated or in no table; not null
   */
  public Optional<Coefficient> coefficient() {
    if (coefficient != null) {
      return Optional.of(coefficient);
    }
    if (boards.construction() == Construction.ENGINEERED) {
      return Optional.of(Coefficient.NF_DTU_MULTILAYER);
    }
    return boards.species().flatMap(SiteFloor::known).map(species -> species.coefficient(Grain.FLAT_SAWN));
  }

  private static Optional<Species> known(String wood) {
    try {
      return Optional.of(Species.named(wood));
    } catch (IllegalArgumentException unknown) {
      return Optional.empty();
    }
  }

  /** Whether nobody gave the maker's figure and that of a rule stands in for it. */
  boolean isByRule() {
    return coefficient == null && boards.construction() == Construction.ENGINEERED;
  }

  /**
   * Returns the name of the room.
   *
   * @return the name, not null
   */
  public String room() {
    return room;
  }

  /**
   * Returns the area of the floor.
   *
   * @return more than zero, not null
   */
  public Area area() {
    return area;
  }

  /**
   * Returns the boards to be laid.
   *
   * @return the boards, not null
   */
  public BoardGoods boards() {
    return boards;
  }

  /**
   * Returns what the floor is laid on.
   *
   * @return the subfloor, not null
   */
  public Substrate subfloor() {
    return subfloor;
  }

  /**
   * Returns the places where the gap is judged.
   *
   * @return an unmodifiable list, empty if the gap is not known; not null
   */
  public List<GapPoint> gaps() {
    return gaps;
  }
}
