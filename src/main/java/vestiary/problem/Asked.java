package vestiary.problem;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Term;

/**
 * Reads what a request says, field by field, and gathers all that is wrong with it, so that a
 * person is told everything at once. A field that is {@code null} or blank counts as not given.
 * Values read after a fault are placeholders; {@link #refuseIfFaulty} must be called before they
 * are used.
 */
public final class Asked {

  private static final int LONGEST_TEXT = 2_000;

  /** Years that are written with four digits: what lies beyond, no database and no person keeps. */
  private static final int LAST_YEAR = 9_999;

  private final List<FieldFault> faults = new ArrayList<>();

  /** The text as {@link Writing} has it, or "" if not given; at most 2,000 characters. */
  public String text(String field, String value) {
    return text(field, value, LONGEST_TEXT);
  }

  /** The text as {@link Writing} has it, or "" if not given; of so many characters at most. */
  public String text(String field, String value, int longest) {
    String text = value == null ? "" : value.strip();
    if (text.length() > longest) {
      fault(field, say("%s is %d characters long; %d is the most.", field, text.length(), longest));
      return "";
    }
    OptionalInt unfit = Writing.findUnfit(text);
    if (unfit.isPresent()) {
      fault(
          field,
          say(
              "%s holds a character that cannot be kept (U+%04X). Type it anew instead of pasting it.",
              field, unfit.getAsInt()));
      return "";
    }
    return Writing.tidy(text);
  }

  /** The text, which must be given, of at most {@code longest} characters. */
  public String needed(String field, String value, int longest) {
    int faultsBefore = faults.size();
    String text = text(field, value, longest);
    if (text.isEmpty() && faults.size() == faultsBefore) {
      fault(field, say("%s is missing.", field));
    }
    return text;
  }

  /** A date as in 2026-12-08, which must be given. */
  public LocalDate date(String field, String value) {
    if (needed(field, value, 40).isEmpty()) {
      return LocalDate.EPOCH;
    }
    return findDate(field, value).orElse(LocalDate.EPOCH);
  }

  /** A date as in 2026-12-08, or empty if not given. */
  public Optional<LocalDate> findDate(String field, String value) {
    String text = text(field, value);
    try {
      return text.isEmpty() ? Optional.empty() : within(field, LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      fault(field, say("%s \"%s\" is no date; write it as 2026-12-08.", field, text));
      return Optional.empty();
    }
  }

  private Optional<LocalDate> within(String field, LocalDate date) {
    if (date.getYear() < 1 || date.getYear() > LAST_YEAR) {
      fault(field, say("%s %s lies too far away.", field, date));
      return Optional.empty();
    }
    return Optional.of(date);
  }

  /** A time of day as in 18:30, which must be given. */
  public LocalTime time(String field, String value) {
    String text = needed(field, value, 40);
    try {
      return text.isEmpty() ? LocalTime.MIDNIGHT : LocalTime.parse(text);
    } catch (DateTimeParseException e) {
      fault(field, say("%s \"%s\" is no time of day; write it as 18:30.", field, text));
      return LocalTime.MIDNIGHT;
    }
  }

  /** A day of the year; 29 February is one. */
  public MonthDay monthDay(String field, Integer month, Integer day) {
    try {
      return MonthDay.of(month == null ? 0 : month, day == null ? 0 : day);
    } catch (DateTimeException e) {
      fault(field, say("%s: month %s, day %s is no day of the year.", field, month, day));
      return MonthDay.of(1, 1);
    }
  }

  /** A whole number between both bounds, or {@code otherwise} if not given. */
  public int whole(String field, Integer value, int least, int most, int otherwise) {
    if (value == null) {
      return otherwise;
    }
    if (value < least || value > most) {
      fault(field, say("%s is %d; it must be from %d to %d.", field, value, least, most));
      return least;
    }
    return value;
  }

  /** A whole number typed in a form; {@code null} if not given. */
  public Integer number(String field, String value) {
    String text = text(field, value);
    try {
      return text.isEmpty() ? null : Integer.valueOf(text);
    } catch (NumberFormatException e) {
      fault(field, say("%s \"%s\" is no whole number.", field, text));
      return null;
    }
  }

  /** A number typed in a form, with a point before its decimals; {@code null} if not given. */
  public Double decimal(String field, String value) {
    String text = text(field, value);
    if (text.isEmpty()) {
      return null;
    }
    if (!text.matches("[+-]?\\d{1,9}(\\.\\d{1,15})?")) {
      fault(field, say("%s \"%s\" is no number; write it as 43.0731.", field, text));
      return null;
    }
    return Double.valueOf(text);
  }

  /** A word of a fixed list, or empty if not given. */
  public <T extends Enum<T> & Term> Optional<T> findTerm(
      Class<T> type, String field, String value) {
    String text = text(field, value);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    Optional<T> found = Term.find(type, text);
    if (found.isEmpty()) {
      fault(field, say("%s \"%s\" is not known; it can be %s.", field, text, words(type)));
    }
    return found;
  }

  /** A word of a fixed list, or {@code otherwise} if not given. */
  public <T extends Enum<T> & Term> T term(String field, String value, T otherwise) {
    return findTerm(otherwise.getDeclaringClass(), field, value).orElse(otherwise);
  }

  /** A time zone by its name in the public tz database, or {@code otherwise} if not given. */
  public ZoneId zone(String field, String value, ZoneId otherwise) {
    String text = text(field, value);
    if (text.isEmpty()) {
      return otherwise;
    }
    if (!ZoneId.getAvailableZoneIds().contains(text)) {
      fault(
          field,
          say(
              "%s \"%s\" is not known; name it as in Europe/Dublin or America/Chicago.",
              field, text));
      return otherwise;
    }
    return ZoneId.of(text);
  }

  /** The span of dates of a query, closed at both ends, not longer than {@code longest} days. */
  public Span span(String from, String to, int longest) {
    LocalDate first = date("from", from);
    LocalDate last = date("to", to);
    if (faults.isEmpty() && last.isBefore(first)) {
      fault("to", say("The span ends on %s, before it begins on %s.", last, first));
    } else if (faults.isEmpty() && first.plusDays(longest).isBefore(last)) {
      fault("to", say("The span is longer than %d days; ask for less at a time.", longest));
    }
    return new Span(first, last);
  }

  /** Notes that something is wrong with a field. */
  public void fault(String field, String sentence) {
    faults.add(new FieldFault(field, sentence));
  }

  /** Notes what was found elsewhere. */
  public void add(List<FieldFault> found) {
    faults.addAll(found);
  }

  public boolean isFaulty() {
    return !faults.isEmpty();
  }

  public List<FieldFault> faults() {
    return List.copyOf(faults);
  }

  /**
   * Ends the request if anything was wrong.
   *
   * @throws Refused with every fault found so far
   */
  public void refuseIfFaulty() {
    if (isFaulty()) {
      throw new Refused(new Refusal.Unfit(faults));
    }
  }

  /**
   * The body of a request.
   *
   * @throws Refused if there is none
   */
  public static <T> T body(T body) {
    if (body == null) {
      throw new Refused(Refusal.Unfit.of("body", say("The request has no body.")));
    }
    return body;
  }

  /** Whether a date and time, such as 2026-12-08T18:30+01:00, says its offset from UTC. */
  public static boolean hasOffset(String dateAndTime) {
    return dateAndTime.matches(".*T.*([Zz]|[+-]\\d\\d(:?\\d\\d)?)$");
  }

  /**
   * An id in an address.
   *
   * @throws Refused as not there, since no such thing can exist, if it has not the form of an id
   */
  public static UUID id(String what, String value) {
    try {
      return UUID.fromString(value);
    } catch (IllegalArgumentException e) {
      throw new Refused(new Refusal.NotThere(what, value));
    }
  }

  private static <T extends Enum<T> & Term> String words(Class<T> type) {
    return Stream.of(type.getEnumConstants()).map(Term::id).collect(Collectors.joining(", "));
  }

  /**
   * Dates that a query asks for.
   *
   * @param first first date, included
   * @param last last date, included, not before the first
   */
  public record Span(LocalDate first, LocalDate last) {}
}
