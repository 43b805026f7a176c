package floorcalc.examples.sheet;

import floorcalc.materials.OrderLine;
import floorcalc.measure.Length;
import floorcalc.measure.Price;
import floorcalc.outline.Point;
import floorcalc.plan.FloorPlan;
import floorcalc.plan.LaidPiece;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * The cut card and the order list as tables for spreadsheets: RFC 4180, UTF-8 with a byte order mark, lengths in millimetres and exact. No text
 * starts with a sign that a spreadsheet takes for a formula; such a text has an apostrophe in front.
 */
public final class CsvFiles {
  private static final String FORMULA_STARTS = "=+-@\t\r\n\uff1d\uff0b\uff0d\uff20";
  /** By this a spreadsheet knows UTF-8. */
  private static final char BYTE_ORDER_MARK = '\ufeff';

  private CsvFiles() {
  }

  /**
   * Returns the cut card as a table of one piece a line.
   *
   * @param card the cut card, not null
   * @return the bytes of the file, not null
   */
  public static byte[] cutCard(CutCard card) {
    return table(List.of("bay", "row", "run", "piece", "kind", "board", "board_length_mm", "opens_board",
        "cut_length_mm", "rip_width_mm", "board_end", "keeps_edge", "along_from_mm", "along_to_mm", "across_from_mm",
        "across_to_mm", "corners_mm", "rest_mm", "rest_kept_for",
        "cut_out_mm"),
        printer -> {
          for (CutLine line : card.lines()) {
            piece(printer, line);
          }
        });
  }

  private static void piece(CSVPrinter printer, CutLine line) throws IOException {
    LaidPiece piece = line.piece();
    printer.printRecord(text(line.bay().bay()), line.row(), piece.run(), text(piece.piece()),
        piece.kind().name().toLowerCase(Locale.ROOT), piece.from().board(), mm(line.boardLength()),
        line.opens() ? "yes" : "no", mm(line.length()), mm(line.width()), line.end(), line.edge(),
        mm(piece.from().alongFrom()), mm(piece.from().alongTo()), mm(piece.from().acrossFrom()),
        mm(piece.from().acrossTo()), line.shape().map(CsvFiles::corners).orElse(""),
        line.rests().stream().map(rest -> mm(rest.length()) + " x " + mm(rest.width()))
            .collect(Collectors.joining("; ")),
        text(line.rests().stream().map(rest -> rest.keptFor().isEmpty() ? "over" : String.join(" ", rest.keptFor()))
            .collect(Collectors.joining("; "))),
        text(line.cut().map(cut -> String.join("; ", cut.inWords(CsvFiles::mm))).orElse("")));
  }

  private static String corners(PieceShape shape) {
    return shape.corners().stream().map(CsvFiles::corner).collect(Collectors.joining("; "));
  }

  private static String corner(Point corner) {
    return mm(corner.x()) + " " + mm(corner.y());
  }

  /**
   * Returns the order list as a table of one item a line: what the floor takes, what is ordered, the price as quoted and that of the line,
   * exact, and the working in words.
   *
   * @param plan the plan, not null
   * @return the bytes of the file, not null
   */
  public static byte[] order(FloorPlan plan) {
    return table(List.of("item", "net", "quantity", "unit", "price_of_one", "price", "currency", "working"), printer -> {
      for (OrderLine line : plan.materials()) {
        Optional<Price> price = line.price();
        printer.printRecord(text(line.item()), text(line.net()), line.quantity().toPlainString(), text(line.unit()),
            line.unitPrice().map(each -> each.price().toString()).orElse(""),
            price.map(all -> all.amount().toPlainString()).orElse(""), price.map(Price::currency).orElse(""),
            text(WorkingWords.of(line.working())));
      }
    });
  }

  /** Prints the lines of a table. */
  private interface Lines {
    void print(CSVPrinter printer) throws IOException;
  }

  private static byte[] table(List<String> header, Lines lines) {
    StringBuilder text = new StringBuilder().append(BYTE_ORDER_MARK);
    try (CSVPrinter printer = new CSVPrinter(text, CSVFormat.RFC4180)) {
      printer.printRecord(header);
      lines.print(printer);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static String mm(Length length) {
    return length.toMillimetreString();
  }

  static String text(String cell) {
    return !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 ? "'" + cell : cell;
  }
}
