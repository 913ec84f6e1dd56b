package vestiary.proper;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Celebration;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Proper;
import vestiary.calendar.Rank;
import vestiary.web.Celebrated;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out all propers in the order of the calendar, each with what becomes of it. */
final class PropersSheet {

  private static final int A_LEAP_YEAR = 2000;

  private final KnownCelebrations known;
  private final LocalDate today;
  private final Locale locale;

  PropersSheet(KnownCelebrations known, LocalDate today, Locale locale) {
    this.known = known;
    this.today = today;
    this.locale = locale;
  }

  PropersView view(Frame frame, String done) {
    return new PropersView(
        frame,
        lead(),
        done,
        List.of(new Link(say("Settings"), "/settings")),
        new Link(say("Add a day"), ProperSheets.NEW),
        new Link(say("Another date in one year"), ProperSheets.NEW_DATE),
        Stream.of(
                part(say("Every year"), proper -> proper.keptYear() == 0),
                part(say("In one year only"), proper -> proper.keptYear() > 0))
            .filter(part -> !part.rows().isEmpty())
            .toList());
  }

  private String lead() {
    int days = (int) known.entered().stream().filter(proper -> proper.keptYear() == 0).count();
    if (days == 0) {
      return say(
          "Nothing is entered beside %s yet: the patron of your diocese, the dedication of its cathedral, the patron of your town.",
          known.calendarName());
    }
    return say(
        days == 1
            ? word(
                "%s is kept beside %s, or otherwise than there. Titles and dedications stand with each church.")
            : word(
                "%s are kept beside %s, or otherwise than there. Titles and dedications stand with each church."),
        Speech.sentence(Speech.count(days, "day")),
        known.calendarName());
  }

  private PropersView.Part part(String heading, Predicate<EnteredProper> which) {
    List<Dated> rows =
        known.entered().stream()
            .filter(which)
            .map(this::dated)
            .sorted(Comparator.comparing(Dated::order).thenComparing(dated -> dated.row().id()))
            .toList();
    return new PropersView.Part(heading, rows.stream().map(Dated::row).toList());
  }

  private record Dated(LocalDate order, PropersView.Row row) {}

  private Dated dated(EnteredProper proper) {
    Map<TitledChurch, Outcome> outcomes = new LinkedHashMap<>();
    for (TitledChurch church : keepers(proper)) {
      outcome(proper, church).ifPresent(outcome -> outcomes.put(church, outcome));
    }
    LocalDate day = day(proper, outcomes.values().stream().toList());
    return new Dated(day.withYear(A_LEAP_YEAR), row(proper, day, outcomes));
  }

  private List<TitledChurch> keepers(EnteredProper proper) {
    return proper.everywhere() && !known.churches().isEmpty()
        ? known.churches()
        : known.bound(proper);
  }

  private Optional<Outcome> outcome(EnteredProper proper, TitledChurch church) {
    LocalDate first = proper.keptYear() == 0 ? today : LocalDate.of(proper.keptYear(), 1, 1);
    LocalDate last = first.plusYears(1).minusDays(1);
    return Outcome.find(
        proper.celebration(),
        known.calendarOf(church),
        first,
        last.isAfter(LiturgicalCalendar.LAST) ? LiturgicalCalendar.LAST : last);
  }

  /** The day that is entered; otherwise the one that the calendar has this time. */
  private LocalDate day(EnteredProper proper, List<Outcome> outcomes) {
    return proper
        .find(Proper.KeptOn.class)
        .map(Proper.KeptOn::date)
        .or(() -> proper.findDay().map(day -> day.atYear(today.getYear())))
        .or(() -> outcomes.stream().map(Outcome::ownDay).findFirst())
        .orElse(today);
  }

  private PropersView.Row row(
      EnteredProper proper, LocalDate day, Map<TitledChurch, Outcome> outcomes) {
    List<TitledChurch> bound = known.bound(proper);
    Optional<Celebration> kept =
        known
            .calendarOf(bound.stream().findFirst().orElse(TitledChurch.ANY))
            .find(proper.celebration());
    Rank rank = kept.map(Celebration::rank).orElse(Rank.FERIA);
    return new PropersView.Row(
        proper.id(),
        proper.keptYear() == 0 ? Speech.date(day) : Speech.dateAndYear(day),
        new Celebrated(
            "",
            rank.id(),
            "",
            kept.map(c -> c.name().in(locale)).orElse(known.name(proper.celebration()))),
        kept.map(Celebration::colours).orElse(List.of()).stream().map(ProperWords::ribbon).toList(),
        ProperWords.standing(proper, rank),
        ProperWords.churches(proper, bound),
        sentences(outcomes),
        new Link(say("Change"), ProperSheets.ALL + "/" + proper.id()));
  }

  /** What holds for most churches stands first and alone, the others with their names. */
  private static List<String> sentences(Map<TitledChurch, Outcome> outcomes) {
    Map<String, List<String>> churches = new LinkedHashMap<>();
    outcomes.forEach(
        (church, outcome) ->
            churches
                .computeIfAbsent(outcome.sentence(), s -> new ArrayList<>())
                .add(church.name()));
    List<String> byNumber =
        churches.keySet().stream()
            .sorted(Comparator.comparing((String s) -> churches.get(s).size()).reversed())
            .toList();
    return IntStream.range(0, byNumber.size())
        .mapToObj(i -> (i == 0 ? "" : in(churches.get(byNumber.get(i)))) + byNumber.get(i))
        .toList();
  }

  /** Each with its own "in", since many names have an "and" in them. */
  private static String in(List<String> churches) {
    return Speech.sentence(Speech.list(churches.stream().map(name -> say("in %s", name)).toList()))
        + ": ";
  }
}
