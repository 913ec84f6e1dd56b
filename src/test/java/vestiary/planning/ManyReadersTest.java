package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** More people than the database has connections look at once, and nobody waits for nothing. */
@QuarkusTest
class ManyReadersTest {

  /** Half as many again as there are connections. */
  private static final int READERS = 48;

  @Inject Scenario scenario;

  @TestHTTPResource("/week/2026-12-07")
  URI week;

  @BeforeEach
  void the_demo() {
    scenario.load();
    scenario.becomeDemo();
  }

  @Test
  void all_get_their_page() {
    HttpClient client = HttpClient.newHttpClient();
    HttpRequest request = HttpRequest.newBuilder(week).build();

    List<CompletableFuture<HttpResponse<String>>> asked =
        IntStream.range(0, READERS)
            .mapToObj(reader -> client.sendAsync(request, HttpResponse.BodyHandlers.ofString()))
            .toList();

    assertEquals(
        Set.of(200),
        asked.stream().map(one -> one.join().statusCode()).collect(Collectors.toSet()));
  }
}
