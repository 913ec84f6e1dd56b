package vestiary.movement;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import vestiary.asking.AnswerAsking;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.mail.MailServer;
import vestiary.people.KeepMail;
import vestiary.plan.PlanResult;
import vestiary.plan.TripWords;
import vestiary.web.Speech;

/**
 * Writes to whoever was asked, once, where a mail server is named and his address known. The mail
 * says what is carried where and when and leads to the page; it names nobody else.
 */
@ApplicationScoped
class AskByMail {

  private static final Logger LOG = Logger.getLogger(AskByMail.class);

  private final MailServer mail;
  private final AnswerAsking askings;
  private final KeepMail addresses;
  private final Optional<String> address;

  AskByMail(
      MailServer mail,
      AnswerAsking askings,
      KeepMail addresses,
      @ConfigProperty(name = "vestiary.public-url") Optional<String> address) {
    this.mail = mail;
    this.askings = askings;
    this.addresses = addresses;
    this.address = address;
  }

  /** Whether a mail server is named. */
  boolean isOn() {
    return mail.isOn();
  }

  /** Writes to whoever is asked for this now; what keeps it from leaving is noted, and no more. */
  void send(ReadErrands.Found found) {
    if (!isOn() || found.findErrand().isEmpty()) {
      return;
    }
    Errand errand = found.errands().get(0);
    errand
        .findOpen()
        .filter(one -> one.state() == AskingState.ASKED)
        .flatMap(one -> one.person().stream().findFirst().flatMap(addresses::find))
        .ifPresent(to -> send(to, errand, found));
  }

  private void send(String to, Errand errand, ReadErrands.Found found) {
    UUID trip = errand.trip().id();
    if (!askings.claimMail(trip)) {
      return;
    }
    TripWords words =
        new TripWords(List.copyOf(found.churches().values()), List.of(), found.cluster().zone());
    try {
      mail.send(
          to,
          Speech.forTheRecord(() -> subject(errand, words)),
          Speech.forTheRecord(() -> text(errand, words)));
    } catch (RuntimeException e) {
      LOG.warnf("A mail that asks a carrier did not leave: %s", withoutAddresses(e));
      askings.mailFailed(trip);
    }
  }

  /** Mail servers repeat whom they do not know, and that is nothing for a log. */
  private static String withoutAddresses(RuntimeException failure) {
    return String.valueOf(failure.getMessage()).replaceAll("\\S+@\\S+", "(an address)");
  }

  private static String subject(Errand errand, TripWords words) {
    return "Can you carry vestments on %s?".formatted(words.day(errand.trip().leaveBy()));
  }

  private String text(Errand errand, TripWords words) {
    PlanResult.Trip trip = errand.trip();
    String asked = errand.findOpen().map(Asking::name).orElse("");
    String answer =
        address
            .map(
                url ->
                    "Please answer Yes or No here:\n%s/movements/%s\n"
                        .formatted(url.replaceAll("/+$", ""), trip.id()))
            .orElse("Please tell whoever asked you, Yes or No.\n");
    return """
        %s,

        vestments are to be carried on %s:

        from      %s, leave by %s
        to        %s, be there by %s
        pieces    %s

        %s"""
        .formatted(
            asked,
            words.day(trip.leaveBy()),
            words.church(trip.from()),
            words.clock(trip.leaveBy()),
            words.church(trip.to()),
            words.clock(trip.arriveBy()),
            String.join(", ", trip.pieces()),
            answer);
  }
}
