package vestiary.backup;

import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Speech;

/** Why an archive is not brought in, in plain sentences. */
final class BadArchive {

  static final String NO_ARCHIVE =
      Speech.word(
          "This is no backup, or only a part of one: the end of the file is missing. Copy it once more from where you keep it. Nothing was changed.");

  static final String TAMPERED =
      Speech.word(
          "The backup is not as it was written (%s). Somebody changed it, or it was damaged; take another copy. Nothing was changed.");

  static final String NEWER =
      Speech.word(
          "The backup was made by a newer version of this program. Bring this server up to that version first. Nothing was changed.");

  static final String OLDER =
      Speech.word(
          "The backup was made by an older version of this program (%s; this is %s). Bring it into a server of that version, and then bring that server up to date. Nothing was changed.");

  static final String TOO_LARGE =
      Speech.word("The backup unpacks to more than %d GB, which is the most. Nothing was changed.");

  static final String NOT_EMPTY =
      Speech.word(
          "%s is on this server already, with something in it. A backup comes only into a server that does not have its cluster. Nothing was changed.");

  static final String DOES_NOT_FIT =
      Speech.word(
          "The rows of the backup do not fit together, or another cluster here goes by the same word. Nothing was changed.");

  private BadArchive() {}

  static Refused because(String sentence, Object... said) {
    return new Refused(new Refusal.AgainstRule("file", Speech.say(sentence, said)));
  }
}
