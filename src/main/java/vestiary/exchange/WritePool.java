package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.pool.CareAgain;
import vestiary.pool.Particulars;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.sending.ReadSent;
import vestiary.sending.Sent;
import vestiary.vesting.ChurchId;

/** Vestments, those in care and those that are out, as lists. */
@ApplicationScoped
@Transactional
class WritePool {

  private final ReadPool pool;
  private final CareAgain care;
  private final ReadSent sent;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final Clock clock;

  WritePool(
      ReadPool pool,
      CareAgain care,
      ReadSent sent,
      ReadCluster cluster,
      FindPeople people,
      Clock clock) {
    this.pool = pool;
    this.care = care;
    this.sent = sent;
    this.cluster = cluster;
    this.people = people;
    this.clock = clock;
  }

  /** Those in use that are the cluster's own. */
  List<WrittenLine> pieces() {
    Map<ChurchId, String> slugs = slugs();
    return own().stream().map(piece -> piece(piece, slugs.get(piece.home()))).toList();
  }

  private static WrittenLine piece(PooledPiece piece, String home) {
    WrittenLine line =
        new WrittenLine()
            .with("code", piece.code())
            .with("kind", piece.kind().id())
            .withAll("colours", piece.colours().stream().map(Term::id))
            .with("shade", piece.shade())
            .with("grade", piece.grade())
            .with("size", piece.size())
            .with("set", piece.set())
            .with("suit", piece.suit())
            .with("home", home)
            .with("owner", piece.owner())
            .with("ownerPolicy", piece.ownerPolicy().id())
            .with("condition", piece.condition())
            .with("place", piece.place())
            .withFlag("staysHome", piece.staysHome())
            .with("form", piece.form());
    Particulars particulars = piece.particulars();
    return line.with("description", particulars.description())
        .with("provenance", particulars.provenance())
        .with("acquired", particulars.acquired())
        .withFlag("precious", particulars.precious())
        .with("keeper", particulars.keeper());
  }

  /** Whole days alone, piece by piece. */
  List<WrittenLine> care() {
    WholeDays days = days();
    Set<String> own = own().stream().map(PooledPiece::code).collect(Collectors.toSet());
    return care.open().stream()
        .filter(said -> own.contains(said.piece()))
        .filter(said -> days.isFrom(said.from()) && said.ends().stream().allMatch(days::isFrom))
        .map(
            said ->
                new WrittenLine()
                    .with("piece", said.piece())
                    .with("from", days.first(said.from()))
                    .withAll("to", said.ends().stream().map(days::last))
                    .with("reason", said.reason())
                    .with("kind", said.kind()))
        .toList();
  }

  /** Whole days alone; a set that went whole and is whole is one line. */
  List<WrittenLine> out() {
    WholeDays days = days();
    Map<String, Set<String>> sets = codesBySet();
    Map<UUID, List<Sent>> together =
        sent.open().stream()
            .filter(one -> days.isFrom(one.went()) && days.isFrom(one.due()))
            .collect(Collectors.groupingBy(Sent::sending, LinkedHashMap::new, Collectors.toList()));
    List<WrittenLine> lines = new ArrayList<>();
    for (List<Sent> pieces : together.values()) {
      Sent first = pieces.get(0);
      Set<String> codes = pieces.stream().map(Sent::code).collect(Collectors.toSet());
      if (codes.equals(sets.getOrDefault(first.item(), Set.of()))) {
        lines.add(out(first, days).with("set", first.item()));
      } else {
        pieces.forEach(one -> lines.add(out(one, days).with("piece", one.code())));
      }
    }
    return lines;
  }

  private WrittenLine out(Sent one, WholeDays days) {
    Map<ChurchId, String> slugs = slugs();
    return new WrittenLine()
        .withAll("church", one.churches().stream().map(slugs::get))
        .with("whom", one.churches().isEmpty() ? one.whom() : "")
        .with("from", days.first(one.went()))
        .with("due", days.last(one.due()))
        .withAll(
            "carrier",
            one.carriers().stream().flatMap(id -> people.find(id).stream()).map(Person::slug))
        .with("condition", one.condition());
  }

  private List<PooledPiece> own() {
    Set<String> borrowed = pool.borrowed();
    return pool.pieces(clock.instant()).stream()
        .filter(piece -> !borrowed.contains(piece.code()))
        .toList();
  }

  private Map<String, Set<String>> codesBySet() {
    return own().stream()
        .filter(piece -> !piece.set().isEmpty())
        .collect(
            Collectors.groupingBy(
                PooledPiece::set, Collectors.mapping(PooledPiece::code, Collectors.toSet())));
  }

  private Map<ChurchId, String> slugs() {
    return cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::slug));
  }

  private WholeDays days() {
    return new WholeDays(cluster.cluster().zone());
  }
}
