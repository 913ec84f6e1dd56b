package vestiary.allocation.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/**
 * Counts every number of a score anew, Mass by Mass and wearer by wearer, as a person would who has
 * the plan on paper. It shares no step with the count by which plans are made and compared.
 */
final class ScoreProof {

  private final Plan plan;
  private final Situation situation;
  private final List<String> objections = new ArrayList<>();

  private ScoreProof(Plan plan, Situation situation) {
    this.plan = plan;
    this.situation = situation;
  }

  /** What is miscounted, in words; empty if nothing is. */
  static List<String> findObjections(Plan plan, Situation situation) {
    ScoreProof proof = new ScoreProof(plan, situation);
    proof.countUnmet();
    proof.countSteps();
    proof.countJourneys();
    proof.compare("preferences", plan.score().preferences(), proof.preferences());
    proof.compare("changes", plan.score().changes(), proof.changes());
    return proof.objections;
  }

  private void compare(String what, long said, long counted) {
    if (said != counted) {
      objections.add("the %s are miscounted: %d, not %d".formatted(what, counted, said));
    }
  }

  private void countUnmet() {
    long principals = 0;
    long musts = 0;
    long others = 0;
    for (Provision.Unmet one : plan.unmet()) {
      if (one.need().role() == Role.PRINCIPAL) {
        principals++;
      } else if (one.need().isMust()) {
        musts++;
      } else {
        others++;
      }
    }
    compare("unmet of principal celebrants", plan.score().unmet().get(0), principals);
    compare("unmet that must be met", plan.score().unmet().get(1), musts);
    compare("others unmet", plan.score().unmet().get(2), others);
  }

  private void countSteps() {
    long[] counted = new long[3];
    for (List<Provision> mass : masses().values()) {
      for (Role role : Role.values()) {
        List<Provision> own = mass.stream().filter(one -> one.need().role() == role).toList();
        Set<List<Object>> ways = new HashSet<>();
        own.stream().filter(one -> one.depth() > 0).forEach(one -> ways.add(way(one)));
        for (List<Object> way : ways) {
          long persons = 0;
          for (PieceKind kind : PieceKind.values()) {
            long pieces =
                own.stream()
                    .filter(one -> one.depth() > 0 && one.need().kind() == kind)
                    .filter(one -> way(one).equals(way))
                    .count();
            persons = Math.max(persons, pieces);
          }
          int depth = (int) way.get(0);
          counted[depth == 1 ? 2 : depth == 2 ? 1 : 0] += persons;
        }
      }
    }
    compare("third steps", plan.score().steps().get(0), counted[0]);
    compare("second steps", plan.score().steps().get(1), counted[1]);
    compare("first steps", plan.score().steps().get(2), counted[2]);
  }

  private static List<Object> way(Provision one) {
    return List.of(one.depth(), one.need().ladder().get(one.depth() - 1));
  }

  private void countJourneys() {
    long carriages = 0;
    long minutes = 0;
    for (Movement one : plan.movements()) {
      if (one.carrier().isEmpty()) {
        carriages++;
        long seconds =
            situation
                .span()
                .journeys()
                .find(one.from(), one.to())
                .map(time -> time.toSeconds())
                .orElse(0L);
        minutes += seconds / 60 + (seconds % 60 == 0 ? 0 : 1);
      }
    }
    compare("carriages", plan.score().carriages(), carriages);
    compare("minutes", plan.score().minutes(), minutes);
  }

  private long preferences() {
    long sum = 0;
    for (Movement one : plan.movements()) {
      for (Piece piece : one.pieces()) {
        sum += Displeasure.RIDING.weight();
        sum += situation.traits(piece).onAsking() ? Displeasure.OWNER_ASKED.weight() : 0;
      }
    }
    for (List<Provision> mass : masses().values()) {
      for (Provision one : mass) {
        sum += one instanceof Provision.Worn worn ? displeasure(worn) + mixed(worn, mass) : 0;
      }
      sum += suits(mass);
    }
    return sum;
  }

  private long displeasure(Provision.Worn worn) {
    Traits traits = situation.traits(worn.piece());
    Occasion occasion = situation.occasion(worn.need());
    Fit fit = situation.fit(worn.need());
    long sum = 0;
    if (!occasion.grade().isEmpty() && !traits.grade().isEmpty()) {
      sum += occasion.grade().equals(traits.grade()) ? 0 : Displeasure.OTHER_GRADE.weight();
    }
    if (!occasion.shade().isEmpty() && !traits.shade().isEmpty()) {
      sum += occasion.shade().equals(traits.shade()) ? 0 : Displeasure.OTHER_SHADE.weight();
    }
    if (traits.length() != 0
        && (traits.length() < fit.shortest() || traits.length() > fit.longest())) {
      sum += Displeasure.BAD_FIT.weight();
    }
    return sum;
  }

  /** What it weighs that a chasuble or dalmatic is worn without its stole, if one is asked for. */
  private static long mixed(Provision.Worn worn, List<Provision> mass) {
    boolean isChasuble = worn.need().kind() == PieceKind.CHASUBLE;
    PieceKind stole = isChasuble ? PieceKind.STOLE : PieceKind.DEACON_STOLE;
    if (!isChasuble && worn.need().kind() != PieceKind.DALMATIC) {
      return 0;
    }
    for (Provision other : mass) {
      if (other.need().kind() == stole && other.need().wearer().equals(worn.need().wearer())) {
        String set = other.findPiece().map(Piece::set).orElse("");
        boolean whole = !set.isEmpty() && set.equals(worn.piece().set());
        return whole ? 0 : Displeasure.MIXED.weight();
      }
    }
    return 0;
  }

  private long suits(List<Provision> mass) {
    List<Provision> chasubles =
        mass.stream().filter(one -> one.need().kind() == PieceKind.CHASUBLE).toList();
    Set<String> suits = new TreeSet<>();
    for (Provision one : chasubles) {
      suits.add(one.findPiece().map(piece -> situation.traits(piece).suit()).orElse(""));
    }
    boolean alike = suits.size() == 1 && !suits.contains("");
    return chasubles.size() < 2 || alike || chasubles.stream().noneMatch(this::couldBeOfASuit)
        ? 0
        : Displeasure.SEVERAL_SUITS.weight();
  }

  private boolean couldBeOfASuit(Provision one) {
    Need need = one.need();
    Fit fit = situation.fit(need);
    for (Piece piece : situation.span().pieces()) {
      Traits traits = situation.traits(piece);
      boolean fits =
          !fit.must()
              || traits.length() == 0
              || (fit.shortest() <= traits.length() && traits.length() <= fit.longest());
      if (piece.kind() == need.kind()
          && !traits.suit().isEmpty()
          && fits
          && need.isLawfullyServedBy(piece.colours())) {
        return true;
      }
    }
    return false;
  }

  private long changes() {
    long changes = 0;
    for (Provision was : situation.last()) {
      for (Provision one : plan.provisions()) {
        if (one.need().equals(was.need())) {
          boolean isPieceKept =
              one instanceof Provision.Worn now
                  && was instanceof Provision.Worn then
                  && now.piece().code().equals(then.piece().code());
          boolean isLackKept =
              !(one instanceof Provision.Worn) && Objects.equals(one.getClass(), was.getClass());
          changes += isPieceKept || isLackKept ? 0 : 1;
        }
      }
    }
    return changes;
  }

  private Map<String, List<Provision>> masses() {
    return plan.provisions().stream()
        .collect(
            Collectors.groupingBy(
                one -> one.need().mass().toString(), TreeMap::new, Collectors.toList()));
  }
}
