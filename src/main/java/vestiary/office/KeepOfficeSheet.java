package vestiary.office;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Period;
import java.util.Optional;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.web.Speech;

/** Keeps what the bishop's office is told of a Mass, and that it was sent. */
@ApplicationScoped
@Transactional
class KeepOfficeSheet {

  private static final int LONGEST_PLACE = 500;
  private static final int LONGEST_LIST = 1000;
  private static final int LONGEST_NOTE = 2000;
  private static final int MOST_CANDIDATES = 2000;

  /** Whoever asks a bishop earlier has mistyped the year: common practice, no source. */
  private static final Period LONGEST_AHEAD = Period.ofYears(2);

  private final OfficeSheetRows rows;
  private final ReadMasses masses;
  private final ReadDueSheets due;

  KeepOfficeSheet(OfficeSheetRows rows, ReadMasses masses, ReadDueSheets due) {
    this.rows = rows;
    this.masses = masses;
    this.due = due;
  }

  /**
   * As it was typed; what is {@code null} or blank is left open.
   *
   * @param arrival of the bishop, as in 09:45
   * @param company who concelebrates and assists
   * @param brought vestments that he brings
   * @param wanted vestments that he finds here
   * @param version of the sheet that the person looked at, or {@code null} to change it anyway
   */
  record Request(
      String arrival,
      String vestingPlace,
      String parking,
      Integer candidates,
      String company,
      String brought,
      String wanted,
      String note,
      Integer version) {}

  /** What is kept of a Mass; what nobody has said is empty. */
  OfficeSheetRow of(DatedMass mass) {
    return rows.findByIdOptional(mass.id().value()).orElseGet(OfficeSheetRow::new);
  }

  /**
   * Keeps it.
   *
   * @throws Refused if there is no such Mass, a field is unfit, or it was changed meanwhile
   */
  void keep(String id, Request request) {
    Asked asked = new Asked();
    LocalTime arrival = time(asked, request.arrival());
    String vesting = asked.text("vestingPlace", request.vestingPlace(), LONGEST_PLACE);
    String parking = asked.text("parking", request.parking(), LONGEST_PLACE);
    int candidates = asked.whole("candidates", request.candidates(), 0, MOST_CANDIDATES, -1);
    String company = asked.text("company", request.company(), LONGEST_LIST);
    String brought = asked.text("brought", request.brought(), LONGEST_LIST);
    String wanted = asked.text("wanted", request.wanted(), LONGEST_LIST);
    String note = asked.text("note", request.note(), LONGEST_NOTE);
    asked.refuseIfFaulty();
    OfficeSheetRow row = row(id);
    if (request.version() != null && request.version() != row.version) {
      throw new Refused(new Refusal.Outdated("this sheet"));
    }
    row.arrival = arrival;
    row.vestingPlace = vesting;
    row.parking = parking;
    row.candidates = candidates < 0 ? null : candidates;
    row.company = company;
    row.brought = brought;
    row.wanted = wanted;
    row.note = note;
    rows.persistAndFlush(row);
  }

  /**
   * Notes that it was sent.
   *
   * @param day on which, as in 2026-11-24; empty for today
   * @throws Refused if there is no such Mass, or the day is none, to come or {@link #LONGEST_AHEAD}
   *     before the Mass
   */
  void sent(String id, String day) {
    Asked asked = new Asked();
    LocalDate today = due.today();
    LocalDate on =
        day == null || day.isBlank() ? today : asked.findDate("sentOn", day).orElse(today);
    if (on.isAfter(today)) {
      asked.fault("sentOn", say("It cannot have been sent on a day that is still to come."));
    }
    if (on.isBefore(masses.get(id).date().minus(LONGEST_AHEAD))) {
      asked.fault(
          "sentOn",
          say("%s is years before the Mass; look at the year again.", Speech.dateAndYear(on)));
    }
    asked.refuseIfFaulty();
    OfficeSheetRow row = row(id);
    row.sentOn = on;
    rows.persistAndFlush(row);
  }

  /** It was not sent after all. */
  void notSent(String id) {
    OfficeSheetRow row = row(id);
    row.sentOn = null;
    rows.persistAndFlush(row);
  }

  private OfficeSheetRow row(String mass) {
    DatedMass found = masses.get(mass);
    if (found.chosen().cancelled()) {
      throw new Refused(
          new Refusal.Beyond(say("This Mass is cancelled, so that no sheet is kept for it.")));
    }
    UUID id = found.id().value();
    return Optional.ofNullable(rows.findById(id))
        .orElseGet(
            () -> {
              OfficeSheetRow fresh = new OfficeSheetRow();
              fresh.id = id;
              return fresh;
            });
  }

  private static LocalTime time(Asked asked, String typed) {
    return typed == null || typed.isBlank() ? null : asked.time("arrival", typed);
  }
}
