package floorcalc.site;

import floorcalc.measure.Length;
import floorcalc.moisture.Acclimatisation;
import floorcalc.moisture.MoistureDifference;
import floorcalc.moisture.MoistureMethod;
import floorcalc.moisture.MoistureReading;
import floorcalc.moisture.SubfloorMoisture;
import floorcalc.working.Calculated;
import floorcalc.working.Judgement;
import java.util.Comparator;
import java.util.List;

/** The moisture of subfloor and boards, and of one against the other. */
final class MoistureCheck {
  /** So that readings in another order are judged in the same words. */
  private static final Comparator<MoistureReading> BY_VALUE =
      Comparator.comparing(MoistureReading::value).thenComparing(MoistureReading::place)
          .thenComparing(reading -> reading.depth().orElse(Length.ZERO));

  private final SiteFloor floor;
  private final SiteParts site;
  private final Report report;

  MoistureCheck(SiteFloor floor, SiteParts site, Report report) {
    this.floor = floor;
    this.site = site;
    this.report = report;
  }

  void subfloor() {
    List<MoistureReading> readings = site.subfloorMoisture.stream().sorted(BY_VALUE).toList();
    Calculated<SubfloorMoisture> judged = site.subfloorLimits == null
        ? SubfloorMoisture.judge(readings, floor.subfloor(), site.heating, floor.area())
        : SubfloorMoisture.judge(readings, floor.subfloor(), site.heating, floor.area(), site.subfloorLimits);
    List<Judgement> judgements = report.take(judged).judgements();
    // Where nothing was read, how many readings are wanted goes without a line of its own.
    report.judgements.addAll(readings.isEmpty() ? judgements.subList(0, 1) : judgements);
  }

  void boards() {
    Acclimatisation boards = Acclimatisation.notStated().boards(site.boardMoisture);
    boards = switch (site.packs) {
      case CLOSED -> boards.packsClosed();
      case OPENED -> boards.packsOpened();
      case NOT_STATED -> boards;
    };
    boards = site.days == null ? boards : boards.days(site.days);
    boards = site.air == null ? boards : boards.air(site.air);
    List<Judgement> judgements = report.take(boards.judge());
    boolean nothing = site.packs == SiteParts.Packs.NOT_STATED && site.days == null && site.boardMoisture.isEmpty();
    if (nothing) {
      Judgement agreement = judgements.get(judgements.size() - 1);
      report.open(agreement.code(), "boards in the room: moisture content, packs, days", "", "", agreement.limit(),
          agreement.source(), "leave packs closed in the room, note when they came in, and measure boards of several packs"
              + " with a meter set to the species; days stand in for no reading");
    } else {
      report.judgements.addAll(judgements);
    }
    if (site.boardLimits != null && !nothing) {
      report.judgements.add(report.take(site.boardLimits.judge(site.boardMoisture)));
    }
    difference();
  }

  /** Only a meter reads the moisture content of a wood subfloor; what is missing altogether has its own lines already. */
  private void difference() {
    List<MoistureReading> wood = site.subfloorMoisture.stream()
        .filter(reading -> reading.method() == MoistureMethod.METER).toList();
    if (floor.subfloor().isWood() && !(site.boardMoisture.isEmpty() && wood.isEmpty())) {
      report.judgements.add(report.take(MoistureDifference.judge(site.boardMoisture, wood, floor.boards().coverWidth())));
    }
  }
}
