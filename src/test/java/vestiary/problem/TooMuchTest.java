package vestiary.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Credentials;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** Requests that are too large, too deep, or would become so when unpacked. */
@QuarkusTest
class TooMuchTest {

  private static final int TEN_MEGABYTES = 10 << 20;
  private static final String JSON = "application/json";
  private static final String FORM = "application/x-www-form-urlencoded";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  @Test
  void ten_megabytes_of_json_are_refused_with_a_sentence() {
    assertProblem(
        413,
        "larger than 8 MB",
        post("/api/churches", JSON, "{\"slug\":\"%s\"}".formatted("x".repeat(TEN_MEGABYTES))));
  }

  @Test
  void ten_megabytes_whose_length_was_not_told_are_refused_too() {
    byte[] large = ascii("{\"slug\":\"%s\"}".formatted("x".repeat(TEN_MEGABYTES)));
    BodyPublisher chunks = BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large));

    HttpResponse<String> answer =
        refusing.unchanged(() -> send(request("/api/churches", JSON).POST(chunks).build()));

    assertEquals(413, answer.statusCode());
  }

  @Test
  void a_form_and_a_file_that_are_too_large_are_refused_with_a_page() {
    String large = "x".repeat(TEN_MEGABYTES);

    assertPage(413, "larger than 8 MB", post("/churches", FORM, "name=" + large));
    assertPage(413, "larger than 8 MB", upload(large.getBytes(StandardCharsets.US_ASCII)));
  }

  @Test
  void a_form_with_thousands_of_fields_or_an_endless_one_is_refused() {
    String many = "name=x" + "&f=x".repeat(20_000);

    assertPage(413, "more fields", post("/churches", FORM, many));
    assertPage(413, "larger", post("/churches", FORM, "name=" + "x".repeat(200_000)));
  }

  @Test
  void a_note_of_two_thousand_letters_of_any_script_goes_through_a_form() {
    scenario.load();
    String note = URLEncoder.encode("ű".repeat(1_999), StandardCharsets.UTF_8);
    String form = "church=ht&date=2026-12-10&time=07:15&minutes=30&note=" + note;

    assertEquals(
        303,
        send(request("/masses", FORM).POST(BodyPublishers.ofString(form)).build()).statusCode());
  }

  @Test
  void json_without_a_bottom_is_refused_with_a_sentence() {
    for (String deep :
        List.of(
            "[".repeat(100_000),
            "{\"a\":".repeat(100_000),
            "{\"slug\":" + "[".repeat(900) + "]".repeat(900) + "}")) {
      for (String address :
          List.of("/api/churches", "/api/masses", "/api/pieces", "/api/propers")) {
        assertProblem(400, "", post(address, JSON, deep));
      }
    }
  }

  @Test
  void numbers_and_texts_that_never_end_are_refused_at_once() {
    for (String value :
        List.of(
            "1".repeat(200_000),
            "1e999999999",
            "0." + "0".repeat(500_000) + "1",
            "\"" + "x".repeat(5_000_000) + "\"")) {
      String json =
          "{\"church\":\"ht\",\"start\":\"2026-12-08T18:30\",\"minutes\":%s}".formatted(value);

      assertProblem(400, "", post("/api/masses", JSON, json));
    }
  }

  /** No list comes in packed; a file that is packed is told from one that is not. */
  @Test
  void a_packed_file_is_refused_and_never_unpacked() {
    for (byte[] packed : List.of(zip(), gzip())) {
      for (String type : List.of("text/csv", "application/octet-stream")) {
        assertProblem(
            422,
            "packed",
            post(
                "/api/imports?what=pieces&dryRun=false", type, BodyPublishers.ofByteArray(packed)));
      }
      assertPage(400, "packed", upload(packed));
    }
  }

  @Test
  void a_body_that_is_sent_packed_is_not_unpacked() {
    HttpRequest request =
        request("/api/churches", JSON)
            .header("Content-Encoding", "gzip")
            .POST(BodyPublishers.ofByteArray(gzip()))
            .build();

    assertProblem(400, "no JSON", refusing.unchanged(() -> send(request)));
  }

  private HttpResponse<String> upload(byte[] file) {
    ByteArrayOutputStream form = new ByteArrayOutputStream();
    form.writeBytes(part("what", "pieces"));
    form.writeBytes(part("dryRun", "false"));
    form.writeBytes(
        ascii("--x\r\nContent-Disposition: form-data; name=\"file\"; filename=\"a.csv\"\r\n\r\n"));
    form.writeBytes(file);
    form.writeBytes(ascii("\r\n--x--\r\n"));
    return post(
        "/import",
        "multipart/form-data; boundary=x",
        BodyPublishers.ofByteArray(form.toByteArray()));
  }

  private static byte[] part(String name, String value) {
    return ascii(
        "--x\r\nContent-Disposition: form-data; name=\"%s\"\r\n\r\n%s\r\n".formatted(name, value));
  }

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private HttpResponse<String> post(String address, String type, String body) {
    return post(address, type, BodyPublishers.ofString(body));
  }

  /** Sends what is to change nothing. */
  private HttpResponse<String> post(String address, String type, BodyPublisher body) {
    return refusing.unchanged(() -> send(request(address, type).POST(body).build()));
  }

  private static HttpRequest.Builder request(String address, String type) {
    return HttpRequest.newBuilder(URI.create("http://localhost:" + RestAssured.port + address))
        .header("Authorization", "Bearer " + Credentials.SERVER_TOKEN)
        .header("Accept", "text/html,*/*")
        .header("Content-Type", type);
  }

  private HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static void assertProblem(int status, String words, HttpResponse<String> answer) {
    assertAnswer(status, "application/problem+json", words, answer);
    assertTrue(answer.body().contains("\"detail\":\""), answer.body());
  }

  private static void assertPage(int status, String words, HttpResponse<String> answer) {
    assertAnswer(status, "text/html", words, answer);
    assertTrue(answer.body().contains("<h1"), answer.body());
  }

  private static void assertAnswer(
      int status, String type, String words, HttpResponse<String> answer) {
    assertEquals(status, answer.statusCode(), answer.body());
    String given = answer.headers().firstValue("Content-Type").orElse("");
    assertTrue(given.startsWith(type), given);
    assertTrue(answer.body().contains(words), answer.body());
    assertTrue(answer.body().length() < 100_000, "the answer repeats what was sent");
  }

  /** A few kilobytes that would be fifty megabytes. */
  private static byte[] zip() {
    return packed(
        out -> {
          ZipOutputStream zip = new ZipOutputStream(out);
          zip.putNextEntry(new ZipEntry("../../pieces.csv"));
          return zip;
        });
  }

  private static byte[] gzip() {
    return packed(GZIPOutputStream::new);
  }

  private interface Packing {
    OutputStream around(OutputStream out) throws IOException;
  }

  private static byte[] packed(Packing packing) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream();
    try (OutputStream out = packing.around(packed)) {
      out.write(new byte[50 << 20]);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }
}
