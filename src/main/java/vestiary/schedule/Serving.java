package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import vestiary.people.FindPeople;

/** Who is named at Masses. */
@ApplicationScoped
public class Serving {

  private final MassRows masses;
  private final PatternRows patterns;
  private final ReadServing serving;
  private final FindPeople known;

  Serving(MassRows masses, PatternRows patterns, ReadServing serving, FindPeople known) {
    this.serving = serving;
    this.known = known;
    this.masses = masses;
    this.patterns = patterns;
  }

  /** Whoever is named at a Mass from that moment on, or at a recurring one. */
  public Set<UUID> since(Instant moment) {
    Set<UUID> people = new HashSet<>();
    List<MassRow> since = masses.list("starts >= ?1", moment);
    for (MassRow mass : since) {
      people.add(mass.celebrantId);
      people.addAll(Arrays.asList(mass.namedIds));
    }
    serving.at(since.stream().map(mass -> mass.id).toList(), known.byId()).values().stream()
        .flatMap(List::stream)
        .forEach(one -> people.add(one.person().id()));
    patterns.listAll().forEach(pattern -> people.add(pattern.celebrantId));
    people.remove(null);
    return people;
  }
}
