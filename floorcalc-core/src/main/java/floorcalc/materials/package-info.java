/**
 * What to buy: packs, spare boards, what is left over, and where every square millimetre of it goes; underlays and barriers by
 * the roll, skirtings by the bar, what is used up beside them, what all of it weighs and costs.
 * <p>
 * The number of boards comes from the cutting, never from an area and a percentage. {@link PackOrder} adds the spare
 * boards once for the whole job, rounds up once, to whole packs, and says what is over. {@link WasteLedger} accounts
 * for everything that was bought: floor, sawdust, offcuts, spare, packs that are sold whole. Its lines add up exactly.
 * <p>
 * Percentages stand beside these figures and are never part of them: a share means nothing without what it is a share
 * of, so each is given with its base, and rounded for display alone.
 * <p>
 * {@link floorcalc.materials.StripLayout} lays strips off a roll on an outline of any shape, {@link floorcalc.materials.RollOrder} cuts
 * those of all floors from whole rolls. {@link floorcalc.materials.TrimRuns} walks along the walls and gathers runs of skirting,
 * {@link floorcalc.materials.BarOrder} cuts them from bars. Both cut with {@link floorcalc.trims.TrimCutting}, so a bound stands beside
 * each number. {@link floorcalc.materials.UnderlayAdvice} says what belongs on a subfloor.
 * {@link floorcalc.materials.CostSheet} adds up money exactly and rounds once.
 * <p>
 * The compromise: spare boards are a guess at mistakes and at repairs in years to come. The share is a rule with common
 * practice as its default, see {@link floorcalc.rules.LayingRules#SPARE_SHARE}. All types are immutable and thread-safe
 * and accept no null.
 */
package floorcalc.materials;
