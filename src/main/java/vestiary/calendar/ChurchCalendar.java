package vestiary.calendar;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The celebrations of one church: general, national, of its diocese and its own, the narrower
 * replacing the wider of the same id. Source: UNLY 49 to 56.
 */
final class ChurchCalendar {

  private final CalendarNorms norms;
  private final CalendarSettings settings;
  private final ChurchPropers propers;
  private final CountryCalendar country;
  private final Map<String, Entry> ofThisChurch = new LinkedHashMap<>();

  /**
   * @throws IllegalArgumentException if the calendar or a celebration named by a proper is unknown
   */
  ChurchCalendar(CalendarSettings settings, List<Proper> propers) {
    this.norms = OfferedCalendars.norms(settings.calendar());
    this.settings = settings;
    this.country = CountryCalendar.of(norms.offered());
    this.propers = new ChurchPropers(this);
    this.propers.lay(propers);
  }

  CalendarNorms norms() {
    return norms;
  }

  CalendarSettings settings() {
    return settings;
  }

  ChurchPropers propers() {
    return propers;
  }

  /** The newest form of a celebration, whichever years and options it holds for. */
  Optional<Entry> find(String id) {
    Entry own = ofThisChurch.get(id);
    if (own != null) return Optional.of(own);
    return country.find(id);
  }

  /** The celebration, if a church may bear it as its title. */
  Optional<Entry> findTitle(String id) {
    return find(id).filter(ChurchPropers::canBeTitle);
  }

  /** What a church may bear as its title under these options, in the order of the tables. */
  List<Entry> titles() {
    return Stream.concat(country.ids().stream(), propers.inscribed().stream())
        .flatMap(id -> findTitle(id).stream())
        .filter(entry -> applies(entry.option()))
        .toList();
  }

  /** One entry for each celebration that stood in the calendar in this year. */
  List<Entry> entriesIn(int year) {
    List<Entry> entries = new ArrayList<>(country.ids().size() + ofThisChurch.size());
    for (List<Entry> forms : country.forms()) {
      if (!ofThisChurch.containsKey(forms.get(0).id())) newest(forms, year, entries);
    }
    entries.addAll(ofThisChurch.values());
    return entries;
  }

  private void newest(List<Entry> forms, int year, List<Entry> entries) {
    for (int i = forms.size() - 1; i >= 0; i--) {
      Entry form = forms.get(i);
      if (form.isKeptIn(year) && applies(form.option())) {
        entries.add(form);
        return;
      }
    }
  }

  /** Of two propers that name the same celebration the one that stands higher holds. */
  void addProper(Entry entry) {
    ofThisChurch.merge(
        entry.id(), entry, (a, b) -> b.precedence().isBefore(a.precedence()) ? b : a);
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
