package vestiary.office;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import vestiary.calendar.MassKind;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/**
 * When a Mass's sheet for the bishop's office is due, and how it stands.
 *
 * @param due last day on which it is in time
 * @param sent when it was sent; none while it is not
 */
public record DueSheet(DatedMass mass, LocalDate due, List<LocalDate> sent) {

  private static final Set<MassKind> WITH_BISHOP =
      EnumSet.of(MassKind.CONFIRMATION, MassKind.ORDINATION);

  private static final int SOON_DAYS = 7;

  public DueSheet {
    sent = List.copyOf(sent);
  }

  /**
   * Whether the office wants a sheet for it: a bishop presides, or it is a sacrament that he
   * confers (canons 882 and 1012).
   */
  static boolean isWanted(DatedMass mass) {
    return mass.ministers().bishop() || WITH_BISHOP.contains(mass.kind());
  }

  /** Whether it should have been sent before today. */
  public boolean isLate(LocalDate today) {
    return sent.isEmpty() && today.isAfter(due);
  }

  /** Whether it is to be sent within a week, or is late. */
  public boolean isPressing(LocalDate today) {
    return sent.isEmpty() && !due.isAfter(today.plusDays(SOON_DAYS));
  }

  /** How it stands, in a whole sentence. */
  public String sentence(LocalDate today) {
    if (!sent.isEmpty()) {
      return say("The sheet for the bishop’s office was sent on %s.", Speech.day(sent.get(0)));
    }
    int days = (int) ChronoUnit.DAYS.between(today, due);
    if (days < 0) {
      return say(
          "The sheet for the bishop’s office was due on %s, %s ago, and is not sent.",
          Speech.day(due), Speech.count(-days, "day"));
    }
    String when = days == 0 ? say("today") : say("in %1$s", Speech.count(days, "day"));
    return say("The sheet for the bishop’s office is due on %s, %s.", Speech.day(due), when);
  }

  /** For example "Saturday 5 December, 10:30, Holy Trinity". */
  public String about() {
    return "%s, %s, %s"
        .formatted(Speech.day(mass.date()), Speech.clock(mass.start()), mass.church().name());
  }

  /** Where it is filled in. */
  public String address() {
    return "/masses/%s/office".formatted(mass.id().value());
  }
}
