/**
 * The tables turned into cases, topic by topic: each row becomes a question as its source asks it, with the figures that the source prints.
 * <p>
 * Each class is a {@link floorcalc.reference.cases.Topic}. Nothing here knows the library: the same cases hold for any implementation. Rows that are too
 * doubtful never become a case; rows that are left out for another reason are named in a remark.
 */
package floorcalc.reference.cases;
