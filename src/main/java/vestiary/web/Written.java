package vestiary.web;

import java.util.List;
import java.util.Locale;

/** The languages that pages are written in. */
public final class Written {

  /** Those that are there; the first is the one in which everything was written first. */
  public static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.forLanguageTag("es"));

  /** The cookie that keeps which was chosen on a device: a BCP 47 tag. */
  public static final String COOKIE = "vestiary-language";

  private Written() {}
}
