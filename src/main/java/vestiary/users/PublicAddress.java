package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Where people reach this server: {@code VESTIARY_PUBLIC_URL}, or this machine. */
@ApplicationScoped
class PublicAddress {

  private final String start;

  PublicAddress(
      @ConfigProperty(name = "vestiary.public-url") Optional<String> chosen,
      @ConfigProperty(name = "quarkus.http.port") int port) {
    this.start =
        chosen.map(a -> a.replaceAll("/+$", "")).orElse("http://localhost:%d".formatted(port));
  }

  /** The whole address of a path, which begins with a slash. */
  String of(String path) {
    return start + path;
  }
}
