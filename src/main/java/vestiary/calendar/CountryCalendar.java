package vestiary.calendar;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The celebrations of a country, general and national, the narrower replacing the wider of the same
 * id; one for all churches of the country. Source: UNLY 49 to 56.
 */
final class CountryCalendar {

  private static final Map<String, CountryCalendar> READY = new ConcurrentHashMap<>();

  private final Map<String, List<Entry>> forms = new LinkedHashMap<>();

  private CountryCalendar(OfferedCalendar calendar) {
    CelebrationTable.fixed().forEach(this::add);
    CelebrationTable.movable().forEach(this::add);
    CelebrationTable.proper(calendar).forEach(this::add);
  }

  static CountryCalendar of(OfferedCalendar calendar) {
    return READY.computeIfAbsent(calendar.id(), id -> new CountryCalendar(calendar));
  }

  /** In the order of the tables. */
  Set<String> ids() {
    return forms.keySet();
  }

  /** The forms of every celebration, older ones first, in the order of the tables. */
  Collection<List<Entry>> forms() {
    return forms.values();
  }

  /** The newest form of a celebration, whichever years and options it holds for. */
  Optional<Entry> find(String id) {
    List<Entry> all = forms.getOrDefault(id, List.of());
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  private void add(Entry entry) {
    forms.computeIfAbsent(entry.id(), id -> new ArrayList<>(1)).add(entry);
  }
}
