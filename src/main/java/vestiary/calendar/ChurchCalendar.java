package vestiary.calendar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The celebrations of one church: general, national and its own, the narrower replacing the wider
 * of the same id. Source: UNLY 49 to 56.
 */
final class ChurchCalendar {

  private final CalendarNorms norms;
  private final CalendarSettings settings;
  private final Map<String, List<Entry>> byId = new LinkedHashMap<>();

  /**
   * @throws IllegalArgumentException if the calendar or a titular is not known
   */
  ChurchCalendar(CalendarSettings settings, List<Proper> propers) {
    this.norms = OfferedCalendars.norms(settings.calendar());
    this.settings = settings;
    CelebrationTable.fixed().forEach(this::add);
    CelebrationTable.movable().forEach(this::add);
    CelebrationTable.proper(norms.offered()).forEach(this::add);
    propers.forEach(proper -> ChurchPropers.entry(proper, this).ifPresent(this::add));
  }

  CalendarNorms norms() {
    return norms;
  }

  CalendarSettings settings() {
    return settings;
  }

  /** The newest form of a celebration, whichever years and options it holds for. */
  Optional<Entry> find(String id) {
    List<Entry> forms = byId.getOrDefault(id, List.of());
    return forms.stream().reduce((older, newer) -> newer);
  }

  /** The celebration, if a church may bear it as its title. */
  Optional<Entry> findTitle(String id) {
    return find(id).filter(ChurchPropers::canBeTitle);
  }

  /** What a church may bear as its title under these options, in the order of the tables. */
  List<Entry> titles() {
    return byId.keySet().stream()
        .flatMap(id -> findTitle(id).stream())
        .filter(entry -> applies(entry.option()))
        .toList();
  }

  /** One entry for each celebration that stood in the calendar in this year. */
  List<Entry> entriesIn(int year) {
    List<Entry> entries = new ArrayList<>(byId.size());
    for (List<Entry> forms : byId.values()) {
      for (int i = forms.size() - 1; i >= 0; i--) {
        Entry form = forms.get(i);
        if (form.isKeptIn(year) && applies(form.option())) {
          entries.add(form);
          break;
        }
      }
    }
    return entries;
  }

  private void add(Entry entry) {
    byId.computeIfAbsent(entry.id(), id -> new ArrayList<>()).add(entry);
  }

  private boolean applies(String option) {
    if (option.isEmpty()) return true;
    String choice = option.substring(option.indexOf('=') + 1);
    return switch (option.substring(0, option.indexOf('='))) {
      case "epiphany" -> settings.epiphany().id().equals(choice);
      case "ascension" -> settings.ascension().id().equals(choice);
      default -> settings.corpusChristi().id().equals(choice);
    };
  }
}
