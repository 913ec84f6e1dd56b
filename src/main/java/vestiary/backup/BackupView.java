package vestiary.backup;

import java.util.List;
import vestiary.web.Frame;

/**
 * The backup, to be taken out or brought back.
 *
 * @param newest when the newest was taken out, in a sentence
 * @param done what was done just now; empty if nothing was
 * @param fileError what is wrong with the file that was sent; empty if nothing is
 * @param leftOut what no backup holds, each in a sentence
 */
public record BackupView(
    Frame frame, String newest, String done, String fileError, List<String> leftOut) {

  public BackupView {
    leftOut = List.copyOf(leftOut);
  }
}
