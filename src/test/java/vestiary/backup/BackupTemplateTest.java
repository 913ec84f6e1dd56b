package vestiary.backup;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class BackupTemplateTest {

  @Test
  void it_says_how_the_file_must_be_kept_and_what_it_lacks() {
    RenderedPage.of("backup/backup", "backup", view("", ""))
        .keepsTheHouseRules()
        .says("None was taken out yet.", "under lock and key", "Tokens of programs");
  }

  @Test
  void a_file_that_is_none_is_refused_at_its_field() {
    RenderedPage.of("backup/backup", "backup-refused", view("", "This is no backup."))
        .keepsTheHouseRules()
        .says("This is no backup. Backup");
  }

  @Test
  void what_was_done_is_said() {
    RenderedPage.of("backup/backup", "backup-done", view("It is back.", ""))
        .keepsTheHouseRules()
        .says("It is back.");
  }

  private static BackupView view(String done, String fileError) {
    return new BackupView(
        Invented.frame("settings"),
        "None was taken out yet.",
        done,
        fileError,
        List.of("Tokens of programs, which open the door; they are made anew"));
  }
}
