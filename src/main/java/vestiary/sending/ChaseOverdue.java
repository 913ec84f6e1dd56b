package vestiary.sending;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.MailServer;
import vestiary.mail.Outbox;
import vestiary.mail.ReaderLanguages;
import vestiary.pool.ReadPool;
import vestiary.users.MailReaders;
import vestiary.users.PublicAddress;
import vestiary.web.Speech;

/**
 * Asks by mail for what should be back: on the first day, and every week from then on (common
 * practice, no source), never twice for the same day. Whoever signed for it or carried it is asked,
 * and the sacristans at home are told.
 */
@ApplicationScoped
class ChaseOverdue {

  private static final int EVERY_DAYS = 7;

  /** Nobody is woken by it. */
  private static final int FROM_HOUR = 8;

  private final MailServer mail;
  private final ReadSent sent;
  private final SendingWords words;
  private final OverdueMailRows mails;
  private final MailReaders readers;
  private final ReaderLanguages languages;
  private final Outbox outbox;
  private final ReadPool pool;
  private final PublicAddress here;
  private final Clock clock;

  ChaseOverdue(
      MailServer mail,
      ReadSent sent,
      SendingWords words,
      OverdueMailRows mails,
      MailReaders readers,
      ReaderLanguages languages,
      Outbox outbox,
      ReadPool pool,
      PublicAddress here,
      Clock clock) {
    this.mail = mail;
    this.sent = sent;
    this.words = words;
    this.mails = mails;
    this.readers = readers;
    this.languages = languages;
    this.outbox = outbox;
    this.pool = pool;
    this.here = here;
    this.clock = clock;
  }

  /** In the present cluster, writes what is due for a mail today. */
  void today() {
    if (mail.isOn()) {
      QuarkusTransaction.requiringNew().run(this::write);
    }
  }

  private void write() {
    SendingWords.Said said = words.read();
    Instant now = clock.instant();
    if (said.local(now).getHour() < FROM_HOUR) {
      return;
    }
    LocalDate day = said.local(now).toLocalDate();
    Map<UUID, List<Sent>> bySending = new LinkedHashMap<>();
    sent.overdue()
        .forEach(
            one -> bySending.computeIfAbsent(one.sending(), unknown -> new ArrayList<>()).add(one));
    bySending.forEach(
        (id, pieces) -> {
          int days = pieces.get(0).daysOverdue(now, said.zone());
          if (days % EVERY_DAYS == 1 && !mails.isSent(id, day)) {
            note(id, day);
            to(pieces.get(0))
                .forEach(
                    reader -> {
                      Locale language = languages.language(reader);
                      Text text = Speech.in(language, () -> text(pieces, said, now));
                      outbox.enter(letter(reader, id, day, language, text));
                    });
          }
        });
  }

  private void note(UUID sending, LocalDate day) {
    OverdueMailRow row = new OverdueMailRow();
    row.sendingId = sending;
    row.day = day;
    mails.persistAndFlush(row);
  }

  private record Text(String subject, String text) {}

  /** Whoever signed for it or carried it, and the sacristans at home, as far as they are known. */
  private Set<UUID> to(Sent first) {
    Set<UUID> to = new LinkedHashSet<>();
    Stream.concat(first.signers().stream(), first.carriers().stream())
        .filter(id -> readers.find(id).isPresent())
        .forEach(to::add);
    to.addAll(readers.sacristansOf(pool.get(first.code()).home().value()));
    return to;
  }

  private static Letter letter(
      UUID reader, UUID sending, LocalDate day, Locale language, Text text) {
    return Letter.plain(
        reader,
        LetterKind.OVERDUE,
        "overdue %s %s %s".formatted(sending, day, reader),
        language,
        text.subject(),
        text.text());
  }

  private Text text(List<Sent> pieces, SendingWords.Said said, Instant now) {
    Sent first = pieces.get(0);
    String what =
        Speech.list(
            pieces.stream().map(one -> one.code() + ", " + WhatWent.said(one.what())).toList());
    return new Text(
        say("%s was due back on %s", first.item(), said.due(first.due())),
        String.join(
            "\n",
            say("These are out and were due back:"),
            "",
            say("what      %s", what),
            say("owner     %s", first.owner()),
            say("with      %s, since %s", said.place(first), said.moment(first.went())),
            say("due       %s%s", said.due(first.due()), said.overdue(first, now)),
            "",
            say("Whoever has them is asked to bring them back, or to say when they come."),
            say("Whoever has taken them in already, say so here:"),
            here.of("/s/" + first.item()),
            ""));
  }
}
