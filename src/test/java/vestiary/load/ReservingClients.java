package vestiary.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import vestiary.browser.PackagedServer;
import vestiary.scenario.Credentials;

/**
 * Clients that set the same few dozen sets aside for Masses whose times overlap, and give some up
 * again, as fast as they are answered; and what the database then holds, asked by SQL.
 */
public final class ReservingClients {

  private static final int SETS = 40;
  private static final int MASSES = 40;

  /** By PostgreSQL's own operator on ranges. */
  private static final String OVERLAPS =
      """
      select count(*) from occupation a join occupation b
        on a.cluster_id = b.cluster_id and a.piece_id = b.piece_id and a.id < b.id
        and a.during && b.during
      where a.standing and b.standing
      """;

  /** Reservations that stand without one of their pieces, and rows of none that stands. */
  private static final String HALVES =
      """
      select (
        select count(*) from reservation r
        where r.state = 'held' and exists (
          select 1 from piece p where (p.set_id = r.set_id or p.id = r.piece_id) and not exists (
            select 1 from occupation o where o.reservation_id = r.id and o.piece_id = p.id and o.standing)))
      + (
        select count(*) from occupation o left join reservation r
          on r.cluster_id = o.cluster_id and r.id = o.reservation_id
        where o.state = 'held' and o.standing and r.state is distinct from 'held')
      """;

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final ObjectMapper json = new ObjectMapper();
  private final Latencies latencies = new Latencies();
  private final Map<String, Integer> answers = new TreeMap<>();
  private final PackagedServer server;
  private final List<String> sets = new ArrayList<>();
  private final List<String> masses = new ArrayList<>();
  private volatile boolean over;

  /** Enters the Masses on a server of the demo. */
  public ReservingClients(PackagedServer server) {
    this.server = server;
    for (JsonNode set : server.read("/api/sets")) {
      if (sets.size() < SETS) {
        sets.add(set.path("code").asText());
      }
    }
    List<String> churches = new ArrayList<>();
    server.read("/api/churches").forEach(one -> churches.add(one.path("slug").asText()));
    LocalDate day = LocalDate.now().plusDays(40);
    for (int at = 0; at < MASSES; at++) {
      String start = "%sT%02d:%02d".formatted(day, 8 + at % 11, at * 7 % 60);
      masses.add(
          server
              .enter(
                  "/api/masses",
                  Map.of("church", churches.get(at % churches.size()), "start", start))
              .path("id")
              .asText());
    }
  }

  /** So many of them for so long, or until {@link #stop}. */
  public void run(int clients, int seconds) throws InterruptedException {
    ExecutorService all = Executors.newFixedThreadPool(clients);
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(seconds);
    for (int at = 0; at < clients; at++) {
      Random random = new Random(at);
      all.execute(() -> work(random, end));
    }
    all.shutdown();
    all.awaitTermination(seconds + 120L, TimeUnit.SECONDS);
  }

  /** Has them stop; what they were at is not waited for. */
  public void stop() {
    over = true;
  }

  /** How many were answered how, as in {@code {201=12, 409=88}}. */
  public synchronized Map<String, Integer> answers() {
    return Map.copyOf(answers);
  }

  /** How long they waited for it. */
  String table() {
    return latencies.table();
  }

  /** Pairs of times of one piece that overlap. */
  public static long overlaps(PackagedServer server) throws SQLException {
    return count(server, OVERLAPS);
  }

  /** Reservations that are there in part. */
  public static long halves(PackagedServer server) throws SQLException {
    return count(server, HALVES);
  }

  /** Reservations that stand. */
  public static long standing(PackagedServer server) throws SQLException {
    return count(server, "select count(*) from reservation where state = 'held'");
  }

  private static long count(PackagedServer server, String query) throws SQLException {
    try (Connection connection = DriverManager.getConnection(server.databaseAddress());
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      found.next();
      return found.getLong(1);
    }
  }

  private void work(Random random, long end) {
    List<String> own = new ArrayList<>();
    while (!over && System.nanoTime() < end) {
      try {
        if (!own.isEmpty() && random.nextInt(3) == 0) {
          note(send("giving up", delete(own.remove(random.nextInt(own.size())))));
        } else {
          HttpResponse<String> answer = send("setting aside", wish(random));
          note(answer);
          if (answer.statusCode() == 201) {
            own.add(json.readTree(answer.body()).path("id").asText());
          }
        }
      } catch (IOException away) {
        note("no answer");
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
    }
  }

  private HttpRequest wish(Random random) throws IOException {
    Map<String, String> body =
        Map.of(
            "set", sets.get(random.nextInt(sets.size())),
            "mass", masses.get(random.nextInt(masses.size())));
    return to("/api/reservations")
        .header("Content-Type", "application/json")
        .POST(BodyPublishers.ofString(json.writeValueAsString(body)))
        .build();
  }

  private HttpRequest delete(String id) {
    return to("/api/reservations/" + id).DELETE().build();
  }

  private HttpRequest.Builder to(String path) {
    return HttpRequest.newBuilder(URI.create(server.address(path)))
        .header("Authorization", "Bearer " + Credentials.SERVER_TOKEN);
  }

  private HttpResponse<String> send(String what, HttpRequest request)
      throws IOException, InterruptedException {
    long begun = System.nanoTime();
    HttpResponse<String> answer = client.send(request, BodyHandlers.ofString());
    latencies.note(what, System.nanoTime() - begun);
    return answer;
  }

  private void note(HttpResponse<String> answer) {
    note(String.valueOf(answer.statusCode()));
  }

  private synchronized void note(String answer) {
    answers.merge(answer, 1, Integer::sum);
  }
}
