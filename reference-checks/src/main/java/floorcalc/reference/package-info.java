/**
 * What the outside world says, and whether we agree.
 * <p>
 * Published figures lie in files ({@link floorcalc.reference.data}), are turned into questions ({@link floorcalc.reference.cases}), answered by the
 * library ({@link floorcalc.reference.answers}) or by a port of it, and compared ({@link floorcalc.reference.check}).
 * {@link floorcalc.reference.Suite} lists all topics.
 */
package floorcalc.reference;
