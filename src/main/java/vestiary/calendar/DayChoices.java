package vestiary.calendar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which of the celebrations that meet on a day is kept, which may be chosen, which are left out.
 *
 * <p>On Thursday 22 February 2024 the Chair of Peter is kept over the weekday of Lent; on 22
 * February 2023, Ash Wednesday, it is left out. Source: UNLY 14 to 16, 59, 60; GIRM 355.
 */
final class DayChoices {

  private static final Comparator<Entry> BY_PRECEDENCE = Comparator.comparing(Entry::precedence);
  private final YearPlan plan;

  DayChoices(YearPlan plan) {
    this.plan = plan;
  }

  DayChoice on(int day) {
    List<Omission> omitted = new ArrayList<>(plan.movedFrom(day));
    List<Celebration> celebrations = choose(day, omitted);
    return new DayChoice(day, celebrations, omitted, plan.arrivals(day, celebrations.get(0)));
  }

  private List<Celebration> choose(int day, List<Omission> omitted) {
    List<Entry> sorted = new ArrayList<>(plan.on(day));
    Celebration season = seasonOrDayOfPrayer(plan.seasons().day(day), sorted);
    if (sorted.isEmpty()) return withoutEntries(day, season);
    sorted.sort(BY_PRECEDENCE);
    MemorialsMeeting.settle(sorted, omitted);
    Entry first = sorted.get(0);
    if (prevails(first, season)) return keep(first, sorted, season, omitted);
    return season.precedence().number() <= 8
        ? omitAll(sorted, season, omitted)
        : offer(day, season, sorted);
  }

  /** A country's day of prayer takes the place of the weekday (GIRM 373). */
  private static Celebration seasonOrDayOfPrayer(Celebration season, List<Entry> entries) {
    for (int i = 0; i < entries.size(); i++) {
      if (entries.get(i).kinds().contains(Kind.PRAYER_DAY)) return entries.remove(i).celebration();
    }
    return season;
  }

  private List<Celebration> withoutEntries(int day, Celebration season) {
    if (SaturdayOfMary.mayBeKept(plan, day, season)) {
      return List.of(season, SaturdayOfMary.CELEBRATION);
    }
    return HolyThursday.is(season) ? HolyThursday.celebrations(season) : List.of(season);
  }

  /** An optional memorial never takes the day by itself. */
  private static boolean prevails(Entry entry, Celebration season) {
    if (season == null) return true;
    return entry.precedence() != Precedence.OPTIONAL_MEMORIAL
        && entry.precedence().isBefore(season.precedence());
  }

  private static List<Celebration> keep(
      Entry kept, List<Entry> sorted, Celebration season, List<Omission> omitted) {
    if (isPassedOver(season, kept)) omitted.add(Omissions.of(season, kept.celebration()));
    List<Celebration> celebrations = new ArrayList<>(2);
    celebrations.add(kept.celebration());
    for (Entry other : sorted.subList(1, sorted.size())) {
      omitted.add(Omissions.of(other.celebration(), kept.celebration()));
    }
    return celebrations;
  }

  /** A Sunday that a dated celebration takes is missed; one that always has its own is not. */
  private static boolean isPassedOver(Celebration season, Entry kept) {
    return season != null && season.rank() == Rank.SUNDAY && !kept.movable();
  }

  private static List<Celebration> omitAll(
      List<Entry> entries, Celebration season, List<Omission> omitted) {
    entries.forEach(entry -> omitted.add(Omissions.of(entry.celebration(), season)));
    return HolyThursday.is(season) ? HolyThursday.celebrations(season) : List.of(season);
  }

  /** The weekday first, then the memorials that may be chosen or commemorated. */
  private List<Celebration> offer(int day, Celebration season, List<Entry> memorials) {
    boolean commemorates = season.precedence().number() == 9;
    List<Celebration> celebrations = new ArrayList<>(memorials.size() + 2);
    celebrations.add(season);
    for (Entry memorial : memorials) {
      celebrations.add(commemorates ? Commemorations.of(memorial, season) : memorial.celebration());
    }
    if (SaturdayOfMary.mayBeKept(plan, day, season)) {
      celebrations.add(SaturdayOfMary.CELEBRATION);
    }
    return celebrations;
  }
}
