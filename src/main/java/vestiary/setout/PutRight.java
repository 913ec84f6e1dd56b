package vestiary.setout;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.LaidPiece;
import vestiary.pool.NoteWorn;
import vestiary.pool.ReadLaid;
import vestiary.pool.ReadWear;
import vestiary.pool.Worn;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;

/** Puts right after a Mass what was worn at it. What nobody puts right was worn as planned. */
@ApplicationScoped
@Transactional
class PutRight {

  private final ReadSetOut setOut;
  private final ReadLaid laid;
  private final ReadWear wear;
  private final NoteWorn note;
  private final CurrentVisitor visitor;
  private final Clock clock;

  PutRight(
      ReadSetOut setOut,
      ReadLaid laid,
      ReadWear wear,
      NoteWorn note,
      CurrentVisitor visitor,
      Clock clock) {
    this.setOut = setOut;
    this.laid = laid;
    this.wear = wear;
    this.note = note;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What was planned and what was worn.
   *
   * @throws Refused if there is no such Mass, or it is cancelled
   */
  WornOfMass read(String id) {
    DatedMass mass = setOut.standing(id);
    List<Worn> said = wear.said(mass.id());
    Map<String, String> instead =
        said.stream()
            .filter(one -> one.worn() && !one.insteadOf().isEmpty())
            .collect(Collectors.toMap(Worn::insteadOf, Worn::piece, (one, other) -> one));
    Set<String> denied =
        said.stream().filter(one -> !one.worn()).map(Worn::piece).collect(Collectors.toSet());
    List<WornOfMass.Line> lines =
        planned(mass).stream()
            .map(
                one ->
                    new WornOfMass.Line(
                        one.piece(),
                        one.wearers(),
                        !denied.contains(one.piece()),
                        instead.getOrDefault(one.piece(), "")))
            .toList();
    return new WornOfMass(
        mass,
        lines,
        said.stream()
            .filter(Worn::worn)
            .filter(one -> lines.stream().noneMatch(l -> l.piece().equals(one.insteadOf())))
            .toList(),
        !said.isEmpty());
  }

  private List<LaidPiece> planned(DatedMass mass) {
    Map<String, LaidPiece> byCode = new LinkedHashMap<>();
    laid.of(List.of(mass.id())).stream()
        .sorted(
            Comparator.comparing((LaidPiece one) -> one.wearers().isEmpty())
                .thenComparing(
                    one ->
                        one.wearers().stream().findFirst().map(w -> w.role().ordinal()).orElse(0))
                .thenComparing(
                    one -> one.wearers().stream().findFirst().map(w -> w.ordinal()).orElse(0))
                .thenComparing(LaidPiece::piece))
        .forEach(one -> byCode.putIfAbsent(one.piece(), one));
    return List.copyOf(byCode.values());
  }

  /**
   * Keeps what was otherwise than planned, in the place of what was said before; what is as planned
   * needs no saying and may be said.
   *
   * @throws Refused if the Mass has not begun, or as {@link NoteWorn#keep}
   */
  void keep(String id, List<Worn> said) {
    DatedMass mass = setOut.standing(id);
    visitor.refuseOutsideOwn(Action.SET_OUT, mass.church().id().value());
    if (mass.start().toInstant().isAfter(clock.instant())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "mass",
              say("This Mass has not begun: what is worn at it can be said from then on.")));
    }
    Set<String> planned = planned(mass).stream().map(LaidPiece::piece).collect(Collectors.toSet());
    List<Worn> otherwise = new ArrayList<>();
    for (Worn one : said) {
      boolean asPlanned = one.worn() && planned.contains(one.piece()) && one.insteadOf().isEmpty();
      if (!asPlanned) {
        otherwise.add(one);
      }
    }
    note.keep(mass.id(), mass.start().toInstant(), otherwise);
  }
}
