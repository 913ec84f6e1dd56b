package vestiary.proper;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.calendar.CalendarSettings;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

/**
 * What is entered, and what may be entered beside it. Nothing is read or kept here.
 *
 * @param churches with their titles
 */
record ProperAdmission(
    CalendarSettings settings, List<TitledChurch> churches, List<EnteredProper> entered) {

  ProperAdmission {
    churches = List.copyOf(churches);
    entered = List.copyOf(entered);
  }

  /** What is wrong with the fields of a request alone. */
  List<FieldFault> findFaults(SaveProper.Request request) {
    Asked asked = new Asked();
    new AskedProper(request, churchesBySlug()).check(asked);
    return asked.faults();
  }

  /**
   * The proper that is asked for, in the place of the one that has its id.
   *
   * @throws Refused if a field is unfit or it cannot stand beside the others
   */
  EnteredProper admit(SaveProper.Request request) {
    SaveProper.Request called = request.called(idFor(request));
    List<FieldFault> faults = findFaults(called);
    if (!faults.isEmpty()) {
      throw new Refused(new Refusal.Unfit(faults));
    }
    EnteredProper given = new AskedProper(called, churchesBySlug()).entered();
    new ProperRules(given, with(given).known())
        .refusal()
        .ifPresent(
            refusal -> {
              throw new Refused(refusal);
            });
    return given;
  }

  /** Why the one of this id cannot be taken out, or empty if it can. */
  Optional<Refusal> refusalToRemove(String id) {
    return LeftBehind.refusal(without(id).known());
  }

  /** The same with this one entered, in the place of the one that has its id. */
  ProperAdmission with(EnteredProper given) {
    List<EnteredProper> all = new ArrayList<>(without(given.id()).entered);
    all.add(given);
    return new ProperAdmission(settings, churches, all);
  }

  Optional<EnteredProper> find(String id) {
    return entered.stream().filter(proper -> proper.id().equals(id)).findFirst();
  }

  /** The id that is asked for; otherwise one made of what the proper is about. */
  String idFor(SaveProper.Request request) {
    return ProperId.of(request, id -> find(id).isPresent());
  }

  KnownCelebrations known() {
    return new KnownCelebrations(settings, churches, entered);
  }

  private ProperAdmission without(String id) {
    return new ProperAdmission(
        settings, churches, entered.stream().filter(p -> !p.id().equals(id)).toList());
  }

  private Map<String, ChurchId> churchesBySlug() {
    Map<String, ChurchId> bySlug = new LinkedHashMap<>();
    churches.forEach(church -> bySlug.put(church.slug(), church.id()));
    return bySlug;
  }
}
