package vestiary.schedule;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.people.Person;

/** Who serves at Masses. The schedule keeps no such names; whoever does answers. */
public interface ReadServing {

  /**
   * By the id of the Mass, in the order of the roles and then by name; Masses at which nobody is
   * named are left out.
   *
   * @param people whoever may be named, by id
   */
  Map<UUID, List<WhoServes>> at(Collection<UUID> masses, Map<UUID, Person> people);
}
