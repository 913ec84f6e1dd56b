package vestiary.vesting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * In which order the vestments of each person are laid on the table: what goes on last lies lowest,
 * so that whoever vests takes the top piece first. It holds no stock and no names.
 *
 * <p>Source: what must be ready: GIRM 119, with 335 to 342; the order: Adoremus, "Vesting prior to
 * Mass", April 2021, for the priest; for a deacon by the same logic, common practice, no source.
 */
public final class LayingOut {

  /** Lowest first; the amice, put on first, lies on top. */
  public static final List<PieceKind> ORDER =
      List.of(
          PieceKind.COPE,
          PieceKind.CHASUBLE,
          PieceKind.DALMATIC,
          PieceKind.STOLE,
          PieceKind.DEACON_STOLE,
          PieceKind.CINCTURE,
          PieceKind.ALB,
          PieceKind.SURPLICE,
          PieceKind.AMICE);

  /** What most churches keep without a list, and what everybody in an alb wears (GIRM 119, 336). */
  public static final Set<PieceKind> LINEN =
      Set.copyOf(EnumSet.of(PieceKind.ALB, PieceKind.AMICE, PieceKind.CINCTURE));

  private LayingOut() {}

  /**
   * All that one person wears at a Mass.
   *
   * @param laid in a pile, lowest first
   * @param beside what is put on later or is no garment of the table: a veil, a mitre, a pall, the
   *     cope of one who also wears a chasuble
   */
  public record Pile(Wearer wearer, List<Need> laid, List<Need> beside) {
    public Pile {
      laid = List.copyOf(laid);
      beside = List.copyOf(beside);
    }
  }

  /**
   * The piles of a Mass or other liturgy, by role and number: everything that is worn, whoever owns
   * or brings it, albs, amices and cinctures included, whether or not a church counts them.
   *
   * @param kept which kinds each church keeps by list
   */
  public static List<Pile> piles(VestedMass mass, VestingPolicies policies, KeptKinds kept) {
    Map<Role, Map<Integer, List<Need>>> worn = new TreeMap<>();
    for (Need need : worn(mass, policies, kept)) {
      worn.computeIfAbsent(need.role(), role -> new TreeMap<>())
          .computeIfAbsent(need.ordinal(), ordinal -> new ArrayList<>())
          .add(need);
    }
    return worn.values().stream()
        .flatMap(byOrdinal -> byOrdinal.values().stream())
        .map(LayingOut::pile)
        .toList();
  }

  private static List<Need> worn(VestedMass mass, VestingPolicies policies, KeptKinds kept) {
    Ministers all = mass.ministers();
    VestedMass everybody =
        new VestedMass(
            mass.id(),
            mass.church(),
            mass.kind(),
            mass.time(),
            mass.colour(),
            new Ministers(
                all.presider(),
                all.concelebrants(),
                all.deacons(),
                List.of(),
                all.further(),
                all.also()),
            mass.occasion());
    return VestingNorms.needsOf(
        everybody, policies.countingAlbs(), kept.alsoAt(mass.church(), LINEN));
  }

  private static Pile pile(List<Need> needs) {
    boolean inChasuble = needs.stream().anyMatch(need -> need.kind() == PieceKind.CHASUBLE);
    List<Need> laid =
        ORDER.stream()
            .filter(kind -> kind != PieceKind.COPE || !inChasuble)
            .flatMap(kind -> needs.stream().filter(need -> need.kind() == kind))
            .toList();
    return new Pile(
        needs.get(0).wearer(), laid, needs.stream().filter(n -> !laid.contains(n)).toList());
  }
}
