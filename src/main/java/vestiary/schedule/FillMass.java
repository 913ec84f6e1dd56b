package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.calendar.Colour;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/** Reads what was asked about a Mass into its row, and holds it against the calendar. */
@ApplicationScoped
class FillMass {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 360;
  private static final int MOST_PEOPLE = 200;
  private static final int LONGEST_SET_OUT = 240;
  private static final int SUNDAY_MINUTES = 60;
  private static final int WEEKDAY_MINUTES = 30;

  private final ReadCluster cluster;
  private final ReadMasses read;

  FillMass(ReadCluster cluster, ReadMasses read) {
    this.cluster = cluster;
    this.read = read;
  }

  /** Notes with {@code asked} all that is wrong; the row may be used only if nothing is. */
  void fill(MassRow row, SaveMass.Request request, Asked asked) {
    Cluster here = cluster.cluster();
    row.starts = StartTime.parse(request.start(), here.zone(), asked);
    row.kind = asked.findTerm(MassKind.class, "mass", request.mass()).map(Term::id).orElse("");
    row.leave = asked.findTerm(Leave.class, "leave", request.leave()).map(Term::id).orElse("");
    row.colour = asked.findTerm(Colour.class, "colour", request.colour()).map(Term::id).orElse("");
    row.votiveOf = asked.text("votiveOf", request.votiveOf());
    row.celebration = asked.text("celebration", request.celebration());
    row.concelebrants = asked.whole("concelebrants", request.concelebrants(), 0, MOST_PEOPLE, 0);
    row.deacons = asked.whole("deacons", request.deacons(), 0, MOST_PEOPLE, 0);
    row.setOutMinutes =
        request.setOutMinutes() == null
            ? null
            : Integer.valueOf(
                asked.whole("setOutMinutes", request.setOutMinutes(), 1, LONGEST_SET_OUT, 1));
    row.brings = brings(request.brings(), asked);
    row.note = asked.text("note", request.note());
    row.intention = asked.text("intention", request.intention());
    asked.text("celebrant", request.celebrant());
    row.minutes = asked.whole("minutes", request.minutes(), SHORTEST, LONGEST, SUNDAY_MINUTES);
    String slug = asked.needed("church", request.church(), 40);
    Optional<Church> church = slug.isEmpty() ? Optional.empty() : cluster.findChurch(slug);
    if (church.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", "church \"%s\" is no church of this cluster.".formatted(slug));
    }
    if (church.isPresent() && !asked.isFaulty()) {
      row.churchId = church.get().id().value();
      fitIntoCalendar(row, request, church.get(), here, asked);
    }
  }

  /** What can only be judged once church, time and kind are known. */
  private void fitIntoCalendar(
      MassRow row, SaveMass.Request request, Church church, Cluster here, Asked asked) {
    LocalDateTime start = row.starts.atZone(here.zone()).toLocalDateTime();
    if (row.kind.equals(MassKind.ANTICIPATED.id())
        && start.toLocalTime().isBefore(here.calendar().evenings().from())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass",
              "An anticipated Mass begins at %s or later; this one begins at %s. Choose the Mass of the day, or a later hour."
                  .formatted(here.calendar().evenings().from(), start.toLocalTime())));
    }
    MassRuling ruling =
        read.ruling(
            church,
            start,
            row.kind,
            row.votiveOf,
            Term.find(Leave.class, row.leave).orElse(Leave.NONE));
    if (!row.celebration.isEmpty() && ruling.find(row.celebration).isEmpty()) {
      asked.fault(
          "celebration",
          "celebration \"%s\" cannot be chosen for this Mass; it can be %s."
              .formatted(
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

  private static List<BringsValue> brings(List<BringsValue> given, Asked asked) {
    if (given == null) {
      return List.of();
    }
    return given.stream().map(b -> brings(b, asked)).toList();
  }

  private static BringsValue brings(BringsValue given, Asked asked) {
    Role role = asked.term("brings.role", given == null ? null : given.role(), Role.PRINCIPAL);
    int count =
        asked.whole("brings.count", given == null ? null : given.count(), 1, MOST_PEOPLE, 1);
    List<String> kinds = given == null || given.kinds() == null ? List.of() : given.kinds();
    // An empty word is no kind: kept, it would make the Mass unreadable ever after.
    kinds.forEach(
        k ->
            asked.findTerm(PieceKind.class, "brings.kinds", k == null || k.isBlank() ? "none" : k));
    return new BringsValue(role.id(), count, kinds);
  }
}
