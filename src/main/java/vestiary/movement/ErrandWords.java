package vestiary.movement;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import vestiary.asking.Asking;
import vestiary.asking.AskingWords;
import vestiary.people.CarrierName;

/** Says how the asking for a journey, or of an owner, stands. */
@ApplicationScoped
class ErrandWords {

  private final AskingWords words;

  ErrandWords(AskingWords words) {
    this.words = words;
  }

  /** For a table, for example "said yes" or "not asked yet". */
  String inShort(Errand one) {
    Optional<Asking> told = one.findOpen().or(one::findDeclined);
    if (told.isEmpty()) {
      return say("not asked yet");
    }
    return switch (told.get().state()) {
      case ASKED -> say("asked, no answer yet");
      case ACCEPTED -> say("says yes");
      case DECLINED -> say("%s says no; ask somebody else", told.get().name());
      case DONE -> say("brought");
      case WITHDRAWN -> "";
    };
  }

  /** One or two sentences. */
  String whole(Errand one) {
    Optional<Asking> told = one.findOpen().or(one::findDeclined);
    if (told.isPresent()) {
      return words.lately(told.get());
    }
    return one.trip().carrier().isEmpty()
        ? say("Nobody is asked yet. Ask somebody by name.")
        : say(
            "%s drives that way anyway, and is not asked yet.",
            CarrierName.of(one.trip().carrier()));
  }

  /** For each who was asked, what came of it. */
  String told(Asking one) {
    return words.lately(one);
  }

  /** Of an owner: not asked yet, or what he said. */
  String owner(OwnerAsked one) {
    return one.findAnswer()
        .map(
            answer ->
                say(
                    "The owner says %s%s.",
                    answer.granted() ? say("yes") : say("no"),
                    answer.by().isEmpty() ? "" : say(", as %s noted", answer.by())))
        .orElse(say("To be asked."));
  }
}
