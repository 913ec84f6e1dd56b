package vestiary.proper;

import static vestiary.web.Speech.say;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Celebration;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.OfferedCalendar;
import vestiary.calendar.Precedence;
import vestiary.calendar.Proper;
import vestiary.web.Speech;

/**
 * Which celebrations the churches of a cluster have under its settings, with those that are entered
 * for them. Worked out when asked, and only once for churches that are alike.
 */
public final class KnownCelebrations {

  private final CalendarSettings settings;
  private final List<TitledChurch> churches;
  private final List<EnteredProper> entered;
  private final Map<List<Proper>, LiturgicalCalendar> calendars = new HashMap<>();

  public KnownCelebrations(
      CalendarSettings settings, List<TitledChurch> churches, List<EnteredProper> entered) {
    this.settings = settings;
    this.churches = List.copyOf(churches);
    this.entered = List.copyOf(entered);
  }

  List<TitledChurch> churches() {
    return churches;
  }

  List<EnteredProper> entered() {
    return entered;
  }

  /** The churches it binds; for what binds all, one that stands for every other. */
  List<TitledChurch> bound(EnteredProper proper) {
    return proper.everywhere()
        ? List.of(TitledChurch.ANY)
        : churches.stream().filter(church -> proper.binds(church.id())).toList();
  }

  /** The churches that it binds and that do not have what it is about. */
  List<TitledChurch> lacking(EnteredProper proper) {
    return bound(proper).stream().filter(church -> !isKnown(proper, church)).toList();
  }

  /** The churches whose title is a celebration that they do not have. */
  List<TitledChurch> withoutTheirTitle() {
    return churches.stream().filter(this::lacksItsTitle).toList();
  }

  /** Whether the calendar that is chosen has it itself, or any church may. */
  boolean isOfTheCalendar(String celebration) {
    return TitledChurch.OWN.contains(celebration)
        || calendar(List.of()).find(celebration).isPresent();
  }

  boolean standsAboveSunday(String celebration, TitledChurch church) {
    return calendarOf(church)
        .find(celebration)
        .filter(kept -> kept.precedence().compareTo(Precedence.SUNDAY) < 0)
        .isPresent();
  }

  /** The calendar of a church with everything that binds it. */
  LiturgicalCalendar calendarOf(TitledChurch church) {
    return calendar(BindingPropers.on(church.id(), entered, church.own()));
  }

  /** The calendar with every celebration that is brought, for whichever church. */
  LiturgicalCalendar withAllBrought() {
    return calendar(brought(proper -> true));
  }

  /** Its name for people; the id itself where nobody has it. */
  String name(String celebration) {
    return Stream.concat(
            entered.stream()
                .filter(proper -> proper.id().equals(celebration))
                .flatMap(proper -> proper.findName().stream()),
            calendar(List.of()).find(celebration).map(Celebration::name).stream())
        .map(name -> name.in(Speech.localeOr(Locale.ENGLISH)))
        .findFirst()
        .orElse(celebration);
  }

  /** For example "the calendar of Ireland". */
  String calendarName() {
    String name =
        LiturgicalCalendar.offered().stream()
            .filter(offered -> offered.id().equals(settings.calendar()))
            .map(OfferedCalendar::name)
            .findFirst()
            .orElseThrow()
            .in(Speech.localeOr(Locale.ENGLISH));
    return switch (settings.calendar()) {
      case "general" -> say("the %s", name);
      case "us" -> say("the calendar of the %s", name);
      default -> say("the calendar of %s", name);
    };
  }

  private boolean isKnown(EnteredProper proper, TitledChurch church) {
    boolean isItsOwn = proper.findPlace().isEmpty() && church.brings(proper.celebration());
    return isItsOwn || withBrought(church).findPlaceable(proper.celebration()).isPresent();
  }

  private boolean lacksItsTitle(TitledChurch church) {
    return church
        .findTitular()
        .filter(titular -> withBrought(church).findTitle(titular).isEmpty())
        .isPresent();
  }

  /** With all celebrations that are brought for a church, wherever they stand. */
  private LiturgicalCalendar withBrought(TitledChurch church) {
    return calendar(brought(proper -> proper.binds(church.id())));
  }

  private List<Proper> brought(Predicate<EnteredProper> which) {
    return entered.stream()
        .filter(which)
        .flatMap(proper -> proper.find(Proper.Inscribed.class).stream())
        .<Proper>map(inscribed -> inscribed)
        .toList();
  }

  private LiturgicalCalendar calendar(List<Proper> propers) {
    return calendars.computeIfAbsent(propers, p -> LiturgicalCalendar.of(settings, p));
  }
}
