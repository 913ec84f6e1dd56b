package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.web.Speech;

/** What is known of one person, for whoever looks. */
@ApplicationScoped
@Transactional
class PersonFacts {

  private final Children children;
  private final ReadMinistries ministries;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;

  PersonFacts(
      Children children, ReadMinistries ministries, ReadCluster cluster, CurrentVisitor visitor) {
    this.children = children;
    this.ministries = ministries;
    this.cluster = cluster;
    this.visitor = visitor;
  }

  List<PersonView.Fact> of(Person person) {
    Ministry ministry = ministries.of(person.id());
    List<PersonView.Fact> facts = new ArrayList<>();
    facts.add(new PersonView.Fact(say("On sheets"), person.tightName()));
    facts.add(
        new PersonView.Fact(say("Churches"), MinistryWords.churches(ministry, cluster.churches())));
    facts.add(new PersonView.Fact(say("Usual days"), MinistryWords.days(ministry)));
    facts.add(new PersonView.Fact(say("Languages"), MinistryWords.languages(ministry)));
    if (visitor.visitor().may(Action.PLAN)) {
      facts.addAll(forPlanning(ministry));
    }
    return facts.stream().filter(fact -> !fact.value().isEmpty()).toList();
  }

  /** What stands on no paper; none for whoever is not responsible. */
  List<PersonView.Fact> ofChild(Person person) {
    return children
        .find(person.id())
        .map(
            known ->
                List.of(
                    new PersonView.Fact(say("Whole name"), known.wholeName()),
                    new PersonView.Fact(say("Answers for the child"), known.responsible())))
        .orElse(List.of());
  }

  private static List<PersonView.Fact> forPlanning(Ministry ministry) {
    return List.of(
        new PersonView.Fact(
            say("Masses a day, at most"),
            ministry.mostADay() == 0 ? "" : Speech.count(ministry.mostADay())),
        new PersonView.Fact(say("Wishes"), ministry.wishes()),
        new PersonView.Fact(say("Vestments of his own"), ministry.ownSet()),
        new PersonView.Fact(
            say("Permitted on one day"),
            ministry.findPermission().map(MinistryWords::permission).orElse("")));
  }
}
