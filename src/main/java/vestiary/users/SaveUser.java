package vestiary.users;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Role;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.Children;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Enters, changes and removes those who may come in. */
@ApplicationScoped
class SaveUser {

  static final int LONGEST_LOGIN = 100;
  private static final int LONGEST_NAME = 200;

  private final UserRows users;
  private final UserChurchRows churches;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final Children children;
  private final Lookalikes lookalikes;

  SaveUser(
      UserRows users,
      UserChurchRows churches,
      ReadCluster cluster,
      FindPeople people,
      Children children,
      Lookalikes lookalikes) {
    this.children = children;
    this.users = users;
    this.churches = churches;
    this.cluster = cluster;
    this.people = people;
    this.lookalikes = lookalikes;
  }

  /**
   * What is asked for.
   *
   * @param login what they type to come in
   * @param churches short names of those that a sacristan keeps; told for no other role
   * @param person short name of whom the user is in the schedule; empty for nobody
   */
  record Request(String login, String name, String role, List<String> churches, String person) {
    Request {
      churches = churches == null ? List.of() : churches.stream().filter(Objects::nonNull).toList();
    }

    /** Of nobody in the schedule. */
    Request(String login, String name, String role, List<String> churches) {
      this(login, name, role, churches, "");
    }
  }

  /** Enters somebody, who has no password yet; answers the id. */
  @Transactional
  UUID enter(Request request) {
    UserRow row = new UserRow();
    fill(row, request);
    users.persistAndFlush(row);
    keepChurches(row, request);
    return row.id;
  }

  /** Enters one of the people of the demo. */
  @Transactional
  void enterForDemo(Request request) {
    users.findById(enter(request)).demo = true;
  }

  /**
   * Changes somebody. What they may do changes with their next request.
   *
   * @throws Refused if this would leave the cluster without an administrator
   */
  @Transactional
  void change(String id, Request request) {
    UserRow row = users.get(id);
    boolean keptUsers = row.toRole() == Role.ADMINISTRATOR;
    fill(row, request);
    if (keptUsers && row.toRole() != Role.ADMINISTRATOR) {
      refuseIfLast(row);
    }
    users.flush();
    keepChurches(row, request);
  }

  /**
   * Lets somebody in no more; sessions, tokens and links go with them.
   *
   * @throws Refused if this would leave the cluster without an administrator
   */
  @Transactional
  void remove(String id) {
    UserRow row = users.get(id);
    if (row.toRole() == Role.ADMINISTRATOR) {
      refuseIfLast(row);
    }
    users.delete(row);
  }

  private void fill(UserRow row, Request request) {
    Asked asked = new Asked();
    List<String> others = users.loginsOfOthers(row.id);
    row.login = asked.needed("login", request.login(), LONGEST_LOGIN);
    row.name = asked.needed("name", request.name(), LONGEST_NAME);
    lookalikes.findFault(row.login, others).ifPresent(fault -> asked.fault("login", fault));
    row.role = asked.term("role", request.role(), Role.READER).id();
    row.personId = person(asked, asked.text("person", request.person()));
    asked.refuseIfFaulty();
  }

  private UUID person(Asked asked, String slug) {
    if (slug.isEmpty()) {
      return null;
    }
    Optional<Person> found = people.findBySlug(slug);
    if (found.isEmpty()) {
      asked.fault("person", say("There is nobody \"%s\" in the schedule.", slug));
    }
    if (found.filter(who -> children.isChild(who.id())).isPresent()) {
      asked.fault(
          "person",
          say(
              "Nobody under 18 comes in here, since an account would keep how a child is reached."));
    }
    return found.map(Person::id).orElse(null);
  }

  private void refuseIfLast(UserRow row) {
    boolean others = users.count("role = ?1 and id <> ?2", Role.ADMINISTRATOR.id(), row.id) > 0;
    if (!others) {
      throw new Refused(
          new Refusal.AgainstRule(
              "role", say("Nobody else is administrator; make somebody else one first.")));
    }
  }

  private void keepChurches(UserRow row, Request request) {
    churches.forget(row.id);
    if (row.toRole() != Role.SACRISTAN) {
      return;
    }
    for (Church church : named(request.churches())) {
      UserChurchRow kept = new UserChurchRow();
      kept.userId = row.id;
      kept.churchId = church.id().value();
      churches.persist(kept);
    }
  }

  private List<Church> named(List<String> slugs) {
    Asked asked = new Asked();
    List<Church> found = new ArrayList<>();
    for (String slug : slugs.stream().distinct().toList()) {
      cluster
          .findChurch(slug)
          .ifPresentOrElse(
              found::add, () -> asked.fault("churches", say("There is no church \"%s\".", slug)));
    }
    asked.refuseIfFaulty();
    return found;
  }
}
