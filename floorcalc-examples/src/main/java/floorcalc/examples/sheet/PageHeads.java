package floorcalc.examples.sheet;

import floorcalc.plan.Bay;
import floorcalc.plan.FloorPlan;

/** The line at the top of each printed page: the job on the left, and on the right whose cut card or which record the page belongs to. */
final class PageHeads {
  private static final int LONGEST = 60;
  private static final String FONT = "font: 8.5pt Helvetica, Arial, \"Liberation Sans\", sans-serif;";

  private PageHeads() {
  }

  /** Returns the rules of a style sheet. A bay has pages of its own, upright and lying, in the order of the plan. */
  static String of(FloorPlan plan) {
    StringBuilder css = new StringBuilder();
    css.append("@page { @top-left { content: ").append(string(plan.title())).append("; ").append(FONT).append(" } }\n")
        .append("@page :first { @top-left { content: none; } }\n");
    named(css, "checklist", "Checklist");
    named(css, "handover", "Handover");
    named(css, "working", "Working");
    for (int i = 0; i < plan.bays().size(); i++) {
      Bay bay = plan.bays().get(i);
      named(css, page(i), bay.room() + ", bay " + bay.bay());
      css.append('.').append(page(i)).append(" .lying { page: ").append(page(i)).append("-lying; }\n");
      css.append("@page ").append(page(i)).append("-lying { size: landscape; margin: 10mm 12mm 9mm; @top-right { content: ")
          .append(string(bay.room() + ", bay " + bay.bay())).append("; ").append(FONT).append(" } }\n");
    }
    return css.toString();
  }

  /** Returns the class of a bay's part of the sheet, by its place in the plan. */
  static String page(int bay) {
    return "bay-" + (bay + 1);
  }

  private static void named(StringBuilder css, String page, String text) {
    css.append('.').append(page).append(" { page: ").append(page).append("; }\n").append("@page ").append(page)
        .append(" { @top-right { content: ").append(string(text)).append("; ").append(FONT).append(" font-weight: bold; } }\n");
  }

  /** Returns a text of any origin as a string of a style sheet: all but plain letters, digits and blanks by their code. */
  static String string(String text) {
    StringBuilder string = new StringBuilder("\"");
    int shown = 0;
    for (int c : text.codePoints().toArray()) {
      if (shown++ == LONGEST) {
        string.append("\\2026 ");
        break;
      }
      boolean plain = c >= '0' && c <= '9' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == ' ';
      string.append(plain ? Character.toString(c) : "\\" + Integer.toHexString(Character.isISOControl(c) ? ' ' : c) + ' ');
    }
    return string.append('"').toString();
  }
}
