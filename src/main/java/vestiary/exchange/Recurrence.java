package vestiary.exchange;

import java.time.LocalDate;
import java.util.Set;
import org.dmfs.rfc5545.DateTime;
import org.dmfs.rfc5545.recur.Freq;
import org.dmfs.rfc5545.recur.InvalidRecurrenceRuleException;
import org.dmfs.rfc5545.recur.RecurrenceRule;
import org.dmfs.rfc5545.recur.RecurrenceRule.Part;
import org.dmfs.rfc5545.recur.RecurrenceRule.RfcMode;

/** Checks a recurrence rule of RFC 5545 that says days; the time of day is said elsewhere. */
final class Recurrence {

  private static final Set<Freq> TOO_OFTEN = Set.of(Freq.HOURLY, Freq.MINUTELY, Freq.SECONDLY);

  private Recurrence() {}

  /**
   * The rule in that cell as RFC 5545 writes it; refuses the cell if it says hours, or no day on or
   * after that date.
   */
  static String parse(Cells cells, String column, LocalDate starts) {
    if (!cells.has(column)) {
      return "";
    }
    try {
      RecurrenceRule rule = new RecurrenceRule(cells.text(column), RfcMode.RFC5545_STRICT);
      check(rule, cells, column, starts);
      return rule.toString();
    } catch (InvalidRecurrenceRuleException bad) {
      cells.refuse(
          column,
          "Write a rule by RFC 5545, for example FREQ=WEEKLY;BYDAY=SU. What is wrong: %s."
              .formatted(bad.getMessage()));
      return "";
    }
  }

  private static void check(RecurrenceRule rule, Cells cells, String column, LocalDate starts) {
    if (TOO_OFTEN.contains(rule.getFreq()) || saysTime(rule)) {
      cells.refuse(column, "The rule says days only, daily or rarer; the time has its own column.");
    } else if (rule.getUntil() != null && !rule.getUntil().isAllDay()) {
      cells.refuse(column, "Write the end as a date, for example UNTIL=20271231.");
    } else if (!starts.equals(LocalDate.MIN) && !namesDay(rule, starts)) {
      cells.refuse(column, "The rule names no day on or after " + starts + ".");
    }
  }

  private static boolean saysTime(RecurrenceRule rule) {
    return rule.hasPart(Part.BYHOUR) || rule.hasPart(Part.BYMINUTE) || rule.hasPart(Part.BYSECOND);
  }

  private static boolean namesDay(RecurrenceRule rule, LocalDate starts) {
    try {
      // The library counts months from 0.
      DateTime first =
          new DateTime(starts.getYear(), starts.getMonthValue() - 1, starts.getDayOfMonth());
      return rule.iterator(first).hasNext();
    } catch (IllegalArgumentException | IllegalStateException searchedInVain) {
      return false;
    }
  }
}
