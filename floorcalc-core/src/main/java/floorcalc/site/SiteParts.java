package floorcalc.site;

import floorcalc.flatness.GapReading;
import floorcalc.flatness.ToleranceSet;
import floorcalc.levels.SpotLevel;
import floorcalc.measure.Length;
import floorcalc.moisture.AirClimate;
import floorcalc.moisture.BoardMoistureLimits;
import floorcalc.moisture.ClimateLimits;
import floorcalc.moisture.Heating;
import floorcalc.moisture.MoistureLimits;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.Percent;
import floorcalc.movement.Pinning;
import java.io.Serializable;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** The parts of {@link SiteReadings}; null where nothing was given. Filled before it is handed over, never changed after. */
final class SiteParts implements Serializable {
  private static final long serialVersionUID = 1L;

  /** How the packs were kept. */
  enum Packs { CLOSED, OPENED, NOT_STATED }

  AirClimate air;
  AirClimate driest;
  AirClimate dampest;
  @SuppressWarnings("serial")
  List<MoistureReading> subfloorMoisture = List.of();
  @SuppressWarnings("serial")
  List<Percent> boardMoisture = List.of();
  BigDecimal days;
  Packs packs = Packs.NOT_STATED;
  Heating heating = Heating.NOT_STATED;
  @SuppressWarnings("serial")
  List<HeightLine> lines = List.of();
  @SuppressWarnings("serial")
  List<SpotLevel> heights = List.of();
  @SuppressWarnings("serial")
  List<GapReading> gaps = List.of();
  Length trimCover;
  /** Null if nobody looked. */
  Pinning pinning;
  ToleranceSet flatness = ToleranceSet.COMMON_PRACTICE;
  ClimateLimits airLimits = ClimateLimits.COMMON_PRACTICE;
  /** Null for the usual set of each method. */
  MoistureLimits subfloorLimits;
  BoardMoistureLimits boardLimits;

  SiteParts() {}

  SiteParts(SiteParts other) {
    air = other.air;
    driest = other.driest;
    dampest = other.dampest;
    subfloorMoisture = other.subfloorMoisture;
    boardMoisture = other.boardMoisture;
    days = other.days;
    packs = other.packs;
    heating = other.heating;
    lines = other.lines;
    heights = other.heights;
    gaps = other.gaps;
    trimCover = other.trimCover;
    pinning = other.pinning;
    flatness = other.flatness;
    airLimits = other.airLimits;
    subfloorLimits = other.subfloorLimits;
    boardLimits = other.boardLimits;
  }

  List<Object> all() {
    return Arrays.asList(air, driest, dampest, subfloorMoisture, boardMoisture, days, packs, heating, lines, heights, gaps,
        trimCover, pinning, flatness, airLimits, subfloorLimits, boardLimits);
  }
}
