package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.mail.LetterKind;
import vestiary.users.MailReaders;

/**
 * Writes to sacristans at whose churches something has changed since the last letter: what is to be
 * set out, what leaves and comes, what is set aside, what cannot stand. What they were told is kept
 * and compared with what is, so that nothing is told twice, and nothing that is again as it was.
 */
@ApplicationScoped
class TellSacristies {

  private final SacristyChangeRows changes;
  private final KeepToldSacristies told;
  private final MailReaders readers;
  private final ChooseLetters choices;
  private final PostLetter post;

  TellSacristies(
      SacristyChangeRows changes,
      KeepToldSacristies told,
      MailReaders readers,
      ChooseLetters choices,
      PostLetter post) {
    this.changes = changes;
    this.told = told;
    this.readers = readers;
    this.choices = choices;
    this.post = post;
  }

  /**
   * @param once the last of the changes that are told
   */
  private record News(
      UUID once, KeepToldSacristies.Seen seen, Map<UUID, ChurchWeek> before, Instant now) {}

  /** Looks in the present cluster whether there is something to tell, and writes. */
  void look(Instant now) {
    changes.tellOnce(
        now,
        rows -> {
          UUID last = rows.get(rows.size() - 1).id();
          told.findDay().ifPresent(day -> tell(day, last, now));
        });
  }

  private void tell(LocalDate day, UUID last, Instant now) {
    KeepToldSacristies.Seen seen = told.see(day);
    if (seen.week().last().plusDays(1).atStartOfDay(seen.week().zone()).toInstant().isAfter(now)) {
      News news = new News(last, seen, told.read(), now);
      readers.sacristans().forEach(one -> tell(one, news));
      told.keep(seen);
    }
  }

  private void tell(MailReaders.Sacristan one, News news) {
    LetterWish wish = choices.of(one.reader());
    if (!wish.sacristy()) {
      return;
    }
    Cluster here = news.seen().week().span().cluster();
    Tongue tongue = ChooseLetters.tongue(wish, here);
    SacristyNews words = new SacristyNews(news.seen().week(), tongue, news.now());
    Map<String, List<LetterView.Section>> changed = new LinkedHashMap<>();
    news.seen().week().span().churches().stream()
        .filter(church -> one.churches().contains(church.id().value()))
        .forEach(church -> changed.put(church.name(), sections(words, church, news)));
    changed.values().removeIf(List::isEmpty);
    if (!changed.isEmpty()) {
      post.post(draft(one, news, tongue, changed), tongue);
    }
  }

  private static PostLetter.Draft draft(
      MailReaders.Sacristan one,
      News news,
      Tongue tongue,
      Map<String, List<LetterView.Section>> changed) {
    WeekSeen week = news.seen().week();
    return new PostLetter.Draft(
        one.reader(),
        LetterKind.SACRISTY,
        "sacristy %s %s".formatted(news.once(), one.reader()),
        one.name(),
        tongue.say("sacristy.subject", tongue.list(List.copyOf(changed.keySet()))),
        tongue.say("sacristy.lead"),
        changed.values().stream().flatMap(List::stream).toList(),
        PostLetter.Way.ofSacristan(week, isTroubled(one, news.seen())));
  }

  private static boolean isTroubled(MailReaders.Sacristan one, KeepToldSacristies.Seen seen) {
    return one.churches().stream()
        .map(seen.churches()::get)
        .anyMatch(church -> church != null && !church.troubles().isEmpty());
  }

  private static List<LetterView.Section> sections(SacristyNews words, Church church, News news) {
    UUID id = church.id().value();
    return Optional.ofNullable(news.before().get(id))
        .map(before -> words.sections(church, before, news.seen().churches().get(id)))
        .orElse(List.of());
  }
}
