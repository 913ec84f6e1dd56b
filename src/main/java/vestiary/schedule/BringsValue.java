package vestiary.schedule;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.calendar.Term;
import vestiary.vesting.Brings;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/** Who brings vestments of his own, in words, as the API and the row have it. */
public record BringsValue(String role, Integer count, List<String> kinds) {

  static BringsValue from(Brings brings) {
    return new BringsValue(
        brings.role().id(),
        brings.count(),
        brings.kinds().stream().map(Term::id).sorted().toList());
  }

  Brings toBrings() {
    Set<PieceKind> pieces =
        kinds.stream()
            .map(k -> Term.find(PieceKind.class, k).orElseThrow())
            .collect(Collectors.toUnmodifiableSet());
    return new Brings(Term.find(Role.class, role).orElseThrow(), count, pieces);
  }
}
