package vestiary.planning;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.schedule.DatedMass;

/**
 * Names a clash by the date of its first Mass and by what it is about: so it keeps its name as long
 * as it stands, and can be found by its name alone.
 */
final class ClashId {

  private static final int LETTERS = 16;

  private static final Pattern FORM = Pattern.compile("(\\d{4}-\\d\\d-\\d\\d)-[0-9a-f]{16}");

  private ClashId() {}

  /** The date of the first Mass; empty if it is not the name of a clash. */
  static Optional<LocalDate> findDate(String id) {
    Matcher form = FORM.matcher(id);
    try {
      return form.matches()
          ? Optional.of(LocalDate.parse(form.group(1))).filter(ClashId::isWithin)
          : Optional.empty();
    } catch (DateTimeException noDate) {
      return Optional.empty();
    }
  }

  private static boolean isWithin(LocalDate date) {
    return date.isAfter(LiturgicalCalendar.FIRST) && date.isBefore(LiturgicalCalendar.LAST);
  }

  static String of(ClashKind kind, List<DatedMass> masses, String... further) {
    LocalDate date =
        masses.stream().map(DatedMass::date).min(Comparator.naturalOrder()).orElseThrow();
    StringBuilder about = new StringBuilder(kind.id());
    masses.forEach(m -> about.append(' ').append(m.id().value()));
    List.of(further).forEach(f -> about.append(' ').append(f));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(about.toString().getBytes(StandardCharsets.UTF_8));
      return date + "-" + HexFormat.of().formatHex(digest).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
