package vestiary.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import vestiary.scenario.Credentials;
import vestiary.scenario.FreePort;

/** The packaged program in a process of its own, as people run it. */
public final class PackagedServer implements AutoCloseable {

  private static final Path PROGRAM =
      Path.of("target", "quarkus-app", "quarkus-run.jar").toAbsolutePath();
  private static final Duration PATIENCE = Duration.ofSeconds(120);
  private static final Duration BREATH = Duration.ofMillis(100);

  private final HttpClient client =
      HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();
  private final ObjectMapper json = new ObjectMapper();
  private final Process process;
  private final Path folder;
  private final int port;
  private final Path log;

  private PackagedServer(Process process, Path folder, int port, Path log) {
    this.process = process;
    this.folder = folder;
    this.port = port;
    this.log = log;
  }

  /** The program on a folder of data and on a free port, once it answers. */
  public static PackagedServer start(Path folder, String... arguments) {
    return start(folder, Map.of(), arguments);
  }

  /**
   * The program once it answers.
   *
   * @param environment besides the folder and the port, which it may also change
   */
  public static PackagedServer start(
      Path folder, Map<String, String> environment, String... arguments) {
    PackagedServer server = launch(folder, FreePort.find(), environment, arguments);
    try {
      server.awaitAnswer();
      return server;
    } catch (RuntimeException | Error e) {
      server.close();
      throw e;
    }
  }

  /** The program just launched, without waiting: for starts that are to be refused. */
  public static PackagedServer launch(
      Path folder, int port, Map<String, String> environment, String... arguments) {
    if (!Files.exists(PROGRAM)) {
      throw new IllegalStateException(PROGRAM + " is missing; run mvn package first.");
    }
    List<String> command = new ArrayList<>(List.of(java(), "-jar", PROGRAM.toString()));
    command.addAll(List.of(arguments));
    try {
      Path log = Files.createTempFile("vestiary-server", ".log");
      log.toFile().deleteOnExit();
      ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
      builder
          .environment()
          .keySet()
          .removeIf(name -> name.startsWith("QUARKUS_") || name.startsWith("VESTIARY_"));
      builder.environment().put("VESTIARY_DATA", folder.toString());
      builder.environment().put("QUARKUS_HTTP_PORT", String.valueOf(port));
      builder.environment().put("VESTIARY_ADMIN_TOKEN", Credentials.SERVER_TOKEN);
      builder.environment().putAll(environment);
      return new PackagedServer(builder.redirectOutput(log.toFile()).start(), folder, port, log);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The address of a page; {@code path} begins with a slash. */
  public String address(String path) {
    return "http://localhost:" + port + path;
  }

  public int port() {
    return port;
  }

  /** A page's text, whatever the status. */
  public String page(String path) {
    return send(request(path).header("Accept", "text/html").GET().build()).body();
  }

  /** What the API answers, which must be a success. */
  public JsonNode read(String path) {
    return json(request(path).header("Accept", "application/json").GET().build());
  }

  /** What the API answers to something new, which must be a success. */
  public JsonNode enter(String path, Map<String, ?> body) {
    try {
      return json(
          request(path)
              .header("Content-Type", "application/json")
              .POST(BodyPublishers.ofString(json.writeValueAsString(body)))
              .build());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What the program has said so far, on both of its outputs. */
  public String said() {
    try {
      return Files.readString(log);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public boolean isRunning() {
    return process.isAlive();
  }

  /** The code with which the program ends by itself. */
  public int awaitEnd() {
    try {
      if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
        throw new IllegalStateException("The server goes on. It said:\n" + said());
      }
      return process.exitValue();
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  /** Ends it as a terminal's Ctrl-C or the system's shutdown does. */
  public void stop() {
    process.destroy();
    awaitEnd();
  }

  /** Ends it as a power cut does. */
  public void kill() {
    process.destroyForcibly();
    awaitEnd();
  }

  /** The PostgreSQL that came along, if one is noted in the folder and runs. */
  public Optional<ProcessHandle> findPostgres() {
    return postmaster().stream()
        .findFirst()
        .map(String::strip)
        .flatMap(number -> ProcessHandle.of(Long.parseLong(number)))
        .filter(ProcessHandle::isAlive);
  }

  /** Where the PostgreSQL that came along is reached, to look into it from outside. */
  public String databaseAddress() {
    return "jdbc:postgresql://localhost:%s/vestiary?user=postgres&password=postgres"
        .formatted(postmaster().get(3).strip());
  }

  /** Stops it if it still runs; a system without a polite ending leaves PostgreSQL to us. */
  @Override
  public void close() {
    if (process.isAlive()) {
      Optional<ProcessHandle> postgres = findPostgres();
      stop();
      postgres.ifPresent(ProcessHandle::destroy);
    }
  }

  /** The lines of PostgreSQL's own note: process, folder, start, port and more. */
  private List<String> postmaster() {
    Path note = folder.resolve("database").resolve("postmaster.pid");
    try {
      return Files.exists(note) ? Files.readAllLines(note) : List.of();
    } catch (IOException e) {
      return List.of();
    }
  }

  private void awaitAnswer() {
    Instant deadline = Instant.now().plus(PATIENCE);
    while (!answers()) {
      if (!process.isAlive() || Instant.now().isAfter(deadline)) {
        throw new IllegalStateException("The server does not answer. It said:\n" + said());
      }
      pause();
    }
  }

  private boolean answers() {
    try {
      return client.send(request("/q/health/ready").build(), BodyHandlers.discarding()).statusCode()
          == 200;
    } catch (IOException e) {
      // Refused before it listens, or cut off while it begins to: either way it is not there yet.
      return false;
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private JsonNode json(HttpRequest request) {
    HttpResponse<String> answer = send(request);
    if (answer.statusCode() >= 300) {
      throw new IllegalStateException(answer.statusCode() + " " + answer.body());
    }
    try {
      return json.readTree(answer.body());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, BodyHandlers.ofString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private HttpRequest.Builder request(String path) {
    return HttpRequest.newBuilder(URI.create(address(path)))
        .header("Authorization", "Bearer " + Credentials.SERVER_TOKEN)
        .timeout(PATIENCE);
  }

  private static void pause() {
    try {
      Thread.sleep(BREATH.toMillis());
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private static IllegalStateException interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    return new IllegalStateException(e);
  }

  private static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }
}
