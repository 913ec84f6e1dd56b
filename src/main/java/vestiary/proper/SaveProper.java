package vestiary.proper;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Optional;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Enters, changes and removes propers. Whoever does so takes a turn, since what may stand depends
 * on all others and on the titles of the churches.
 */
@ApplicationScoped
@Transactional
public class SaveProper {

  private final ChurchesToBind churches;
  private final ProperRows propers;
  private final ProperChurchRows bound;
  private final PropersAtHand atHand;

  SaveProper(
      ChurchesToBind churches, ProperRows propers, ProperChurchRows bound, PropersAtHand atHand) {
    this.churches = churches;
    this.propers = propers;
    this.bound = bound;
    this.atHand = atHand;
  }

  /**
   * A proper as it was typed; what is not given is {@code null} or blank.
   *
   * @param id short name; made of the name or the celebration if not given
   * @param celebration id of one that the calendar has; not with a name
   * @param name of one that the calendar does not have, which needs a day and a colour
   * @param month of the day on which it is kept every year, 1 to 12; with the day
   * @param place in the table of liturgical days
   * @param churches short names; none for all churches
   * @param onSunday to which Sunday it is taken
   * @param keptOn its date in one year, as in 2027-03-15; with nothing else but celebration and
   *     churches
   * @param version of what the person looked at, or {@code null} to change it anyway
   */
  public record Request(
      String id,
      String celebration,
      String name,
      String latin,
      String spanish,
      Integer month,
      Integer day,
      String colour,
      String place,
      List<String> churches,
      String onSunday,
      String keptOn,
      Integer version) {

    Request called(String newId) {
      return new Request(
          newId,
          celebration,
          name,
          latin,
          spanish,
          month,
          day,
          colour,
          place,
          churches,
          onSunday,
          keptOn,
          version);
    }
  }

  /** What is wrong with the fields of a request; whether it may stand is seen when it is kept. */
  public List<FieldFault> findFaults(Request request) {
    return admission().findFaults(request);
  }

  /** Holds a list of requests against what the cluster has; nothing is kept. */
  public ProperTrial trial() {
    return new ProperTrial(admission());
  }

  /**
   * Enters a new proper.
   *
   * @return its id
   * @throws Refused if a field is unfit, the id is taken, or it cannot stand beside the others
   */
  public String enter(Request request) {
    churches.waitForTurn();
    ProperAdmission admission = admission();
    String id = admission.idFor(request);
    admission.find(id).ifPresent(other -> refuse(Optional.of(taken(id, request))));
    keep(new ProperRow(), admission.admit(request));
    return id;
  }

  /**
   * Changes a proper; its id stays.
   *
   * @throws Refused if there is none, it was changed meanwhile, a field is unfit, or it cannot
   *     stand beside the others
   */
  public void change(String id, Request request) {
    churches.waitForTurn();
    ProperRow row = unchanged(id, request.version());
    if (request.id() != null && !request.id().isBlank() && !request.id().strip().equals(id)) {
      throw new Refused(
          Refusal.Unfit.of(
              "id", say("id \"%s\" cannot replace \"%s\", which stays.", request.id(), id)));
    }
    EnteredProper given = admission().admit(request.called(id));
    bound.delete("properId", row.id);
    keep(row, given);
  }

  /** Enters the proper, or changes the one of that id; so a list can be sent twice. */
  public void enterOrChange(Request request) {
    String id = String.valueOf(request.id()).strip();
    if (propers.count("slug", id) > 0) {
      change(id, request);
    } else {
      enter(request);
    }
  }

  /**
   * Removes a proper.
   *
   * @param version of what the person looked at, or {@code null} to remove it anyway
   * @throws Refused if there is none, it was changed meanwhile, or a title or another proper is
   *     about its celebration
   */
  public void remove(String id, Integer version) {
    churches.waitForTurn();
    ProperRow row = unchanged(id, version);
    refuse(admission().refusalToRemove(id));
    bound.delete("properId", row.id);
    propers.delete(row);
    propers.flush();
    atHand.forget();
  }

  private ProperAdmission admission() {
    return new ProperAdmission(churches.settings(), churches.titled(), atHand.all());
  }

  private ProperRow unchanged(String id, Integer version) {
    ProperRow row = propers.getBySlug(id);
    if (version != null && version != row.version) {
      throw new Refused(new Refusal.Outdated("this day"));
    }
    return row;
  }

  private void keep(ProperRow row, EnteredProper given) {
    row.keep(given);
    propers.persist(row);
    propers.touch(row);
    propers.flush();
    given.churches().forEach(church -> bound.persist(ProperChurchRow.of(row, given, church)));
    bound.flush();
    atHand.forget();
  }

  private static void refuse(Optional<Refusal> refusal) {
    if (refusal.isPresent()) {
      throw new Refused(refusal.get());
    }
  }

  private static Refusal taken(String id, Request request) {
    return request.name() == null || request.name().isBlank()
        ? new Refusal.Taken("id", say("The id \"%s\" belongs to another day of your own.", id))
        : new Refusal.Taken(
            "name",
            say(
                "\"%s\" is entered already; change that entry, or give this one another name.",
                request.name().strip()));
  }
}
