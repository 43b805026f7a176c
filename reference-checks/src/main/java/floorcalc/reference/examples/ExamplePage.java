package floorcalc.reference.examples;

import java.util.List;

/** A worked example as a page of Markdown, and the list of all pages. */
public final class ExamplePage {
  private ExamplePage() {}

  /**
   * Writes the page of an example.
   *
   * @param example the example, not null
   * @return the page, its lines separated by {@code \n}, not null
   */
  public static String of(WorkedExample example) {
    StringBuilder page = new StringBuilder("# ").append(example.title()).append("\n\nSource: ").append(example.source()).append("\n\n## Given\n")
        .append(example.given()).append("\n\n## Working\n");
    for (String steps : example.working()) {
      page.append("```text\n").append(steps).append("\n```\n");
    }
    page.append("\n## Printed and worked out\n| Figure | Printed | Worked out | Printed figure is |\n| --- | --- | --- | --- |\n");
    for (WorkedExample.Figure figure : example.figures()) {
      page.append("| ").append(figure.expected().figure()).append(" | ").append(figure.expected().printed()).append(" | ").append(figure.answer())
          .append(" | ").append(figure.standing()).append(" |\n");
    }
    if (!example.remark().isEmpty()) {
      page.append('\n').append(example.remark()).append('\n');
    }
    return page.append("\n[All worked examples](README.md)\n").toString();
  }

  /**
   * Writes the list of all pages.
   *
   * @param examples the examples, not null
   * @return the page, its lines separated by {@code \n}, not null
   */
  public static String list(List<WorkedExample> examples) {
    StringBuilder page = new StringBuilder("# Worked examples\n\nExamples that published sources work or print, worked again by the library with every step. Follow one with a "
        + "pocket calculator: nothing is\nrounded between steps. The pages are made by the reference suite and compared with it when the project is built.\n\n"
        + "| Question | Source |\n| --- | --- |\n");
    for (WorkedExample example : examples) {
      page.append("| [").append(example.title()).append("](").append(example.name()).append(".md) | ").append(example.source()).append(" |\n");
    }
    return page.toString();
  }
}
