package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/** Keeps what people serve. */
@ApplicationScoped
@Transactional
public class SaveMinistry {

  /**
   * Masses a day: no permission goes beyond three (canon 905 §2); the rest is for slips of the pen.
   */
  private static final int MOST_MASSES = 9;

  private static final int LONGEST_WISHES = 1_000;
  private static final int LONGEST_SET = 300;
  private static final int LONGEST_NAME = 200;

  private final MinistryRows ministries;
  private final PersonChurchRows churches;
  private final PersonRows people;
  private final ReadCluster cluster;

  SaveMinistry(
      MinistryRows ministries, PersonChurchRows churches, PersonRows people, ReadCluster cluster) {
    this.ministries = ministries;
    this.churches = churches;
    this.people = people;
    this.cluster = cluster;
  }

  /**
   * A ministry as it was typed; {@code null} leaves what is kept, blank or empty forgets it.
   *
   * @param churches short names; none: all
   * @param languages by name or BCP 47 tag
   * @param days as in monday
   * @param permittedWeekday Masses permitted on a weekday; without it nothing else of a permission
   *     is kept
   * @param grantedOn as in 2026-12-08
   */
  public record Request(
      List<String> churches,
      List<String> languages,
      List<String> days,
      Integer mostADay,
      String wishes,
      String ownSet,
      Integer permittedWeekday,
      Integer permittedSunday,
      String grantedBy,
      String grantedOn) {

    /** Leaves all as it is. */
    public static final Request NOTHING =
        new Request(null, null, null, null, null, null, null, null, null, null);
  }

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    fill(new MinistryRow(), request, asked);
    churches(request, asked);
    return asked.faults();
  }

  /**
   * Keeps it.
   *
   * @throws Refused if there is nobody of that short name, or a field is unfit
   */
  public void keep(String slug, Request request) {
    UUID person = people.getBySlug(slug).id;
    MinistryRow row = ministries.findByIdOptional(person).orElseGet(MinistryRow::new);
    row.id = person;
    Asked asked = new Asked();
    List<UUID> where = churches(request, asked);
    MinistryRow tried = new MinistryRow();
    fill(tried, request, asked);
    asked.refuseIfFaulty();
    fill(row, request, asked);
    ministries.persist(row);
    if (request.churches() != null) {
      churches.keep(person, where);
    }
    ministries.flush();
  }

  private List<UUID> churches(Request request, Asked asked) {
    if (request.churches() == null) {
      return List.of();
    }
    Map<String, UUID> known =
        cluster.churches().stream().collect(Collectors.toMap(c -> c.slug(), c -> c.id().value()));
    List<UUID> found = new ArrayList<>();
    for (String slug : request.churches()) {
      if (slug != null && !slug.isBlank() && !known.containsKey(slug)) {
        asked.fault("churches", say("churches names \"%s\", which is no church here.", slug));
      } else if (slug != null && !slug.isBlank()) {
        found.add(known.get(slug));
      }
    }
    return found;
  }

  private static void fill(MinistryRow row, Request request, Asked asked) {
    if (request.languages() != null) {
      row.languages = Tongues.read("languages", request.languages(), asked).toArray(String[]::new);
    }
    if (request.days() != null) {
      row.days =
          request.days().stream().flatMap(day -> day(day, asked).stream()).toArray(String[]::new);
    }
    if (request.mostADay() != null) {
      int most = asked.whole("mostADay", request.mostADay(), 0, MOST_MASSES, 0);
      row.mostADay = most == 0 ? null : most;
    }
    if (request.wishes() != null) {
      row.wishes = asked.text("wishes", request.wishes(), LONGEST_WISHES);
    }
    if (request.ownSet() != null) {
      row.ownSet = asked.text("ownSet", request.ownSet(), LONGEST_SET);
    }
    if (request.permittedWeekday() != null) {
      fillPermission(row, request, asked);
    }
  }

  /** On Sundays and holy days no fewer are permitted than on a weekday. */
  private static void fillPermission(MinistryRow row, Request request, Asked asked) {
    int weekday = asked.whole("permittedWeekday", request.permittedWeekday(), 0, MOST_MASSES, 0);
    if (weekday == 0) {
      row.permittedWeekday = null;
      row.permittedSunday = null;
      row.grantedBy = "";
      row.grantedOn = null;
      return;
    }
    row.permittedWeekday = weekday;
    row.permittedSunday =
        asked.whole("permittedSunday", request.permittedSunday(), weekday, MOST_MASSES, weekday);
    row.grantedBy = asked.text("grantedBy", request.grantedBy(), LONGEST_NAME);
    row.grantedOn = asked.findDate("grantedOn", request.grantedOn()).orElse((LocalDate) null);
  }

  private static List<String> day(String typed, Asked asked) {
    String said = asked.text("days", typed).toLowerCase(Locale.ROOT);
    if (said.isEmpty()) {
      return List.of();
    }
    boolean known =
        Arrays.stream(DayOfWeek.values()).anyMatch(d -> d.name().equalsIgnoreCase(said));
    if (!known) {
      asked.fault("days", say("days names \"%s\", which is no day; write it as monday.", said));
    }
    return known ? List.of(said) : List.of();
  }
}
