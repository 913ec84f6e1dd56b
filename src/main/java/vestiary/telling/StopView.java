package vestiary.telling;

import java.util.List;
import vestiary.web.Frame;

/**
 * Which letters somebody gets, for one who comes by a link in a letter and has not signed in.
 *
 * @param tongue in whose words the page is
 * @param kind of the letter, as words of {@code tongue} are named by it
 * @param done what was just done; may be empty
 * @param isWanted whether letters of that kind are still sent
 */
record StopView(
    Frame frame,
    String language,
    String title,
    String done,
    String known,
    String press,
    boolean isWanted,
    String address,
    Choice choice) {

  /**
   * @param sacristy empty for whoever cares for no church
   * @param languages to choose from
   * @param action where it is sent
   */
  record Choice(
      String action,
      String head,
      String week,
      boolean isWeek,
      String changes,
      boolean isChanges,
      String sacristy,
      boolean isSacristy,
      String language,
      List<Language> languages,
      String save) {
    Choice {
      languages = List.copyOf(languages);
    }
  }

  /**
   * @param tag empty for that of the cluster
   */
  record Language(String tag, String name, boolean chosen) {}
}
