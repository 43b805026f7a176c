package floorcalc.underlay;

import floorcalc.moisture.Heating;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Outcome;
import floorcalc.working.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** The rule on what lies between a subfloor and the boards. */
final class UnderlayRule {
  private final String room;
  private final Base base;
  private final Heating heating;
  private final RoomUse use;
  private final List<RollGoods> layers;
  private final boolean stated;
  private final List<Judgement> judgements = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();
  private final List<String> cautions = new ArrayList<>();

  UnderlayRule(String room, Base base, Heating heating, RoomUse use, List<RollGoods> layers, boolean stated) {
    this.room = Objects.requireNonNull(room, "room");
    this.base = Objects.requireNonNull(base, "base");
    this.heating = Objects.requireNonNull(heating, "heating");
    this.use = Objects.requireNonNull(use, "use");
    this.layers = List.copyOf(layers);
    this.stated = stated;
  }

  UnderlayAdvice advice() {
    if (use == RoomUse.WET) {
      findings.add(UnderlayAdvice.wet(room));
      judge("wet-room", "room fit for a wood floor", "wet in use", "dry in use", Outcome.NOT_MET, "choose another floor");
      cautions.add("Wet rooms: wood floors swell, lift and grow slippery where water stands; they do not belong there.");
      return new UnderlayAdvice("no wood floor", "the room is wet in use", Source.COMMON_PRACTICE, judgements, findings, cautions);
    }
    if (stated) {
      barrier();
      softLayers();
    } else {
      judge("moisture-barrier", "what lies between subfloor and boards", "", lay(), Outcome.NOT_MEASURED,
          "state the underlay and the barrier; " + because());
    }
    if (heating == Heating.HEATED) {
      judge("thermal-resistance", "thermal resistance of boards and underlay together", "",
          "as the makers of the heating, the boards and the underlay allow", Outcome.NOT_MEASURED,
          "ask the makers for the resistance of boards and underlay, add them up and hold them against what the heating allows");
      cautions.add("Heated floors: underlay and boards hold heat back and the boards dry; keep to the makers' limits of resistance and of"
          + " surface temperature, and never drill or nail into the heating.");
    }
    return new UnderlayAdvice(lay(), because(), Source.COMMON_PRACTICE, judgements, findings, cautions);
  }

  private String lay() {
    return switch (base) {
      case MINERAL -> "a moisture barrier below and an underlay above it, or one product that is both";
      case WOOD -> "an underlay that lets vapour through, or none; no tight film";
      case OLD_FLOOR -> "an underlay, or boards square to the old ones; no tight film over wood";
      case NOT_STATED -> "nothing yet: find out what the subfloor is";
    };
  }

  private String because() {
    return switch (base) {
      case MINERAL -> "concrete and screeds give off moisture for years, which the boards must not take up";
      case WOOD -> "wood below a tight film cannot dry and rots";
      case OLD_FLOOR -> "the joints and edges of the old floor would show through boards that lie along them";
      case NOT_STATED -> "a barrier that a mineral subfloor needs harms one of wood";
    };
  }

  private void barrier() {
    List<RollGoods> barriers = layers.stream().filter(layer -> layer.layer().isBarrier()).toList();
    String found = barriers.isEmpty() ? "none" : barriers.stream().map(RollGoods::name).collect(Collectors.joining(", "));
    switch (base) {
      case MINERAL -> {
        judge("moisture-barrier", "moisture barrier over " + base.words(), found, "a barrier, or an underlay that is one",
            barriers.isEmpty() ? Outcome.NOT_MET : Outcome.MET,
            barriers.isEmpty() ? "lay a moisture barrier, its seams taped, turned up at the walls" : "");
        barriers.forEach(film -> judgements.addAll(FilmLimits.NWFA_CONCRETE.judge(film)));
      }
      case WOOD -> {
        judge("moisture-barrier", "no tight film over " + base.words(), found, "none, or one that lets vapour through",
            barriers.isEmpty() ? Outcome.MET : Outcome.NOT_MEASURED,
            barriers.isEmpty() ? "" : "see its permeance: what is tight stays away from wood");
        barriers.forEach(film -> judgements.addAll(FilmLimits.NWFA_WOOD.judge(film)));
      }
      case OLD_FLOOR -> judge("moisture-barrier", "layer over an old floor", layers.isEmpty() ? "none"
              : layers.stream().map(RollGoods::name).collect(Collectors.joining(", ")),
          "an underlay, or boards square to the old ones", layers.isEmpty() ? Outcome.NOT_MEASURED : Outcome.MET,
          layers.isEmpty() ? "see which way the old boards run, and what lies below them" : "see what lies below the old floor: over"
              + " concrete a barrier, over wood no tight film");
      case NOT_STATED -> judge("moisture-barrier", "moisture barrier by the kind of subfloor", "",
          "a barrier over concrete and screeds, no tight film over wood", Outcome.NOT_MEASURED, "state what the subfloor is");
    }
  }

  private void softLayers() {
    List<RollGoods> soft = layers.stream().filter(layer -> layer.layer() != RollGoods.Layer.BARRIER).toList();
    if (!soft.isEmpty()) {
      judge("one-soft-layer", "soft layers under the boards", soft.size() + ": "
              + soft.stream().map(RollGoods::name).collect(Collectors.joining(", ")), "1, unless the maker allows more",
          soft.size() == 1 ? Outcome.MET : Outcome.NOT_MET, soft.size() == 1 ? ""
              : "lay one only: on two the boards sink at their joints, which break");
    }
  }

  private void judge(String code, String check, String found, String limit, Outcome outcome, String advice) {
    judgements.add(new Judgement(code, check, room, found, limit, outcome, Source.COMMON_PRACTICE, advice));
  }
}
