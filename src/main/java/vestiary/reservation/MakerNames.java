package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import vestiary.people.FindPeople;
import vestiary.users.UserNames;

/** What those are called who set something aside, or ask for it. */
@ApplicationScoped
class MakerNames {

  private static final String SERVER = "server";

  private final UserNames users;
  private final FindPeople people;

  MakerNames(UserNames users, FindPeople people) {
    this.users = users;
    this.people = people;
  }

  /** By mark, as the history knows them. */
  @Transactional
  Names all() {
    Map<UUID, String> names = new HashMap<>();
    people.byId().forEach((id, person) -> names.put(id, person.name()));
    names.putAll(users.all());
    return new Names(names);
  }

  /** Names by id. */
  record Names(Map<UUID, String> byId) {

    /** Never empty; whoever was removed has no name any more. */
    String of(String mark) {
      return switch (mark) {
        case "" -> say("the server itself");
        case SERVER -> say("the administrator");
        default -> byId.getOrDefault(UUID.fromString(mark), say("somebody who was removed"));
      };
    }
  }
}
