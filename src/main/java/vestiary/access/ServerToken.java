package vestiary.access;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** The administrator's token of the first cluster, from the server's environment. */
@ApplicationScoped
class ServerToken {

  private final Optional<byte[]> token;

  ServerToken(@ConfigProperty(name = "vestiary.admin-token") Optional<String> token) {
    this.token = token.map(String::strip).filter(t -> !t.isEmpty()).map(ServerToken::bytes);
  }

  /** Whether this is it; as slow for one that is nearly right as for one that is all wrong. */
  boolean is(String offered) {
    return token.filter(known -> MessageDigest.isEqual(known, bytes(offered))).isPresent();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
