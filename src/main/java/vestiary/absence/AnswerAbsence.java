package vestiary.absence;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import vestiary.people.Absence;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.SaveAbsence;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** What comes of the presses on a page of absences, whosever page it is. */
@ApplicationScoped
class AnswerAbsence {

  private static final Map<String, String> DONE =
      Map.of(
          "back", word("It has ended: available again from now on."),
          "struck", word("Struck out: it is as if it had never been said."));

  private final SaveAbsence save;
  private final FindPeople people;

  AnswerAbsence(SaveAbsence save, FindPeople people) {
    this.save = save;
    this.people = people;
  }

  /** The page again, with what is wrong. */
  interface Again {
    PersonAbsencesView view(Person person, PersonAbsencesSheet.Note note, Entries typed);
  }

  /** What a page says after a press. */
  static PersonAbsencesSheet.Note note(String entered, String done) {
    return new PersonAbsencesSheet.Note(entered, say(DONE.getOrDefault(done, "")), "");
  }

  Response planned(String slug, String place, Again again, Entries typed) {
    return enter(slug, place, again, typed, TypedAbsence::planned, TypedAbsence::marked);
  }

  Response ill(String slug, String place, Again again, Entries typed) {
    return enter(slug, place, again, typed, TypedAbsence::ill, TypedAbsence::markedIll);
  }

  Response end(String slug, String id, String place) {
    return to(place, "done", save.end(slug, id) ? "back" : "struck");
  }

  Response remove(String slug, String id, String place) {
    save.remove(slug, id);
    return to(place, "done", "struck");
  }

  private Response enter(
      String slug,
      String place,
      Again again,
      Entries typed,
      Function<Entries, SaveAbsence.Request> read,
      BiFunction<Entries, Refusal, Entries> mark) {
    return FormAnswer.of(
        () -> {
          Absence kept = save.enter(slug, read.apply(typed));
          return to(place, "entered", kept.id().toString());
        },
        refusal -> {
          Entries marked = mark.apply(typed, refusal);
          PersonAbsencesSheet.Note note =
              new PersonAbsencesSheet.Note("", "", TypedAbsence.problem(refusal, marked));
          return PageAnswer.of(
              refusal.status(),
              PersonAbsencesPage.Templates.person(shown(slug, again, note, marked)));
        });
  }

  private PersonAbsencesView shown(
      String slug, Again again, PersonAbsencesSheet.Note note, Entries marked) {
    return QuarkusTransaction.joiningExisting()
        .call(() -> again.view(people.get(slug), note, marked));
  }

  private static Response to(String place, String what, String value) {
    return PageAnswer.seeOther("%s?%s=%s".formatted(place, what, value));
  }
}
