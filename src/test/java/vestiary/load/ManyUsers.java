package vestiary.load;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import vestiary.browser.PackagedServer;
import vestiary.scenario.Credentials;

/**
 * Many people at once on the packaged program, as behind a proxy, and beside them, if wanted, many
 * wrong sign-ins from many addresses. Run by hand (docs/benchmarks.md):
 *
 * <pre>ManyUsers [users] [seconds] [wrong sign-ins]</pre>
 */
final class ManyUsers {

  private static final String PASSWORD = "thurible otter seventy lanterns";
  private static final Pattern LINK = Pattern.compile("/welcome/[A-Za-z0-9_-]+");
  private static final Pattern SESSION = Pattern.compile("vestiary-session=([^;]+)");
  private static final int FLOODING = 100;

  /** So long until the program has been compiled for what is asked of it. */
  private static final int WARMING_UP = 60;

  /** What the server has said. */
  private static final Path LOG = Path.of("target", "many-users.log");

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final Latencies latencies = new Latencies();
  private final Random random = new Random(20261126);
  private final PackagedServer server;

  private ManyUsers(PackagedServer server) {
    this.server = server;
  }

  public static void main(String... arguments) throws Exception {
    int users = argument(arguments, 0, 200);
    int seconds = argument(arguments, 1, 120);
    int wrong = argument(arguments, 2, 0);
    Path folder = Files.createTempDirectory("vestiary-load");
    Map<String, String> environment =
        Map.of("VESTIARY_DEMO", "true", "QUARKUS_HTTP_PROXY_PROXY_ADDRESS_FORWARDING", "true");
    try (PackagedServer server = PackagedServer.start(folder, environment)) {
      new ManyUsers(server).run(users, seconds, wrong);
    }
  }

  private void run(int users, int seconds, int wrong) throws Exception {
    List<String> churches = new ArrayList<>();
    server.read("/api/churches").forEach(church -> churches.add(church.path("slug").asText()));
    System.out.printf("Letting %d people in …%n", users);
    List<String> sessions = new ArrayList<>();
    List<String> masses = new ArrayList<>();
    for (int i = 0; i < users; i++) {
      boolean writes = i % 4 != 0;
      sessions.add(session("person-" + i, writes ? "pastor" : "reader"));
      masses.add(writes ? mass(churches.get(i % churches.size()), i) : "");
    }
    System.out.printf("Warming up for %d seconds …%n", WARMING_UP);
    work(sessions, masses, new Latencies(), WARMING_UP, 0);
    System.out.printf("Load average before: %.2f%n", load());
    Map<Integer, Integer> answered = work(sessions, masses, latencies, seconds, wrong);
    System.out.printf("Load average after: %.2f%n%n", load());
    System.out.println(latencies.table());
    if (wrong > 0) {
      System.out.printf("%d wrong sign-ins, answered: %s%n", wrong, answered);
    }
    List<String> errors = latencies.errors();
    System.out.printf("%d errors%n", errors.size());
    errors.stream().limit(10).forEach(System.out::println);
    Files.writeString(LOG, server.said());
  }

  /**
   * Has everybody work for so long, and wrong sign-ins come evenly all the while.
   *
   * @return how many of these were answered how
   */
  private Map<Integer, Integer> work(
      List<String> sessions, List<String> masses, Latencies taken, int seconds, int wrong)
      throws InterruptedException {
    int users = sessions.size();
    ExecutorService people = Executors.newFixedThreadPool(users + FLOODING);
    long length = TimeUnit.SECONDS.toNanos(seconds);
    long end = System.nanoTime() + length;
    for (int i = 0; i < users; i++) {
      String address = "10.1.%d.%d".formatted(i / 250, i % 250 + 1);
      people.execute(
          new BusyUser(
              client,
              server.address(""),
              sessions.get(i),
              address,
              masses.get(i),
              taken,
              new Random(random.nextLong()),
              end));
    }
    Map<Integer, Integer> answered = new TreeMap<>();
    AtomicInteger left = new AtomicInteger(wrong);
    for (int i = 0; i < Math.min(wrong, FLOODING); i++) {
      people.execute(() -> flood(left, end, length / wrong, answered));
    }
    people.shutdown();
    people.awaitTermination(seconds + 120L, TimeUnit.SECONDS);
    return answered;
  }

  /** Tries names and passwords, each time from another address. */
  private void flood(AtomicInteger left, long end, long pause, Map<Integer, Integer> answered) {
    int number = left.getAndDecrement();
    while (number > 0) {
      try {
        TimeUnit.NANOSECONDS.sleep(end - number * pause - System.nanoTime());
        int status =
            post(
                    "/sign-in",
                    "login=person-%d&password=wrong+%d".formatted(number % 200, number),
                    "10.2.%d.%d".formatted(number / 250 % 250, number % 250),
                    "")
                .statusCode();
        synchronized (answered) {
          answered.merge(status, 1, Integer::sum);
        }
      } catch (IOException e) {
        latencies.error("sign-in: " + e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return;
      }
      number = left.getAndDecrement();
    }
  }

  /** Lets somebody in, who chooses a password; answers the session. */
  private String session(String login, String role) throws IOException, InterruptedException {
    String made =
        post(
                "/users",
                "login=%s&name=%s&role=%s".formatted(login, login, role),
                "10.3.0.1",
                Credentials.SERVER_TOKEN)
            .body();
    String password = URLEncoder.encode(PASSWORD, StandardCharsets.UTF_8);
    HttpResponse<String> chosen =
        post(
            found(LINK, made, 0),
            "password=%s&again=%s".formatted(password, password),
            "10.3.0.1",
            "");
    return found(SESSION, chosen.headers().firstValue("Set-Cookie").orElse(""), 1);
  }

  private String mass(String church, int number) {
    JsonNode made =
        server.enter(
            "/api/masses",
            Map.of(
                "church",
                church,
                "start",
                "%sT%02d:%02d"
                    .formatted(
                        LocalDate.now().plusDays(number % 14), 6 + number % 14, number % 4 * 15),
                "minutes",
                30));
    return made.path("id").asText();
  }

  private HttpResponse<String> post(String path, String form, String address, String token)
      throws IOException, InterruptedException {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(server.address(path)))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .header("Accept", "text/html")
            .header("X-Forwarded-For", address)
            .POST(BodyPublishers.ofString(form));
    if (!token.isEmpty()) {
      request.header("Authorization", "Bearer " + token);
    }
    return client.send(request.build(), BodyHandlers.ofString());
  }

  private static String found(Pattern pattern, String text, int group) {
    Matcher found = pattern.matcher(text);
    if (!found.find()) {
      throw new IllegalStateException(pattern + " not in " + text);
    }
    return found.group(group);
  }

  private static double load() {
    return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
  }

  private static int argument(String[] arguments, int place, int otherwise) {
    return arguments.length > place ? Integer.parseInt(arguments[place]) : otherwise;
  }
}
