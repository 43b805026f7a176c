package floorcalc.examples.job;

import com.fasterxml.jackson.databind.JsonNode;
import floorcalc.boards.BoardGoods;
import floorcalc.materials.FloorGoods;
import floorcalc.plan.FloorJob;
import floorcalc.plan.FloorJobBuilder;
import floorcalc.rules.LayingRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads jobs in the format {@code floorcalc-job/1}, described in {@code docs/json-files.md}. Reading is strict, and all
 * the mistakes of a file are found in one go.
 */
public final class JobReader {
  /** The first field of each job file. */
  public static final String FORMAT = "floorcalc-job/1";
  /** How many bytes a job may have; a longer one is refused. */
  public static final int MOST_BYTES = JobLimits.FILE_BYTES;

  private static final Pattern NUMBERED = Pattern.compile("floorcalc-job/[0-9]+");
  private static final List<String> FIELDS = List.of("format", "title", "board", "laying", "goods", "rooms");

  private JobReader() {
  }

  /**
   * Reads a job.
   *
   * @param utf8 the bytes of the file, not null
   * @return the job, not null
   * @throws BadJobException if anything is wrong with the file; it lists everything
   */
  public static JobFile read(byte[] utf8) {
    Parts parts = parts(utf8, Purpose.TO_LAY);
    FloorJobBuilder builder = FloorJob.of(parts.title, parts.board.goods()).rules(parts.laying.rules())
        .direction(parts.laying.direction()).offcuts(parts.laying.offcuts()).throughBreaks(parts.laying.throughBreaks())
        .goods(parts.goods);
    parts.board.measured().ifPresent(builder::measuredBoards);
    parts.rooms.forEach(read -> builder.room(read.room().orElseThrow()));
    return new JobFile(builder.build(), parts.tapes.ofJob(), parts.tapes.inFeet());
  }

  /**
   * Reads the surveys of a job. A survey that does not fix the shape of its room is no mistake here; all else is read as
   * strictly as ever, but for what would have to be held against walls that are not known.
   *
   * @param utf8 the bytes of the file, not null
   * @return the surveys, not null
   * @throws BadJobException if anything is wrong with the file; it lists everything
   */
  public static SurveyFile surveys(byte[] utf8) {
    Parts parts = parts(utf8, Purpose.SURVEYS);
    List<MeasuredRoom> measured = new ArrayList<>();
    List<String> others = new ArrayList<>();
    for (RoomReader.Read read : parts.rooms) {
      read.survey().ifPresentOrElse(survey -> measured.add(new MeasuredRoom(read.name(), survey)),
          () -> others.add(read.name()));
    }
    return new SurveyFile(parts.title, measured, others, parts.tapes.ofSurveys());
  }

  /** The parts of a job without mistakes. */
  private record Parts(String title, BoardReader.Boards board, LayingReader.Laying laying, FloorGoods goods, List<RoomReader.Read> rooms,
      Tapes tapes) {
  }

  private static Parts parts(byte[] utf8, Purpose purpose) {
    Mistakes mistakes = new Mistakes();
    Optional<Parts> parts = StrictJson.read(utf8, mistakes).flatMap(root ->
        new Value(root, Place.ROOT, mistakes).object("a job with format, title, board and rooms", FIELDS)
            .flatMap(job -> parts(job, root, purpose)));
    if (!mistakes.none()) {
      throw new BadJobException(mistakes.list());
    }
    return parts.orElseThrow();
  }

  private static Optional<Parts> parts(Fields job, JsonNode root, Purpose purpose) {
    if (!format(job)) {
      return Optional.empty();
    }
    Optional<String> title = job.requiredText("title");
    Optional<BoardReader.Boards> boards = job.required("board", "an object: the boards as they are sold")
        .flatMap(BoardReader::read);
    Optional<BoardGoods> board = boards.map(BoardReader.Boards::goods);
    LayingReader.Laying laying = LayingReader.read(job.optional("laying"), board);
    FloorGoods bought = job.optional("goods").flatMap(GoodsReader::read).orElse(FloorGoods.NONE);
    List<RoomReader.Read> rooms = new ArrayList<>();
    List<Value> items = job.required("rooms", "an array of at least one room")
        .map(list -> list.items("rooms", 1, JobLimits.ROOMS)).orElse(List.of());
    for (Value item : items) {
      RoomReader.read(item, purpose).ifPresent(rooms::add);
    }
    RoomNames.check(items);
    List<RoomReader.Read> shaped = rooms.stream().filter(read -> read.room().isPresent()).toList();
    RoomSizes.checkGap(shaped, laying.rules().value(LayingRules.EXPANSION_GAP));
    board.ifPresent(goods -> RoomSizes.checkBoards(job, shaped, goods));
    if (!job.mistakes().none()) {
      return Optional.empty();
    }
    return Optional.of(new Parts(title.orElseThrow(), boards.orElseThrow(), laying, bought, rooms, Tapes.of(root)));
  }

  /** Tells whether to read on: in a file of another format nothing else can be told to be wrong. */
  private static boolean format(Fields job) {
    Optional<Value> format = job.required("format", "\"" + FORMAT + "\"");
    format.ifPresent(JobReader::refuseOther);
    return format.flatMap(Value::asText).filter(text -> text.startsWith("floorcalc-") && !text.equals(FORMAT)).isEmpty();
  }

  private static void refuseOther(Value format) {
    if (format.asText().filter(text -> !text.equals(FORMAT) && NUMBERED.matcher(text).matches()).isPresent()) {
      format.refuse("\"" + FORMAT + "\", the only number of the format that this version of the program reads");
    } else {
      format.choice(Map.of(FORMAT, FORMAT));
    }
  }
}
