package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.Shortage;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.Link;

/**
 * Something that cannot stand, as people are told of it. A finding, never a refusal.
 *
 * @param id the same as long as the same Masses clash for the same reason
 * @param masses those concerned, by start, one or more
 * @param words what is said of it
 * @param proofs the shortage behind it; none where pieces play no part
 * @param ways to pages on which it can be mended; none where its own page is the only one
 */
public record Clash(
    String id,
    ClashKind kind,
    ClashSeverity severity,
    List<DatedMass> masses,
    ClashWords words,
    List<Shortage> proofs,
    List<Link> ways) {

  public Clash {
    masses = List.copyOf(masses);
    proofs = List.copyOf(proofs);
    ways = List.copyOf(ways);
  }

  /** One that is mended on its own page, or where its Masses are changed. */
  public Clash(
      String id,
      ClashKind kind,
      ClashSeverity severity,
      List<DatedMass> masses,
      ClashWords words,
      List<Shortage> proofs) {
    this(id, kind, severity, masses, words, proofs, List.of());
  }

  /** The shortage behind it; empty where pieces play no part. */
  public Optional<Shortage> findProof() {
    return proofs.stream().findFirst();
  }

  /** The first of the Masses. */
  public DatedMass first() {
    return masses.get(0);
  }

  Map<MassId, DatedMass> massesById() {
    return masses.stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
  }

  /** Whether the Mass is one of those concerned. */
  public boolean concerns(DatedMass mass) {
    return masses.stream().anyMatch(m -> m.id().equals(mass.id()));
  }

  /** Address of its page: the clash is found anew among those of that day. */
  public String address() {
    return "/clashes/%s/%s".formatted(first().date(), id);
  }

  /** To what mends it; without an address where there is no page for it. */
  public Link mends() {
    return proofs.isEmpty()
        ? ways.stream().findFirst().orElse(Link.NONE)
        : new Link(say("What mends it"), address() + "#mends");
  }
}
