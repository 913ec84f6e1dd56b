package vestiary.users;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.web.Entries;

/**
 * A form that somebody filled in before they signed in, on its way through the page where they do.
 * It is sent by a press of theirs and never by itself, since only then do they know as whom.
 *
 * @param path where it was sent; empty if there is none
 * @param fields as they were typed
 */
record CarriedForm(String path, Map<String, List<String>> fields) {

  private static final String AT = "typed-at";
  private static final String FIELD = "typed.";

  /** Of the session that is not there; the session to come has another. */
  private static final String TOKEN = "form-token";

  CarriedForm {
    fields = Map.copyOf(fields);
  }

  /** What was typed into the form that is sent to that address. */
  static CarriedForm typed(String path, Entries typed) {
    Map<String, List<String>> fields = new LinkedHashMap<>(typed.values());
    fields.remove(TOKEN);
    return checked(path, fields);
  }

  /** What comes along with the form of the page where people sign in. */
  static CarriedForm of(Entries entries) {
    Map<String, List<String>> fields = new LinkedHashMap<>();
    entries
        .values()
        .forEach(
            (name, values) -> {
              if (name.startsWith(FIELD)) {
                fields.put(name.substring(FIELD.length()), values);
              }
            });
    return checked(entries.text(AT), fields);
  }

  /** The address comes from the browser, and must not lead elsewhere. */
  private static CarriedForm checked(String path, Map<String, List<String>> fields) {
    Optional<String> ours = Optional.of(path).filter(at -> at.equals(Back.of(at)));
    return new CarriedForm(ours.orElse(""), fields);
  }

  boolean isThere() {
    return !path.isEmpty();
  }

  /** In characters. */
  int length() {
    return shown().mapToInt(one -> one.name().length() + one.value().length()).sum();
  }

  /** What stands in the page where people sign in while it is carried. */
  Entries entries() {
    Entries entries = Entries.empty().with("back", Back.WEEK).with(AT, path);
    for (Map.Entry<String, List<String>> field : fields.entrySet()) {
      entries = entries.with(FIELD + field.getKey(), field.getValue().toArray(String[]::new));
    }
    return entries;
  }

  /** As fields that nobody sees, for the page where people sign in. */
  List<SignInView.Typed> hidden() {
    return isThere()
        ? Stream.concat(
                Stream.of(new SignInView.Typed(AT, path)),
                shown().map(one -> new SignInView.Typed(FIELD + one.name(), one.value())))
            .toList()
        : List.of();
  }

  /** The fields as they were, to be sent at last. */
  Stream<SignInView.Typed> shown() {
    return fields.entrySet().stream()
        .flatMap(
            field ->
                field.getValue().stream()
                    .map(value -> new SignInView.Typed(field.getKey(), value)));
  }
}
