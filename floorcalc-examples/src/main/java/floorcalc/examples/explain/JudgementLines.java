package floorcalc.examples.explain;

import floorcalc.working.Judgement;
import java.util.List;

/** Judgements below the working, one a line, with what to do. */
final class JudgementLines {
  private JudgementLines() {
  }

  static String of(List<?> judgements) {
    StringBuilder text = new StringBuilder();
    for (Object one : judgements) {
      Judgement judgement = (Judgement) one;
      text.append('\n').append(Lines.words(judgement.outcome())).append(": ").append(judgement.check()).append(": ")
          .append(judgement.found().isEmpty() ? "" : judgement.found() + ", ").append(judgement.limit()).append("  [").append(judgement.source()).append(']');
      if (!judgement.advice().isEmpty()) {
        text.append("\n  to do: ").append(judgement.advice());
      }
    }
    return text.toString();
  }
}
