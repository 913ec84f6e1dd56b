package vestiary.backup;

import java.util.Map;
import vestiary.web.Speech;

/**
 * What no backup holds, and why. Whatever table the database has besides is in it; a test fails for
 * a table that is in neither.
 */
final class LeftOut {

  /** Tables, each with the reason. */
  static final Map<String, String> TABLES =
      Map.ofEntries(
          Map.entry(
              "user_session",
              Speech.word("Who is signed in just now: it opens the door to whoever has it")),
          Map.entry("user_link", Speech.word("Links that open the door; they are made anew")),
          Map.entry(
              "user_token",
              Speech.word("Tokens of programs, which open the door; they are made anew")),
          Map.entry(
              "user_device", Speech.word("Browsers that are known; they are asked once more")),
          Map.entry(
              "passkey_challenge", Speech.word("Questions to devices that wait for an answer")),
          Map.entry(
              "outside_sign_in", Speech.word("Sign-ins by another service that are under way")),
          Map.entry(
              "shared_device",
              Speech.word("Shared devices that stay signed in; they are let in anew")),
          Map.entry("device_hand", Speech.word("Codes by which people act on shared devices")),
          Map.entry(
              "failed_sign_in", Speech.word("Wrong passwords of the last days, with addresses")),
          Map.entry(
              "sent_form", Speech.word("Forms just answered, so that none is answered twice")),
          Map.entry(
              "import_file",
              Speech.word("Files that somebody is about to bring in; they are sent anew")),
          Map.entry(
              "import_change",
              Speech.word("What undoes an import; it fits those very rows as they stand now")),
          Map.entry(
              "letter", Speech.word("Letters on their way, which must not go out a second time")),
          Map.entry(
              "oversight", Speech.word("Who of another cluster may look in; it is given anew")));

  /** Tables of the server, which have no cluster, each with the reason. */
  static final Map<String, String> OF_THE_SERVER =
      Map.of(
          "flyway_schema_history", "Which migrations have run; the archive names the version",
          "scheduled_tasks", "Jobs that wait; the server makes them anew");

  /** Columns that are written empty, by table and column. */
  static final Map<String, String> COLUMNS =
      Map.of(
          "app_user.password",
          Speech.word(
              "Passwords, which whoever has the file could guess at; they are chosen anew by a link"));

  private LeftOut() {}
}
