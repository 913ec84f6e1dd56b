package vestiary.office;

import java.time.LocalDate;
import vestiary.problem.Asked;

/**
 * The sheet for the bishop's office, as the API answers and takes it.
 *
 * @param due last day on which it is in time; not taken
 * @param late whether it is not sent although that day is past; not taken
 * @param sentOn day on which it was sent; taken where it is sent
 */
record OfficeBody(
    String mass,
    LocalDate due,
    Boolean late,
    String sentOn,
    String arrival,
    String vestingPlace,
    String parking,
    Integer candidates,
    String company,
    String brought,
    String wanted,
    String note,
    Integer version) {

  static OfficeBody of(DueSheet sheet, OfficeSheetRow row, LocalDate today) {
    return new OfficeBody(
        sheet.mass().id().value().toString(),
        sheet.due(),
        sheet.isLate(today),
        row.sentOn == null ? null : row.sentOn.toString(),
        row.arrival == null ? null : row.arrival.toString(),
        row.vestingPlace,
        row.parking,
        row.candidates,
        row.company,
        row.brought,
        row.wanted,
        row.note,
        row.version);
  }

  static KeepOfficeSheet.Request toRequest(OfficeBody body) {
    OfficeBody sent = Asked.body(body);
    return new KeepOfficeSheet.Request(
        sent.arrival,
        sent.vestingPlace,
        sent.parking,
        sent.candidates,
        sent.company,
        sent.brought,
        sent.wanted,
        sent.note,
        sent.version);
  }
}
