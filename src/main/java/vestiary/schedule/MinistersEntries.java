package vestiary.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.problem.Asked;
import vestiary.vesting.FurtherMinisters;
import vestiary.vesting.Ministers;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.web.Entries;

/** Who vests besides celebrants and deacons, as the form of a Mass asks for it. */
final class MinistersEntries {

  static final String SERVER_SIZES = "serverSizes";

  private static final Map<Role, String> NUMBERS =
      Map.of(
          Role.SERVER, "servers",
          Role.ACOLYTE, "acolytes",
          Role.READER, "readers",
          Role.OTHER, "others",
          Role.NEW_PRIEST, "newPriests",
          Role.NEW_DEACON, "newDeacons");

  private static final Map<PieceKind, String> TICKS =
      Map.of(PieceKind.COPE, "alsoCope", PieceKind.HUMERAL_VEIL, "alsoVeil");

  private MinistersEntries() {}

  /** The form's names of the fields that the API names otherwise. */
  static Map<String, String> names() {
    Map<String, String> names =
        NUMBERS.entrySet().stream()
            .collect(Collectors.toMap(e -> "ministers." + e.getKey().id(), Map.Entry::getValue));
    names.put("ministers.sizes", SERVER_SIZES);
    return names;
  }

  static List<String> fields() {
    return Stream.concat(NUMBERS.values().stream(), Stream.of(SERVER_SIZES)).toList();
  }

  static Entries with(Entries entries, Ministers ministers) {
    Entries filled = entries.with(SERVER_SIZES, String.join(", ", sizes(ministers, Role.SERVER)));
    for (Role role : Role.FURTHER) {
      int number = ministers.further(role);
      filled = filled.with(NUMBERS.get(role), number == 0 ? "" : String.valueOf(number));
    }
    for (PieceKind kind : Ministers.BESIDES) {
      filled = filled.with(TICKS.get(kind), String.valueOf(ministers.also().contains(kind)));
    }
    return filled;
  }

  /** What was typed; sizes that the form does not show stay as they were, for as many as remain. */
  static List<MinistersValue> ministers(Entries typed, Ministers before, Asked asked) {
    List<MinistersValue> ministers = new ArrayList<>();
    for (Role role : Role.FURTHER) {
      Integer number = asked.number(NUMBERS.get(role), typed.text(NUMBERS.get(role)));
      List<String> sizes =
          role == Role.SERVER ? typedSizes(typed) : remaining(sizes(before, role), number);
      if (number != null || !sizes.isEmpty()) {
        ministers.add(new MinistersValue(role.id(), number, sizes));
      }
    }
    return ministers;
  }

  static List<String> also(Entries typed) {
    return Ministers.BESIDES.stream()
        .filter(kind -> typed.isTicked(TICKS.get(kind)))
        .map(PieceKind::id)
        .toList();
  }

  private static List<String> typedSizes(Entries typed) {
    return Arrays.stream(typed.text(SERVER_SIZES).split("[,;]"))
        .map(String::strip)
        .filter(size -> !size.isEmpty())
        .toList();
  }

  private static List<String> remaining(List<String> sizes, Integer number) {
    return sizes.stream().limit(number == null ? 0 : Math.max(0, number)).toList();
  }

  private static List<String> sizes(Ministers ministers, Role role) {
    return ministers.further().stream()
        .filter(f -> f.role() == role)
        .map(FurtherMinisters::sizes)
        .flatMap(List::stream)
        .toList();
  }
}
