package vestiary.plan;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.planning.SpanToCheck;
import vestiary.vesting.Away;
import vestiary.vesting.Piece;

/** Pieces that are new, gone, away, back, or set aside since a plan was made. */
final class PiecesSince {

  private final SpanToCheck span;
  private final Set<String> worn;
  private final Situation before;
  private final Situation now;
  private final SinceWords words;

  /**
   * @param worn codes of the pieces that the plan uses
   */
  PiecesSince(
      SpanToCheck span, Set<String> worn, Situation before, Situation now, SinceWords words) {
    this.span = span;
    this.worn = worn;
    this.before = before;
    this.now = now;
    this.words = words;
  }

  /** By code; a set is told once. */
  List<SinceWords.Told> told() {
    Map<String, Boolean> sentences = new LinkedHashMap<>();
    Map<String, Piece> then = SinceWords.byCode(before);
    Map<String, Piece> today = SinceWords.byCode(now);
    Stream.concat(then.keySet().stream(), today.keySet().stream())
        .distinct()
        .sorted()
        .forEach(
            code ->
                differing(find(then, code), find(today, code))
                    .ifPresent(
                        told ->
                            sentences.merge(
                                told.sentence(),
                                told.breaks() && worn.contains(code),
                                Boolean::logicalOr)));
    held(sentences);
    return sentences.entrySet().stream()
        .map(one -> new SinceWords.Told(one.getKey(), one.getValue()))
        .toList();
  }

  private static Optional<Piece> find(Map<String, Piece> pieces, String code) {
    return Optional.ofNullable(pieces.get(code));
  }

  private Optional<SinceWords.Told> differing(Optional<Piece> then, Optional<Piece> today) {
    if (then.equals(today)) {
      return Optional.empty();
    }
    if (then.isEmpty()) {
      return told(say("%s is new in the pool.", SinceWords.name(today.orElseThrow())), false);
    }
    if (today.isEmpty()) {
      return told(say("%s has left the pool.", SinceWords.name(then.get())), true);
    }
    String name = SinceWords.name(today.get());
    List<Away> more = new ArrayList<>(today.get().away());
    more.removeAll(then.get().away());
    if (!more.isEmpty()) {
      String from = words.moment(more.get(0).from());
      return told(say("%s cannot be had from %s (%s).", name, from, more.get(0).reason()), true);
    }
    if (!then.get().keptFrom().containsAll(today.get().keptFrom())) {
      return told(say("%s cannot be had for one of the Masses (its owner says no).", name), true);
    }
    if (!today.get().keptFrom().equals(then.get().keptFrom())) {
      return told(say("%s is given by its owner after all.", name), false);
    }
    return today.get().away().size() < then.get().away().size()
        ? told(say("%s is back.", name), false)
        : told(say("%s is entered otherwise than before.", name), true);
  }

  private static Optional<SinceWords.Told> told(String sentence, boolean breaks) {
    return Optional.of(new SinceWords.Told(sentence, breaks));
  }

  private void held(Map<String, Boolean> sentences) {
    Set<Hold> then = ofTheseDays(before);
    Set<Hold> today = ofTheseDays(now);
    today.stream()
        .filter(hold -> !then.contains(hold))
        .forEach(
            hold ->
                sentences.merge(
                    say("%s is set aside.", words.name(hold.piece())),
                    worn.contains(hold.piece()),
                    Boolean::logicalOr));
    then.stream()
        .filter(hold -> !today.contains(hold))
        .forEach(
            hold ->
                sentences.putIfAbsent(
                    say("%s is not set aside any more.", words.name(hold.piece())), false));
  }

  /** What is planned for the days on either side goes round this plan, and never against it. */
  private Set<Hold> ofTheseDays(Situation situation) {
    PlannedDays days = PlannedDays.of(span);
    return situation.holds().stream()
        .filter(hold -> days.contain(hold.window().setOut()))
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
