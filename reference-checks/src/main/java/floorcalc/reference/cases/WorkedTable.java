package floorcalc.reference.cases;

import floorcalc.reference.check.Expected;
import floorcalc.reference.check.Kind;
import floorcalc.reference.check.Question;
import floorcalc.reference.data.DataRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;

/**
 * A table in which each row is a case of one question: its first column names the case, the others are called as the inputs and figures are. An empty
 * cell is no input or no figure of that case.
 */
final class WorkedTable {
  private final String file;
  private final String question;
  private final Kind kind;
  private final List<BiFunction<Question, DataRow, Question>> inputs = new ArrayList<>();
  private final List<BiFunction<String, DataRow, Expected>> figures = new ArrayList<>();
  private final List<String> columns = new ArrayList<>();

  private WorkedTable(String file, String question, Kind kind) {
    this.file = file;
    this.question = question;
    this.kind = kind;
  }

  /** A table that other code worked out. */
  static WorkedTable of(String file, String question) {
    return new WorkedTable(file, question, Kind.WORKED_APART);
  }

  /** A table whose figures follow from the way its cases were made up. */
  static WorkedTable constructed(String file, String question) {
    return new WorkedTable(file, question, Kind.CONSTRUCTED);
  }

  /** Names inputs that are one text each. */
  WorkedTable inputs(String... names) {
    return add((asked, row, name) -> asked.with(name, row.text(name)), names);
  }

  /** Names inputs that are lists of numbers, with blanks between. */
  WorkedTable lists(String... names) {
    return add((asked, row, name) -> asked.withList(name, List.of(row.text(name).split(" "))), names);
  }

  /** Names inputs that are lists of texts, with "; " between. */
  WorkedTable textLists(String... names) {
    return add((asked, row, name) -> asked.withList(name, List.of(row.text(name).split("; "))), names);
  }

  /** Names inputs that are tables, with "; " between rows and blanks between cells. */
  WorkedTable tables(String... names) {
    return add((asked, row, name) -> asked.withTable(name, Arrays.stream(row.text(name).split("; ")).map(line -> List.of(line.split(" "))).toList()), names);
  }

  /** Names figures that are met exactly. */
  WorkedTable exact(String... names) {
    return figures(Expected::exactly, names);
  }

  /** Names figures that are met to half a unit of their last digit. */
  WorkedTable printed(String... names) {
    return figures(Expected::printed, names);
  }

  /** Names figures that are texts. */
  WorkedTable texts(String... names) {
    return figures(Expected::text, names);
  }

  private WorkedTable figures(BiFunction<String, String, Expected> how, String... names) {
    for (String name : names) {
      columns.add(name);
      figures.add((column, row) -> how.apply(column, row.text(column)));
    }
    return this;
  }

  private interface Input {
    Question add(Question asked, DataRow row, String name);
  }

  private WorkedTable add(Input input, String... names) {
    for (String name : names) {
      inputs.add((asked, row) -> row.isEmpty(name) ? asked : input.add(asked, row, name));
    }
    return this;
  }

  /** Makes the cases, one of each row. */
  FileCases cases() {
    FileCases cases = new FileCases(file);
    for (DataRow row : cases.rows()) {
      Question asked = Question.of(question);
      for (BiFunction<Question, DataRow, Question> input : inputs) {
        asked = input.apply(asked, row);
      }
      List<Expected> expected = new ArrayList<>();
      for (int i = 0; i < figures.size(); i++) {
        if (!row.isEmpty(columns.get(i))) {
          expected.add(figures.get(i).apply(columns.get(i), row));
        }
      }
      cases.add(row, row.text("about"), kind, asked, expected.toArray(Expected[]::new));
    }
    return cases;
  }
}
