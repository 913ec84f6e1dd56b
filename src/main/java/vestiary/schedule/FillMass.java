package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Reads what was asked about a Mass into its row, and holds it against the calendar. */
@ApplicationScoped
class FillMass {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 360;
  private static final int LONGEST_SET_OUT = 240;
  private static final int SUNDAY_MINUTES = 60;
  private static final int WEEKDAY_MINUTES = 30;

  private final CurrentVisitor visitor;

  FillMass(CurrentVisitor visitor) {
    this.visitor = visitor;
  }

  /** Notes with {@code asked} all that is wrong; the row may be used only if nothing is. */
  void fill(MassRow row, SaveMass.Request request, Asked asked, MassSurroundings around) {
    Cluster here = around.cluster();
    row.starts = StartTime.parse(request.start(), here.zone(), asked);
    row.kind = asked.findTerm(MassKind.class, "mass", request.mass()).map(Term::id).orElse("");
    row.leave = asked.findTerm(Leave.class, "leave", request.leave()).map(Term::id).orElse("");
    row.colour = asked.findTerm(Colour.class, "colour", request.colour()).map(Term::id).orElse("");
    row.votiveOf = asked.text("votiveOf", request.votiveOf());
    row.celebration = asked.text("celebration", request.celebration());
    row.concelebrants =
        asked.whole("concelebrants", request.concelebrants(), 0, AskedMinisters.MOST, 0);
    row.deacons = asked.whole("deacons", request.deacons(), 0, AskedMinisters.MOST, 0);
    AskedNames.check(request.named(), row, asked);
    row.setOutMinutes =
        request.setOutMinutes() == null
            ? null
            : Integer.valueOf(
                asked.whole("setOutMinutes", request.setOutMinutes(), 1, LONGEST_SET_OUT, 1));
    row.bishop = Boolean.TRUE.equals(request.bishop());
    AskedMinisters ministers = new AskedMinisters(asked);
    row.brings = ministers.brings(request.brings());
    row.ministers = ministers.ministers(request.ministers());
    row.also = ministers.also(request.also());
    row.note = asked.text("note", request.note());
    row.language = MassLanguage.read(request.language(), here, asked);
    // Whoever may not see it must not take it away either.
    if (!visitor.isForbidden(Action.SEE_INTENTIONS)) {
      row.intention = asked.text("intention", request.intention());
    }
    asked.text("celebrant", request.celebrant());
    row.minutes = asked.whole("minutes", request.minutes(), SHORTEST, LONGEST, SUNDAY_MINUTES);
    String slug = asked.needed("church", request.church(), 40);
    Optional<Church> church = slug.isEmpty() ? Optional.empty() : around.findChurch(slug);
    if (church.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", say("church \"%s\" is no church of this cluster.", slug));
    }
    if (church.isPresent() && !asked.isFaulty()) {
      refuseAfterClosing(row, church.get(), around, asked);
    }
    if (church.isPresent() && !asked.isFaulty()) {
      row.churchId = church.get().id().value();
      fitIntoCalendar(row, request, church.get(), around, asked);
    }
  }

  private static void refuseAfterClosing(
      MassRow row, Church church, MassSurroundings around, Asked asked) {
    around
        .findClosing(church)
        .filter(from -> !row.starts.atZone(around.cluster().zone()).toLocalDate().isBefore(from))
        .ifPresent(
            from ->
                asked.fault(
                    "church",
                    say(
                        "church %s is closed from %s; choose another, or an earlier date.",
                        church.name(), from)));
  }

  /** What can only be judged once church, time and kind are known. */
  private static void fitIntoCalendar(
      MassRow row, SaveMass.Request request, Church church, MassSurroundings around, Asked asked) {
    Cluster here = around.cluster();
    LocalDateTime start = row.starts.atZone(here.zone()).toLocalDateTime();
    if (row.kind.equals(MassKind.ANTICIPATED.id())
        && start.toLocalTime().isBefore(here.calendar().evenings().from())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass",
              say(
                  "An anticipated Mass begins at %s or later; this one begins at %s. Choose the Mass of the day, or a later hour.",
                  here.calendar().evenings().from(), start.toLocalTime())));
    }
    MassRuling ruling =
        ReadMasses.ruling(
            here,
            around.calendar(church),
            start,
            row.kind,
            row.votiveOf,
            Term.find(Leave.class, row.leave).orElse(Leave.NONE));
    if (!row.celebration.isEmpty() && ruling.find(row.celebration).isEmpty()) {
      asked.fault(
          "celebration",
          say(
              "celebration \"%s\" cannot be chosen for this Mass; it can be %s.",
              row.celebration,
              ruling.options().stream()
                  .map(o -> o.celebration().id())
                  .collect(Collectors.joining(", "))));
    }
    if (request.minutes() == null && !isOnHolyDay(ruling)) {
      row.minutes = WEEKDAY_MINUTES;
    }
  }

  private static boolean isOnHolyDay(MassRuling ruling) {
    return ruling.day().obligation() || ruling.day().date().getDayOfWeek() == DayOfWeek.SUNDAY;
  }
}
