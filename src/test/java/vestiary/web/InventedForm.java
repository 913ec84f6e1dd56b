package vestiary.web;

import java.util.Arrays;
import java.util.List;
import vestiary.calendar.Colour;

/** Choices of forms, as tests need them; the first option is the chosen one. */
public final class InventedForm {

  private InventedForm() {}

  public static Choice choice(String... texts) {
    return Choice.of(options(texts));
  }

  public static Choice wrong(String error, String... texts) {
    return new Choice(options(texts), error);
  }

  public static ColourChoice colours(Colour... chosen) {
    return new ColourChoice(
        Arrays.stream(Colour.values())
            .map(
                c ->
                    new ColourChoice.Option(
                        new Ribbon(c, c.id()), Arrays.asList(chosen).contains(c)))
            .toList(),
        "");
  }

  private static List<Choice.Option> options(String... texts) {
    return Arrays.stream(texts)
        .map(t -> new Choice.Option(t.replace(' ', '-'), t, t.equals(texts[0])))
        .toList();
  }
}
