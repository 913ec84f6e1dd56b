package vestiary.erasure;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import vestiary.access.Role;
import vestiary.calendar.Term;
import vestiary.people.Person;
import vestiary.users.ForgetUser;

/**
 * The words by which somebody is known in texts.
 *
 * @param names of more than one word, looked for everywhere in small or capital letters
 * @param surnames single words, looked for as they are written and only where texts speak of people
 */
record Words(Set<String> names, Set<String> surnames) {

  Words {
    names = Set.copyOf(names);
    surnames = Set.copyOf(surnames);
  }

  /**
   * Of a person.
   *
   * @param mail empty if none is known
   * @param others everybody else: a surname that two people have stays where it stands alone
   */
  static Words of(Person person, String mail, List<Person> others) {
    Set<String> names = new TreeSet<>();
    Set<String> single = new TreeSet<>();
    boolean isShared =
        others.stream().anyMatch(o -> o.shortName().equalsIgnoreCase(person.shortName()));
    called(person).forEach(name -> sort(name, names, single));
    if (!isShared) {
      sort(person.shortName(), names, single);
      Stream.of(person.title(), "Father")
          .filter(title -> !title.isEmpty())
          .forEach(title -> sort(title + " " + person.shortName(), names, single));
    }
    Stream.of(person.slug(), mail).filter(w -> w.matches(".*[-@].*")).forEach(names::add);
    return new Words(names, single);
  }

  /** Whole names, with and without title. */
  static Set<String> called(Person person) {
    return Set.copyOf(
        List.of(
            person.name(), person.calledName(), (person.title() + " " + person.name()).strip()));
  }

  /** The whole names of a child, of whom others read the first name and an initial. */
  static Words ofChild(List<String> wholeNames) {
    Set<String> names = new TreeSet<>();
    Set<String> single = new TreeSet<>();
    wholeNames.forEach(name -> sort(name, names, single));
    return new Words(names, single);
  }

  /** Of a user; a name to sign in by that is a role’s is no name. */
  static Words of(ForgetUser.Account account) {
    Set<String> names = new TreeSet<>();
    Set<String> single = new TreeSet<>();
    sort(account.name(), names, single);
    if (Term.find(Role.class, account.login().toLowerCase(Locale.ROOT)).isEmpty()) {
      sort(account.login(), names, single);
    }
    return new Words(names, single);
  }

  Words and(Words more) {
    Set<String> allNames = new TreeSet<>(names);
    allNames.addAll(more.names);
    Set<String> allSingle = new TreeSet<>(surnames);
    allSingle.addAll(more.surnames);
    return new Words(allNames, allSingle);
  }

  private static void sort(String name, Set<String> names, Set<String> single) {
    String said = name.strip();
    if (said.isEmpty()) {
      return;
    }
    Set<String> where = said.contains(" ") ? names : single;
    where.add(said);
    // As it stands in texts that are JSON.
    where.add(said.replace("\\", "\\\\").replace("\"", "\\\""));
  }
}
