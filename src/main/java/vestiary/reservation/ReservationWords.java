package vestiary.reservation;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/** Words that pages, answers and mails about reservations share. */
final class ReservationWords {

  private ReservationWords() {}

  /** Moments by the clock of a cluster. */
  record Times(ZoneId zone) {

    /** For example "20:15", or "Sunday 13 December, 9:00" where it is on another day. */
    String at(Instant moment, LocalDate day) {
      ZonedDateTime time = moment.atZone(zone);
      return time.toLocalDate().equals(day)
          ? Speech.clock(time)
          : Speech.day(time.toLocalDate()) + ", " + Speech.clock(time);
    }

    /** For example "to Friday 18 December" where it ends at midnight, else "until 20:15". */
    String last(Instant end, LocalDate day) {
      ZonedDateTime time = end.atZone(zone);
      return time.toLocalTime().equals(LocalTime.MIDNIGHT)
          ? say("to %s", Speech.day(time.toLocalDate().minusDays(1)))
          : say("until %s", at(end, day));
    }
  }

  /** For example "Mass at Saint Anne on Tuesday 8 December, 18:30". */
  static String about(DatedMass mass) {
    return say(
        "%s at %s on %s, %s",
        mass.kind().isMass() ? say("Mass") : say("The liturgy"),
        mass.church().name(),
        Speech.day(mass.date()),
        Speech.clock(mass.start()));
  }

  /**
   * For example "Held by Greta Holm for Mass at Saint Anne on Tuesday 8 December, 18:30, until
   * 20:15."
   */
  static String held(Reservation one) {
    Times times = new Times(one.mass().start().getZone());
    String until =
        one.until().equals(Instant.MAX)
            ? ""
            : say(", until %s", times.at(one.until(), one.mass().date()));
    String cancelled = one.mass().chosen().cancelled() ? say(" That Mass is cancelled.") : "";
    return say(
        "%s by %s for %s%s.%s",
        Speech.sentence(state(one)), one.by(), about(one.mass()), until, cancelled);
  }

  /**
   * That somebody must bring it, where it belongs elsewhere and has not gone yet; empty else.
   *
   * @param home name of the church in which it belongs
   */
  static String brought(Reservation one, String home) {
    if (one.state() != ReservationState.HELD || home.equals(one.mass().church().name())) {
      return "";
    }
    Times times = new Times(one.mass().start().getZone());
    return say(
        " It belongs at %s, and somebody must bring it by %s.",
        home, times.at(one.from(), one.mass().date()));
  }

  private static String state(Reservation one) {
    return switch (one.state()) {
      case HELD -> say("held");
      case OUT -> say("out");
      case RETURNED -> say("returned");
      case RELEASED -> say("released");
    };
  }

  /** What somebody must see to; empty if all is well. */
  static String lost(Reservation one) {
    if (one.state() == ReservationState.HELD && one.moved()) {
      return say("The Mass was moved since. Give this up, and set it aside for the new time.");
    }
    return one.lost().isEmpty()
        ? ""
        : say(
            "%s %s not kept any more: look whether it is in care.",
            Speech.list(one.lost()), one.lost().size() == 1 ? say("is") : say("are"));
  }

  /** For example "Five more are not to be had". */
  static String notToBeHad(int count) {
    return say(
        "%s more %s not to be had",
        Speech.sentence(Speech.count(count)), count == 1 ? say("is") : say("are"));
  }
}
