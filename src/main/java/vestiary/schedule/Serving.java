package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.UUID;

/** Who is named at Masses. */
@ApplicationScoped
public class Serving {

  private final MassRows masses;
  private final PatternRows patterns;

  Serving(MassRows masses, PatternRows patterns) {
    this.masses = masses;
    this.patterns = patterns;
  }

  /** Whoever is named at a Mass from that moment on, or at a recurring one. */
  public Set<UUID> since(Instant moment) {
    Set<UUID> people = new HashSet<>();
    for (MassRow mass : masses.list("starts >= ?1", moment)) {
      people.add(mass.celebrantId);
      people.addAll(Arrays.asList(mass.namedIds));
    }
    patterns.listAll().forEach(pattern -> people.add(pattern.celebrantId));
    people.remove(null);
    return people;
  }
}
