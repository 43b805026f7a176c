package floorcalc.materials;

import floorcalc.measure.Length;
import floorcalc.trims.BarGoods;
import floorcalc.underlay.RollGoods;
import floorcalc.underlay.TapeGoods;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What is bought for a floor beside its boards, as it is sold and worked. Nothing has to be given: of what is left out an order list says
 * only what the floor takes. Immutable and thread-safe.
 * <p>
 * Start from {@link #NONE}; each {@code with…} returns a copy and replaces what was given before.
 *
 * @since 0.1
 */
public final class FloorGoods implements Serializable {
  private static final long serialVersionUID = 1L;

  /** The kinds of profile that can be given. */
  public static final List<String> PROFILE_KINDS = List.of("T", "reducer", "end", "nosing");
  /** Nothing is stated. */
  public static final FloorGoods NONE = new FloorGoods(new GoodsParts());

  private final GoodsParts parts;

  private FloorGoods(GoodsParts parts) {
    this.parts = parts;
  }

  private FloorGoods with(Consumer<GoodsParts> change) {
    GoodsParts copy = parts.copy();
    change.accept(copy);
    return new FloorGoods(copy);
  }

  /**
   * Returns a copy with the layers under the boards.
   *
   * @param rolls the underlays and barriers, from the subfloor up; not null
   * @return the copy, not null
   */
  public FloorGoods withLayers(List<RollGoods> rolls) {
    Objects.requireNonNull(rolls, "rolls");
    List<RollGoods> layers = List.copyOf(rolls);
    return with(copy -> copy.layers = layers);
  }

  /**
   * Returns a copy with a skirting.
   *
   * @param bars the skirting, not null
   * @return the copy, not null
   */
  public FloorGoods withSkirting(BarGoods bars) {
    Objects.requireNonNull(bars, "bars");
    return with(copy -> copy.skirting = bars);
  }

  /**
   * Returns a copy with a quadrant, or another bead in front of the skirting.
   *
   * @param bars the quadrant, not null
   * @return the copy, not null
   */
  public FloorGoods withQuadrant(BarGoods bars) {
    Objects.requireNonNull(bars, "bars");
    return with(copy -> copy.quadrant = bars);
  }

  /**
   * Returns a copy with the profiles of a kind.
   *
   * @param kind {@code "T"}, {@code "reducer"}, {@code "end"} or {@code "nosing"}; not null
   * @param bars the profile, not null
   * @return the copy, not null
   * @throws IllegalArgumentException if there is no such kind
   */
  public FloorGoods withProfile(String kind, BarGoods bars) {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(bars, "bars");
    if (!PROFILE_KINDS.contains(kind)) {
      throw new IllegalArgumentException("there is no profile of kind '" + kind + "'; there are " + String.join(", ", PROFILE_KINDS));
    }
    Map<String, BarGoods> all = new LinkedHashMap<>(parts.profiles);
    all.put(kind, Objects.requireNonNull(bars, "bars"));
    return with(copy -> copy.profiles = Collections.unmodifiableMap(all));
  }

  /**
   * Returns a copy with a tape.
   *
   * @param goods the tape, not null
   * @return the copy, not null
   */
  public FloorGoods withTape(TapeGoods goods) {
    Objects.requireNonNull(goods, "goods");
    return with(copy -> copy.tape = goods);
  }

  /**
   * Returns a copy with a sealant.
   *
   * @param goods the sealant, not null
   * @return the copy, not null
   */
  public FloorGoods withSealant(SealantGoods goods) {
    Objects.requireNonNull(goods, "goods");
    return with(copy -> copy.sealant = goods);
  }

  /**
   * Returns a copy with a glue.
   *
   * @param goods the glue, not null
   * @return the copy, not null
   */
  public FloorGoods withGlue(GlueGoods goods) {
    Objects.requireNonNull(goods, "goods");
    return with(copy -> copy.glue = goods);
  }

  /**
   * Returns a copy with wedges.
   *
   * @param goods the wedges, not null
   * @return the copy, not null
   */
  public FloorGoods withWedges(WedgeGoods goods) {
    Objects.requireNonNull(goods, "goods");
    return with(copy -> copy.wedges = goods);
  }

  /**
   * Returns a copy with a filler.
   *
   * @param stock the filler, not null
   * @return the copy, not null
   */
  public FloorGoods withFiller(FillerStock stock) {
    Objects.requireNonNull(stock, "stock");
    return with(copy -> copy.filler = stock);
  }

  /**
   * Returns a copy with the width that casings cover of the wall on either side of a door opening.
   *
   * @param width the width, not null, from 0 mm to 1 m
   * @return the copy, not null
   * @throws IllegalArgumentException if the width is out of range
   */
  public FloorGoods withCasing(Length width) {
    if (width.isNegative() || width.compareTo(Length.ofMillimetres(1000)) > 0) {
      throw new IllegalArgumentException("the width of a casing must be from 0 mm to 1000 mm, but was " + width);
    }
    return with(copy -> copy.casing = width);
  }

  /**
   * Returns a copy with what becomes of packs of boards beyond the floor.
   *
   * @param keepBack packs ordered on top to be kept for repairs, from 0 to 10 000
   * @param returnShare what the seller gives for an unopened pack, as a share of its price from 0 to 1; not null
   * @return the copy, not null
   * @throws IllegalArgumentException if a value is out of range
   */
  public FloorGoods withPacksBeyond(int keepBack, BigDecimal returnShare) {
    if (keepBack < 0 || keepBack > 10_000) {
      throw new IllegalArgumentException("packs kept back must be from 0 to 10000, but were " + keepBack);
    }
    if (returnShare.signum() < 0 || returnShare.compareTo(BigDecimal.ONE) > 0) {
      throw new IllegalArgumentException("the return value must be a share of the price from 0 to 1, but was "
          + returnShare.toPlainString());
    }
    return with(copy -> {
      copy.keepBack = keepBack;
      copy.returnShare = returnShare;
    });
  }

  /**
   * Returns a copy with the height to which packs are stacked.
   *
   * @param height the height, not null, more than 0 mm
   * @return the copy, not null
   * @throws IllegalArgumentException if the height is not more than zero
   */
  public FloorGoods withStackHeight(Length height) {
    if (!height.isPositive()) {
      throw new IllegalArgumentException("the height of a stack must be more than 0 mm, but was " + height);
    }
    return with(copy -> copy.stackHeight = height);
  }

  /** {@return the underlays and barriers, from the subfloor up, not null} */
  public List<RollGoods> layers() {
    return parts.layers;
  }

  /** {@return the skirting, empty if not stated} */
  public Optional<BarGoods> skirting() {
    return Optional.ofNullable(parts.skirting);
  }

  /** {@return the quadrant, empty if not stated} */
  public Optional<BarGoods> quadrant() {
    return Optional.ofNullable(parts.quadrant);
  }

  /**
   * Returns the profile of a kind.
   *
   * @param kind the kind, not null
   * @return the profile, empty if not stated; not null
   */
  public Optional<BarGoods> profile(String kind) {
    Objects.requireNonNull(kind, "kind");
    return Optional.ofNullable(parts.profiles.get(kind));
  }

  /** {@return the tape, empty if not stated} */
  public Optional<TapeGoods> tape() {
    return Optional.ofNullable(parts.tape);
  }

  /** {@return the sealant, empty if not stated} */
  public Optional<SealantGoods> sealant() {
    return Optional.ofNullable(parts.sealant);
  }

  /** {@return the glue, empty if not stated} */
  public Optional<GlueGoods> glue() {
    return Optional.ofNullable(parts.glue);
  }

  /** {@return the wedges, empty if not stated} */
  public Optional<WedgeGoods> wedges() {
    return Optional.ofNullable(parts.wedges);
  }

  /** {@return the filler, empty if not stated} */
  public Optional<FillerStock> filler() {
    return Optional.ofNullable(parts.filler);
  }

  /** {@return the width that casings cover on either side of a door opening, not null} */
  public Length casing() {
    return parts.casing;
  }

  /** {@return the packs of boards kept back for repairs, not negative} */
  public int keepBack() {
    return parts.keepBack;
  }

  /** {@return what the seller gives for an unopened pack, a share of its price, not null} */
  public BigDecimal returnShare() {
    return parts.returnShare;
  }

  /** {@return the height to which packs are stacked, not null} */
  public Length stackHeight() {
    return parts.stackHeight;
  }

  @Override
  public boolean equals(Object object) {
    return object instanceof FloorGoods other && parts.all().equals(other.parts.all());
  }

  @Override
  public int hashCode() {
    return parts.all().hashCode();
  }

  /** What was read is made anew, so that it keeps every check. */
  private Object readResolve() {
    FloorGoods read = NONE.withLayers(parts.layers).withCasing(parts.casing).withPacksBeyond(parts.keepBack, parts.returnShare)
        .withStackHeight(parts.stackHeight);
    read = parts.skirting == null ? read : read.withSkirting(parts.skirting);
    read = parts.quadrant == null ? read : read.withQuadrant(parts.quadrant);
    read = parts.tape == null ? read : read.withTape(parts.tape);
    read = parts.sealant == null ? read : read.withSealant(parts.sealant);
    read = parts.glue == null ? read : read.withGlue(parts.glue);
    read = parts.wedges == null ? read : read.withWedges(parts.wedges);
    read = parts.filler == null ? read : read.withFiller(parts.filler);
    for (Map.Entry<String, BarGoods> profile : parts.profiles.entrySet()) {
      read = read.withProfile(profile.getKey(), profile.getValue());
    }
    return read;
  }
}
