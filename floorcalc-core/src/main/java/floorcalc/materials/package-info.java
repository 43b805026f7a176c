/**
 * What to buy: packs, spare boards, what is left over, and where every square millimetre of it goes.
 * <p>
 * The number of boards comes from the cutting, never from an area and a percentage. {@link PackOrder} adds the spare
 * boards once for the whole job, rounds up once, to whole packs, and says what is over. {@link WasteLedger} accounts
 * for everything that was bought: floor, sawdust, offcuts, spare, packs that are sold whole. Its lines add up exactly.
 * <p>
 * Percentages stand beside these figures and are never part of them: a share means nothing without what it is a share
 * of, so each is given with its base, and rounded for display alone.
 * <p>
 * The compromise: spare boards are a guess at mistakes and at repairs in years to come. The share is a rule with common
 * practice as its default, see {@link floorcalc.rules.LayingRules#SPARE_SHARE}. All types are immutable and thread-safe
 * and accept no null.
 */
package floorcalc.materials;
