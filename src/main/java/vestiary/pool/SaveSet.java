package vestiary.pool;

import static vestiary.web.Speech.say;

import io.quarkus.panache.common.Sort;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Names sets and the suits they belong to. */
@ApplicationScoped
class SaveSet {

  private static final int LONGEST_CODE = 40;
  private static final int LONGEST_NAME = 200;

  private final SetRows sets;
  private final SuitRows suits;
  private final PieceRows pieces;

  SaveSet(SetRows sets, SuitRows suits, PieceRows pieces) {
    this.sets = sets;
    this.suits = suits;
    this.pieces = pieces;
  }

  /** A set with the codes of its pieces, by code. */
  record VestmentSet(String code, String name, String suit, List<String> pieces) {}

  List<VestmentSet> all() {
    Map<UUID, String> names = suits.streamAll().collect(Collectors.toMap(s -> s.id, s -> s.name));
    Map<UUID, List<String>> within =
        pieces.byCode().stream()
            .filter(p -> p.setId != null)
            .collect(
                Collectors.groupingBy(
                    p -> p.setId, Collectors.mapping(p -> p.code, Collectors.toList())));
    return sets.listAll(Sort.by("code")).stream()
        .map(
            s ->
                new VestmentSet(
                    s.code,
                    s.name,
                    s.suitId == null ? "" : names.get(s.suitId),
                    within.getOrDefault(s.id, List.of())))
        .toList();
  }

  VestmentSet get(String code) {
    sets.getByCode(code);
    return all().stream().filter(s -> s.code().equals(code)).findFirst().orElseThrow();
  }

  @Transactional
  String enter(String code, String name, String suit) {
    SetRow row = new SetRow();
    fill(row, code, name, suit);
    if (sets.findByCode(row.code).isPresent()) {
      throw new Refused(
          new Refusal.Taken("code", say("The code \"%s\" belongs to another set.", row.code)));
    }
    sets.persistAndFlush(row);
    return row.code;
  }

  @Transactional
  String change(String code, String newCode, String name, String suit) {
    SetRow row = sets.getByCode(code);
    LentPieces.refuseIfBorrowed(row);
    fill(row, newCode == null ? code : newCode, name, suit);
    sets.flush();
    return row.code;
  }

  /** Breaks a set up; its pieces stay in the pool by themselves. */
  @Transactional
  void remove(String code) {
    SetRow row = sets.getByCode(code);
    LentPieces.refuseIfBorrowed(row);
    pieces.update("setId = null where setId = ?1", row.id);
    sets.delete(row);
  }

  private void fill(SetRow row, String code, String name, String suit) {
    Asked asked = new Asked();
    row.code = asked.needed("code", code, LONGEST_CODE);
    row.name = asked.text("name", name);
    String wanted = asked.text("suit", suit, LONGEST_NAME);
    asked.refuseIfFaulty();
    row.suitId = wanted.isEmpty() ? null : suits.called(wanted).id;
  }
}
