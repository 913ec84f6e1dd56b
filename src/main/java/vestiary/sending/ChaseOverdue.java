package vestiary.sending;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jboss.logging.Logger;
import vestiary.mail.MailServer;
import vestiary.people.KeepMail;
import vestiary.pool.ReadPool;
import vestiary.users.PublicAddress;
import vestiary.users.SacristansByMail;
import vestiary.web.English;

/**
 * Asks by mail for what should be back: on the first day, and every week from then on (common
 * practice, no source), never twice for the same day. Whoever signed for it or carried it is asked,
 * and the sacristans at home are told.
 */
@ApplicationScoped
class ChaseOverdue {

  private static final Logger LOG = Logger.getLogger(ChaseOverdue.class);

  private static final int EVERY_DAYS = 7;

  /** Nobody is woken by it. */
  private static final int FROM_HOUR = 8;

  private final MailServer mail;
  private final ReadSent sent;
  private final SendingWords words;
  private final OverdueMailRows mails;
  private final KeepMail addresses;
  private final SacristansByMail sacristans;
  private final ReadPool pool;
  private final PublicAddress here;
  private final Clock clock;

  ChaseOverdue(
      MailServer mail,
      ReadSent sent,
      SendingWords words,
      OverdueMailRows mails,
      KeepMail addresses,
      SacristansByMail sacristans,
      ReadPool pool,
      PublicAddress here,
      Clock clock) {
    this.mail = mail;
    this.sent = sent;
    this.words = words;
    this.mails = mails;
    this.addresses = addresses;
    this.sacristans = sacristans;
    this.pool = pool;
    this.here = here;
    this.clock = clock;
  }

  /** One mail to everybody whom it concerns. */
  private record Letter(Set<String> to, String subject, String text) {}

  /**
   * In the present cluster, what is due for a mail today. No connection is held while mails leave.
   */
  void today() {
    if (mail.isOn()) {
      QuarkusTransaction.requiringNew().call(this::letters).forEach(this::send);
    }
  }

  /** Written down as sent before they leave: a mail that is lost is better than two a day. */
  private List<Letter> letters() {
    SendingWords.Said said = words.read();
    Instant now = clock.instant();
    if (said.local(now).getHour() < FROM_HOUR) {
      return List.of();
    }
    LocalDate day = said.local(now).toLocalDate();
    Map<UUID, List<Sent>> bySending = new LinkedHashMap<>();
    sent.overdue()
        .forEach(
            one -> bySending.computeIfAbsent(one.sending(), unknown -> new ArrayList<>()).add(one));
    List<Letter> letters = new ArrayList<>();
    bySending.forEach(
        (id, pieces) -> {
          int days = pieces.get(0).daysOverdue(now, said.zone());
          if (days % EVERY_DAYS == 1 && !mails.isSent(id, day)) {
            note(id, day);
            letters.add(letter(pieces, said, now));
          }
        });
    return letters;
  }

  private void note(UUID sending, LocalDate day) {
    OverdueMailRow row = new OverdueMailRow();
    row.sendingId = sending;
    row.day = day;
    mails.persistAndFlush(row);
  }

  private Letter letter(List<Sent> pieces, SendingWords.Said said, Instant now) {
    Sent first = pieces.get(0);
    Set<String> to = new LinkedHashSet<>();
    first.signers().forEach(id -> addresses.find(id).ifPresent(to::add));
    first.carriers().forEach(id -> addresses.find(id).ifPresent(to::add));
    to.addAll(sacristans.of(pool.get(first.code()).home().value()));
    String what = English.list(pieces.stream().map(one -> one.code() + ", " + one.what()).toList());
    return new Letter(
        to,
        "%s was due back on %s".formatted(first.item(), said.due(first.due())),
        """
        These are out and were due back:

        what      %s
        owner     %s
        with      %s, since %s
        due       %s

        Whoever has them is asked to bring them back, or to say when they come.
        Whoever has taken them in already, say so here:
        %s
        """
            .formatted(
                what,
                first.owner(),
                said.place(first),
                said.moment(first.went()),
                said.due(first, now).replaceFirst("^due ", ""),
                here.of("/s/" + first.item())));
  }

  private void send(Letter letter) {
    for (String address : letter.to()) {
      try {
        mail.send(address, letter.subject(), letter.text());
      } catch (RuntimeException e) {
        LOG.warnf(
            "A mail about what is overdue did not leave: %s",
            String.valueOf(e.getMessage()).replaceAll("\\S+@\\S+", "(an address)"));
      }
    }
  }
}
