package floorcalc.reference.report;

import java.util.List;

/** A page that is written from top to bottom: headings, paragraphs and tables. */
interface Page {
  /** A heading; 1 is the page's own. */
  void heading(int level, String text);

  /** A paragraph. */
  void paragraph(String text);

  /** A table; a cell that asks for attention starts with {@link #ALERT}. */
  void table(List<String> heads, List<List<String>> rows);

  /** A list. */
  void list(List<String> items);

  /** The whole page. */
  String end();

  /** At the start of a cell: it is to be seen at a glance. */
  String ALERT = "!";
}
