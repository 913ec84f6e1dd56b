package vestiary.feed;

import biweekly.component.DaylightSavingsTime;
import biweekly.component.Observance;
import biweekly.component.StandardTime;
import biweekly.component.VTimezone;
import biweekly.util.DateTimeComponents;
import biweekly.util.DayOfWeek;
import biweekly.util.Frequency;
import biweekly.util.Recurrence;
import biweekly.util.UtcOffset;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneOffsetTransitionRule;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A time zone as a calendar file says it: by the yearly rules of its clocks where it has such,
 * since calendar programs know these best; else every change of the clocks of the years that the
 * file is about, one by one.
 *
 * <p>Source: RFC 5545, 3.6.5.
 */
final class ZoneOfCalendar {

  private static final int DAYS_A_WEEK = 7;

  /** The last week that every month has whole begins on its 22nd. */
  private static final int LAST_WEEK_BEGINS = 22;

  private final ZoneRules rules;
  private final VTimezone said;

  private ZoneOfCalendar(ZoneId zone) {
    this.rules = zone.getRules();
    this.said = new VTimezone(zone.getId());
  }

  /**
   * The zone over some time.
   *
   * @param from first moment of which the file speaks
   * @param until last moment, at or after it
   */
  static VTimezone of(ZoneId zone, Instant from, Instant until) {
    ZoneOfCalendar calendar = new ZoneOfCalendar(zone);
    int year = from.atZone(zone).getYear() - 1;
    if (!calendar.sayRules(year)) {
      calendar.sayEach(from, until);
    }
    return calendar.said;
  }

  /** Whether the zone has rules for every year, and each can be said so. */
  private boolean sayRules(int year) {
    List<Observance> yearly = new ArrayList<>();
    for (ZoneOffsetTransitionRule rule : rules.getTransitionRules()) {
      ZoneOffsetTransition first = rule.createTransition(year);
      Optional<Integer> week = findWeek(rule);
      boolean isOnItsDay = first.getDateTimeBefore().getDayOfWeek() == rule.getDayOfWeek();
      if (week.isEmpty() || !isOnItsDay) {
        return false;
      }
      Observance one = observance(first);
      one.setRecurrenceRule(
          new Recurrence.Builder(Frequency.YEARLY)
              .byMonth(rule.getMonth().getValue())
              .byDay(week.get(), day(rule))
              .build());
      yearly.add(one);
    }
    yearly.forEach(this::add);
    return !yearly.isEmpty();
  }

  /** 1 for the first such weekday of the month, -1 for the last; empty for any other. */
  private static Optional<Integer> findWeek(ZoneOffsetTransitionRule rule) {
    int from = rule.getDayOfMonthIndicator();
    if (rule.getDayOfWeek() == null) {
      return Optional.empty();
    }
    if (from == -1) {
      return Optional.of(-1);
    }
    boolean isWholeWeek = from > 0 && from <= LAST_WEEK_BEGINS && from % DAYS_A_WEEK == 1;
    return isWholeWeek ? Optional.of(from / DAYS_A_WEEK + 1) : Optional.empty();
  }

  private static DayOfWeek day(ZoneOffsetTransitionRule rule) {
    return DayOfWeek.valueOf(rule.getDayOfWeek().name());
  }

  private void sayEach(Instant from, Instant until) {
    ZoneOffset before = rules.getOffset(from);
    add(
        observance(
            rules.isDaylightSavings(from), LocalDateTime.ofInstant(from, before), before, before));
    for (ZoneOffsetTransition change = rules.nextTransition(from);
        change != null && !change.getInstant().isAfter(until);
        change = rules.nextTransition(change.getInstant())) {
      add(observance(change));
    }
  }

  private Observance observance(ZoneOffsetTransition change) {
    return observance(
        rules.isDaylightSavings(change.getInstant()),
        change.getDateTimeBefore(),
        change.getOffsetBefore(),
        change.getOffsetAfter());
  }

  private static Observance observance(
      boolean daylight, LocalDateTime onset, ZoneOffset from, ZoneOffset to) {
    Observance one = daylight ? new DaylightSavingsTime() : new StandardTime();
    one.setDateStart(
        new DateTimeComponents(
            onset.getYear(),
            onset.getMonthValue(),
            onset.getDayOfMonth(),
            onset.getHour(),
            onset.getMinute(),
            onset.getSecond(),
            false));
    one.setTimezoneOffsetFrom(offset(from));
    one.setTimezoneOffsetTo(offset(to));
    return one;
  }

  private void add(Observance one) {
    if (one instanceof DaylightSavingsTime daylight) {
      said.addDaylightSavingsTime(daylight);
    } else {
      said.addStandardTime((StandardTime) one);
    }
  }

  private static UtcOffset offset(ZoneOffset offset) {
    return new UtcOffset(offset.getTotalSeconds() * 1000L);
  }
}
