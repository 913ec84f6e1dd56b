package vestiary.schedule;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds the Masses of a pattern against the dates it is to have. A Mass that nobody touched and
 * whose date goes moves to a date that comes in the same week, from Monday to Sunday, so that what
 * is set aside for it goes with it.
 */
final class CompareDates {

  private final PatternRow then;
  private final ZoneId zone;
  private final boolean takeAlong;

  /**
   * A comparison with one pattern.
   *
   * @param then the pattern as it is to be
   * @param takeAlong whether Masses that were changed by hand, yet are said when and where the
   *     pattern had them, move with it
   */
  CompareDates(PatternRow then, ZoneId zone, boolean takeAlong) {
    this.then = then;
    this.zone = zone;
    this.takeAlong = takeAlong;
  }

  /**
   * One effect a Mass and one for each that is to come, by date.
   *
   * @param ahead Masses of the pattern to come
   * @param dates those it is to have, without any on which it has had Mass already
   */
  List<Effect> with(List<MassRow> ahead, Collection<LocalDate> dates) {
    Map<LocalDate, MassRow> byDate = new HashMap<>();
    ahead.forEach(mass -> byDate.put(mass.patternDate, mass));
    Map<LocalDate, LocalDate> coming = new LinkedHashMap<>();
    List<Effect> effects = new ArrayList<>();
    for (LocalDate date : dates) {
      if (byDate.containsKey(date)) {
        effects.add(kept(byDate.remove(date), date));
      } else {
        coming.putIfAbsent(monday(date), date);
        if (!coming.get(monday(date)).equals(date)) {
          effects.add(new Effect(Effect.Kind.COMES, null, date, true));
        }
      }
    }
    ahead.stream()
        .filter(mass -> byDate.containsKey(mass.patternDate))
        .forEach(mass -> effects.add(left(mass, coming)));
    coming.values().forEach(date -> effects.add(new Effect(Effect.Kind.COMES, null, date, true)));
    effects.sort(Comparator.comparing(Effect::date));
    return effects;
  }

  private Effect left(MassRow mass, Map<LocalDate, LocalDate> coming) {
    if (mass.touched) {
      return new Effect(Effect.Kind.STAYS, mass, mass.patternDate, false);
    }
    LocalDate instead = coming.remove(monday(mass.patternDate));
    return instead == null
        ? new Effect(Effect.Kind.GOES, mass, mass.patternDate, false)
        : new Effect(Effect.Kind.MOVES, mass, instead, true);
  }

  private Effect kept(MassRow mass, LocalDate date) {
    return new Effect(kind(mass, date), mass, date, true);
  }

  private Effect.Kind kind(MassRow mass, LocalDate date) {
    boolean moves =
        !mass.starts.equals(then.start(date, zone))
            || !mass.churchId.equals(then.churchId)
            || mass.minutes != then.minutes;
    if (mass.touched && !(takeAlong && isWhereItWas(mass))) {
      return Effect.Kind.STAYS;
    }
    if (moves) {
      return Effect.Kind.MOVES;
    }
    return mass.touched || then.hasYielded(mass) ? Effect.Kind.SAME : Effect.Kind.CHANGES;
  }

  private static boolean isWhereItWas(MassRow mass) {
    return !mass.cancelled
        && mass.starts.equals(mass.usualStarts)
        && mass.churchId.equals(mass.usualChurchId);
  }

  private static LocalDate monday(LocalDate date) {
    return date.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
  }
}
