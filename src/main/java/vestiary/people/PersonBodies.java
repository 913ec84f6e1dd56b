package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;

/** Makes what the API answers of people, for whoever asks. */
@ApplicationScoped
@Transactional
class PersonBodies {

  private final FindPeople people;
  private final Children children;
  private final ReadMinistries ministries;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;

  PersonBodies(
      FindPeople people,
      Children children,
      ReadMinistries ministries,
      ReadCluster cluster,
      CurrentVisitor visitor) {
    this.people = people;
    this.children = children;
    this.ministries = ministries;
    this.cluster = cluster;
    this.visitor = visitor;
  }

  List<PersonBody> all() {
    List<Church> churches = cluster.churches();
    Set<UUID> young = children.all();
    Map<UUID, Ministry> known = ministries.all();
    return people.all().stream()
        .map(
            p ->
                body(
                    p,
                    young.contains(p.id()),
                    known.getOrDefault(p.id(), Ministry.UNSAID),
                    churches))
        .toList();
  }

  PersonBody one(String slug) {
    Person person = people.get(slug);
    return body(
        person, children.isChild(person.id()), ministries.of(person.id()), cluster.churches());
  }

  private PersonBody body(Person person, boolean young, Ministry ministry, List<Church> churches) {
    return PersonBody.from(
        person,
        young,
        young ? children.find(person.id()) : Optional.empty(),
        ministry,
        churches.stream()
            .filter(church -> ministry.churches().contains(church.id()))
            .map(Church::slug)
            .toList(),
        visitor.visitor().may(Action.PLAN));
  }
}
