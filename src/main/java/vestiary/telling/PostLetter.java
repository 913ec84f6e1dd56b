package vestiary.telling;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.cluster.ReadCluster;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.Outbox;
import vestiary.mail.StopLink;
import vestiary.people.FindPeople;
import vestiary.users.PublicAddress;

/** Lays a letter out in both forms and gives it to the outbox. */
@ApplicationScoped
class PostLetter {

  private final Outbox outbox;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final PublicAddress here;

  PostLetter(Outbox outbox, ReadCluster cluster, FindPeople people, PublicAddress here) {
    this.outbox = outbox;
    this.cluster = cluster;
    this.people = people;
    this.here = here;
  }

  @CheckedTemplate(basePath = "telling")
  static class Templates {
    private Templates() {}

    static native TemplateInstance letterText(LetterView letter);

    static native TemplateInstance letterPage(LetterView letter);
  }

  /**
   * What is to be written.
   *
   * @param once what it is about, so that nobody gets it twice
   * @param name by which they are greeted where they are nobody of the schedule; may be empty
   * @param ways to pages, most useful first
   */
  record Draft(
      UUID reader,
      LetterKind kind,
      String once,
      String name,
      String subject,
      String lead,
      List<LetterView.Section> sections,
      List<Way> ways) {
    Draft {
      sections = List.copyOf(sections);
      ways = List.copyOf(ways);
    }
  }

  /**
   * To a page.
   *
   * @param see name of the words that lead there
   * @param page its path
   */
  record Way(String see, String page) {

    static final Way MINE = new Way("see.mine", "/mine");

    /** What a sacristan looks at next: the sheets, and where something cannot stand, why not. */
    static List<Way> ofSacristan(WeekSeen week, boolean isTroubled) {
      String days = "?from=%s&to=%s".formatted(week.first(), week.last());
      Way sheets = new Way("see.setout", "/set-out" + days);
      return isTroubled
          ? List.of(new Way("see.clashes", "/clashes" + days), sheets)
          : List.of(sheets);
    }
  }

  /** Enters it in the present transaction, unless one of the same is there. */
  void post(Draft draft, Tongue tongue) {
    StopLink stop = outbox.stopLink(here.of(StopPage.ADDRESS));
    LetterView view = view(draft, tongue, stop);
    outbox.enter(
        new Letter(
            draft.reader(),
            draft.kind(),
            draft.once(),
            tongue.tag(),
            draft.subject(),
            Templates.letterText(view).render().strip() + "\n",
            Templates.letterPage(view).render().strip(),
            stop,
            Duration.ZERO));
  }

  private LetterView view(Draft draft, Tongue tongue, StopLink stop) {
    List<LetterView.Link> links =
        draft.ways().stream()
            .map(way -> new LetterView.Link(tongue.say(way.see(), ""), here.of(way.page())))
            .toList();
    String greeted =
        Optional.of(draft.name())
            .filter(name -> !name.isEmpty())
            .or(() -> people.find(draft.reader()).map(tongue::called))
            .orElse("");
    return new LetterView(
        tongue.tag(),
        draft.subject(),
        greeted.isEmpty() ? "" : tongue.say("greeting", greeted),
        draft.lead(),
        draft.sections(),
        links,
        new LetterView.Link(tongue.say("stop", cluster.cluster().name(), ""), stop.address()));
  }
}
