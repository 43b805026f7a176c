package floorcalc.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.function.Function;

/** What is tried. Each case has its own input, made from the seed and its number. */
enum Target {
  /** Documents that were sound jobs once. */
  JOB_BYTES(chance -> new JobBytes(chance).make(), JobCases::readOnly, 2000),
  /** Floors as people have them, from document to second check. */
  TAME_FLOORS(chance -> utf8(new JobGrammar(chance, JobGrammar.TAME).text()), JobCases::planned, 8),
  /** The same with rooms and values that are wrong, or right by a hair. */
  WILD_FLOORS(chance -> utf8(new JobGrammar(chance, 40 + chance.below(400)).text()), JobCases::planned, 60),
  /** Outlines handed over as objects, beside the reader and its limits. */
  OUTLINES(OutlineCases::make, OutlineCases::planned, 16),
  /** Walls and diagonals that may fix no shape, or two. */
  SURVEYS(chance -> utf8(SurveyCases.make(chance)), SurveyCases::reported, 8),
  WKT(TextCases::wkt, TextCases::readWkt, 1000),
  TAPE(TextCases::tape, TextCases::readTape, 5000),
  READINGS(TextCases::readings, TextCases::readReadings, 500);

  private final Function<Chance, byte[]> maker;
  private final Trial trial;
  private final int sample;

  /** Tries an input. */
  @FunctionalInterface
  interface Trial {
    Ending of(byte[] input, Chance chance);
  }

  Target(Function<Chance, byte[]> maker, Trial trial, int sample) {
    this.maker = maker;
    this.trial = trial;
    this.sample = sample;
  }

  /** How many cases each build tries. */
  int sample() {
    return sample;
  }

  byte[] input(long seed, long number) {
    return maker.apply(Chance.of(seed, this, number));
  }

  Ending tried(byte[] input, long seed, long number) {
    return trial.of(input, Chance.of(~seed, this, number));
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
