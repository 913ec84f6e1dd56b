package vestiary.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import vestiary.calendar.Celebration;
import vestiary.calendar.LocalName;

/**
 * Which celebration of the calendar is meant by the words that a church is dedicated by, as Santa
 * Ana or Holy Trinity. What may be several, or only resembles one, is none: a title is a solemnity
 * in its church, and on the wrong day it would be worse than missing (UNLY 59 I.4).
 */
final class KnownTitles {

  static final KnownTitles NONE = new KnownTitles(List.of());

  private static final Set<String> SAINT =
      Set.of("san", "santo", "santa", "santos", "santas", "saint", "saints", "st", "sts", "ss");

  /** They part no saint from another. */
  private static final Set<String> ARCHANGEL =
      Set.of("arcangel", "arcangeles", "archangel", "archangels");

  private static final Set<String> SMALL =
      Set.of("el", "la", "los", "las", "de", "del", "y", "e", "the", "of", "and", "a");

  /** What Our Lady is called before what she is honoured for. */
  private static final String MARY =
      "\\b(?:(?:nuestra senora|ntra sra|our lady)"
          + "|(?:(?:la |the )?(?:bienaventurada |santisima |blessed )?(?:virgen maria|virgin mary))"
          + "|santa maria|la virgen)\\b";

  private static final int FEWEST_WORDS = 2;

  private final List<Celebration> titles;

  /**
   * @param titles all that a church may bear
   */
  KnownTitles(List<Celebration> titles) {
    this.titles = List.copyOf(titles);
  }

  /** The only celebration that these words, or this id, can mean. */
  Optional<Celebration> find(String words) {
    Optional<Celebration> byId = only(title -> title.id().equals(words));
    if (byId.isPresent() || plain(words).isEmpty()) {
      return byId;
    }
    String plain = plain(words);
    Optional<Celebration> whole =
        only(title -> names(title).anyMatch(name -> bare(plain(name)).equals(bare(plain))));
    return whole.isPresent() ? whole : isSaint(plain) ? saint(bare(plain)) : mystery(plain);
  }

  /** Who is the only one called so, and has no other name besides. */
  private Optional<Celebration> saint(String name) {
    return only(title -> saints(title).anyMatch(one -> (one + " ").startsWith(name + " ")))
        .filter(title -> saints(title).anyMatch(one -> one.equals(name)));
  }

  /** The only one that has all these words in its name. */
  private Optional<Celebration> mystery(String plain) {
    List<String> words = telling(plain);
    return words.size() < FEWEST_WORDS
        ? Optional.empty()
        : only(title -> names(title).anyMatch(name -> telling(plain(name)).containsAll(words)));
  }

  private Optional<Celebration> only(Predicate<Celebration> which) {
    List<Celebration> found = titles.stream().filter(which).limit(2).toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  /** Those whom a celebration names, each alone and all together, without what they were. */
  private static Stream<String> saints(Celebration title) {
    return names(title)
        .flatMap(
            name ->
                Stream.concat(
                    Stream.of(name.split("[,:(]")[0]),
                    Arrays.stream(name.split(",| and | y | e "))))
        .map(KnownTitles::plain)
        .map(KnownTitles::bare)
        .filter(name -> !name.isEmpty());
  }

  private static Stream<String> names(Celebration title) {
    LocalName name = title.name();
    return Stream.of(name.english(), name.spanish()).filter(one -> !one.isEmpty());
  }

  private static String plain(String text) {
    return PlainWords.of(text).replaceAll(MARY, "mary");
  }

  private static boolean isSaint(String plain) {
    return SAINT.contains(plain.split(" ")[0]);
  }

  /** Without saint and archangel, and the article before all. */
  private static String bare(String plain) {
    List<String> words =
        Arrays.stream(plain.split(" "))
            .filter(word -> !SAINT.contains(word) && !ARCHANGEL.contains(word))
            .toList();
    boolean hasArticle =
        words.size() > 1 && Set.of("el", "la", "los", "las", "the").contains(words.get(0));
    return String.join(" ", hasArticle ? words.subList(1, words.size()) : words);
  }

  private static List<String> telling(String plain) {
    return Arrays.stream(plain.split(" ")).filter(word -> !SMALL.contains(word)).toList();
  }
}
