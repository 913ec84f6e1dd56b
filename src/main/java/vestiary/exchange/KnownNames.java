package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import vestiary.cluster.Church;
import vestiary.cluster.ChurchCalendars;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;

/**
 * What the churches, their titles and the people of the cluster are called in other people's lists.
 */
@ApplicationScoped
class KnownNames {

  private final ReadCluster cluster;
  private final FindPeople people;
  private final ChurchCalendars calendars;

  KnownNames(ReadCluster cluster, FindPeople people, ChurchCalendars calendars) {
    this.cluster = cluster;
    this.calendars = calendars;
    this.people = people;
  }

  @Transactional
  TidyCells read() {
    Map<String, String> churches = new HashMap<>();
    Set<String> shared = new HashSet<>();
    for (Church church : cluster.churches()) {
      add(church.slug(), church.slug(), churches, shared);
      add(church.name(), church.slug(), churches, shared);
      add(church.place(), church.slug(), churches, shared);
      add(church.title(), church.slug(), churches, shared);
      add(church.name() + " " + church.place(), church.slug(), churches, shared);
      add(church.title() + " " + church.place(), church.slug(), churches, shared);
    }
    Map<String, String> named = new HashMap<>();
    Set<String> twice = new HashSet<>();
    for (Person person : people.all()) {
      add(person.slug(), person.slug(), named, twice);
      add(person.name(), person.slug(), named, twice);
      add(person.shortName(), person.slug(), named, twice);
      add(person.title() + " " + person.name(), person.slug(), named, twice);
      add(person.title() + " " + person.shortName(), person.slug(), named, twice);
      add(person.calledName(), person.slug(), named, twice);
    }
    return new TidyCells(
        churches, named, new KnownTitles(calendars.plain(cluster.cluster()).titles()));
  }

  /** What two are called tells neither. */
  private static void add(String name, String slug, Map<String, String> names, Set<String> shared) {
    String plain = PlainWords.of(name);
    if (plain.isEmpty() || shared.contains(plain)) {
      return;
    }
    String before = names.putIfAbsent(plain, slug);
    if (before != null && !before.equals(slug)) {
      names.remove(plain);
      shared.add(plain);
    }
  }
}
