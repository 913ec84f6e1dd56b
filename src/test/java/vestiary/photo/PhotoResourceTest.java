package vestiary.photo;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Browsing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Photographs come back small, upright and without what the camera wrote into them. */
@QuarkusTest
class PhotoResourceTest {

  private static final String PHOTOS = "/api/pieces/HT-W1-C/photos";
  private static final String PAGE = "/vestments/HT-W1-C/photos";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_photograph_is_kept_shown_and_removed() {
    String picture =
        add(Photographs.jpeg())
            .then()
            .statusCode(201)
            .body("width", equalTo(400))
            .body("height", equalTo(200))
            .extract()
            .path("picture");

    given()
        .get(picture)
        .then()
        .statusCode(200)
        .contentType("image/jpeg")
        .header("X-Content-Type-Options", "nosniff")
        .header("Content-Security-Policy", containsString("default-src 'none'"));
    Browsing.page("/vestments/HT-W1-C").says("Care and photographs");
    assertTrue(Browsing.page(PAGE).html().contains("<img src=\"/vestments/HT-W1-C/photos/"));

    Sending.delete(picture).then().statusCode(204);

    Sending.get(PHOTOS).then().body("", hasSize(0));
    given().get(picture).then().statusCode(404);
  }

  @Test
  void the_place_where_it_was_taken_does_not_come_back() {
    byte[] sent = Photographs.withExif(1);
    assertTrue(text(sent).contains("Exif") && text(sent).contains("Tollbridge"));

    byte[] kept = kept(sent);

    assertFalse(text(kept).contains("Exif"));
    assertFalse(text(kept).contains("Tollbridge"));
  }

  /** The sent picture is red on its left; where red is once it is upright, seen from the middle. */
  @ParameterizedTest
  @CsvSource({
    "1, 400, 200, 50, 100",
    "2, 400, 200, 350, 100",
    "3, 400, 200, 350, 100",
    "4, 400, 200, 50, 100",
    "5, 200, 400, 100, 50",
    "6, 200, 400, 100, 50",
    "7, 200, 400, 100, 350",
    "8, 200, 400, 100, 350"
  })
  void a_picture_stands_upright_however_the_phone_was_held(
      int orientation, int width, int height, int redX, int redY) {
    BufferedImage kept = Photographs.decoded(kept(Photographs.withExif(orientation)));

    assertEquals(width, kept.getWidth());
    assertEquals(height, kept.getHeight());
    assertTrue(isRed(kept.getRGB(redX, redY)), "no red at the place");
    assertFalse(isRed(kept.getRGB(width - 1 - redX, height - 1 - redY)), "red on both sides");
  }

  @Test
  void a_large_picture_becomes_small() {
    byte[] sent = Photographs.plain(5000, 3000);

    BufferedImage kept = Photographs.decoded(kept(sent));

    assertEquals(1600, kept.getWidth());
    assertEquals(960, kept.getHeight());
  }

  @Test
  void a_png_comes_back_as_jpeg() {
    byte[] kept = kept(Photographs.png());

    assertEquals((byte) 0xFF, kept[0]);
    assertEquals((byte) 0xD8, kept[1]);
  }

  @Test
  void what_cannot_be_read_is_refused_with_what_to_do() throws IOException {
    refused(Photographs.webp(), "WebP");
    refused(Photographs.heic(), "HEIC");
    refused("GIF89a".getBytes(StandardCharsets.US_ASCII), "GIF");
    refused(zip(), "no picture");
    refused(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, 1, 2, 3}, "damaged");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "<html><script>alert(1)</script></html>",
        "<?xml version=\"1.0\"?><svg xmlns=\"http://www.w3.org/2000/svg\" onload=\"alert(1)\"/>",
        "#!/bin/sh\necho",
        "x"
      })
  void words_are_no_picture(String words) {
    refused(words.getBytes(StandardCharsets.UTF_8), "no picture");
  }

  @Test
  void a_script_behind_a_picture_is_gone() {
    byte[] picture = Photographs.jpeg();
    byte[] script = "<script>alert(1)</script>".getBytes(StandardCharsets.US_ASCII);
    byte[] both = Arrays.copyOf(picture, picture.length + script.length);
    System.arraycopy(script, 0, both, picture.length, script.length);

    assertFalse(text(kept(both)).contains("<script>"));
  }

  @Test
  void a_picture_that_says_it_is_immense_is_refused_by_its_header() {
    refused(Photographs.pngHeader(60_000, 60_000), "60,000 by 60,000 pixels");
  }

  @Test
  void fifty_megabytes_are_refused_in_words() {
    given()
        .contentType("multipart/form-data; boundary=x")
        .body(new byte[50 << 20])
        .post(PHOTOS)
        .then()
        .statusCode(413)
        .body("detail", containsString("8 MB"));
  }

  @Test
  void the_page_says_what_is_wrong_and_that_nobody_should_be_in_the_picture() {
    Browsing.sendWithFile(PAGE, Map.of(), "photo", Photographs.webp())
        .is(400)
        .says("This is a WebP picture", "no people in the picture");
    Browsing.sendWithFile(PAGE, Map.of(), "photo", new byte[0])
        .is(400)
        .says("Choose a photograph first.");
    Browsing.sendWithFile(PAGE, Map.of(), "photo", Photographs.png()).leadsTo(PAGE + "?done=added");
  }

  @Test
  void twelve_are_the_most() {
    for (int i = 0; i < 12; i++) {
      add(Photographs.jpeg()).then().statusCode(201);
    }

    add(Photographs.jpeg()).then().statusCode(409).body("detail", containsString("12"));
    assertEquals(12, Sending.get(PHOTOS).jsonPath().getList("").size());
  }

  private static byte[] kept(byte[] sent) {
    String picture = add(sent).then().statusCode(201).extract().path("picture");
    return given().get(picture).asByteArray();
  }

  private static void refused(byte[] sent, String words) {
    add(sent)
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("detail", containsString(words));
    assertEquals(List.of(), Sending.get(PHOTOS).jsonPath().getList(""));
  }

  private static Response add(byte[] file) {
    return given().multiPart("photo", "picture.jpg", file, "image/jpeg").post(PHOTOS);
  }

  private static boolean isRed(int rgb) {
    return (rgb >> 16 & 0xFF) > 150 && (rgb & 0xFF) < 100;
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static byte[] zip() throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      zip.putNextEntry(new ZipEntry("a.txt"));
      zip.write(1);
    }
    return bytes.toByteArray();
  }
}
