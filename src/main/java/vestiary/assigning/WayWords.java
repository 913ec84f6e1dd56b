package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.Occasion;
import vestiary.allocation.celebrant.WaysOut;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.Link;
import vestiary.web.Speech;

/** What can be done for a Mass that nobody can take, in words; nothing is ever cancelled here. */
final class WayWords {

  private static final int MOST_TIMES = 4;
  private static final int MOST_NEIGHBOURS = 2;

  private final Scene scene;
  private final MassToServe mass;
  private final DatedMass dated;
  private final Map<MassId, DatedMass> masses;

  WayWords(Scene scene, MassToServe mass) {
    this.scene = scene;
    this.mass = mass;
    this.masses = scene.byId();
    this.dated = masses.get(mass.id());
  }

  /** In the order in which a person would think of them. */
  List<ProposalView.Way> all(Advice.Ways ways) {
    List<ProposalView.Way> all = new ArrayList<>();
    ways.times().stream().limit(MOST_TIMES).map(this::time).forEach(all::add);
    ways.exchanges().stream().limit(MOST_NEIGHBOURS).map(this::exchange).forEach(all::add);
    ways.neighbours().stream().limit(MOST_NEIGHBOURS).map(this::neighbour).forEach(all::add);
    List<Person> visiting = scene.visitingAt(mass.stay());
    if (!visiting.isEmpty()) {
      all.add(visiting(visiting));
    }
    if (mass.occasion() == Occasion.PRECEPT) {
      all.add(
          plain(
              say(
                  "A liturgy of the word, where the diocesan bishop provides for it; it is no Mass (can. 1248 § 2).")));
    }
    return all;
  }

  /** None if somebody can take it. */
  List<ProposalView.Way> all(Advice advice) {
    return advice.able().isEmpty() ? all(advice.ways()) : List.of();
  }

  private ProposalView.Way time(WaysOut.OtherTime time) {
    return new ProposalView.Way(
        say(
            "Begin at %s: then %s can take it.",
            Speech.clock(time.start().atZone(scene.cluster().zone())),
            scene.person(time.priest()).inWords()),
        new Link(say("Change the Mass"), address()),
        List.of());
  }

  private ProposalView.Way exchange(WaysOut.Exchange exchange) {
    DatedMass left = masses.get(exchange.left());
    Person taker = scene.person(exchange.taker());
    Person other = scene.person(exchange.other());
    return new ProposalView.Way(
        say(
            "Let %s take it, and %s the Mass of %s at %s in his place.",
            taker.inWords(), other.inWords(), Speech.clock(left.start()), left.church().name()),
        Link.NONE,
        List.of(Assigned.value(dated, taker.id()), Assigned.value(left, other.id())));
  }

  private ProposalView.Way neighbour(WaysOut.Neighbour neighbour) {
    DatedMass other = masses.get(neighbour.mass());
    return plain(
        say(
            "People go to %s, %d minutes away, for the Mass of %s.",
            other.church().name(), neighbour.journey().toMinutes(), Speech.clock(other.start())));
  }

  private ProposalView.Way visiting(List<Person> visiting) {
    String names = visiting.stream().map(Person::calledName).collect(Collectors.joining(", "));
    return new ProposalView.Way(
        say("Ask a visiting priest (%s), and name him once he has said yes.", names),
        new Link(say("Change the Mass"), address()),
        List.of());
  }

  private static ProposalView.Way plain(String sentence) {
    return new ProposalView.Way(sentence, Link.NONE, List.of());
  }

  private String address() {
    return "/masses/" + mass.id().value();
  }
}
