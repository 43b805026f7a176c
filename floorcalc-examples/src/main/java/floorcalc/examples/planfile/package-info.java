/**
 * Plan files: from {@link floorcalc.plan.FloorPlan} to JSON, for programs in other languages.
 * <p>
 * Start at {@link floorcalc.examples.planfile.PlanWriter}. The format stands in {@code docs/json-files.md} and
 * {@code docs/plan.schema.json}.
 */
package floorcalc.examples.planfile;
