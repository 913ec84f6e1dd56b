package vestiary.movement;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import vestiary.asking.Asking;
import vestiary.asking.AskingWords;

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
      return "not asked yet";
    }
    return switch (told.get().state()) {
      case ASKED -> "asked, no answer yet";
      case ACCEPTED -> "says yes";
      case DECLINED -> told.get().name() + " says no; ask somebody else";
      case DONE -> "brought";
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
        ? "Nobody is asked yet. Ask somebody by name."
        : "%s drives that way anyway, and is not asked yet.".formatted(one.trip().carrier());
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
                "The owner says %s%s."
                    .formatted(
                        answer.granted() ? "yes" : "no",
                        answer.by().isEmpty() ? "" : ", as " + answer.by() + " noted"))
        .orElse("To be asked.");
  }
}
