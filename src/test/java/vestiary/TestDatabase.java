package vestiary;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.testcontainers.DockerClientFactory;
import org.testcontainers.postgresql.PostgreSQLContainer;
import vestiary.scenario.Credentials;

/**
 * The PostgreSQL that tests run on: a container where a Docker engine can start one, else the
 * PostgreSQL that comes along, in a folder of its own, either of them reached through a {@link
 * CuttableProxy}. {@code -DtestDatabase=} {@code container} or {@code embedded} asks for one of
 * them. Without a database the tests fail; none is ever left out.
 */
@WithTestResource(value = TestDatabase.class, scope = TestResourceScope.GLOBAL)
public class TestDatabase implements QuarkusTestResourceLifecycleManager {

  private static final String IMAGE = "postgres:18";

  /** Fetching the image may take a while; a network that leads nowhere must not take longer. */
  private static final Duration PATIENCE = Duration.ofSeconds(90);

  /** Kept, since a logger that nobody holds forgets its level. */
  private static final Logger NOISE = Logger.getLogger("org.testcontainers");

  private static final Pattern ADDRESS = Pattern.compile("//([^:/]+):(\\d+)/");

  private AutoCloseable server = () -> {};
  private CuttableProxy way;

  @Override
  public Map<String, String> start() {
    Running running = open(System.getProperty("vestiary.test.database", "auto"));
    System.out.printf("Tests run on %s.%n", running.what());
    Map<String, String> settings = new HashMap<>(withLimitedRole(running, throughProxy(running)));
    settings.put("vestiary.demo", "false");
    settings.put("vestiary.admin-token", Credentials.SERVER_TOKEN);
    // As behind a proxy that adds https, so that a test can say by which way it comes.
    settings.put("quarkus.http.proxy.proxy-address-forwarding", "true");
    return settings;
  }

  @Override
  public void inject(TestInjector test) {
    Credentials.send();
    test.injectIntoFields(way, new TestInjector.MatchesType(CuttableProxy.class));
  }

  @Override
  public void stop() {

    try {
      server.close();
    } catch (Exception e) {
      throw new IllegalStateException("the test database did not stop", e);
    }
  }

  private static Map<String, String> withLimitedRole(Running running, String url) {
    Login owner = Login.of(url, running.user(), running.password());
    try (Connection connection = owner.connect()) {
      return LimitedRole.prepare(connection, owner).orElseThrow();
    } catch (SQLException e) {
      throw new IllegalStateException("the role of the tests could not be made", e);
    }
  }

  private String throughProxy(Running running) {
    Matcher address = ADDRESS.matcher(running.url());
    if (!address.find()) {
      throw new IllegalStateException("no host and port in " + running.url());
    }
    way = new CuttableProxy(address.group(1), Integer.parseInt(address.group(2)));
    server =
        () -> {
          way.cut();
          running.server().close();
        };
    return address.replaceFirst("//localhost:" + way.port() + "/");
  }

  /** A database that was started, and how it is reached. */
  private record Running(
      String what, String url, String user, String password, AutoCloseable server) {}

  private static Running open(String which) {
    NOISE.setLevel(Level.OFF);
    return switch (which) {
      case "container" -> container();
      case "embedded" -> embedded();
      case "auto" -> findContainer().orElseGet(TestDatabase::embedded);
      default ->
          throw new IllegalArgumentException(
              "testDatabase is \"%s\"; it can be auto, container, embedded.".formatted(which));
    };
  }

  private static Optional<Running> findContainer() {
    if (!DockerClientFactory.instance().isDockerAvailable()) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          CompletableFuture.supplyAsync(TestDatabase::container)
              .get(PATIENCE.toSeconds(), TimeUnit.SECONDS));
    } catch (ExecutionException | TimeoutException e) {
      System.out.printf("Docker answers and does not start %s: %s%n", IMAGE, e);
      return Optional.empty();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static Running container() {
    PostgreSQLContainer container = new PostgreSQLContainer(IMAGE);
    container.start();
    return new Running(
        "a container of " + IMAGE,
        container.getJdbcUrl(),
        container.getUsername(),
        container.getPassword(),
        container::stop);
  }

  private static Running embedded() {
    try {
      EmbeddedPostgres postgres = EmbeddedPostgres.builder().start();
      return new Running(
          "the PostgreSQL that comes along",
          postgres.getJdbcUrl("postgres", "postgres"),
          "postgres",
          "postgres",
          postgres);
    } catch (IOException e) {
      throw new IllegalStateException("no database could be started for the tests", e);
    }
  }
}
