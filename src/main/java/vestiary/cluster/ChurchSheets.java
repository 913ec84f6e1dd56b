package vestiary.cluster;

import static vestiary.cluster.SaveChurchWithJourneys.JOURNEY;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.Celebration;
import vestiary.calendar.Colour;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the form of a church, with what stands in it and the journeys from it. */
@ApplicationScoped
class ChurchSheets {

  private static final Link BACK = new Link(word("Settings"), "/settings");

  private final ReadCluster cluster;
  private final ChurchCalendars calendars;
  private final Frames frames;
  private final ChurchNotices notices;

  ChurchSheets(
      ReadCluster cluster, ChurchCalendars calendars, Frames frames, ChurchNotices notices) {
    this.notices = notices;
    this.cluster = cluster;
    this.calendars = calendars;
    this.frames = frames;
  }

  /** The form of a church that is not there yet. */
  ChurchForm fresh(Entries entries, String problem) {
    List<ChurchForm.Journey> journeys =
        cluster.churches().stream().map(other -> journey(other, entries, "")).toList();
    LiturgicalCalendar calendar = calendars.plain(cluster.cluster());
    return form(
        say("A new church"),
        "/churches",
        "",
        problem,
        entries,
        titles(calendar, entries),
        journeys,
        List.of());
  }

  /** The form of a church as it is stored. */
  ChurchForm stored(Church church, String done) {
    Entries entries = ChurchEntries.from(church);
    for (Church other : others(church)) {
      Optional<Journey> way = way(church, other).filter(journey -> !journey.isEstimated());
      if (way.isPresent()) {
        entries = entries.with(JOURNEY + other.slug(), String.valueOf(way.get().minutes()));
      }
    }
    return of(church, entries, done, "");
  }

  /** The same with changes that were typed and not saved. */
  ChurchForm typed(Church church, Entries entries, String problem) {
    return of(church, entries, "", problem);
  }

  /** The names of the fields that the form has. */
  List<String> fields() {
    return ChurchEntries.fields(cluster.churches().stream().map(Church::slug).toList());
  }

  private ChurchForm of(Church church, Entries entries, String done, String problem) {
    List<ChurchForm.Journey> journeys =
        others(church).stream()
            .map(other -> journey(other, entries, estimate(church, other)))
            .toList();
    String title = church.place().isEmpty() ? church.name() : church.name() + ", " + church.place();
    LiturgicalCalendar calendar = calendars.of(cluster.cluster(), church);
    return form(
        title,
        "/churches/" + church.slug(),
        done,
        problem,
        entries,
        titles(calendar, entries),
        journeys,
        notices.of(church));
  }

  private ChurchForm form(
      String title,
      String action,
      String done,
      String problem,
      Entries entries,
      Choice titles,
      List<ChurchForm.Journey> journeys,
      List<String> notices) {
    return new ChurchForm(
        frames.of("settings", action),
        title,
        action,
        done,
        problem,
        BACK.said(),
        entries.field("slug"),
        entries.field("name"),
        entries.field("parish"),
        cluster.churches().stream().map(Church::parish).distinct().toList(),
        entries.field("place"),
        entries.field("title"),
        titles,
        entries.field("titularName"),
        entries.field("titularMonth"),
        entries.field("titularDay"),
        entries.choice("titularColour", colours()),
        entries.field("dedication"),
        entries.field("setOutMinutes"),
        entries.field("clearanceMinutes"),
        entries.field("latitude"),
        entries.field("longitude"),
        journeys,
        entries.text("version"),
        notices);
  }

  private static ChurchForm.Journey journey(Church other, Entries entries, String estimate) {
    return new ChurchForm.Journey(
        other.slug(), other.name(), other.place(), entries.field(JOURNEY + other.slug()), estimate);
  }

  private String estimate(Church church, Church other) {
    return way(church, other)
        .filter(Journey::isEstimated)
        .map(journey -> say("About %d minutes by the map", journey.minutes()))
        .orElse("");
  }

  private Optional<Journey> way(Church from, Church to) {
    return cluster.journeys().stream()
        .filter(j -> j.from().equals(from.id()) && j.to().equals(to.id()))
        .findFirst();
  }

  private List<Church> others(Church church) {
    return cluster.churches().stream().filter(c -> !c.id().equals(church.id())).toList();
  }

  /** A title kept under other options of the calendar stays on offer where it is kept. */
  private static Choice titles(LiturgicalCalendar calendar, Entries entries) {
    return entries.choice(
        "titular",
        Stream.of(
                Stream.of(Choice.Option.of("", say("none of these"))),
                calendar.titles().stream().map(ChurchSheets::option),
                calendar.findTitle(entries.text("titular")).stream().map(ChurchSheets::option))
            .flatMap(options -> options)
            .distinct());
  }

  private static Choice.Option option(Celebration celebration) {
    return Choice.Option.of(
        celebration.id(), celebration.name().in(Speech.localeOr(Locale.ENGLISH)));
  }

  /** Gold and silver are facts of a vestment; no celebration has them. */
  private static Stream<Choice.Option> colours() {
    return Arrays.stream(Colour.values())
        .filter(c -> c != Colour.GOLD && c != Colour.SILVER)
        .map(c -> Choice.Option.of(c.id(), Speech.colour(c)));
  }
}
