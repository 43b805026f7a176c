/**
 * The library's answers: each calculation by its name, with the call of the core that works it out.
 * <p>
 * {@link floorcalc.reference.answers.Library} is the implementation that the suite checks. One class a topic adds its calculations to
 * {@link floorcalc.reference.answers.Answers}, and says beside each which classes of the core are under test; the report's list of public
 * calculations is made from that, and a test holds it against the calls that are really there.
 */
package floorcalc.reference.answers;
