package vestiary.load;

import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import vestiary.scenario.Page;

/** Somebody who looks and writes at the pace of a person: a look every two to eight seconds. */
final class BusyUser implements Runnable {

  private static final int SHORTEST_PAUSE = 2_000;
  private static final int LONGEST_PAUSE = 8_000;

  private final HttpClient client;
  private final String server;
  private final String session;
  private final String address;
  private final String mass;
  private final Latencies latencies;
  private final Random random;
  private final long end;

  /**
   * Somebody who has signed in.
   *
   * @param server where it is, without a slash at its end
   * @param address from which the proxy says that they come
   * @param mass id of the Mass that they change; empty for whoever only looks
   * @param end until when, by the nanoseconds of this machine
   */
  BusyUser(
      HttpClient client,
      String server,
      String session,
      String address,
      String mass,
      Latencies latencies,
      Random random,
      long end) {
    this.client = client;
    this.server = server;
    this.session = session;
    this.address = address;
    this.mass = mass;
    this.latencies = latencies;
    this.random = random;
    this.end = end;
  }

  @Override
  public void run() {
    try {
      pause(random.nextInt(LONGEST_PAUSE));
      while (System.nanoTime() < end) {
        act(random.nextInt(100));
        pause(SHORTEST_PAUSE + random.nextInt(LONGEST_PAUSE - SHORTEST_PAUSE));
      }
    } catch (IOException e) {
      latencies.error(e.toString());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private void act(int chance) throws IOException, InterruptedException {
    LocalDate day = LocalDate.now().plusDays(random.nextInt(12));
    if (chance < 30) {
      look("the week", "/week/" + day);
    } else if (chance < 50) {
      look("a day", "/day/" + day);
    } else if (chance < 65) {
      look("the vestments", "/vestments");
    } else if (chance < 80) {
      look("the clashes", "/clashes");
    } else if (mass.isEmpty()) {
      look("the year", "/year");
    } else {
      changeMass();
    }
  }

  /** Opens the form, changes the note, sends it, and reads the page that follows. */
  private void changeMass() throws IOException, InterruptedException {
    HttpResponse<String> form = look("a Mass's form", "/masses/" + mass);
    if (form.statusCode() != 200) {
      return;
    }
    pause(SHORTEST_PAUSE);
    Map<String, List<String>> filled =
        Page.of(form.body())
            .form("/masses/" + mass, Map.of("note", "Note " + random.nextInt(1_000)));
    HttpResponse<String> saved =
        send(
            "saving it",
            request("/masses/" + mass)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .POST(BodyPublishers.ofString(encoded(filled)))
                .build(),
            303);
    String way = saved.headers().firstValue("Location").orElse("/week");
    look("the page after it", way.startsWith("http") ? URI.create(way).getRawPath() : way);
  }

  private HttpResponse<String> look(String kind, String path)
      throws IOException, InterruptedException {
    return send(kind, request(path).GET().build(), 200);
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(server + path))
        .header("Cookie", "vestiary-session=" + session)
        .header("X-Forwarded-For", address)
        .header("Accept", "text/html")
        .header("Accept-Encoding", "identity");
  }

  private HttpResponse<String> send(String kind, HttpRequest request, int wanted)
      throws IOException, InterruptedException {
    long begun = System.nanoTime();
    HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
    latencies.note(kind, System.nanoTime() - begun);
    if (answer.statusCode() != wanted) {
      latencies.error("%s: %d at %s".formatted(kind, answer.statusCode(), request.uri()));
    }
    return answer;
  }

  private static String encoded(Map<String, List<String>> form) {
    return form.entrySet().stream()
        .flatMap(field -> field.getValue().stream().map(v -> pair(field.getKey(), v)))
        .collect(Collectors.joining("&"));
  }

  private static String pair(String name, String value) {
    return URLEncoder.encode(name, StandardCharsets.UTF_8)
        + "="
        + URLEncoder.encode(value, StandardCharsets.UTF_8);
  }

  private static void pause(int millis) throws InterruptedException {
    Thread.sleep(millis);
  }
}
