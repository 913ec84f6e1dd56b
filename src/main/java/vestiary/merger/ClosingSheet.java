package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.cluster.Closings;
import vestiary.cluster.ReadCluster;
import vestiary.pool.MoveGoods;
import vestiary.problem.Asked;
import vestiary.schedule.EndMassTimes;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out the closing of a church: what ends, what is left to be done, what was decreed. */
@ApplicationScoped
@Transactional
class ClosingSheet {

  private final ReadCluster cluster;
  private final Closings closings;
  private final EndMassTimes times;
  private final MoveGoods goods;
  private final NotedWords noted;
  private final Frames frames;
  private final Clock clock;

  ClosingSheet(
      ReadCluster cluster,
      Closings closings,
      EndMassTimes times,
      MoveGoods goods,
      NotedWords noted,
      Frames frames,
      Clock clock) {
    this.cluster = cluster;
    this.closings = closings;
    this.times = times;
    this.goods = goods;
    this.noted = noted;
    this.frames = frames;
    this.clock = clock;
  }

  ClosingView view(String slug, Entries typed, String done, String problem) {
    Church church = cluster.getChurch(slug);
    Optional<LocalDate> closed = closings.find(church.id());
    LocalDate from =
        closed.or(() -> new Asked().findDate("from", typed.text("from"))).orElse(today());
    int pieces = goods.countAt(church.id());
    return new ClosingView(
        frames.of("settings", "/churches/" + slug + "/closing"),
        church.name(),
        "/churches/" + slug + "/closing",
        closed.map(Speech::dateAndYear).orElse(""),
        done,
        problem,
        what(church, from),
        pieces == 0
            ? say("No piece is at home here.")
            : say(
                "%s %s at home here.",
                Speech.sentence(Speech.count(pieces, "piece")),
                pieces == 1 ? say("is") : say("are")),
        to(church, typed, pieces),
        typed.field("from"),
        typed.field("note"),
        noted.of(church.id().value()),
        new Link(say("The church"), "/churches/" + slug));
  }

  /**
   * What closing comes to.
   *
   * @param from first date without Mass
   * @param ends in whole sentences
   * @param pieces how many are at home there
   */
  record Ahead(LocalDate from, List<String> ends, int pieces) {
    Ahead {
      ends = List.copyOf(ends);
    }
  }

  /**
   * What it comes to from a date on.
   *
   * @throws vestiary.problem.Refused if there is no such church, or it is no date
   */
  Ahead ahead(String slug, String typed) {
    Church church = cluster.getChurch(slug);
    Asked asked = new Asked();
    LocalDate from = asked.date("from", typed);
    asked.refuseIfFaulty();
    return new Ahead(from, what(church, from), goods.countAt(church.id()));
  }

  private List<String> what(Church church, LocalDate from) {
    EndMassTimes.Ending ending = times.look(church.id(), from);
    List<String> said = new ArrayList<>();
    if (ending.times() > 0) {
      String times = Speech.count(ending.times(), "regular Mass time");
      String day = Speech.dateAndYear(from);
      said.add(
          ending.times() == 1
              ? say("From %s: %s ends. %s", day, times, ending.lead())
              : say("From %s: %s end. %s", day, times, ending.lead()));
    }
    said.addAll(ending.touched());
    if (ending.byHand() > 0) {
      String masses = Speech.sentence(Speech.count(ending.byHand(), "Mass"));
      said.add(
          ending.byHand() == 1
              ? say(
                  "%s from then on was entered or changed by hand and stays: move or cancel it one by one.",
                  masses)
              : say(
                  "%s from then on were entered or changed by hand and stay: move or cancel them one by one.",
                  masses));
    }
    return said;
  }

  private Choice to(Church church, Entries typed, int pieces) {
    Stream<Choice.Option> others =
        cluster.churches().stream()
            .filter(other -> !other.id().equals(church.id()))
            .filter(other -> closings.find(other.id()).isEmpty())
            .map(other -> Choice.Option.of(other.slug(), other.name()));
    return pieces == 0 ? Choice.of(List.of()) : typed.choice("to", others);
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }
}
