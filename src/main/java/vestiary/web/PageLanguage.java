package vestiary.web;

import jakarta.enterprise.context.RequestScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The language in which the present request is answered: what was chosen on this device, else what
 * the browser asks for, else the first of the cluster; only such as the cluster has.
 */
@RequestScoped
public class PageLanguage {

  private final OfferedLanguages cluster;
  private List<Locale.LanguageRange> wanted = List.of();
  private List<Locale> offered;
  private boolean isAsked;
  private Locale chosen;

  PageLanguage(OfferedLanguages cluster) {
    this.cluster = cluster;
  }

  /**
   * Notes what is asked for.
   *
   * @param kept a BCP 47 tag; empty for none
   * @param header as {@code Accept-Language} has it; empty for none
   */
  void ask(String kept, String header) {
    List<Locale.LanguageRange> asked = new ArrayList<>();
    Written.LANGUAGES.stream()
        .map(Locale::toLanguageTag)
        .filter(kept::equals)
        .forEach(tag -> asked.add(new Locale.LanguageRange(tag)));
    asked.addAll(ranges(header));
    wanted = List.copyOf(asked);
    isAsked = true;
  }

  /** Chooses among all that are written, where the cluster cannot be read or must not be. */
  public void readNothing() {
    offered = Written.LANGUAGES;
    chosen = null;
  }

  public Locale locale() {
    if (chosen == null) {
      chosen = Optional.ofNullable(Locale.lookup(wanted, offered())).orElse(offered().get(0));
    }
    return chosen;
  }

  /** Does that in another language. */
  <T> T during(Locale other, Supplier<T> deed) {
    Locale before = chosen;
    boolean wasAsked = isAsked;
    chosen = other;
    isAsked = true;
    try {
      return deed.get();
    } finally {
      chosen = before;
      isAsked = wasAsked;
    }
  }

  /** The same; empty where nobody asks, as in a job of the server. */
  Optional<Locale> find() {
    return isAsked ? Optional.of(locale()) : Optional.empty();
  }

  /** Those of the cluster that pages can be read in, its first one first; never empty. */
  public List<Locale> offered() {
    if (offered == null) {
      List<Locale> spoken = cluster.languages();
      List<Locale> written = spoken.isEmpty() ? Written.LANGUAGES : written(spoken);
      offered = written.isEmpty() ? Written.LANGUAGES.subList(0, 1) : written;
    }
    return offered;
  }

  private static List<Locale> written(List<Locale> spoken) {
    return spoken.stream()
        .map(one -> Locale.forLanguageTag(one.getLanguage()))
        .filter(Written.LANGUAGES::contains)
        .distinct()
        .toList();
  }

  private static List<Locale.LanguageRange> ranges(String header) {
    try {
      return header.isEmpty() ? List.of() : Locale.LanguageRange.parse(header);
    } catch (IllegalArgumentException malformed) {
      return List.of();
    }
  }
}
