package vestiary.setout;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.Cluster;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Set-out sheets of several Masses: of a church's day, of a weekend. */
@Path("/set-out")
@Produces(MediaType.TEXT_HTML)
class SetOutPage {

  /** Longer than any span that somebody pins up at once. */
  private static final int LONGEST_SPAN_DAYS = 14;

  private final ReadSetOut read;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  SetOutPage(ReadSetOut read, ReadCluster cluster, Frames frames, Clock clock) {
    this.read = read;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "setout")
  static class Templates {
    private Templates() {}

    static native TemplateInstance sheets(SetOutView view);
  }

  @GET
  @Transactional
  public TemplateInstance several(
      @QueryParam("from") String from,
      @QueryParam("to") String to,
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("paper") String paper) {
    Cluster here = cluster.cluster();
    String today = LocalDate.now(clock.withZone(here.zone())).toString();
    String first = from == null || from.isBlank() ? today : from;
    Asked asked = new Asked();
    Asked.Span span = asked.span(first, to == null || to.isBlank() ? first : to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    List<Church> churches = cluster.churches();
    if (!church.isEmpty() && churches.stream().noneMatch(one -> one.slug().equals(church))) {
      throw new Refused(new Refusal.NotThere("church", church));
    }
    SheetPaper chosen = paper(paper);
    String address = "/set-out?from=%s&to=%s".formatted(span.first(), span.last());
    String of = church.isEmpty() ? "" : "&church=" + church;
    List<SetOut> found = read.between(span.first(), span.last(), church);
    SetOutSheets words = new SetOutSheets(here, clock.instant());
    return Templates.sheets(
        new SetOutView(
            frames.of("day", address + of),
            say("Set-out sheets"),
            days(span),
            found.isEmpty()
                ? ""
                : say(
                    "%s, each on a sheet of its own: one press prints them all.",
                    Speech.sentence(Speech.count(found.size(), "Mass"))),
            turn(span, of),
            papers(address + of + "&", chosen),
            churches(address, chosen, churches, church),
            chosen.id(),
            found.stream().map(words::sheet).toList(),
            found.isEmpty() ? say("No Mass is entered for these days.") : ""));
  }

  private static String days(Asked.Span span) {
    return span.first().equals(span.last())
        ? say("%s %d", Speech.day(span.first()), span.first().getYear())
        : Speech.span(span.first(), span.last());
  }

  private static List<Link> turn(Asked.Span span, String of) {
    LocalDate saturday =
        span.first().plusDays(Math.floorMod(6 - span.first().getDayOfWeek().getValue(), 7));
    return List.of(
        new Link(say("The day"), "/day/" + span.first()),
        new Link(
            say("The next weekend"),
            "/set-out?from=%s&to=%s%s".formatted(saturday, saturday.plusDays(1), of)),
        new Link(say("The week"), "/week/" + span.first()));
  }

  static List<SetOutView.Option> papers(String address, SheetPaper chosen) {
    return Stream.of(SheetPaper.values())
        .map(
            paper ->
                new SetOutView.Option(
                    new Link(say("For ") + paper.name(), address + "paper=" + paper.id()),
                    paper == chosen))
        .toList();
  }

  private static List<SetOutView.Option> churches(
      String address, SheetPaper paper, List<Church> churches, String chosen) {
    String printed = paper == SheetPaper.A4 ? "" : "&paper=" + paper.id();
    return Stream.concat(
            Stream.of(
                new SetOutView.Option(
                    new Link(say("All churches"), address + printed), chosen.isEmpty())),
            churches.stream()
                .map(
                    church ->
                        new SetOutView.Option(
                            new Link(church.name(), address + "&church=" + church.slug() + printed),
                            church.slug().equals(chosen))))
        .toList();
  }

  static SheetPaper paper(String paper) {
    Asked asked = new Asked();
    SheetPaper chosen = asked.term("paper", paper, SheetPaper.A4);
    asked.refuseIfFaulty();
    return chosen;
  }
}
