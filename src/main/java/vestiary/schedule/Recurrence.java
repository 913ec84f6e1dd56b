package vestiary.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.dmfs.rfc5545.DateTime;
import org.dmfs.rfc5545.recur.Freq;
import org.dmfs.rfc5545.recur.InvalidRecurrenceRuleException;
import org.dmfs.rfc5545.recur.RecurrenceRule;
import org.dmfs.rfc5545.recur.RecurrenceRuleIterator;

/**
 * The dates of a recurring Mass.
 *
 * <p>Source: RFC 5545, 3.3.10 (recurrence rule). Rules that recur more often than daily name no
 * dates and are not taken.
 */
public final class Recurrence {

  /** A rule that never happens, such as 30 February, is given up after this many dates. */
  private static final int MOST_DATES = 5_000;

  private static final Set<Freq> TAKEN = Set.of(Freq.DAILY, Freq.WEEKLY, Freq.MONTHLY, Freq.YEARLY);

  private final String rrule;
  private final RecurrenceRule rule;

  private Recurrence(String rrule, RecurrenceRule rule) {
    this.rrule = rrule;
    this.rule = rule;
  }

  /**
   * Reads a rule as in {@code FREQ=WEEKLY;BYDAY=SU}.
   *
   * @throws IllegalArgumentException with a sentence, if it is no rule or recurs within a day
   */
  public static Recurrence parse(String rrule) {
    String text = rrule.strip().replaceFirst("(?i)^RRULE:", "");
    try {
      RecurrenceRule rule = new RecurrenceRule(text);
      if (!TAKEN.contains(rule.getFreq())) {
        throw new IllegalArgumentException(
            "rrule \"%s\" recurs more than once a day; use DAILY, WEEKLY, MONTHLY or YEARLY."
                .formatted(rrule));
      }
      return new Recurrence(text, rule);
    } catch (InvalidRecurrenceRuleException e) {
      throw new IllegalArgumentException(
          "rrule \"%s\" is no recurrence rule; write it as FREQ=WEEKLY;BYDAY=SU.".formatted(rrule),
          e);
    }
  }

  /**
   * The dates from {@code first} to {@code last}, both included, ascending.
   *
   * @param start date on which the rule begins to count
   */
  public List<LocalDate> dates(LocalDate start, LocalDate first, LocalDate last) {
    List<LocalDate> dates = new ArrayList<>();
    RecurrenceRuleIterator iterator = rule.iterator(allDay(start));
    if (first.isAfter(start)) {
      iterator.fastForward(allDay(first));
    }
    for (int i = 0; i < MOST_DATES && iterator.hasNext(); i++) {
      LocalDate date = date(iterator.nextDateTime());
      if (date.isAfter(last)) {
        break;
      }
      if (!date.isBefore(first)) {
        dates.add(date);
      }
    }
    return dates;
  }

  @Override
  public String toString() {
    return rrule;
  }

  private static DateTime allDay(LocalDate date) {
    // The library counts months from 0.
    return new DateTime(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
  }

  private static LocalDate date(DateTime date) {
    return LocalDate.of(date.getYear(), date.getMonth() + 1, date.getDayOfMonth());
  }
}
