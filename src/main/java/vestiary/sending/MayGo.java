package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.pool.Consent;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadConsents;
import vestiary.pool.Standing;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/** Whether pieces may leave, and says in words what keeps them. */
@ApplicationScoped
class MayGo {

  private static final String WITHOUT = "without";

  private final ReadConsents consents;
  private final ReadMasses masses;
  private final SendingWords words;

  MayGo(ReadConsents consents, ReadMasses masses, SendingWords words) {
    this.consents = consents;
    this.masses = masses;
    this.words = words;
  }

  /**
   * What owner and church have to say to it, noted as faults.
   *
   * @param ownersAsked whether the owners who want to be asked have said yes
   */
  void check(List<PooledPiece> pieces, Destination to, boolean ownersAsked, Asked asked) {
    List<PooledPiece> leaving = pieces.stream().filter(to::isAwayFrom).toList();
    List<Consent> answers = consents.ofMasses(to.massIds());
    for (PooledPiece piece : leaving) {
      if (piece.staysHome()) {
        asked.fault(WITHOUT, say("%s does not leave its church.", piece.code()));
      } else if (piece.ownerPolicy() == OwnerPolicy.NEVER) {
        asked.fault(WITHOUT, say("%s does not lend %s.", piece.owner(), piece.code()));
      } else if (isUnasked(piece, to, ownersAsked, answers)) {
        asked.fault(
            "ownersAsked",
            say(
                "%s goes on asking alone: ask %s first, then say here that the owner agrees.",
                piece.code(), piece.owner()));
      }
    }
  }

  private static boolean isUnasked(
      PooledPiece piece, Destination to, boolean ownersAsked, List<Consent> answers) {
    return piece.ownerPolicy() == OwnerPolicy.ASKING
        && to.isLoanOf(piece)
        && !ownersAsked
        && answers.stream().noneMatch(one -> one.piece().equals(piece.code()) && one.granted());
  }

  /**
   * What somebody else has of it in the time.
   *
   * @param standing what takes the pieces until they are due
   * @throws Refused if one is out, in care, or held for something else
   */
  void refuseIfTaken(List<Standing> standing, Destination to, boolean inSet) {
    standing.stream()
        .filter(one -> one.state() != Standing.State.PLANNED && !isForThat(one, to))
        .findFirst()
        .ifPresent(
            one -> {
              throw new Refused(taken(one, inSet));
            });
  }

  /** What it goes for it becomes. */
  private static boolean isForThat(Standing one, Destination to) {
    return one.state() == Standing.State.HELD
        && to.massIds().stream().anyMatch(one.masses()::contains);
  }

  private Refusal taken(Standing one, boolean inSet) {
    SendingWords.Said said = words.read();
    String orWithout = inSet ? say(", or say that the set goes without it") : "";
    return switch (one.state()) {
      case OUT ->
          new Refusal.Taken(
              WITHOUT,
              say(
                  "%s is out already: at %s since %s. Say first that it is back%s.",
                  one.piece(), place(one, said), said.moment(one.from()), orWithout));
      case CARE ->
          new Refusal.Taken(
              WITHOUT,
              say(
                  "%s is in care from %s (%s). Say first that it is back%s.",
                  one.piece(), said.moment(one.from()), one.reason(), orWithout));
      default ->
          new Refusal.Taken(
              DueBack.FIELD,
              say(
                  "%s is held%s from %s until %s. Have it back before, send it for that, or take another.",
                  one.piece(), whatFor(one), said.moment(one.from()), until(one, said)));
    };
  }

  private static String until(Standing one, SendingWords.Said said) {
    return one.until().equals(Instant.MAX) ? say("further notice") : said.moment(one.until());
  }

  private static String place(Standing one, SendingWords.Said said) {
    return one.churches().stream().findFirst().map(said::church).orElse(one.reason());
  }

  private String whatFor(Standing one) {
    Optional<DatedMass> mass =
        one.masses().stream().findFirst().map(MassId::value).map(id -> masses.get(id.toString()));
    return mass.map(
            found ->
                say(
                    " for %s%s",
                    found.findCelebrant().map(c -> c.inWords() + ", ").orElse(""),
                    SendingWords.Said.mass(found)))
        .orElse("");
  }

  /** "HT-W1-C and HT-W1-S". */
  static String named(List<PooledPiece> pieces) {
    return Speech.list(pieces.stream().map(PooledPiece::code).toList());
  }
}
