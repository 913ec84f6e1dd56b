package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import vestiary.mail.MailServer;
import vestiary.people.KeepMail;
import vestiary.users.PublicAddress;
import vestiary.users.UserAddresses;
import vestiary.web.Speech;

/**
 * Writes what is asked, answered and free to those it concerns, where a mail server is named and
 * their addresses are known. Whether a mail leaves changes nothing: the page says the same.
 */
@ApplicationScoped
class WishMail {

  private static final Logger LOG = Logger.getLogger(WishMail.class);

  private final MailServer mail;
  private final ReadWishes wishes;
  private final UserAddresses users;
  private final KeepMail people;
  private final PublicAddress address;

  WishMail(
      MailServer mail,
      ReadWishes wishes,
      UserAddresses users,
      KeepMail people,
      PublicAddress address) {
    this.mail = mail;
    this.wishes = wishes;
    this.users = users;
    this.people = people;
    this.address = address;
  }

  /** To the sacristans of the church that keeps it, but for whoever asks. */
  void asked(UUID id) {
    if (mail.isOn()) {
      Wish wish = wishes.get(id);
      Optional<String> own = findAddress(wish.askedBy());
      users.ofSacristans(wish.keeper().id().value()).stream()
          .filter(to -> own.filter(to::equals).isEmpty())
          .forEach(
              to ->
                  send(
                      to,
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
          "%s is free now".formatted(wish.code()),
          Speech.forTheRecord(() -> WishWords.free(wish)));
    }
  }

  private void toAsker(Wish wish, String subject, String sentence) {
    findAddress(wish.askedBy()).ifPresent(to -> send(to, subject, sentence));
  }

  /** A user's, or that of a person who held a shared device. */
  private Optional<String> findAddress(String mark) {
    return List.of(mark).stream()
        .filter(one -> one.length() == new UUID(0, 0).toString().length())
        .map(UUID::fromString)
        .findFirst()
        .flatMap(id -> users.find(id).or(() -> people.find(id)));
  }

  private void send(String to, String subject, String sentence) {
    try {
      mail.send(to, subject, "%s\n\n%s\n".formatted(sentence, address.of(WishPages.ADDRESS)));
    } catch (RuntimeException e) {
      LOG.warnf(
          "A mail about a wish did not leave: %s",
          String.valueOf(e.getMessage()).replaceAll("\\S+@\\S+", "(an address)"));
    }
  }
}
