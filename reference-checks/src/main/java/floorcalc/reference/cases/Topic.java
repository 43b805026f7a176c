package floorcalc.reference.cases;

import floorcalc.reference.check.ReferenceCase;
import floorcalc.reference.check.Remark;
import java.util.List;

/** The cases of one topic of the trade. */
public interface Topic {
  /**
   * Returns what the cases are about.
   *
   * @return a few words, as a heading of the report, not null
   */
  String name();

  /**
   * Returns the names of the files that the cases come from.
   *
   * @return at least one, not null; no other topic has the same
   */
  List<String> files();

  /**
   * Makes the cases.
   *
   * @return the cases in the order of the files, at least one, not null
   */
  List<ReferenceCase> cases();

  /**
   * Returns what a reader should know about these sources: misprints, disagreements, figures left out.
   *
   * @return the remarks, may be empty, not null
   */
  List<Remark> remarks();
}
