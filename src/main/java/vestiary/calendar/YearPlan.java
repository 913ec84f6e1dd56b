package vestiary.calendar;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which celebrations fall on which day of one year, while the year is being worked out. */
final class YearPlan {

  private final YearOutline year;
  private final TemporalCycle seasons;
  private final List<Entry>[] entries;
  private final List<Omission>[] moved;
  private final Transfer[] arrivals;
  private final Map<String, Integer> solemnities = new HashMap<>();

  @SuppressWarnings({"unchecked", "rawtypes"})
  private YearPlan(YearOutline year, TemporalCycle seasons) {
    this.year = year;
    this.seasons = seasons;
    this.entries = new List[year.length() + 1];
    this.moved = new List[year.length() + 1];
    this.arrivals = new Transfer[year.length() + 1];
  }

  /** Every celebration on its own day; nothing is transferred yet. */
  static YearPlan of(YearOutline year, ChurchCalendar church) {
    Entry[] daysOfTheSeason = new Entry[year.length() + 1];
    YearPlan plan = new YearPlan(year, new TemporalCycle(year, daysOfTheSeason));
    for (Entry entry : church.entriesIn(year.year())) {
      int day = entry.when().dayIn(year);
      if (day == 0 || entry.isSeparateMass()) continue;
      if (entry.isDayOfTheSeason()) {
        daysOfTheSeason[day] = entry;
      } else {
        plan.lay(day, entry);
      }
    }
    return plan;
  }

  YearOutline year() {
    return year;
  }

  TemporalCycle seasons() {
    return seasons;
  }

  /** What is laid over the day of the season, in no order. */
  List<Entry> on(int day) {
    return entries[day] == null ? List.of() : entries[day];
  }

  /** What was on this day and went to another, in no order. */
  List<Omission> movedFrom(int day) {
    return moved[day] == null ? List.of() : moved[day];
  }

  /** How this celebration came to this day from another; empty if it stands on its own. */
  List<Transfer> arrivals(int day, Celebration celebration) {
    Transfer arrival = arrivals[day];
    return arrival != null && arrival.celebration().equals(celebration.id())
        ? List.of(arrival)
        : List.of();
  }

  /** What stands highest on this day. */
  Celebration prevailing(int day) {
    Celebration highest = seasons.day(day);
    List<Entry> laid = on(day);
    for (int i = 0; i < laid.size(); i++) {
      Celebration other = laid.get(i).celebration();
      if (highest == null || other.precedence().isBefore(highest.precedence())) highest = other;
    }
    return highest;
  }

  /** The day this solemnity stands on, or 0. */
  int dayOf(String id) {
    return solemnities.getOrDefault(id, 0);
  }

  /** The day this celebration stands on, whatever its rank, or 0. */
  int findDay(String id) {
    for (int day = 1; day < entries.length; day++) {
      if (on(day).stream().anyMatch(entry -> entry.id().equals(id))) return day;
    }
    return 0;
  }

  /** Takes a celebration to another day and says so on both. */
  void move(String id, int from, int to, String source) {
    move(id, from, to, whyNot(get(id, from), from), source);
  }

  /**
   * @param why half a sentence that begins with a small letter and ends with a full stop
   */
  void move(String id, int from, int to, Sentence why, String source) {
    Entry entry = get(id, from);
    entries[from].remove(entry);
    lay(to, entry);
    Sentence reason = Sentence.of("Kept on %s instead, because %s", year.date(to), why);
    List<LocalDate> keptOn = List.of(year.date(to));
    leave(from, new Omission(id, entry.celebration().name(), keptOn, reason, source));
    LocalDate itsOwn =
        arrivals(from, entry.celebration()).stream()
            .map(Transfer::from)
            .findFirst()
            .orElse(year.date(from));
    arrivals[to] = new Transfer(id, itsOwn, year.date(to), why, source);
  }

  /** Lets a solemnity stay on its day, whatever Sunday it meets there. */
  void hold(String id, int day, String source) {
    Entry entry = get(id, day);
    entries[day].remove(entry);
    lay(day, entry.with(entry.rank(), Precedence.GREAT_SOLEMNITY, source));
  }

  private void lay(int day, Entry entry) {
    if (entries[day] == null) entries[day] = new ArrayList<>(3);
    entries[day].add(entry);
    if (entry.rank() == Rank.SOLEMNITY) solemnities.put(entry.id(), day);
  }

  private void leave(int day, Omission omission) {
    if (moved[day] == null) moved[day] = new ArrayList<>(1);
    moved[day].add(omission);
  }

  private Entry get(String id, int day) {
    return on(day).stream().filter(entry -> entry.id().equals(id)).findFirst().orElseThrow();
  }

  private Sentence whyNot(Entry entry, int day) {
    Celebration prevailing = prevailing(day);
    return prevailing == entry.celebration()
        ? Sentence.of("a holy day on a Saturday or a Monday goes to the Sunday beside it.")
        : Sentence.of("it yields to %s.", Sentence.Named.within(prevailing.name()));
  }
}
