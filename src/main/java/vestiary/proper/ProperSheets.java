package vestiary.proper;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.SundayBeside;
import vestiary.vesting.ChurchId;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the form of a proper, with what stands in it. */
@ApplicationScoped
class ProperSheets {

  static final String ALL = "/propers";
  static final String NEW = ALL + "/new";
  static final String NEW_DATE = NEW + "?for=one-year";

  private static final String BACK = word("All days of your own");

  private final ReadPropers propers;
  private final ChurchesToBind churches;
  private final Frames frames;

  ProperSheets(ReadPropers propers, ChurchesToBind churches, Frames frames) {
    this.propers = propers;
    this.churches = churches;
    this.frames = frames;
  }

  /** The form of a proper that is not there yet. */
  ProperForm fresh(Entries entries, String problem) {
    String title =
        ProperEntries.isOfOneYear(entries)
            ? say("Another date in one year")
            : say("A day of your own");
    return form(title, ALL, problem, entries, Link.NONE);
  }

  /** The form of a proper as it is stored. */
  ProperForm stored(EnteredProper proper) {
    return typed(proper, ProperEntries.from(proper, slugs()), "");
  }

  /** The same with changes that were typed and not saved. */
  ProperForm typed(EnteredProper proper, Entries entries, String problem) {
    String address = ALL + "/" + proper.id();
    return form(
        name(proper), address, problem, entries, new Link(say("Remove it"), address + "/removal"));
  }

  /** The question whether it is to be removed. */
  RemovalView removal(EnteredProper proper, String problem) {
    String address = ALL + "/" + proper.id();
    return new RemovalView(
        frames.of("settings", address),
        say("Remove %s?", name(proper)),
        problem,
        List.of(
            say(
                "%s then keep its day as the calendar has it.",
                proper.everywhere()
                    ? say("All churches")
                    : say("The churches that are named with it")),
            say("Weeks that are past are shown without it, too.")),
        address + "/removal",
        new Link(say("No, leave it"), address),
        String.valueOf(proper.version()));
  }

  private ProperForm form(
      String title, String action, String problem, Entries entries, Link removal) {
    return new ProperForm(
        frames.of("settings", action),
        title,
        action,
        problem,
        new Link(say(BACK), ALL),
        ProperEntries.isOfOneYear(entries),
        entries.choice("celebration", celebrations(entries)),
        entries.field("name"),
        entries.field("latin"),
        entries.field("spanish"),
        entries.field("day"),
        entries.choice("month", months()),
        entries.choice("colour", colours()),
        entries.choice("place", places()),
        entries.choice("onSunday", sundays()),
        entries.field("keptOn"),
        churches(entries),
        removal,
        entries.text("version"));
  }

  private String name(EnteredProper proper) {
    String name = known().name(proper.celebration());
    return proper.keptYear() == 0 ? name : say("%s in %d", name, proper.keptYear());
  }

  private KnownCelebrations known() {
    return new KnownCelebrations(churches.settings(), churches.titled(), propers.all());
  }

  /** What the calendar and the propers have by name, and at the end what each church has. */
  private Stream<Choice.Option> celebrations(Entries entries) {
    LiturgicalCalendar calendar = known().withAllBrought();
    Stream<Choice.Option> named =
        calendar.titles().stream()
            .filter(c -> calendar.findPlaceable(c.id()).isPresent())
            .map(c -> Choice.Option.of(c.id(), c.name().in(Speech.localeOr(churches.language()))))
            .sorted(Comparator.comparing(Choice.Option::text));
    Stream<Choice.Option> stored =
        calendar.findPlaceable(entries.text("celebration")).stream()
            .map(c -> Choice.Option.of(c.id(), c.name().in(Speech.localeOr(churches.language()))));
    return Stream.of(
            Stream.of(
                Choice.Option.of(
                    "",
                    ProperEntries.isOfOneYear(entries) ? say("choose one") : say("none of these"))),
            named,
            stored,
            Stream.of(
                Choice.Option.of(
                    Proper.Dedication.CELEBRATION, say("The dedication of the church itself")),
                Choice.Option.of(
                    Proper.OwnTitular.CELEBRATION,
                    say("The title of the church, where the calendar does not have it"))))
        .flatMap(options -> options)
        .distinct();
  }

  private static Stream<Choice.Option> months() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", "")),
        Arrays.stream(Month.values())
            .map(
                month ->
                    Choice.Option.of(
                        String.valueOf(month.getValue()),
                        month.getDisplayName(TextStyle.FULL, Speech.localeOr(Locale.ENGLISH)))));
  }

  private static Stream<Choice.Option> colours() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("as the calendar has it"))),
        Arrays.stream(Colour.values())
            .filter(ColourOfADay::isOne)
            .map(colour -> Choice.Option.of(colour.id(), Speech.colour(colour))));
  }

  private static Stream<Choice.Option> places() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("choose one"))),
        Arrays.stream(ProperPlace.values())
            .map(place -> Choice.Option.of(place.id(), ProperWords.place(place))));
  }

  private static Stream<Choice.Option> sundays() {
    return Stream.concat(
        Stream.of(Choice.Option.of("", say("no, on its own day"))),
        Arrays.stream(SundayBeside.values())
            .map(sunday -> Choice.Option.of(sunday.id(), ProperWords.sunday(sunday))));
  }

  private Choice churches(Entries entries) {
    List<String> ticked = entries.all("churches");
    return new Choice(
        churches.titled().stream()
            .map(c -> new Choice.Option(c.slug(), c.name(), ticked.contains(c.slug())))
            .toList(),
        entries.error("churches"));
  }

  private Map<ChurchId, String> slugs() {
    return churches.titled().stream()
        .collect(Collectors.toMap(TitledChurch::id, TitledChurch::slug));
  }
}
