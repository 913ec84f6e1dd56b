package vestiary.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import vestiary.history.LastChanges;
import vestiary.people.FindPeople;
import vestiary.plan.PlanResult;
import vestiary.plan.ReadMovements;
import vestiary.planning.CheckClashes;
import vestiary.planning.Clash;
import vestiary.planning.SpanToCheck;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** Looks at a week, and at what was signed of it. */
@ApplicationScoped
@Transactional
class ReadReview {

  static final int DAYS = 7;

  private final CheckClashes check;
  private final ReadMovements movements;
  private final SignedWeekRows signed;
  private final FindPeople people;
  private final LastChanges history;

  ReadReview(
      CheckClashes check,
      ReadMovements movements,
      SignedWeekRows signed,
      FindPeople people,
      LastChanges history) {
    this.check = check;
    this.movements = movements;
    this.signed = signed;
    this.people = people;
    this.history = history;
  }

  /** The week from that Monday, as it is now. */
  Review of(LocalDate monday) {
    SpanToCheck span = check.load(monday, monday.plusDays(DAYS - 1L));
    List<Clash> clashes = check.in(span);
    List<PlanResult.Trip> trips = movements.between(monday, span.last()).trips();
    Locale kept = span.cluster().language();
    Locale read = Speech.localeOr(kept);
    WeekSeen shown = SeeWeek.of(span, clashes, trips, read);
    WeekSeen now =
        Speech.isOfTheRecord() && read.equals(kept)
            ? shown
            : Speech.forTheRecord(() -> SeeWeek.of(span, check.in(span), trips, kept));
    List<SignedWeekRow> rows = signed.of(monday);
    Reader reader = new Reader(span.cluster().zone(), people.byId(), history.makers());
    return new Review(
        span,
        clashes,
        now,
        shown,
        rows.stream().map(reader::signature).toList(),
        rows.stream().limit(1).flatMap(last -> changes(last, now, reader).stream()).toList(),
        reader);
  }

  /** A week as it was signed. */
  record Kept(WeekSeen week, Signature signature, Reader reader) {}

  /**
   * What an address names.
   *
   * @throws Refused if there is no such signature
   */
  Kept kept(String id, ZoneId zone) {
    SignedWeekRow row =
        Optional.ofNullable(signed.findById(Asked.id("signed week", id)))
            .orElseThrow(() -> new Refused(new Refusal.NotThere("signed week", id)));
    Reader reader = new Reader(zone, people.byId(), history.makers());
    return new Kept(row.week, reader.signature(row), reader);
  }

  private List<WeekChange> changes(SignedWeekRow last, WeekSeen now, Reader reader) {
    return new WeekDifference(last.week, now, reader::called)
        .changes().stream().map(change -> change(change, last.signedAt, reader)).toList();
  }

  private WeekChange change(WeekDifference.Change change, Instant since, Reader reader) {
    String by =
        change.mass().stream()
            .findFirst()
            .map(id -> history.last(id, since, reader.zone(), reader.makers()))
            .orElse("");
    return new WeekChange(change.date(), change.sentence(), by);
  }
}
