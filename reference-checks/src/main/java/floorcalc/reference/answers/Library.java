package floorcalc.reference.answers;

import floorcalc.reference.check.Answer;
import floorcalc.reference.check.Implementation;
import floorcalc.reference.check.Question;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** This library, asked through its public calls alone. */
public final class Library implements Implementation {
  private final Answers answers = new Answers();

  /** Makes the list of all calculations. */
  public Library() {
    new UnitAnswers().addTo(answers);
    new EquilibriumAnswers().addTo(answers);
    new ShrinkageAnswers().addTo(answers);
    new MovementAnswers().addTo(answers);
    new RoomToMoveAnswers().addTo(answers);
    new MoistureLimitAnswers().addTo(answers);
    new RuleAnswers().addTo(answers);
    new FilmAnswers().addTo(answers);
    new TransitionAnswers().addTo(answers);
    new FlatnessLimitAnswers().addTo(answers);
    new HeightReadingAnswers().addTo(answers);
    new SlabAnswers().addTo(answers);
    new RoomAnswers().addTo(answers);
    new ShapeAnswers().addTo(answers);
    new CuttingAnswers().addTo(answers);
    new BayAnswers().addTo(answers);
    new GridAnswers().addTo(answers);
    new ContinuousAnswers().addTo(answers);
    new AcclimatisationAnswers().addTo(answers);
    new PackAnswers().addTo(answers);
    new StripAnswers().addTo(answers);
    new JointAnswers().addTo(answers);
    new RowAnswers().addTo(answers);
    new WallRowAnswers().addTo(answers);
    new WholeFloorAnswers().addTo(answers);
    new FittingAnswers().addTo(answers);
    new BoardCutAnswers().addTo(answers);
    new DeviationAnswers().addTo(answers);
    new LevelLimitAnswers().addTo(answers);
    new TraverseAnswers().addTo(answers);
    new SquarenessAnswers().addTo(answers);
    new NetworkAnswers().addTo(answers);
    new TapeRoomAnswers().addTo(answers);
    new ErrorAnswers().addTo(answers);
  }

  @Override
  public String name() {
    return "floorcalc";
  }

  /**
   * Answers a question.
   *
   * @param question the question, not null
   * @return the answer; empty if the calculation has no name here
   * @throws IllegalArgumentException if an input is missing or refused
   */
  @Override
  public Optional<Answer> answer(Question question) {
    return answers.answer(question);
  }

  /**
   * Returns which classes of the core stand behind each calculation.
   *
   * @return full names of classes by the calculation's name, unmodifiable, not null
   */
  public Map<String, List<String>> underTest() {
    return answers.underTest();
  }
}
