package vestiary.users;

import com.nimbusds.oauth2.sdk.id.State;
import com.nimbusds.oauth2.sdk.pkce.CodeVerifier;
import com.nimbusds.openid.connect.sdk.Nonce;
import vestiary.access.Secret;

/**
 * One way to another service and back. All that must not be guessed on it follows from a secret
 * that the browser keeps in a cookie and the service never sees, so the server need keep none of
 * it.
 *
 * <p>Source: RFC 6749, 10.12 (state); OpenID Connect Core 1.0, 15.5.2 (nonce from a cookie); RFC
 * 7636, 4.1 (code verifier of 43 characters or more).
 */
record OutsideWay(Secret secret) {

  State state() {
    return new State(secret.derived("state"));
  }

  Nonce nonce() {
    return new Nonce(secret.derived("nonce"));
  }

  CodeVerifier verifier() {
    return new CodeVerifier(secret.derived("verifier"));
  }
}
