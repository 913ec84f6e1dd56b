package vestiary.scenario;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.JWSHeader;
import com.nimbusds.jose.crypto.RSASSASigner;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.RSAKey;
import com.nimbusds.jose.jwk.gen.RSAKeyGenerator;
import com.nimbusds.jwt.JWTClaimsSet;
import com.nimbusds.jwt.SignedJWT;
import com.nimbusds.oauth2.sdk.util.URLUtils;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The sign-in service of an invented diocese: whoever is led to it is signed in at once, as the
 * subject that the address asks for beside the rest, and what it says of them has the flaw that the
 * address asks for.
 *
 * <p>Source: OpenID Connect Core 1.0, 2 and 3.1; Discovery 1.0, 4; RFC 7636, 4.6.
 */
public final class SignInService implements QuarkusTestResourceLifecycleManager {

  private static final String CLIENT = "vestments";
  private static final String SECRET = "a secret of both";
  private static final Duration AN_HOUR = Duration.ofHours(1);

  private final Map<String, Map<String, List<String>>> byCode = new ConcurrentHashMap<>();
  private HttpServer server;
  private RSAKey key;
  private RSAKey foreign;

  @Override
  public Map<String, String> start() {
    try {
      key = new RSAKeyGenerator(2048).keyID("one").generate();
      foreign = new RSAKeyGenerator(2048).keyID("one").generate();
      server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    } catch (JOSEException | IOException e) {
      throw new IllegalStateException(e);
    }
    server.createContext("/.well-known/openid-configuration", this::describe);
    server.createContext("/keys", e -> answer(e, 200, new JWKSet(key).toString()));
    server.createContext("/authorize", this::signIn);
    server.createContext("/token", this::tell);
    server.start();
    return Map.of(
        "vestiary.oidc.issuer",
        address(),
        "vestiary.oidc.client-id",
        CLIENT,
        "vestiary.oidc.client-secret",
        SECRET,
        "vestiary.oidc.name",
        "the diocese of Wenlow");
  }

  @Override
  public void stop() {
    if (server != null) {
      server.stop(0);
    }
  }

  private String address() {
    return "http://localhost:" + server.getAddress().getPort();
  }

  private void describe(HttpExchange exchange) throws IOException {
    answer(
        exchange,
        200,
        """
        {"issuer":"%1$s","authorization_endpoint":"%1$s/authorize","token_endpoint":"%1$s/token",
         "jwks_uri":"%1$s/keys","response_types_supported":["code"],
         "subject_types_supported":["public"],"id_token_signing_alg_values_supported":["RS256"]}
        """
            .formatted(address()));
  }

  private void signIn(HttpExchange exchange) throws IOException {
    Map<String, List<String>> asked =
        URLUtils.parseParameters(exchange.getRequestURI().getRawQuery());
    String code = UUID.randomUUID().toString();
    byCode.put(code, asked);
    exchange
        .getResponseHeaders()
        .add(
            "Location",
            "%s?code=%s&state=%s".formatted(one(asked, "redirect_uri"), code, one(asked, "state")));
    answer(exchange, 302, "");
  }

  private void tell(HttpExchange exchange) throws IOException {
    String body = new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8);
    Map<String, List<String>> sent = URLUtils.parseParameters(body);
    Map<String, List<String>> asked = byCode.remove(one(sent, "code"));
    boolean isClient = basic().equals(exchange.getRequestHeaders().getFirst("Authorization"));
    if (asked == null || !isClient || !isProof(sent, asked)) {
      answer(exchange, 400, "{\"error\":\"invalid_grant\"}");
      return;
    }
    answer(
        exchange,
        200,
        """
        {"access_token":"x","token_type":"Bearer","expires_in":60,"id_token":"%s"}"""
            .formatted(idToken(asked)));
  }

  /** As RFC 6749, 2.3.1 has it: both parts are encoded as form fields are. */
  private static String basic() {
    String both = CLIENT + ":" + SECRET.replace(" ", "+");
    return "Basic " + Base64.getEncoder().encodeToString(both.getBytes(StandardCharsets.US_ASCII));
  }

  private static boolean isProof(Map<String, List<String>> sent, Map<String, List<String>> asked) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(one(sent, "code_verifier").getBytes(StandardCharsets.US_ASCII));
      return one(asked, "code_challenge_method").equals("S256")
          && Base64.getUrlEncoder()
              .withoutPadding()
              .encodeToString(digest)
              .equals(one(asked, "code_challenge"));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private String idToken(Map<String, List<String>> asked) {
    String flaw = one(asked, "flaw");
    Instant now = Instant.now();
    Instant ends = flaw.equals("expired") ? now.minus(AN_HOUR) : now.plus(AN_HOUR);
    JWTClaimsSet claims =
        new JWTClaimsSet.Builder()
            .issuer(flaw.equals("issuer") ? "https://elsewhere.example" : address())
            .audience(flaw.equals("audience") ? "somebody-else" : CLIENT)
            .subject(one(asked, "subject"))
            .claim("nonce", flaw.equals("nonce") ? "another" : one(asked, "nonce"))
            .claim("email", "piers@home.example")
            .issueTime(Date.from(ends.minus(AN_HOUR)))
            .expirationTime(Date.from(ends))
            .build();
    SignedJWT token =
        new SignedJWT(new JWSHeader.Builder(JWSAlgorithm.RS256).keyID("one").build(), claims);
    try {
      token.sign(new RSASSASigner(flaw.equals("signature") ? foreign : key));
    } catch (JOSEException e) {
      throw new IllegalStateException(e);
    }
    return token.serialize();
  }

  private static String one(Map<String, List<String>> all, String name) {
    return all.getOrDefault(name, List.of("")).get(0);
  }

  private static void answer(HttpExchange exchange, int status, String body) throws IOException {
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    exchange.getResponseHeaders().add("Content-Type", "application/json");
    exchange.sendResponseHeaders(status, bytes.length == 0 ? -1 : bytes.length);
    exchange.getResponseBody().write(bytes);
    exchange.close();
  }
}
