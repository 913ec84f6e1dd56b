package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;
import vestiary.cluster.ReadCluster;
import vestiary.web.English;
import vestiary.web.Entries;
import vestiary.web.Field;
import vestiary.web.Frames;

/** Sets out what somebody keeps for themselves. */
@ApplicationScoped
@Transactional
class AccountSheet {

  private final Frames frames;
  private final UserRows users;
  private final SessionRows sessions;
  private final TokenRows tokens;
  private final ReadCluster cluster;
  private final Clock clock;

  AccountSheet(
      Frames frames,
      UserRows users,
      SessionRows sessions,
      TokenRows tokens,
      ReadCluster cluster,
      Clock clock) {
    this.frames = frames;
    this.users = users;
    this.sessions = sessions;
    this.tokens = tokens;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * What is said over the page.
   *
   * @param made a token just made; empty otherwise
   */
  record Note(String done, String problem, String made) {
    static final Note NONE = new Note("", "", "");

    static Note done(String sentence) {
      return new Note(sentence, "", "");
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
        English.sentence(
            English.count((int) sessions.countOpen(id, clock.instant()), "session") + " open"),
        note.made(),
        tokens.of(id).stream().map(token -> token(token, zone)).toList(),
        entries.field("name"),
        entries.field("days"));
  }

  private AccountView.Token token(TokenRow token, ZoneId zone) {
    String used = token.usedAt == null ? "not used yet" : "last used on " + day(token.usedAt, zone);
    String until =
        token.endsAt.isAfter(clock.instant())
            ? "good until " + day(token.endsAt, zone)
            : "ended on " + day(token.endsAt, zone);
    String may = token.looksOnly ? "Reads only" : "Does what you may do";
    return new AccountView.Token(
        token.name,
        "%s; %s; %s.".formatted(may, until, used),
        "/account/tokens/%s/end".formatted(token.id));
  }

  private static String day(Instant moment, ZoneId zone) {
    return English.dateAndYear(LocalDate.ofInstant(moment, zone));
  }
}
