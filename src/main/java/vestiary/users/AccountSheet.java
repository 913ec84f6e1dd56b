package vestiary.users;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import vestiary.access.Role;
import vestiary.cluster.ReadCluster;
import vestiary.mail.MailServer;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frames;
import vestiary.web.Speech;

/** Sets out what somebody keeps for themselves. */
@ApplicationScoped
@Transactional
class AccountSheet {

  private final Frames frames;
  private final UserRows users;
  private final SessionRows sessions;
  private final TokenRows tokens;
  private final KeepUserMail mails;
  private final MailServer mail;
  private final PasskeyRows passkeys;
  private final PublicAddress here;
  private final OpenIdProvider provider;
  private final LinkOutside outside;
  private final ReadCluster cluster;
  private final Clock clock;

  AccountSheet(
      Frames frames,
      UserRows users,
      SessionRows sessions,
      TokenRows tokens,
      KeepUserMail mails,
      MailServer mail,
      PasskeyRows passkeys,
      PublicAddress here,
      OpenIdProvider provider,
      LinkOutside outside,
      ReadCluster cluster,
      Clock clock) {
    this.frames = frames;
    this.users = users;
    this.sessions = sessions;
    this.tokens = tokens;
    this.mails = mails;
    this.mail = mail;
    this.passkeys = passkeys;
    this.here = here;
    this.provider = provider;
    this.outside = outside;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * What is said over the page.
   *
   * @param made a token just made; empty otherwise
   * @param key of a feed just made; empty otherwise
   */
  record Note(String done, String problem, String made, String key) {
    static final Note NONE = new Note("", "", "", "");

    static Note done(String sentence) {
      return new Note(sentence, "", "", "");
    }

    static Note feed(String key) {
      return new Note("", "", "", key);
    }
  }

  AccountView view(UUID id, Entries entries, Note note) {
    UserRow user = users.findById(id);
    ZoneId zone = cluster.cluster().zone();
    return new AccountView(
        frames.of("account", "/account"),
        note.done(),
        note.problem(),
        user.name,
        user.login,
        user.toRole().word(),
        new Field("", entries.error("old")),
        new Field("", entries.error("password")),
        new Field("", entries.error("again")),
        Speech.sentence(
            Speech.count((int) sessions.countOpen(id, clock.instant()), "session") + say(" open")),
        here.origin(),
        passkeys.of(id).stream().map(key -> passkey(key, zone)).toList(),
        mail(user, entries),
        new AccountView.Outside(
            provider.isOn() ? provider.name() : "",
            outside.isLinked(id),
            new Field("", entries.error("outside-password"))),
        note.made(),
        note.key().isEmpty() ? List.of() : feeds(user, note.key()),
        tokens.of(id).stream().map(token -> token(token, zone)).toList(),
        entries.field("name"),
        entries.field("days"),
        entries.field("feed"));
  }

  private List<AccountView.Feed> feeds(UserRow user, String key) {
    List<AccountView.Feed> feeds = new ArrayList<>();
    boolean isSacristan = user.toRole() == Role.SACRISTAN;
    if (user.personId != null || isSacristan) {
      String what =
          isSacristan
              ? say("The journeys of your churches' vestments, and your own Masses")
              : say("Your own Masses, and the ways between them");
      feeds.add(new AccountView.Feed(what, here.of("/feeds/mine.ics?key=" + key)));
    }
    feeds.add(
        new AccountView.Feed(
            say("Masses of all churches; for one add &church= and its short name"),
            here.of("/feeds/masses.ics?key=" + key)));
    feeds.add(
        new AccountView.Feed(
            say("The liturgical calendar; for one church likewise"),
            here.of("/feeds/ordo.ics?key=" + key)));
    return feeds;
  }

  private AccountView.Mail mail(UserRow user, Entries entries) {
    KeepUserMail.Kept kept = mails.kept(user.id);
    return new AccountView.Mail(
        mail.isOn(),
        sentence(kept),
        !(kept.proven() + kept.wanted()).isEmpty(),
        entries.field("mail"),
        !user.password.isEmpty(),
        new Field("", entries.error("mail-password")));
  }

  private static String sentence(KeepUserMail.Kept kept) {
    String proven =
        kept.proven().isEmpty()
            ? say("None counts yet.")
            : say("If you forget your password, a link is sent to %s.", kept.proven());
    return kept.wanted().isEmpty()
        ? proven
        : say("%s %s waits for the link that was sent there to be opened.", proven, kept.wanted());
  }

  private static AccountView.Passkey passkey(PasskeyRow key, ZoneId zone) {
    return new AccountView.Passkey(
        key.name,
        say(
            "Added on %s; %s.",
            day(key.addedAt, zone),
            key.usedAt == null
                ? say("not used yet")
                : say("last used on ") + day(key.usedAt, zone)),
        "/account/passkeys/%s/removal".formatted(key.id));
  }

  private AccountView.Token token(TokenRow token, ZoneId zone) {
    String used =
        token.usedAt == null ? say("not used yet") : say("last used on ") + day(token.usedAt, zone);
    String until =
        token.endsAt.isAfter(clock.instant())
            ? say("good until ") + day(token.endsAt, zone)
            : say("ended on ") + day(token.endsAt, zone);
    return new AccountView.Token(
        token.name,
        "%s; %s; %s.".formatted(may(token), until, used),
        "/account/tokens/%s/end".formatted(token.id));
  }

  private static String may(TokenRow token) {
    if (token.feed) {
      return say("Address for a calendar program");
    }
    return token.looksOnly ? say("Reads only") : say("Does what you may do");
  }

  private static String day(Instant moment, ZoneId zone) {
    return Speech.dateAndYear(LocalDate.ofInstant(moment, zone));
  }
}
