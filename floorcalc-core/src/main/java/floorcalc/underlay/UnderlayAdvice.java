package floorcalc.underlay;

import floorcalc.moisture.Heating;
import floorcalc.working.Finding;
import floorcalc.working.Judgement;
import floorcalc.working.Severity;
import floorcalc.working.Source;
import java.util.List;
import java.util.Objects;

/**
 * What belongs between a subfloor and the boards, and whether the products of a job are that. Common practice without a source, but for
 * the limits on films, whose sources stand with them. The makers of boards and underlay come first.
 *
 * @param lay what to lay, not null
 * @param because why, not null
 * @param source whose rule it is, not null
 * @param judgements the rule held against the products: {@code moisture-barrier}, {@code film-thickness}, {@code film-permeance},
 *     {@code one-soft-layer}, {@code thermal-resistance}, {@code wet-room}; not null
 * @param findings what was noticed: {@code wet-room}, not null
 * @param cautions what those who do the work should know, not null
 * @since 0.1
 */
public record UnderlayAdvice(String lay, String because, Source source, List<Judgement> judgements, List<Finding> findings,
    List<String> cautions) {
  /** Checks that no part is null and copies the lists. */
  public UnderlayAdvice {
    Objects.requireNonNull(judgements, "judgements");
    Objects.requireNonNull(findings, "findings");
    Objects.requireNonNull(cautions, "cautions");
    Objects.requireNonNull(lay, "lay");
    Objects.requireNonNull(because, "because");
    Objects.requireNonNull(source, "source");
    judgements = List.copyOf(judgements);
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
  }

  /**
   * Says what to lay in a room.
   *
   * @param room the room's name, not null
   * @param base what lies below, not null
   * @param heating whether the floor is heated, not null
   * @param use how the room is used, not null
   * @param layers the products that are laid, from the subfloor up; not null, empty if there are none
   * @return the advice, not null
   */
  public static UnderlayAdvice of(String room, Base base, Heating heating, RoomUse use, List<RollGoods> layers) {
    Objects.requireNonNull(layers, "layers");
    return new UnderlayRule(room, base, heating, use, layers, true).advice();
  }

  /**
   * Says what to lay in a room of which no product is stated.
   *
   * @param room the room's name, not null
   * @param base what lies below, not null
   * @param heating whether the floor is heated, not null
   * @param use how the room is used, not null
   * @return the advice, {@code moisture-barrier} not measured in it; not null
   */
  public static UnderlayAdvice of(String room, Base base, Heating heating, RoomUse use) {
    return new UnderlayRule(room, base, heating, use, List.of(), false).advice();
  }

  static Finding wet(String room) {
    return new Finding("wet-room", Severity.SERIOUS, room, "is wet in use; a floor of wood boards does not belong there: choose another"
        + " floor, or ask the maker in writing", Source.COMMON_PRACTICE);
  }
}
