package vestiary.users;

import static vestiary.web.Speech.say;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSAlgorithm;
import com.nimbusds.jose.jwk.source.JWKSourceBuilder;
import com.nimbusds.jose.proc.BadJOSEException;
import com.nimbusds.jose.proc.JWSVerificationKeySelector;
import com.nimbusds.jose.proc.SecurityContext;
import com.nimbusds.oauth2.sdk.AuthorizationCode;
import com.nimbusds.oauth2.sdk.AuthorizationCodeGrant;
import com.nimbusds.oauth2.sdk.GeneralException;
import com.nimbusds.oauth2.sdk.ResponseType;
import com.nimbusds.oauth2.sdk.Scope;
import com.nimbusds.oauth2.sdk.TokenRequest;
import com.nimbusds.oauth2.sdk.TokenResponse;
import com.nimbusds.oauth2.sdk.auth.ClientSecretBasic;
import com.nimbusds.oauth2.sdk.auth.Secret;
import com.nimbusds.oauth2.sdk.http.HTTPRequest;
import com.nimbusds.oauth2.sdk.id.ClientID;
import com.nimbusds.oauth2.sdk.id.Issuer;
import com.nimbusds.oauth2.sdk.pkce.CodeChallengeMethod;
import com.nimbusds.openid.connect.sdk.AuthenticationRequest;
import com.nimbusds.openid.connect.sdk.OIDCTokenResponse;
import com.nimbusds.openid.connect.sdk.OIDCTokenResponseParser;
import com.nimbusds.openid.connect.sdk.op.OIDCProviderMetadata;
import com.nimbusds.openid.connect.sdk.validators.IDTokenValidator;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * The service by which a diocese lets its people sign in, where one is named: asked by the code
 * flow with PKCE, believed only what it has signed for us, for this way and not long ago. Nothing
 * but the subject is read.
 *
 * <p>Source: OpenID Connect Core 1.0, 3.1; OpenID Connect Discovery 1.0, 4; RFC 7636; RFC 9700.
 */
@ApplicationScoped
class OpenIdProvider {

  private static final Logger LOG = Logger.getLogger(OpenIdProvider.class);
  private static final int PATIENCE = (int) Duration.ofSeconds(5).toMillis();
  private static final Set<JWSAlgorithm> SIGNED_BY =
      Set.of(JWSAlgorithm.RS256, JWSAlgorithm.PS256, JWSAlgorithm.ES256);

  private final Optional<String> issuer;
  private final String client;
  private final String secret;
  private final String name;
  private final PublicAddress here;
  private volatile Known known;

  OpenIdProvider(
      @ConfigProperty(name = "vestiary.oidc.issuer") Optional<String> issuer,
      @ConfigProperty(name = "vestiary.oidc.client-id") Optional<String> client,
      @ConfigProperty(name = "vestiary.oidc.client-secret") Optional<String> secret,
      @ConfigProperty(name = "vestiary.oidc.name") Optional<String> name,
      PublicAddress here) {
    this.issuer = issuer.filter(address -> !address.isBlank());
    this.client = client.orElse("vestiary");
    this.secret = secret.orElse("");
    this.name = name.orElse("your diocese");
    this.here = here;
  }

  private record Known(OIDCProviderMetadata metadata, IDTokenValidator validator) {}

  /** Whether one is named. */
  boolean isOn() {
    return issuer.isPresent();
  }

  /** What people call it. */
  String name() {
    return name;
  }

  /** Who answers for its subjects; to be asked only while one is named. */
  String issuer() {
    return issuer.orElseThrow();
  }

  /**
   * Where the browser is led.
   *
   * @throws Refused if the service does not answer
   */
  URI address(OutsideWay way) {
    return new AuthenticationRequest.Builder(
            ResponseType.CODE, new Scope("openid"), new ClientID(client), returning())
        .endpointURI(known().metadata().getAuthorizationEndpointURI())
        .state(way.state())
        .nonce(way.nonce())
        .codeChallenge(way.verifier(), CodeChallengeMethod.S256)
        .build()
        .toURI();
  }

  /**
   * As whom the service knows the one who came back.
   *
   * @param code that came along
   * @throws Refused if it does not answer, or what it answers is not signed by it, for us, for this
   *     way, and just now
   */
  String subject(String code, OutsideWay way) {
    if (code.isEmpty()) {
      throw new Refused(
          Refusal.Unfit.of("service", say("You were not signed in with %s. Try once more.", name)));
    }
    Known provider = known();
    try {
      OIDCTokenResponse answer = exchange(provider, code, way);
      return provider
          .validator()
          .validate(answer.getOIDCTokens().getIDToken(), way.nonce())
          .getSubject()
          .getValue();
    } catch (GeneralException | BadJOSEException | JOSEException | IllegalArgumentException e) {
      LOG.warnf("What the sign-in service answered was not believed: %s", e.getMessage());
      throw new Refused(
          Refusal.Unfit.of(
              "service",
              say(
                  "What %s said of you cannot be believed. Try once more, or sign in by name and password.",
                  name)));
    } catch (IOException e) {
      throw silent(e);
    }
  }

  private OIDCTokenResponse exchange(Known provider, String code, OutsideWay way)
      throws IOException, GeneralException {
    HTTPRequest request =
        new TokenRequest.Builder(
                provider.metadata().getTokenEndpointURI(),
                new ClientSecretBasic(new ClientID(client), new Secret(secret)),
                new AuthorizationCodeGrant(
                    new AuthorizationCode(code), returning(), way.verifier()))
            .build()
            .toHTTPRequest();
    request.setConnectTimeout(PATIENCE);
    request.setReadTimeout(PATIENCE);
    TokenResponse answer = OIDCTokenResponseParser.parse(request.send());
    if (!answer.indicatesSuccess()) {
      throw new GeneralException(answer.toErrorResponse().getErrorObject());
    }
    return (OIDCTokenResponse) answer.toSuccessResponse();
  }

  private URI returning() {
    return URI.create(here.of("/sign-in/outside/return"));
  }

  /**
   * Read when it is first needed, since a service that is away must not keep this one from
   * starting.
   */
  private Known known() {
    Known found = known;
    if (found == null) {
      found = read();
      known = found;
    }
    return found;
  }

  private Known read() {
    try {
      OIDCProviderMetadata metadata =
          OIDCProviderMetadata.resolve(new Issuer(issuer()), PATIENCE, PATIENCE);
      return new Known(
          metadata,
          new IDTokenValidator(
              metadata.getIssuer(),
              new ClientID(client),
              new JWSVerificationKeySelector<SecurityContext>(
                  SIGNED_BY, JWKSourceBuilder.create(metadata.getJWKSetURI().toURL()).build()),
              null));
    } catch (GeneralException | IOException e) {
      throw silent(e);
    }
  }

  private Refused silent(Exception e) {
    LOG.warnf("The sign-in service does not answer: %s", e.getMessage());
    return new Refused(
        Refusal.Unfit.of(
            "service",
            say(
                "%s does not answer just now. Sign in by name and password, or try again later.",
                name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1))));
  }
}
