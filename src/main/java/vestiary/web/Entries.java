package vestiary.web;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * What stands in a form, by the names of its fields: as it was typed or as it is stored, and what
 * is wrong with it. A field without an entry is empty.
 *
 * @param values by field; several where several boxes of one name are ticked
 * @param errors whole sentences, by field
 */
public record Entries(Map<String, List<String>> values, Map<String, String> errors) {

  public Entries {
    Map<String, List<String>> copied = new LinkedHashMap<>();
    values.forEach((field, texts) -> copied.put(field, List.copyOf(texts)));
    values = Map.copyOf(copied);
    errors = Map.copyOf(errors);
  }

  /** What a form sent. */
  public static Entries of(Map<String, List<String>> values) {
    return new Entries(values, Map.of());
  }

  /** A form in which nothing stands yet. */
  public static Entries empty() {
    return of(Map.of());
  }

  public Entries with(String field, String... texts) {
    Map<String, List<String>> more = new LinkedHashMap<>(values);
    more.put(field, List.of(texts));
    return new Entries(more, errors);
  }

  public Entries withErrors(Map<String, String> found) {
    return new Entries(values, found);
  }

  /** What stands in the field, blanks at both ends included. */
  public String text(String field) {
    return all(field).stream().findFirst().orElse("");
  }

  /** Every value that was sent under that name. */
  public List<String> all(String field) {
    return values.getOrDefault(field, List.of());
  }

  /** Whether the box is ticked. */
  public boolean isTicked(String field) {
    return text(field).equals("true");
  }

  public Field field(String field) {
    return new Field(text(field), error(field));
  }

  /** The options, the one that stands in the field being chosen. */
  public Choice choice(String field, Stream<Choice.Option> options) {
    String chosen = text(field);
    return new Choice(
        options.map(o -> new Choice.Option(o.value(), o.text(), o.value().equals(chosen))).toList(),
        error(field));
  }

  /** All colours that may be ticked, those that stand in the field being ticked. */
  public ColourChoice colours(String field, Stream<Ribbon> ribbons) {
    List<String> chosen = all(field);
    return new ColourChoice(
        ribbons.map(r -> new ColourChoice.Option(r, chosen.contains(r.colour().id()))).toList(),
        error(field));
  }

  public String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
