package vestiary.review;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;

/**
 * How a week is covered, for programs.
 *
 * @param week as in 2026-W49
 * @param from its Monday
 * @param to its Sunday
 * @param seen by which it is known that the week reads as it did; can be sent when it is signed
 * @param signed the last signature; none if nobody has signed it
 * @param changes since then, whole sentences
 */
record CoverageBody(
    String week,
    String from,
    String to,
    String seen,
    List<MassBody> masses,
    List<ClashBody> clashes,
    List<SignatureBody> signed,
    List<String> changes) {

  record MassBody(
      UUID id,
      String church,
      OffsetDateTime start,
      int minutes,
      String what,
      String colour,
      String celebrant,
      String company,
      String serving,
      List<String> vestments,
      List<String> journeys) {}

  record ClashBody(String id, String severity, List<UUID> masses, String about, String title) {}

  record SignatureBody(UUID id, int turn, OffsetDateTime at, String by, String note) {
    static SignatureBody of(Signature one) {
      return new SignatureBody(
          one.id(), one.turn(), one.at().toOffsetDateTime(), one.by(), one.note());
    }
  }

  static CoverageBody of(Review review) {
    WeekSeen now = review.now();
    return new CoverageBody(
        WeekAddress.number(now.monday()),
        now.monday().toString(),
        now.monday().plusDays(ReadReview.DAYS - 1L).toString(),
        now.fingerprint(),
        now.masses().stream().map(mass -> body(mass, review.reader())).toList(),
        now.clashes().stream()
            .map(c -> new ClashBody(c.id(), c.severity(), c.masses(), c.about(), c.title()))
            .toList(),
        review.signatures().stream().limit(1).map(SignatureBody::of).toList(),
        review.changes().stream().map(WeekChange::sentence).toList());
  }

  private static MassBody body(MassSeen mass, Reader reader) {
    return new MassBody(
        mass.id(),
        mass.church(),
        mass.start().atZone(reader.zone()).toOffsetDateTime(),
        mass.minutes(),
        mass.what(),
        mass.colour().id(),
        mass.celebrants().stream().map(reader::called).findFirst().orElse(""),
        mass.company(),
        reader.serving(mass),
        mass.vestments(),
        mass.journeys());
  }
}
