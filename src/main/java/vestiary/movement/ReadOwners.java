package vestiary.movement;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.Consent;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadConsents;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.MassId;

/** Which owners are to be asked: those whose pieces go elsewhere on asking alone. */
@ApplicationScoped
class ReadOwners {

  private record Key(MassId mass, String owner) {}

  private final CheckClashes check;
  private final ReadMasses masses;
  private final ReadConsents consents;

  ReadOwners(CheckClashes check, ReadMasses masses, ReadConsents consents) {
    this.check = check;
    this.masses = masses;
    this.consents = consents;
  }

  /** Those for Masses on these dates, both included, by Mass, then owner. */
  @Transactional
  List<OwnerAsked> between(LocalDate first, LocalDate last) {
    return find(first, last, one -> !one.granted());
  }

  /**
   * @param shown which answers are told although their pieces are not planned for the Mass any more
   */
  private List<OwnerAsked> find(LocalDate first, LocalDate last, Predicate<Consent> shown) {
    SpanToCheck span = check.load(first, last);
    Map<MassId, DatedMass> asked =
        span.asked().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    List<Consent> answers = consents.ofMasses(asked.keySet());
    Map<Key, TreeSet<String>> pieces =
        Stream.concat(
                planned(span, asked),
                answers.stream()
                    .filter(shown)
                    .map(one -> Map.entry(new Key(one.mass(), one.owner()), one.piece())))
            .collect(
                Collectors.groupingBy(
                    Map.Entry::getKey,
                    Collectors.mapping(
                        Map.Entry::getValue, Collectors.toCollection(TreeSet::new))));
    return pieces.entrySet().stream()
        .map(e -> asked(e.getKey(), asked, new ArrayList<>(e.getValue()), answers))
        .sorted(
            Comparator.comparing((OwnerAsked one) -> one.mass().start().toInstant())
                .thenComparing(OwnerAsked::owner))
        .toList();
  }

  /**
   * One.
   *
   * @param owner as addresses have it
   * @throws Refused if that Mass wants nothing of that owner
   */
  @Transactional
  OwnerAsked get(String mass, String owner) {
    DatedMass found = masses.get(mass);
    return find(found.date(), found.date(), one -> true).stream()
        .filter(one -> one.mass().id().equals(found.id()) && one.slug().equals(owner))
        .findFirst()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("owner to be asked", owner)));
  }

  private static Stream<Map.Entry<Key, String>> planned(
      SpanToCheck span, Map<MassId, DatedMass> asked) {
    Map<String, PooledPiece> pieces = new TreeMap<>();
    span.pieces().stream()
        .filter(piece -> piece.ownerPolicy() == OwnerPolicy.ASKING)
        .forEach(piece -> pieces.put(piece.code(), piece));
    return span.taken().planned().stream()
        .filter(one -> asked.containsKey(one.wearer().mass()))
        .filter(one -> goesElsewhere(one, pieces))
        .map(
            one ->
                Map.entry(
                    new Key(one.wearer().mass(), pieces.get(one.piece()).owner()), one.piece()));
  }

  private static boolean goesElsewhere(PlannedWear one, Map<String, PooledPiece> pieces) {
    return pieces.containsKey(one.piece()) && !pieces.get(one.piece()).home().equals(one.church());
  }

  private static OwnerAsked asked(
      Key key, Map<MassId, DatedMass> masses, List<String> pieces, List<Consent> answers) {
    return new OwnerAsked(
        masses.get(key.mass()),
        key.owner(),
        pieces,
        answers.stream()
            .filter(one -> one.mass().equals(key.mass()) && pieces.contains(one.piece()))
            .toList());
  }
}
