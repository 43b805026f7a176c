package floorcalc.drawing;

import floorcalc.measure.Length;
import floorcalc.transitions.HeightDifference;
import floorcalc.transitions.HeightStack;
import floorcalc.transitions.ProfileKind;
import java.util.Objects;
import java.util.Optional;

/**
 * A section through an edge of the floor, as at a door: the layers on either side from the subfloor up, how high both stand, the profile over
 * the edge, the height at which a casing is cut, and the space under a door leaf. Heights are to one scale, what lies from left to right is
 * not. Immutable and thread-safe.
 * <p>
 * The sheet is black and grey on white and keeps to A4 and US Letter; every length of the SVG is a millimetre on paper. Texts never overlap;
 * what has no room is said in a note. The same heights give the same bytes everywhere.
 * <pre>{@code
 * String svg = HeightsDrawing.of(here).beyond(there).profile(ProfileKind.REDUCER).leaf(Length.parse("24 mm")).toSvg();
 * }</pre>
 *
 * @since 0.1
 */
public final class HeightsDrawing {
  private final HeightStack here;
  private final HeightStack beyond;
  private final ProfileKind profile;
  private final Length casing;
  private final Length leaf;
  private final String title;
  private final Measures measures;

  private HeightsDrawing(HeightStack here, HeightStack beyond, ProfileKind profile, Length casing, Length leaf, String title, Measures measures) {
    this.here = here;
    this.beyond = beyond;
    this.profile = profile;
    this.casing = casing;
    this.leaf = leaf;
    this.title = title;
    this.measures = measures;
  }

  /**
   * Returns a drawing of one floor, in millimetres.
   *
   * @param here its layers, not null
   * @return the drawing, not null
   */
  public static HeightsDrawing of(HeightStack here) {
    return new HeightsDrawing(Objects.requireNonNull(here, "here"), null, null, null, null, "", Measures.MILLIMETRES);
  }

  /**
   * Returns the same drawing with what lies beyond the edge.
   *
   * @param layers the layers beyond, not null
   * @return the drawing, not null
   */
  public HeightsDrawing beyond(HeightStack layers) {
    return new HeightsDrawing(here, Objects.requireNonNull(layers, "layers"), profile, casing, leaf, title, measures);
  }

  /**
   * Returns the same drawing with a profile over the edge. Its shape is a sign: its maker's section is another.
   *
   * @param kind which profile, not null
   * @return the drawing, not null
   */
  public HeightsDrawing profile(ProfileKind kind) {
    return new HeightsDrawing(here, beyond, Objects.requireNonNull(kind, "kind"), casing, leaf, title, measures);
  }

  /**
   * Returns the same drawing with a casing that is cut.
   *
   * @param cutAt how high over the subfloor of this floor it is cut, not null
   * @return the drawing, not null
   */
  public HeightsDrawing casing(Length cutAt) {
    return new HeightsDrawing(here, beyond, profile, Objects.requireNonNull(cutAt, "cutAt"), leaf, title, measures);
  }

  /**
   * Returns the same drawing with a door leaf over this floor.
   *
   * @param over how high over the subfloor of this floor its lower edge is, not null
   * @return the drawing, not null
   */
  public HeightsDrawing leaf(Length over) {
    return new HeightsDrawing(here, beyond, profile, casing, Objects.requireNonNull(over, "over"), title, measures);
  }

  /**
   * Returns the same drawing with a title.
   *
   * @param words the title, not null
   * @return the drawing, not null
   */
  public HeightsDrawing titled(String words) {
    return new HeightsDrawing(here, beyond, profile, casing, leaf, Objects.requireNonNull(words, "words"), measures);
  }

  /**
   * Returns the same drawing in other units.
   *
   * @param units how lengths are written, not null
   * @return the drawing, not null
   */
  public HeightsDrawing in(Measures units) {
    return new HeightsDrawing(here, beyond, profile, casing, leaf, title, Objects.requireNonNull(units, "units"));
  }

  /**
   * Draws.
   *
   * @return an SVG element that needs nothing from outside, to be kept as a file or put into a page; its identifiers begin with
   *     {@code heights}; it ends in a line feed; not null
   */
  public String toSvg() {
    return new HeightsComposition(this).draw();
  }

  HeightStack here() {
    return here;
  }

  Optional<HeightStack> beyond() {
    return Optional.ofNullable(beyond);
  }

  Optional<ProfileKind> profile() {
    return Optional.ofNullable(profile);
  }

  Optional<Length> casing() {
    return Optional.ofNullable(casing);
  }

  Optional<Length> leaf() {
    return Optional.ofNullable(leaf);
  }

  String title() {
    return title;
  }

  Measures measures() {
    return measures;
  }

  /** How much higher the floor beyond stands, if there is one. */
  Optional<HeightDifference> difference() {
    return beyond().map(other -> HeightDifference.between(here, other).value());
  }
}
