package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.Map;
import vestiary.people.FindPeople;
import vestiary.users.UserNames;

/** What those are called who closed a stocktake, by their marks. */
@ApplicationScoped
@Transactional
class WhoCounted {

  private final FindPeople people;
  private final UserNames users;

  WhoCounted(FindPeople people, UserNames users) {
    this.people = people;
    this.users = users;
  }

  Map<String, String> names() {
    Map<String, String> names = new HashMap<>();
    people.byId().forEach((id, person) -> names.put(id.toString(), person.name()));
    users.all().forEach((id, name) -> names.put(id.toString(), name));
    names.put("server", say("the token of the server"));
    return names;
  }

  /** By the name, or as somebody who was removed; empty for what the server did. */
  static String name(Map<String, String> names, String mark) {
    return mark.isEmpty() ? "" : names.getOrDefault(mark, say("a person who was removed"));
  }
}
