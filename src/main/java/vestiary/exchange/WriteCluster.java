package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.CalendarSettings;
import vestiary.calendar.Proper;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.Journey;
import vestiary.cluster.Policies;
import vestiary.cluster.ReadCluster;
import vestiary.inventory.ReadStocktakes;
import vestiary.proper.EnteredProper;
import vestiary.proper.ReadPropers;
import vestiary.vesting.ChurchId;

/** The settings, the churches, the ways between them and the days of their own, as lists. */
@ApplicationScoped
@Transactional
class WriteCluster {

  private final ReadCluster cluster;
  private final ReadPropers propers;
  private final ReadStocktakes stocktakes;

  WriteCluster(ReadCluster cluster, ReadPropers propers, ReadStocktakes stocktakes) {
    this.cluster = cluster;
    this.propers = propers;
    this.stocktakes = stocktakes;
  }

  /** One line, or none while nobody has said what the cluster is called. */
  List<WrittenLine> settings() {
    Cluster here = cluster.cluster();
    if (!here.isSetUp()) {
      return List.of();
    }
    CalendarSettings calendar = here.calendar();
    WrittenLine line =
        new WrittenLine()
            .with("name", here.name())
            .with("calendar", calendar.calendar())
            .with("epiphany", calendar.epiphany().id())
            .with("ascension", calendar.ascension().id())
            .with("corpusChristi", calendar.corpusChristi().id())
            .with("timeZone", here.zone())
            .withAll("languages", here.languages().stream().map(Locale::toLanguageTag))
            .with("anticipatedFrom", calendar.evenings().from())
            .with("eveningRule", calendar.evenings().rule().id())
            .with("openEvening", calendar.evenings().open().id());
    return List.of(policies(line, here.policies()));
  }

  private static WrittenLine policies(WrittenLine line, Policies policies) {
    return line.with("ladderOrder", policies.ladderOrder().id())
        .with("whiteForAll", policies.whiteForAll())
        .with("turnMinutes", policies.turnMinutes())
        .with("weekdaySetOut", policies.weekdaySetOut())
        .with("largeSetOut", policies.largeSetOut())
        .with("largeClearance", policies.largeClearance())
        .with("countBy", policies.countBy().id())
        .with("permittedWeekday", policies.permittedWeekday())
        .with("permittedSunday", policies.permittedSunday())
        .with("countAlbs", policies.countAlbs())
        .with("pontificals", policies.pontificals());
  }

  List<WrittenLine> churches() {
    Map<ChurchId, LocalDate> last = stocktakes.last();
    return cluster.churches().stream()
        .map(
            church ->
                church(church)
                    .with(
                        "lastInventory",
                        last.containsKey(church.id()) ? last.get(church.id()) : ""))
        .toList();
  }

  private static WrittenLine church(Church church) {
    WrittenLine line =
        new WrittenLine()
            .with("slug", church.slug())
            .with("name", church.name())
            .with("parish", church.parish())
            .with("place", church.place())
            .with("title", church.title())
            .withAll("dedication", church.findDedication().stream())
            .with("setOutMinutes", church.setOut().toMinutes())
            .with("clearanceMinutes", church.clearance().toMinutes());
    church
        .coordinates()
        .forEach(at -> line.with("latitude", at.latitude()).with("longitude", at.longitude()));
    for (Proper proper : church.propers()) {
      if (proper instanceof Proper.Titular known) {
        line.with("titular", known.celebration());
      }
      if (proper instanceof Proper.OwnTitular own) {
        line.with("titularDay", text(own.day())).with("titularColour", own.colour().id());
      }
    }
    return line;
  }

  /** A line serves both ways where they take as long. */
  List<WrittenLine> journeys() {
    Map<ChurchId, String> slugs = slugs();
    Map<List<ChurchId>, Integer> timed = new HashMap<>();
    List<Journey> all = cluster.journeys().stream().filter(way -> !way.isEstimated()).toList();
    all.forEach(way -> timed.put(List.of(way.from(), way.to()), way.minutes()));
    List<WrittenLine> lines = new ArrayList<>();
    List<ChurchId> order = List.copyOf(cluster.churches().stream().map(Church::id).toList());
    for (Journey way : all) {
      Integer back = timed.get(List.of(way.to(), way.from()));
      boolean alike = back != null && back == way.minutes();
      if (!alike || order.indexOf(way.from()) < order.indexOf(way.to())) {
        lines.add(
            new WrittenLine()
                .with("from", slugs.get(way.from()))
                .with("to", slugs.get(way.to()))
                .with("minutes", way.minutes())
                .withFlag("oneWay", !alike));
      }
    }
    return lines;
  }

  /** What brings a celebration comes before what names it. */
  List<WrittenLine> propers() {
    Map<ChurchId, String> slugs = slugs();
    List<EnteredProper> inOrder = new ArrayList<>(propers.all());
    inOrder.sort(Comparator.comparing(proper -> proper.findName().isEmpty()));
    return inOrder.stream().map(proper -> proper(proper, slugs)).toList();
  }

  private static WrittenLine proper(EnteredProper proper, Map<ChurchId, String> slugs) {
    WrittenLine line = new WrittenLine().with("id", proper.id());
    proper
        .findName()
        .ifPresentOrElse(
            name ->
                line.with("name", name.english())
                    .with("latin", name.latin())
                    .with("spanish", name.spanish()),
            () -> line.with("celebration", proper.celebration()));
    return line.withAll("day", proper.findDay().map(WriteCluster::text).stream())
        .withAll("colour", proper.find(Proper.Inscribed.class).map(p -> p.colour().id()).stream())
        .withAll("place", proper.findPlace().map(Term::id).stream())
        .withAll(
            "churches",
            proper.everywhere() ? Stream.of() : proper.churches().stream().map(slugs::get))
        .withAll("onSunday", proper.find(Proper.OnSunday.class).map(p -> p.sunday().id()).stream())
        .withAll("keptOn", proper.find(Proper.KeptOn.class).map(Proper.KeptOn::date).stream());
  }

  private Map<ChurchId, String> slugs() {
    return cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::slug));
  }

  /** Month and day as in 09-19. */
  private static String text(MonthDay day) {
    return day.toString().substring(2);
  }
}
