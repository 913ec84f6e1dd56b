package vestiary.setout;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.people.KeepHeight;
import vestiary.people.Person;
import vestiary.planning.SpanToCheck;
import vestiary.planning.WearerNames;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.AlbLength;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;

/** Whether an alb fits whoever wears it, as far as that is known. */
final class AlbWords {

  private final SpanToCheck span;
  private final DatedMass mass;

  AlbWords(SpanToCheck span, DatedMass mass) {
    this.span = span;
    this.mass = mass;
  }

  /** For example "too long: he would trip"; empty if it fits, or nobody can tell. */
  String fit(Need need, PooledPiece alb) {
    AlbLength wearer = span.albLength(mass, need.wearer());
    if (need.kind() != PieceKind.ALB || wearer.suits(alb.size())) {
      return "";
    }
    return wearer.trips(alb.size())
        ? say("too long: he would trip; take one of %d cm at most", wearer.longest())
        : say("short for him; one of %d cm would suit", wearer.best());
  }

  /** Which length to look for; empty if it is not known. */
  String wanted(Need need) {
    AlbLength wearer = span.albLength(mass, need.wearer());
    return need.kind() == PieceKind.ALB && wearer.isKnown()
        ? say("about %d cm, not over %d: in one too long he trips", wearer.best(), wearer.longest())
        : "";
  }

  /**
   * Those who wear an alb of this church, whose height may be kept and is not, where the albs that
   * are here differ in length.
   */
  List<Person> asked(List<Need> needs) {
    return areOfDifferentLengths()
        ? needs.stream()
            .filter(need -> need.kind() == PieceKind.ALB)
            .filter(need -> !span.albLength(mass, need.wearer()).isKnown())
            .flatMap(need -> person(need).stream())
            .filter(person -> KeepHeight.isAskedOf(person.role()))
            .distinct()
            .toList()
        : List.of();
  }

  private Optional<Person> person(Need need) {
    return WearerNames.find(mass, need.wearer());
  }

  private boolean areOfDifferentLengths() {
    Stream<PooledPiece> albs =
        span.pieces().stream()
            .filter(piece -> piece.kind() == PieceKind.ALB)
            .filter(piece -> piece.home().equals(mass.church().id()));
    return albs.mapToInt(alb -> AlbLength.centimetres(alb.size()))
            .filter(length -> length > 0)
            .distinct()
            .count()
        > 1;
  }
}
