/**
 * What to buy: packs, spare boards, what is left over, and where every square millimetre of it goes; what is used up beside them,
 * what all of it weighs and costs.
 * <p>
 * The number of boards comes from the cutting, never from an area and a percentage. {@link PackOrder} adds the spare
 * boards once for the whole job, rounds up once, to whole packs, and says what is over. {@link WasteLedger} accounts
 * for everything that was bought: floor, sawdust, offcuts, spare, packs that are sold whole. Its lines add up exactly.
 * <p>
 * Percentages stand beside these figures and are never part of them: a share means nothing without what it is a share
 * of, so each is given with its base, and rounded for display alone.
 * <p>
 * {@link Consumables} are wedges, tape, glue and sealant. Underlays come from {@link floorcalc.underlay}, skirtings and profiles from
 * {@link floorcalc.trims}; {@link FloorGoods} names all that is bought for one floor. Each thing is an {@link OrderLine} with its
 * working, and {@link CostSheet} adds up money exactly and rounds once.
 * <p>
 * The compromise: spare boards are a guess at mistakes and at repairs in years to come. The share is a rule with common
 * practice as its default, see {@link floorcalc.rules.LayingRules#SPARE_SHARE}. All types are immutable and thread-safe
 * and accept no null.
 * <pre>{@code
 * Calculated<PackOrder> order = PackOrder.of(boards, Map.of(boards.longest(), 40), rules.get(LayingRules.SPARE_SHARE));
 * String working = order.explain();
 * }</pre>
 */
package floorcalc.materials;
