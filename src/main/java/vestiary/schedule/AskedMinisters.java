package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;

/** Reads who vests at a Mass and what they bring; all that is wrong is noted. */
final class AskedMinisters {

  /** Concelebrants, deacons or others at one Mass. */
  static final int MOST = 200;

  private static final int LONGEST_SIZE = 40;

  private final Asked asked;

  AskedMinisters(Asked asked) {
    this.asked = asked;
  }

  /** Who brings what; none if not given. */
  List<BringsValue> brings(List<BringsValue> given) {
    return given == null ? List.of() : given.stream().map(this::brings).toList();
  }

  private BringsValue brings(BringsValue given) {
    Role role = asked.term("brings.role", given == null ? null : given.role(), Role.PRINCIPAL);
    int count = asked.whole("brings.count", given == null ? null : given.count(), 1, MOST, 1);
    List<String> kinds = given == null || given.kinds() == null ? List.of() : given.kinds();
    // An empty word is no kind: kept, it would make the Mass unreadable ever after.
    kinds.forEach(
        k ->
            asked.findTerm(PieceKind.class, "brings.kinds", k == null || k.isBlank() ? "none" : k));
    return new BringsValue(role.id(), count, kinds);
  }

  /** Who vests besides celebrants and deacons; those of whom there are none are left out. */
  List<MinistersValue> ministers(List<MinistersValue> given) {
    return given == null
        ? List.of()
        : given.stream().map(this::ministers).filter(m -> m.count() > 0).toList();
  }

  /** A number that is not said is that of the sizes, or one. */
  private MinistersValue ministers(MinistersValue given) {
    Role role = role(given == null ? null : given.kind());
    List<String> sizes = sizes(given == null ? null : given.sizes());
    int unsaid = Math.max(1, sizes.size());
    Integer number = given == null ? null : given.count();
    int count = asked.whole("ministers." + role.id(), number, 0, MOST, unsaid);
    if (sizes.size() > count) {
      asked.fault(
          "ministers.sizes",
          say("ministers.sizes names %d for %d; name one each at most.", sizes.size(), count));
    }
    return new MinistersValue(role.id(), count, sizes);
  }

  private Role role(String kind) {
    String text = asked.text("ministers.kind", kind);
    Optional<Role> found = Term.find(Role.class, text).filter(Role.FURTHER::contains);
    if (found.isEmpty()) {
      asked.fault(
          "ministers.kind",
          say("ministers.kind \"%s\" is not known; it can be %s.", text, words(Role.FURTHER)));
    }
    return found.orElse(Role.OTHER);
  }

  private List<String> sizes(List<String> given) {
    return given == null
        ? List.of()
        : given.stream()
            .filter(Objects::nonNull)
            .map(size -> asked.text("ministers.sizes", size, LONGEST_SIZE))
            .filter(size -> !size.isEmpty())
            .toList();
  }

  /** What whoever presides puts on besides; nothing if not given. */
  String[] also(List<String> given) {
    return given == null
        ? new String[0]
        : given.stream().map(this::besides).distinct().sorted().toArray(String[]::new);
  }

  private String besides(String kind) {
    String text = asked.text("also", kind);
    Optional<PieceKind> found =
        Term.find(PieceKind.class, text).filter(Ministers.BESIDES::contains);
    if (found.isEmpty()) {
      asked.fault(
          "also", say("also \"%s\" is not known; it can be %s.", text, words(Ministers.BESIDES)));
    }
    return found.map(Term::id).orElse("");
  }

  private static String words(Collection<? extends Term> terms) {
    return terms.stream().map(Term::id).collect(Collectors.joining(", "));
  }
}
