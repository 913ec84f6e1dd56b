package vestiary.label;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.pool.OutPiece;
import vestiary.pool.OutPieces;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.sending.NextUse;
import vestiary.sending.ReadNextUses;
import vestiary.sending.SendingWords;
import vestiary.vesting.ChurchId;
import vestiary.web.Speech;

/** What is to be set out in the coming day, each with whether it is out. */
@ApplicationScoped
@Transactional
class DueOut {

  private static final Duration COMING = Duration.ofDays(1);

  private final ReadNextUses uses;
  private final OutPieces out;
  private final ReadMasses masses;
  private final ReadPool pool;
  private final SendingWords words;
  private final Here here;
  private final Clock clock;

  DueOut(
      ReadNextUses uses,
      OutPieces out,
      ReadMasses masses,
      ReadPool pool,
      SendingWords words,
      Here here,
      Clock clock) {
    this.uses = uses;
    this.out = out;
    this.masses = masses;
    this.pool = pool;
    this.words = words;
    this.here = here;
    this.clock = clock;
  }

  /** By the hour, then code; of the church in which the phone is held, where that can be told. */
  List<TypingView.Line> lines() {
    SendingWords.Said said = words.read();
    Map<String, PooledPiece> pieces =
        pool.pieces(clock.instant()).stream()
            .collect(Collectors.toMap(PooledPiece::code, piece -> piece));
    Map<String, TypingView.Line> lines = new LinkedHashMap<>();
    Stream.concat(still(pieces, said), gone(pieces, said))
        .sorted(Comparator.comparing(TypingView.Line::by).thenComparing(TypingView.Line::code))
        .forEach(line -> lines.putIfAbsent(line.code() + " " + line.by(), line));
    return List.copyOf(lines.values());
  }

  private Stream<TypingView.Line> still(Map<String, PooledPiece> pieces, SendingWords.Said said) {
    return uses.all(COMING).entrySet().stream()
        .flatMap(
            entry ->
                entry.getValue().stream()
                    .filter(use -> isHere(use.mass()))
                    .map(use -> line(name(entry.getKey(), pieces), use, said)));
  }

  private static TypingView.Line line(String code, NextUse use, SendingWords.Said said) {
    String whom =
        "%s, %s"
            .formatted(use.who().isEmpty() ? say("Mass") : use.who(), use.mass().church().name());
    return new TypingView.Line(
        code, Speech.clock(said.local(use.from())), Speech.sentence(whom), say("still in"));
  }

  private Stream<TypingView.Line> gone(Map<String, PooledPiece> pieces, SendingWords.Said said) {
    return out.all().stream()
        .filter(one -> !one.masses().isEmpty() && !one.isOverdue(clock.instant()))
        .flatMap(one -> gone(one, pieces, said).stream());
  }

  private Optional<TypingView.Line> gone(
      OutPiece one, Map<String, PooledPiece> pieces, SendingWords.Said said) {
    return Optional.of(masses.get(one.masses().get(0).value().toString()))
        .filter(this::isHere)
        .filter(mass -> mass.start().toInstant().isBefore(clock.instant().plus(COMING)))
        .map(
            mass ->
                new TypingView.Line(
                    name(one.piece(), pieces),
                    Speech.clock(mass.start()),
                    say("Mass, ") + mass.church().name(),
                    say("out ") + Speech.clock(said.local(one.from()))));
  }

  private boolean isHere(DatedMass mass) {
    Optional<ChurchId> church = here.church();
    return church.isEmpty() || church.get().equals(mass.church().id());
  }

  private static String name(String piece, Map<String, PooledPiece> pieces) {
    String set = pieces.containsKey(piece) ? pieces.get(piece).set() : "";
    return set.isEmpty() ? piece : set;
  }
}
