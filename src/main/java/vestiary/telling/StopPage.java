package vestiary.telling;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.OpenToAll;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.mail.KeptLetter;
import vestiary.problem.FormAnswer;
import vestiary.users.MailReaders;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.PageAnswer;

/**
 * Ends letters by one press, for whoever holds one and has not signed in. Opening the page changes
 * nothing, since mail servers open links to look at them.
 *
 * <p>Source: RFC 8058, 3.1 and 3.2; the answer to a press is no redirect, since mail programs send
 * it too.
 */
@Path("/letters/stop/{link}")
@Produces(MediaType.TEXT_HTML)
@OpenToAll
class StopPage {

  /** All of the path but the link's secret. */
  static final String ADDRESS = "/letters/stop/";

  private final StopLinks links;
  private final ChooseLetters choices;
  private final SettleTelling settings;
  private final ReadCluster cluster;
  private final MailReaders readers;

  StopPage(
      StopLinks links,
      ChooseLetters choices,
      SettleTelling settings,
      ReadCluster cluster,
      MailReaders readers) {
    this.readers = readers;
    this.links = links;
    this.choices = choices;
    this.settings = settings;
    this.cluster = cluster;
  }

  @CheckedTemplate(basePath = "telling")
  static class Templates {
    private Templates() {}

    static native TemplateInstance stop(StopView view);
  }

  @GET
  @Transactional
  public TemplateInstance page(
      @RestPath String link, @QueryParam("done") @DefaultValue("") String done) {
    return page(links.get(link), link, done.equals("saved") ? "stop.saved" : "");
  }

  @POST
  @Transactional
  public TemplateInstance stop(@RestPath String link) {
    KeptLetter letter = links.get(link);
    UUID reader = letter.reader();
    choices.choose(reader, choices.of(reader).without(letter.kind()));
    return page(letter, link, "stop.done");
  }

  @POST
  @Path("/choice")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response choose(@RestPath String link, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    UUID reader = links.get(link).reader();
    return FormAnswer.of(
        () -> {
          choices.choose(reader, ChoiceWords.wish(typed, choices.of(reader)));
          return PageAnswer.seeOther(ADDRESS + link + "?done=saved");
        },
        refusal -> PageAnswer.of(refusal.status(), page(links.get(link), link, "")));
  }

  private TemplateInstance page(KeptLetter letter, String link, String done) {
    Cluster here = cluster.cluster();
    LetterWish wish = choices.of(letter.reader());
    Tongue tongue = ChooseLetters.tongue(wish, here);
    String kind = letter.kind().id();
    TemplateInstance page =
        Templates.stop(
            new StopView(
                Frame.empty(),
                tongue.tag(),
                tongue.say("stop.title", here.name()),
                done.isEmpty() ? "" : tongue.say(done),
                tongue.say("stop.known." + kind),
                tongue.say("stop.press." + kind),
                wish.wants(letter.kind()),
                ADDRESS + link,
                ChoiceWords.of(
                    wish,
                    settings.read(),
                    tongue,
                    "stop.choose",
                    ADDRESS + link + "/choice",
                    readers.isSacristan(letter.reader()))));
    return page.setLocale(tongue.tag());
  }
}
