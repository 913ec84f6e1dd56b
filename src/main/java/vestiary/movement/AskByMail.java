package vestiary.movement;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.asking.AnswerAsking;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.mail.KeptLetters;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.LetterState;
import vestiary.mail.MailServer;
import vestiary.mail.Outbox;
import vestiary.mail.ReaderLanguages;
import vestiary.plan.PlanResult;
import vestiary.plan.TripWords;
import vestiary.users.MailReaders;
import vestiary.web.Speech;

/**
 * Writes to whoever was asked, once, where a mail server is named and his address known. The mail
 * says what is carried where and when and leads to the page; it names nobody else.
 */
@ApplicationScoped
class AskByMail {

  private final MailServer mail;
  private final Outbox outbox;
  private final KeptLetters letters;
  private final AnswerAsking askings;
  private final MailReaders readers;
  private final ReaderLanguages languages;
  private final Optional<String> address;

  AskByMail(
      MailServer mail,
      Outbox outbox,
      KeptLetters letters,
      AnswerAsking askings,
      MailReaders readers,
      ReaderLanguages languages,
      @ConfigProperty(name = "vestiary.public-url") Optional<String> address) {
    this.mail = mail;
    this.outbox = outbox;
    this.letters = letters;
    this.askings = askings;
    this.readers = readers;
    this.languages = languages;
    this.address = address;
  }

  /** Whether a mail server is named. */
  boolean isOn() {
    return mail.isOn();
  }

  /** Whether a mail to whoever is asked came to nothing. */
  boolean hasFailed(Asking asking) {
    return asking.mailFailed()
        || letters
            .find(once(asking))
            .filter(
                one -> one.state() == LetterState.REFUSED || one.state() == LetterState.GIVEN_UP)
            .isPresent();
  }

  /** Writes to whoever is asked for this now. */
  void send(ReadErrands.Found found) {
    if (isOn()) {
      found.findErrand().ifPresent(errand -> send(errand, found));
    }
  }

  private void send(Errand errand, ReadErrands.Found found) {
    errand
        .findOpen()
        .filter(one -> one.state() == AskingState.ASKED)
        .ifPresent(
            one ->
                one.person().stream()
                    .filter(person -> readers.find(person).isPresent())
                    .forEach(
                        person ->
                            QuarkusTransaction.joiningExisting()
                                .run(() -> enter(one, person, errand, found))));
  }

  private void enter(Asking one, UUID person, Errand errand, ReadErrands.Found found) {
    TripWords words =
        new TripWords(List.copyOf(found.churches().values()), List.of(), found.cluster().zone());
    if (askings.claimMail(errand.trip().id())) {
      Locale language = languages.language(person);
      outbox.enter(
          Letter.plain(
              person,
              LetterKind.CARRYING,
              once(one),
              language,
              Speech.in(language, () -> subject(errand, words)),
              Speech.in(language, () -> text(errand, words))));
    }
  }

  private static String once(Asking asking) {
    return "carrying " + asking.id();
  }

  private static String subject(Errand errand, TripWords words) {
    return say("Can you carry vestments on %s?", words.day(errand.trip().leaveBy()));
  }

  private String text(Errand errand, TripWords words) {
    PlanResult.Trip trip = errand.trip();
    String asked = errand.findOpen().map(Asking::name).orElse("");
    String answer =
        address
            .map(
                url ->
                    "%s\n%s/movements/%s"
                        .formatted(
                            say("Please answer Yes or No here:"),
                            url.replaceAll("/+$", ""),
                            trip.id()))
            .orElseGet(() -> say("Please tell whoever asked you, Yes or No."));
    return String.join(
        "\n",
        asked + ",",
        "",
        say("vestments are to be carried on %s:", words.day(trip.leaveBy())),
        "",
        say("from      %s, leave by %s", words.church(trip.from()), words.clock(trip.leaveBy())),
        say("to        %s, be there by %s", words.church(trip.to()), words.clock(trip.arriveBy())),
        say("pieces    %s", String.join(", ", trip.pieces())),
        "",
        answer,
        "");
  }
}
