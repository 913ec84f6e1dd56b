package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.MailServer;
import vestiary.mail.Outbox;
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
  private final PublicAddress address;

  WishMail(
      MailServer mail,
      Outbox outbox,
      ReadWishes wishes,
      MailReaders readers,
      PublicAddress address) {
    this.mail = mail;
    this.outbox = outbox;
    this.wishes = wishes;
    this.readers = readers;
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
                      "%s is asked for".formatted(wish.code()),
                      Speech.forTheRecord(() -> WishWords.asked(wish))));
    }
  }

  /** To whoever asked. */
  void answered(UUID id) {
    if (mail.isOn()) {
      Wish wish = wishes.get(id);
      toAsker(
          wish,
          "answered " + id,
          "The answer about %s".formatted(wish.code()),
          Speech.forTheRecord(() -> WishWords.answered(wish)));
    }
  }

  /** To whoever asked. */
  void free(UUID id) {
    if (mail.isOn()) {
      Wish wish = wishes.get(id);
      toAsker(
          wish,
          "free " + id,
          "%s is free now".formatted(wish.code()),
          Speech.forTheRecord(() -> WishWords.free(wish)));
    }
  }

  private void toAsker(Wish wish, String about, String subject, String sentence) {
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

  private void enter(UUID to, String about, String subject, String sentence) {
    outbox.enter(
        Letter.plain(
            to,
            LetterKind.WISH,
            "wish %s %s".formatted(about, to),
            subject,
            "%s\n\n%s\n".formatted(sentence, address.of(WishPages.ADDRESS))));
  }
}
