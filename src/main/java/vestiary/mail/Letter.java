package vestiary.mail;

import java.time.Duration;
import java.util.Locale;
import java.util.UUID;

/**
 * A letter to be mailed.
 *
 * @param reader id of the person, or of the user who is nobody of the schedule
 * @param once what it is about: of two letters of the same, the second is not kept
 * @param language BCP 47
 * @param html the same as the plain text; empty if there is none
 * @param stop the link by which its reader ends letters of this kind; {@link StopLink#NONE} for
 *     letters that answer something
 * @param goodFor so long it is of use, and is dropped unsent afterwards; zero for one that is tried
 *     as long as any
 */
public record Letter(
    UUID reader,
    LetterKind kind,
    String once,
    String language,
    String subject,
    String plain,
    String html,
    StopLink stop,
    Duration goodFor) {

  /** Stands in the plain text of a letter that opens a door, where its link is to be. */
  public static final String LINK = "{link}";

  /** One that answers or asks something, so that there is nothing to stop. */
  public static Letter plain(
      UUID reader, LetterKind kind, String once, Locale language, String subject, String text) {
    return new Letter(
        reader,
        kind,
        once,
        language.toLanguageTag(),
        subject,
        text,
        "",
        StopLink.NONE,
        Duration.ZERO);
  }
}
