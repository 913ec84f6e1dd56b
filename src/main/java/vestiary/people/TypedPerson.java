package vestiary.people;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import vestiary.problem.Asked;
import vestiary.problem.ShortName;

/**
 * A person as typed, read through.
 *
 * @param shownName what everybody reads
 * @param children the whole name if the person is under 18, or none
 * @param responsible names of parents or guardians; empty for grown people
 */
record TypedPerson(
    String slug,
    String shownName,
    String shortName,
    String title,
    PersonRole role,
    boolean visiting,
    List<ChildName> children,
    String responsible) {

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_RESPONSIBLE = 300;

  /** Something by which one is reached: a mail address, or a number to call. */
  private static final Pattern CONTACT = Pattern.compile("@|\\d[\\d\\s().+/-]{4,}\\d|https?:");

  /**
   * Reads it.
   *
   * @param kept what is known of a child whom it names, or none
   */
  static TypedPerson read(SavePerson.Request request, List<Children.Child> kept, Asked asked) {
    String typed = asked.needed("name", request.name(), LONGEST_NAME);
    String name = whole(typed, kept);
    boolean minor = request.minor() == null ? !kept.isEmpty() : request.minor();
    PersonRole role = asked.term("role", request.role(), PersonRole.PRIEST);
    String title = asked.text("title", request.title());
    String shortName = asked.text("shortName", request.shortName());
    String slug = asked.text("slug", request.slug());
    ChildName child = new ChildName(name);
    String shown = minor ? child.shown() : name;
    String address = slug.isEmpty() ? slugOf(shown) : slug;
    if (!ShortName.isWellFormed(address)) {
      asked.fault(
          "slug",
          say("slug \"%s\" must be of lower-case letters, digits and single hyphens.", address));
    }
    if (!minor) {
      return new TypedPerson(
          address,
          name,
          shortName.isEmpty() ? lastWord(name) : shortName,
          title,
          role,
          Boolean.TRUE.equals(request.visiting()),
          List.of(),
          "");
    }
    if (!role.canBeYoung()) {
      asked.fault("role", say("role of somebody under 18 can be server, reader or minister."));
    }
    return new TypedPerson(
        address,
        shown,
        shown,
        "",
        role,
        Boolean.TRUE.equals(request.visiting()),
        List.of(child),
        responsible(request, kept, asked));
  }

  Optional<ChildName> findChild() {
    return children.stream().findFirst();
  }

  /** Everybody reads an address, so that it may tell no more of a child than the name shown. */
  void noteTellingSlug(Asked asked) {
    if (findChild().filter(child -> child.isToldBy(slug)).isPresent()) {
      asked.fault(
          "slug",
          say(
              "slug \"%s\" tells more of a child than the first name and an initial; write it as %s.",
              slug, slugOf(shownName)));
    }
  }

  static String slugOf(String name) {
    return ShortName.of(name, "person", LONGEST_NAME);
  }

  /** Whoever types a child’s name as it is shown means the name that is kept. */
  private static String whole(String typed, List<Children.Child> kept) {
    return kept.stream()
        .map(Children.Child::wholeName)
        .filter(whole -> new ChildName(whole).isCalled(typed))
        .findFirst()
        .orElse(typed);
  }

  private static String responsible(
      SavePerson.Request request, List<Children.Child> kept, Asked asked) {
    if (request.responsible() == null && !kept.isEmpty()) {
      return kept.get(0).responsible();
    }
    String named = asked.text("responsible", request.responsible(), LONGEST_RESPONSIBLE);
    if (named.isEmpty()) {
      asked.fault(
          "responsible",
          say("responsible is missing: say who answers for somebody under 18, by name."));
    }
    if (CONTACT.matcher(named).find()) {
      asked.fault(
          "responsible",
          say(
              "responsible holds an address or a number; names only, since nothing is kept here by which a child or its family is reached."));
    }
    return named;
  }

  private static String lastWord(String name) {
    return name.substring(name.lastIndexOf(' ') + 1);
  }
}
