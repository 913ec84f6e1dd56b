package vestiary.web;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import vestiary.calendar.Colour;

/** The invented cluster's shared parts, for pages rendered in tests. */
public final class Invented {

  public static final ClashMark MUST = new ClashMark("must", "Must be mended");
  public static final ClashMark DECIDE = new ClashMark("decide", "To decide");
  public static final ClashMark KNOW = new ClashMark("know", "Worth knowing");

  private static final Map<String, String> PLACES =
      Map.ofEntries(
          entry("Holy Trinity", "Tollbridge"),
          entry("Saint Anne", "Millferry"),
          entry("Saint Joseph", "Ashlanding"),
          entry("Our Lady of the Rosary", "Coldorchard"),
          entry("Saints Peter and Paul", "Upper Wenlow"),
          entry("Saint Martin", "Sandreach"));

  private Invented() {}

  public static Frame frame(String section) {
    return new Frame(
        "Wenlow Valley",
        "six churches",
        section,
        List.of(
            new Frame.Language("en", "English", true), new Frame.Language("es", "Español", false)),
        Frame.Demo.NONE,
        "Printed on 30 November 2026 at 10:42.",
        "/" + section,
        "Maren Dovecote",
        false);
  }

  public static Frame pastDemo(String section) {
    return new Frame(
        "Wenlow Valley",
        "six churches",
        section,
        List.of(),
        new Frame.Demo(
            "This is the demo. Every name is invented, and its fortnight is past.", true),
        "Printed on 30 January 2027 at 10:42.",
        "/" + section,
        "Maren Dovecote",
        false);
  }

  public static List<String> churches() {
    return List.of(
        "Holy Trinity",
        "Saint Anne",
        "Saint Joseph",
        "Our Lady of the Rosary",
        "Saints Peter and Paul",
        "Saint Martin");
  }

  public static String place(String church) {
    return PLACES.getOrDefault(church, "");
  }

  public static Ribbon ribbon(String name) {
    return new Ribbon(Colour.valueOf(name.toUpperCase(java.util.Locale.ROOT)), name);
  }
}
