package vestiary.movement;

import static vestiary.web.Speech.say;

import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import vestiary.pool.Consent;
import vestiary.pool.NoteConsent;
import vestiary.problem.ShortName;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/**
 * What one owner is to be asked for one Mass.
 *
 * @param pieces codes of his that are planned for it elsewhere, or that he kept back from it
 * @param consents what he has answered for them; empty while he is not asked
 */
record OwnerAsked(DatedMass mass, String owner, List<String> pieces, List<Consent> consents) {

  private static final int LONGEST_SLUG = 60;

  OwnerAsked {
    pieces = List.copyOf(pieces);
    consents = List.copyOf(consents);
  }

  /** How the owner is called in addresses. */
  static String slug(String owner) {
    return ShortName.of(owner, "owner", LONGEST_SLUG);
  }

  String slug() {
    return slug(owner);
  }

  String address() {
    return "/consents/%s/%s".formatted(mass.id().value(), slug());
  }

  /** A no outweighs every yes; empty while something is not answered yet. */
  Optional<Consent> findAnswer() {
    Optional<Consent> no = consents.stream().filter(one -> !one.granted()).findFirst();
    boolean all = consents.size() == pieces.size();
    return no.or(() -> all ? consents.stream().findFirst() : Optional.empty());
  }

  /** To-ask, granted or refused. */
  String state() {
    return findAnswer().map(one -> one.granted() ? "granted" : "refused").orElse("to-ask");
  }

  /** How often it was answered, to notice a lost race. */
  int version() {
    return NoteConsent.times(consents);
  }

  /** For example "Mass at Saint Anne on Tuesday 8 December, 18:30". */
  String about() {
    ZonedDateTime start = mass.start();
    return say(
        "Mass at %s on %s, %s", mass.church().name(), Speech.day(mass.date()), Speech.clock(start));
  }
}
