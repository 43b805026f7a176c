/**
 * Job files: from JSON to {@link floorcalc.plan.FloorJob}, with everything that is wrong with a file said at once.
 * <p>
 * Start at {@link floorcalc.examples.job.JobReader}. The format stands in {@code docs/json-files.md} and
 * {@code docs/job.schema.json}.
 */
package floorcalc.examples.job;
