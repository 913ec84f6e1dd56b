package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;

/** Takes somebody who is removed for good out of the Masses ahead; those of the past stay. */
@ApplicationScoped
public class LoseCelebrant {

  private static final String NAMED = "(celebrantId = ?1 or array_contains(namedIds, ?1))";

  private final MassRows masses;
  private final PatternRows patterns;
  private final Clock clock;

  LoseCelebrant(MassRows masses, PatternRows patterns, Clock clock) {
    this.masses = masses;
    this.patterns = patterns;
    this.clock = clock;
  }

  /**
   * Where a person is named.
   *
   * @param past Masses that have begun
   * @param ahead Masses to come that are entered by now
   * @param patterns recurring Mass times
   */
  public record Named(long past, long ahead, long patterns) {}

  /** Counts without changing anything. */
  public Named count(UUID person) {
    Instant now = clock.instant();
    return new Named(
        masses.count(NAMED + " and starts < ?2", person, now),
        masses.count(NAMED + " and starts >= ?2", person, now),
        patterns.count("celebrantId", person));
  }

  /** Masses to come keep how many vest, and say that their celebrant was lost. */
  @Transactional
  public void lose(UUID person) {
    Instant now = clock.instant();
    List<MassRow> ahead = masses.list(NAMED + " and starts >= ?2", person, now);
    for (MassRow mass : ahead) {
      mass.namedIds =
          Arrays.stream(mass.namedIds).filter(id -> !id.equals(person)).toArray(UUID[]::new);
      if (person.equals(mass.celebrantId)) {
        mass.celebrantId = null;
        mass.celebrantLost = true;
      }
    }
    for (PatternRow pattern : patterns.list("celebrantId", person)) {
      pattern.celebrantId = null;
      pattern.celebrantLost = true;
    }
    masses.flush();
  }
}
