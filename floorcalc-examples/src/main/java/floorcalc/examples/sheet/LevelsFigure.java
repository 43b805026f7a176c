package floorcalc.examples.sheet;

import floorcalc.drawing.LevelsDrawing;
import floorcalc.levels.GridFlatness;
import floorcalc.levels.Levels;
import floorcalc.levels.PreparationOptions;
import floorcalc.levels.SubfloorPreparation;
import floorcalc.plan.Room;
import java.util.Optional;

/** The heights read in a room as a drawing; where they are on a grid and not flat, with what filling alone would take. */
final class LevelsFigure {
  private final Html html;
  private final Figures figures;

  LevelsFigure(Html html, Figures figures) {
    this.html = html;
    this.figures = figures;
  }

  void write(Room room) {
    if (room.site().heights().isEmpty() || !Levels.faultsOf(room.site().heights()).isEmpty()) {
      return;
    }
    Levels levels = Levels.of(room.site().heights());
    LevelsDrawing drawing = LevelsDrawing.of(levels).titled("Heights read in " + room.name()).in(figures.measures())
        .within(room.outline());
    html.line("<figure>").raw(filled(room, levels).map(drawing::with).orElse(drawing).toSvg()).line("</figure>");
  }

  private static Optional<SubfloorPreparation> filled(Room room, Levels levels) {
    try {
      boolean isFlat = GridFlatness.of(levels, room.site().flatness()).value().gaps().stream()
          .allMatch(gap -> gap.gap().compareTo(gap.allowed()) <= 0);
      return isFlat || !levels.doubts().isEmpty() ? Optional.empty()
          : Optional.of(SubfloorPreparation.of(levels, room.site().flatness(), PreparationOptions.fillOnly()).value());
    } catch (IllegalArgumentException noGrid) {
      return Optional.empty();
    }
  }
}
