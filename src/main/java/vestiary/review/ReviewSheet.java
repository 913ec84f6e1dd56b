package vestiary.review;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.assigning.StandIns;
import vestiary.assigning.StandInsView;
import vestiary.calendar.Day;
import vestiary.cluster.ChurchCalendars;
import vestiary.office.ReadDueSheets;
import vestiary.planning.ClashKind;
import vestiary.planning.MassWords;
import vestiary.planning.StandingWords;
import vestiary.web.DayWords;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;
import vestiary.web.Standing;

/** Sets out the pastor's week on one page. */
@ApplicationScoped
class ReviewSheet {

  private final ChurchCalendars calendars;
  private final Frames frames;
  private final CurrentVisitor visitor;
  private final ReadDueSheets due;
  private final StandIns standIns;

  ReviewSheet(
      ChurchCalendars calendars,
      Frames frames,
      CurrentVisitor visitor,
      ReadDueSheets due,
      StandIns standIns) {
    this.due = due;
    this.standIns = standIns;
    this.calendars = calendars;
    this.frames = frames;
    this.visitor = visitor;
  }

  /**
   * Who could take the Masses whose celebrant is away; worked out only where one is, since most
   * weeks have none, and in no transaction, since it may take seconds.
   */
  List<StandInsView> standIns(Review review) {
    boolean wanting =
        review.clashes().stream().anyMatch(clash -> clash.kind() == ClashKind.NO_CELEBRANT);
    LocalDate monday = review.now().monday();
    return wanting
        ? standIns.on(monday, monday.plusDays(ReadReview.DAYS - 1L), address(review))
        : List.of();
  }

  /**
   * The week as it is.
   *
   * @param standIns as {@link #standIns} gives them
   * @param done id of the celebrants who were just named; {@code null} or empty if none were
   * @param typed what stands in the form
   * @param problem what is wrong with it; may be empty
   */
  @Transactional
  ReviewView now(
      Review review, List<StandInsView> standIns, String done, Entries typed, String problem) {
    LocalDate monday = review.now().monday();
    WeekTable table = new WeekTable(review.shown(), review.reader(), true);
    String address = address(review);
    return new ReviewView(
        frames.of("review", address),
        say("Review · ") + DayWords.season(day(review, monday)),
        Speech.span(monday, monday.plusDays(ReadReview.DAYS - 1L)),
        List.of(
            turn("← %s", monday.minusWeeks(1)),
            turn("%s →", monday.plusWeeks(1)),
            new Link(say("The week"), "/week/" + monday)),
        StandingWords.of(MassWords.counted(review.span().asked()), review.clashes()),
        review.signatures().stream().findFirst().map(this::signed).orElse(""),
        review.signatures().stream().findFirst().map(Signature::note).orElse(""),
        table.churches(),
        table.notes(review.clashes()),
        review.signatures().stream().findFirst().map(this::since).orElse(""),
        review.changes(),
        MassesOfPriests.of(review.span()),
        review.signatures().stream().map(one -> earlier(monday, one)).toList(),
        office(monday),
        standIns,
        this.standIns.done(done, address),
        visitor.visitor().may(Action.SIGN_WEEKS)
            ? List.of(signing(review, address, typed, problem))
            : List.of());
  }

  /** The week as it was signed. */
  ReviewView asSigned(ReadReview.Kept kept) {
    LocalDate monday = kept.week().monday();
    WeekTable table = new WeekTable(kept.week(), kept.reader(), false);
    return new ReviewView(
        frames.of("review", "/review/%s/signed/%s".formatted(monday, kept.signature().id())),
        say("Review · as it was signed"),
        Speech.span(monday, monday.plusDays(ReadReview.DAYS - 1L)),
        List.of(new Link(say("As it is now"), "/review/" + monday)),
        new Standing(signed(kept.signature()), List.of()),
        "",
        kept.signature().note(),
        table.churches(),
        table.notes(List.of()),
        "",
        List.of(),
        new ReviewView.Tally(List.of(), List.of(), "", List.of()),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private List<ReviewView.Office> office(LocalDate monday) {
    LocalDate today = due.today();
    return due.pressingIn(monday).stream()
        .map(
            one ->
                new ReviewView.Office(
                    one.isLate(today), one.about() + ".", one.sentence(today), one.address()))
        .toList();
  }

  private static String address(Review review) {
    return "/review/" + review.now().monday();
  }

  private Day day(Review review, LocalDate date) {
    return calendars.plain(review.span().cluster()).day(date);
  }

  private static Link turn(String words, LocalDate monday) {
    return new Link(words.formatted(Speech.date(monday)), "/review/" + monday);
  }

  private String signed(Signature one) {
    return say("Signed by %s on %s.", one.by(), moment(one));
  }

  private String since(Signature one) {
    return say("since %s signed on %s", one.by(), moment(one));
  }

  private static String moment(Signature one) {
    return "%s, %s".formatted(Speech.day(one.at().toLocalDate()), Speech.clock(one.at()));
  }

  private Link earlier(LocalDate monday, Signature one) {
    UUID id = one.id();
    return new Link(
        "%s, %s".formatted(one.by(), moment(one)), "/review/%s/signed/%s".formatted(monday, id));
  }

  private static ReviewView.Signing signing(
      Review review, String address, Entries typed, String problem) {
    return new ReviewView.Signing(
        address, review.now().fingerprint(), review.turn(), typed.field("note"), problem);
  }
}
