package vestiary.backup;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.access.Role;
import vestiary.photo.Photographs;
import vestiary.scenario.Asking;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

@QuarkusTest
class BackupTest {

  private static final Set<String> LISTS =
      Set.of("cluster", "churches", "people", "patterns", "masses", "absences", "pieces", "out");

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;
  @Inject OwnerDatabase owner;

  @BeforeEach
  void the_invented_cluster_with_a_user_and_a_photograph() {
    scenario.load();
    letting.leaveTracesEverywhere(letting.user(Role.SACRISTAN, "ht"));
    given()
        .multiPart("photo", "photo.png", Photographs.png(), "image/png")
        .post("/api/pieces/HT-W1-C/photos")
        .then()
        .statusCode(201);
    Sending.post("/api/pieces/HT-W1-C/values", Map.of("amount", "1500", "currency", "USD"))
        .then()
        .statusCode(200);
  }

  @Test
  void what_came_back_into_an_empty_server_gives_the_same_backup_and_the_same_lists() {
    byte[] backup = takeOut();
    Map<String, String> lists = lists();
    scenario.empty();

    bringBack(backup).then().statusCode(200);

    assertEquals(unpacked(backup), unpacked(takeOut()));
    assertEquals(lists, lists());
    assertTrue(unpacked(backup).get("tables/photo_picture.jsonl").length() > 100);
  }

  @Test
  void every_table_is_in_the_backup_or_on_the_list_of_what_is_left_out() throws SQLException {
    Set<String> named = new TreeSet<>(LeftOut.TABLES.keySet());
    named.addAll(LeftOut.OF_THE_SERVER.keySet());
    unpacked(takeOut()).keySet().stream()
        .filter(file -> file.startsWith("tables/"))
        .map(file -> file.substring("tables/".length(), file.length() - ".jsonl".length()))
        .forEach(named::add);

    assertEquals(tables(), named);
  }

  @Test
  void no_password_and_no_way_in_is_in_the_backup() {
    String all = String.join("", unpacked(takeOut()).values());

    assertTrue(all.contains("\"password\":\"\""), "no user in it");
    assertTrue(
        !all.contains("$argon2") && !all.contains("$2a$") && !all.contains("\"password\":\"$"));
  }

  @Test
  void a_backup_that_was_taken_is_noted_in_the_history() {
    takeOut();

    assertTrue(
        Asking.list("/api/history?who=server").get(0).toString().contains("Backup taken out"));
  }

  @Test
  void a_cluster_that_is_there_is_not_written_over() {
    refused(takeOut(), "is on this server already");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 1000, 20_000})
  void a_truncated_backup_changes_nothing(int length) {
    byte[] backup = takeOut();
    scenario.empty();

    refused(Arrays.copyOf(backup, Math.max(1, length)), "This is no backup");
  }

  @Test
  void a_row_that_somebody_changed_is_noticed() {
    byte[] backup = takeOut();
    scenario.empty();

    refused(
        changed(backup, "tables/church.jsonl", text -> text.replace("Holy Trinity", "Holy Family")),
        "is not as it was written (church)");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../../evil", "/etc/passwd", "tables/more.jsonl"})
  void an_archive_that_holds_more_than_it_says_changes_nothing(String name) {
    byte[] backup = takeOut();
    scenario.empty();

    refused(changed(backup, name, text -> "x"), "it holds more than it says");
  }

  @Test
  void what_a_newer_version_wrote_is_refused_in_a_plain_sentence() {
    byte[] backup = takeOut();
    scenario.empty();

    refused(
        changed(backup, Manifest.FILE, text -> text.replace("\"format\" : 1", "\"format\" : 2")),
        "newer version");
    refused(
        changed(
            backup,
            Manifest.FILE,
            text -> text.replaceFirst("\"schema\" : \"\\d+\"", "\"schema\" : \"9999\"")),
        "newer version");
  }

  private void refused(byte[] backup, String sentence) {
    refusing
        .refused(422, "against-rule", () -> bringBack(backup))
        .body("detail", containsString(sentence));
  }

  private static byte[] takeOut() {
    return given()
        .get("/api/backups/newest.zip")
        .then()
        .statusCode(200)
        .contentType(BackupResource.ZIP)
        .extract()
        .asByteArray();
  }

  private static Response bringBack(byte[] backup) {
    return given().contentType(BackupResource.ZIP).body(backup).post("/api/backups");
  }

  private static Map<String, String> lists() {
    Map<String, String> all = new LinkedHashMap<>();
    LISTS.forEach(
        what -> all.put(what, given().get("/api/exports/%s.csv".formatted(what)).asString()));
    return all;
  }

  private static Map<String, String> unpacked(byte[] backup) {
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(backup))) {
      Map<String, String> files = new LinkedHashMap<>();
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        files.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
      return files;
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** The archive packed anew with one file changed, or added. */
  private static byte[] changed(byte[] backup, String name, UnaryOperator<String> change) {
    Map<String, String> files = unpacked(backup);
    files.put(name, change.apply(files.getOrDefault(name, "")));
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Map.Entry<String, String> file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue().getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new AssertionError(e);
    }
    return bytes.toByteArray();
  }

  private Set<String> tables() throws SQLException {
    Set<String> names = new TreeSet<>();
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found =
            statement.executeQuery(
                "select table_name from information_schema.tables"
                    + " where table_schema = 'public' and table_type = 'BASE TABLE'")) {
      while (found.next()) {
        names.add(found.getString(1));
      }
    }
    return names;
  }
}
