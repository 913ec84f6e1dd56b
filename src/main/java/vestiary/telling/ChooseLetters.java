package vestiary.telling;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.Cluster;
import vestiary.problem.Asked;

/** Keeps which letters each wants, and in which language. */
@ApplicationScoped
@Transactional
class ChooseLetters {

  private final LetterWishRows rows;

  ChooseLetters(LetterWishRows rows) {
    this.rows = rows;
  }

  LetterWish of(UUID reader) {
    return rows.findByIdOptional(reader).map(ChooseLetters::wish).orElse(LetterWish.USUAL);
  }

  /** Of all who have chosen. */
  Map<UUID, LetterWish> all() {
    return rows.listAll().stream().collect(Collectors.toMap(r -> r.id, ChooseLetters::wish));
  }

  /** In which language somebody of that wish is written to. */
  static Tongue tongue(LetterWish wish, Cluster cluster) {
    return Tongue.of(
        wish.language().isEmpty() ? cluster.language() : Locale.forLanguageTag(wish.language()));
  }

  /**
   * Keeps it instead of what was chosen before.
   *
   * @throws vestiary.problem.Refused if there is no such language
   */
  void choose(UUID reader, LetterWish wish) {
    refuseUnknown(wish.language());
    LetterWishRow row =
        rows.findByIdOptional(reader)
            .orElseGet(
                () -> {
                  LetterWishRow fresh = new LetterWishRow();
                  fresh.id = reader;
                  return fresh;
                });
    row.friday = wish.week();
    row.changes = wish.changes();
    row.sacristy = wish.sacristy();
    row.language = wish.language();
    rows.persistAndFlush(row);
  }

  private static void refuseUnknown(String language) {
    boolean isKnown =
        language.isEmpty() || Tongue.ALL.stream().anyMatch(l -> l.toLanguageTag().equals(language));
    if (!isKnown) {
      Asked asked = new Asked();
      asked.fault("language", say("There are letters in en and es, and none in this language."));
      asked.refuseIfFaulty();
    }
  }

  private static LetterWish wish(LetterWishRow row) {
    return new LetterWish(row.friday, row.changes, row.sacristy, row.language);
  }
}
