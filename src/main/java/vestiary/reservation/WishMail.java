package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.MailServer;
import vestiary.mail.Outbox;
import vestiary.mail.ReaderLanguages;
import vestiary.users.MailReaders;
import vestiary.users.PublicAddress;
import vestiary.web.Speech;

/**
 * Writes what is asked, answered and free to those it concerns, where a mail server is named and
 * their addresses are known; in the transaction of what it tells.
 */
@ApplicationScoped
class WishMail {

  private final MailServer mail;
  private final Outbox outbox;
  private final ReadWishes wishes;
  private final MailReaders readers;
  private final ReaderLanguages languages;
  private final PublicAddress address;

  WishMail(
      MailServer mail,
      Outbox outbox,
      ReadWishes wishes,
      MailReaders readers,
      ReaderLanguages languages,
      PublicAddress address) {
    this.mail = mail;
    this.outbox = outbox;
    this.wishes = wishes;
    this.readers = readers;
    this.languages = languages;
    this.address = address;
  }

  /** To the sacristans of the church that keeps it, but for whoever asks. */
  void asked(UUID id) {
    if (mail.isOn()) {
      Wish wish = wishes.get(id);
      Optional<UUID> own = findReader(wish.askedBy());
      readers.sacristansOf(wish.keeper().id().value()).stream()
          .filter(to -> own.filter(to::equals).isEmpty())
          .forEach(
              to ->
                  enter(
                      to,
                      "asked " + id,
                      () -> say("%s is asked for", wish.code()),
                      () -> WishWords.asked(wishes.get(id))));
    }
  }

  /** To whoever asked. */
  void answered(UUID id) {
    if (mail.isOn()) {
      Wish wish = wishes.get(id);
      toAsker(
          wish,
          "answered " + id,
          () -> say("The answer about %s", wish.code()),
          () -> WishWords.answered(wish));
    }
  }

  /** To whoever asked. */
  void free(UUID id) {
    if (mail.isOn()) {
      Wish wish = wishes.get(id);
      toAsker(
          wish, "free " + id, () -> say("%s is free now", wish.code()), () -> WishWords.free(wish));
    }
  }

  private void toAsker(
      Wish wish, String about, Supplier<String> subject, Supplier<String> sentence) {
    findReader(wish.askedBy())
        .filter(to -> readers.find(to).isPresent())
        .ifPresent(to -> enter(to, about, subject, sentence));
  }

  /** A user, or a person who held a shared device. */
  private Optional<UUID> findReader(String mark) {
    return Stream.of(mark)
        .filter(one -> one.length() == new UUID(0, 0).toString().length())
        .map(UUID::fromString)
        .map(readers::of)
        .findFirst();
  }

  private void enter(UUID to, String about, Supplier<String> subject, Supplier<String> sentence) {
    Locale language = languages.language(to);
    outbox.enter(
        Letter.plain(
            to,
            LetterKind.WISH,
            "wish %s %s".formatted(about, to),
            language,
            Speech.in(language, subject),
            "%s\n\n%s\n".formatted(Speech.in(language, sentence), address.of(WishPages.ADDRESS))));
  }
}
