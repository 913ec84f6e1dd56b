package vestiary.pattern;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.dmfs.rfc5545.DateTime;
import org.dmfs.rfc5545.recur.Freq;
import org.dmfs.rfc5545.recur.InvalidRecurrenceRuleException;
import org.dmfs.rfc5545.recur.RecurrenceRule;
import org.dmfs.rfc5545.recur.RecurrenceRule.Part;
import org.dmfs.rfc5545.recur.RecurrenceRule.RfcMode;
import org.dmfs.rfc5545.recur.RecurrenceRuleIterator;
import vestiary.calendar.LiturgicalCalendar;

/**
 * The dates of a recurring Mass. A rule says dates only: it recurs daily or more rarely, and its
 * end, if it has one, is a date or a count. The time of day is said elsewhere.
 *
 * <p>Source: RFC 5545, 3.3.10 (recurrence rule).
 */
public final class Recurrence implements DayRule {

  private static final Set<Freq> TAKEN = Set.of(Freq.DAILY, Freq.WEEKLY, Freq.MONTHLY, Freq.YEARLY);

  private final RecurrenceRule rule;

  private Recurrence(RecurrenceRule rule) {
    this.rule = rule;
  }

  /**
   * Reads a rule as in {@code FREQ=WEEKLY;BYDAY=SU}; letter case does not matter.
   *
   * @throws IllegalArgumentException with a sentence on what may stand there, if it is no rule by
   *     the letter of RFC 5545 or says a time of day
   */
  public static Recurrence parse(String rrule) {
    try {
      RecurrenceRule rule = new RecurrenceRule(rrule.strip(), RfcMode.RFC5545_STRICT);
      refuseTimes(rule);
      return new Recurrence(rule);
    } catch (InvalidRecurrenceRuleException e) {
      throw new IllegalArgumentException(
          "Write a rule by RFC 5545, for example FREQ=WEEKLY;BYDAY=SU. What is wrong: %s."
              .formatted(e.getMessage()),
          e);
    }
  }

  /** Whether there is any date on or after {@code start}; never is there a 30 February. */
  public boolean hasDate(LocalDate start) {
    try {
      return rule.iterator(allDay(start)).hasNext();
    } catch (IllegalArgumentException | IllegalStateException searchedInVain) {
      return false;
    }
  }

  /**
   * The dates from {@code first} to {@code last}, both included, ascending; none if the rule names
   * none.
   *
   * @param start date on which the rule begins to count
   */
  public List<LocalDate> dates(LocalDate start, LocalDate first, LocalDate last) {
    List<LocalDate> dates = new ArrayList<>();
    try {
      RecurrenceRuleIterator iterator = rule.iterator(allDay(start));
      if (first.isAfter(start)) {
        iterator.fastForward(allDay(first));
      }
      while (iterator.hasNext() && !date(iterator.peekDateTime()).isAfter(last)) {
        dates.add(date(iterator.nextDateTime()));
      }
    } catch (IllegalArgumentException | IllegalStateException searchedInVain) {
      // The library searched long and gave up: there is no further date.
    }
    dates.removeIf(date -> date.isBefore(first));
    return dates;
  }

  @Override
  public List<LocalDate> dates(
      LiturgicalCalendar calendar, LocalDate start, LocalDate first, LocalDate last) {
    return dates(start, first, last);
  }

  /** The rule as RFC 5545 writes it, in capital letters. */
  @Override
  public String toString() {
    return rule.toString();
  }

  private static void refuseTimes(RecurrenceRule rule) {
    if (!TAKEN.contains(rule.getFreq())
        || rule.hasPart(Part.BYHOUR)
        || rule.hasPart(Part.BYMINUTE)
        || rule.hasPart(Part.BYSECOND)) {
      throw new IllegalArgumentException(
          "A rule says days only, daily or rarer; the time of day stands apart from it.");
    }
    if (rule.getUntil() != null && !rule.getUntil().isAllDay()) {
      throw new IllegalArgumentException("Write the end as a date, for example UNTIL=20271231.");
    }
  }

  private static DateTime allDay(LocalDate date) {
    // The library counts months from 0.
    return new DateTime(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
  }

  private static LocalDate date(DateTime date) {
    return LocalDate.of(date.getYear(), date.getMonth() + 1, date.getDayOfMonth());
  }
}
