package vestiary.cluster;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.problem.ShortName;

/** Enters a church, or changes one. */
@ApplicationScoped
@Transactional
public class SaveChurch {

  static final int LONGEST_NAME = 200;
  private static final int LONGEST_MINUTES = 240;
  private static final int USUAL_SET_OUT = 30;
  private static final int USUAL_CLEARANCE = 15;

  private final ParishRows parishes;
  private final ChurchRows churches;
  private final FillTitular titles;
  private final OneByOne turns;

  SaveChurch(ParishRows parishes, ChurchRows churches, FillTitular titles, OneByOne turns) {
    this.parishes = parishes;
    this.churches = churches;
    this.titles = titles;
    this.turns = turns;
  }

  /**
   * What is known of a church, as it was typed; what is not given is {@code null} or blank.
   *
   * @param slug short name, lower-case letters, digits and single hyphens
   * @param parish by name; made if there is none of that name
   * @param titular id of the celebration of its title, if the tables have it
   * @param ownTitular its title's own day, if the tables do not have it
   * @param dedication day of its dedication, as in 1931-10-04
   * @param version of the church that the person looked at, or {@code null} to change it anyway
   */
  public record Request(
      String slug,
      String name,
      String parish,
      String place,
      String title,
      String titular,
      OwnTitular ownTitular,
      String dedication,
      Integer setOutMinutes,
      Integer clearanceMinutes,
      Double latitude,
      Double longitude,
      Integer version) {}

  /** A title that no table has: a name, its day and its colour. */
  public record OwnTitular(String name, Integer month, Integer day, String colour) {}

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    return findFaults(String.valueOf(request.slug()).strip(), request);
  }

  /**
   * The same for a church that may get another short name.
   *
   * @param slug that it has so far, which no church may have yet
   */
  List<FieldFault> findFaults(String slug, Request request) {
    ChurchRow row = new ChurchRow();
    row.id = churches.findBySlug(slug).map(known -> known.id).orElse(null);
    Asked asked = new Asked();
    fill(row, request, asked);
    return asked.faults();
  }

  /**
   * Enters a new church.
   *
   * @throws Refused if a field is unfit or the short name is taken
   */
  public String enter(Request request) {
    ChurchRow row = new ChurchRow();
    row.position = (int) churches.count();
    keep(row, request);
    if (churches.findBySlug(row.slug).isPresent()) {
      throw new Refused(
          new Refusal.Taken(
              "slug", say("The short name \"%s\" belongs to another church.", row.slug)));
    }
    churches.persist(row);
    return row.slug;
  }

  /**
   * Changes a church.
   *
   * @throws Refused if there is none of that short name, it was changed meanwhile, or a field is
   *     unfit
   */
  public String change(String slug, Request request) {
    ChurchRow row = churches.getBySlug(slug);
    if (request.version() != null && request.version() != row.version) {
      throw new Refused(new Refusal.Outdated(row.name));
    }
    keep(row, request);
    churches.flush();
    return row.slug;
  }

  /** Enters the church, or changes the one of that short name; so a list can be sent twice. */
  public void enterOrChange(Request request) {
    String slug = String.valueOf(request.slug()).strip();
    if (churches.findBySlug(slug).isPresent()) {
      change(slug, request);
    } else {
      enter(request);
    }
  }

  private void keep(ChurchRow row, Request request) {
    turns.waitForTurn();
    Asked asked = new Asked();
    fill(row, request, asked);
    asked.refuseIfFaulty();
    String parish = asked.text("parish", request.parish());
    row.parishId = parishes.named(parish.isEmpty() ? row.name : parish).id;
  }

  private void fill(ChurchRow row, Request request, Asked asked) {
    row.slug = asked.needed("slug", request.slug(), 40);
    if (!row.slug.isEmpty() && !ShortName.isWellFormed(row.slug)) {
      asked.fault(
          "slug",
          say(
              "slug \"%s\" must be of lower-case letters, digits and single hyphens, as in st-anne.",
              row.slug));
    }
    if (row.slug.equals("new")) {
      asked.fault(
          "slug", say("slug \"new\" is the address of the form for new churches; choose another."));
    }
    row.name = asked.needed("name", request.name(), LONGEST_NAME);
    asked.text("parish", request.parish(), LONGEST_NAME);
    row.place = asked.text("place", request.place());
    row.title = asked.text("title", request.title());
    row.setOutMinutes =
        asked.whole("setOutMinutes", request.setOutMinutes(), 0, LONGEST_MINUTES, USUAL_SET_OUT);
    row.clearanceMinutes =
        asked.whole(
            "clearanceMinutes", request.clearanceMinutes(), 0, LONGEST_MINUTES, USUAL_CLEARANCE);
    row.dedication = asked.findDate("dedication", request.dedication()).orElse(null);
    if (row.dedication != null && row.dedication.isAfter(LocalDate.of(2300, 12, 31))) {
      asked.fault("dedication", say("dedication %s lies too far ahead.", row.dedication));
    }
    titles.fill(row, request, asked);
    fillCoordinates(row, request, asked);
  }

  private static void fillCoordinates(ChurchRow row, Request request, Asked asked) {
    row.latitude = degrees("latitude", request.latitude(), 90, asked);
    row.longitude = degrees("longitude", request.longitude(), 180, asked);
    if ((row.latitude == null) != (row.longitude == null)) {
      asked.fault("longitude", say("latitude and longitude go together; give both or neither."));
    }
  }

  private static Double degrees(String field, Double value, int most, Asked asked) {
    if (value != null && !(Math.abs(value) <= most)) {
      asked.fault(
          field, say("%s is %s; it must be from -%d to %d degrees.", field, value, most, most));
    }
    return value;
  }
}
