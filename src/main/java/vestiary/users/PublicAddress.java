package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import java.net.URI;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Where people reach this server: {@code VESTIARY_PUBLIC_URL}, or this machine. */
@ApplicationScoped
public class PublicAddress {

  private final String start;

  PublicAddress(
      @ConfigProperty(name = "vestiary.public-url") Optional<String> chosen,
      @ConfigProperty(name = "quarkus.http.port") int port) {
    this.start =
        chosen.map(a -> a.replaceAll("/+$", "")).orElse("http://localhost:%d".formatted(port));
  }

  /** Scheme, host and port, as browsers name an origin (RFC 6454, 6.2). */
  String origin() {
    URI address = URI.create(start);
    String port = address.getPort() == -1 ? "" : ":" + address.getPort();
    return "%s://%s%s".formatted(address.getScheme(), address.getHost(), port);
  }

  /** The host alone. */
  String host() {
    return URI.create(start).getHost();
  }

  /** The whole address of a path, which begins with a slash. */
  public String of(String path) {
    return start + path;
  }
}
