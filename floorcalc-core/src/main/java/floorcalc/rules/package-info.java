/**
 * Rules of the trade as data: each with its value, its bounds and where it comes from.
 * <p>
 * A {@link floorcalc.rules.RuleSet} is named and knows its rules as its source states them, which may depend on the
 * thickness or the width of the boards or on the size of the room. Resolved for a job it gives
 * {@link floorcalc.rules.LayingRules}: one value for each {@link floorcalc.rules.RuleKey}, each a
 * {@link floorcalc.rules.RuleValue} with its {@link floorcalc.working.Source}. Any of them can be replaced by the caller
 * with a source of their own, and results say which value was used.
 * <p>
 * Sources that disagree stand beside each other as sets of their own and are never averaged. Where a set is silent, the
 * figure of common practice is used and says so. Common practice has no published source: those figures are what many
 * layers do, a starting point and no authority. The maker's instructions for the boards come before any of them.
 * <p>
 * A published figure is never changed here: a newer edition gets a set and a name of its own. All types are immutable
 * and thread-safe and accept no null. See {@code docs/rules.md}.
 * <pre>{@code
 * LayingRules rules = RuleSet.NF_DTU_51_11.forBoard(Length.parse("14 mm"), Length.parse("185 mm"))
 *     .with(LayingRules.SAW_KERF, Length.parse("2.5 mm"), Source.GIVEN);
 * RuleValue<Length> gap = rules.get(LayingRules.EXPANSION_GAP);   // with its source
 * }</pre>
 */
package floorcalc.rules;
