package vestiary.users;

import static vestiary.web.Speech.say;

import com.webauthn4j.WebAuthnManager;
import com.webauthn4j.converter.AttestationObjectConverter;
import com.webauthn4j.converter.CollectedClientDataConverter;
import com.webauthn4j.converter.util.ObjectConverter;
import com.webauthn4j.credential.CredentialRecordImpl;
import com.webauthn4j.data.AuthenticationData;
import com.webauthn4j.data.AuthenticationParameters;
import com.webauthn4j.data.AuthenticationRequest;
import com.webauthn4j.data.PublicKeyCredentialParameters;
import com.webauthn4j.data.PublicKeyCredentialType;
import com.webauthn4j.data.RegistrationData;
import com.webauthn4j.data.RegistrationParameters;
import com.webauthn4j.data.RegistrationRequest;
import com.webauthn4j.data.attestation.authenticator.AuthenticatorData;
import com.webauthn4j.data.attestation.statement.COSEAlgorithmIdentifier;
import com.webauthn4j.data.client.CollectedClientData;
import com.webauthn4j.data.client.Origin;
import com.webauthn4j.data.client.challenge.DefaultChallenge;
import com.webauthn4j.server.ServerProperty;
import com.webauthn4j.util.exception.WebAuthnException;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Base64;
import java.util.List;
import java.util.function.Supplier;
import vestiary.access.Secret;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Proves what a device has signed: that it was asked by us, for this server and by a page of it,
 * that its user has shown to be there, and that its counter has gone on. Who made the device is not
 * asked.
 *
 * <p>Source: W3C Web Authentication 7.1, Registering a New Credential, and 7.2, Verifying an
 * Authentication Assertion.
 */
@ApplicationScoped
class PasskeyProof {

  /** ES256 and RS256 (RFC 9053, RFC 8812), which the devices of people know. */
  static final List<Long> ALGORITHMS =
      List.of(COSEAlgorithmIdentifier.ES256.getValue(), COSEAlgorithmIdentifier.RS256.getValue());

  private static final List<PublicKeyCredentialParameters> PARAMETERS =
      ALGORITHMS.stream()
          .map(
              number ->
                  new PublicKeyCredentialParameters(
                      PublicKeyCredentialType.PUBLIC_KEY, COSEAlgorithmIdentifier.create(number)))
          .toList();

  private final ObjectConverter converter = new ObjectConverter();
  private final WebAuthnManager manager = WebAuthnManager.createNonStrictWebAuthnManager(converter);
  private final PublicAddress here;

  PasskeyProof(PublicAddress here) {
    this.here = here;
  }

  /**
   * A key as a device made it.
   *
   * @param credential its id, in base64url
   * @param counter of what it signed; 0 where it counts nothing
   */
  record Key(String credential, byte[] attestation, long counter) {}

  /** For whom keys are made: the host that people reach (the RP ID). */
  String site() {
    return here.host();
  }

  /**
   * What a device says that it signed.
   *
   * @throws Refused if that cannot be read, or is nothing that we ever asked
   */
  Secret challenge(String clientData) {
    CollectedClientData said =
        proven(() -> new CollectedClientDataConverter(converter).convert(bytes(clientData)));
    return Secret.parse(text(said.getChallenge().getValue())).orElseThrow(PasskeyProof::tooOld);
  }

  /**
   * The key that a device has made.
   *
   * @throws Refused if it was made for another server, or its user did not show to be there
   */
  Key added(Secret challenge, PasskeyBody.Added added) {
    return proven(
        () -> {
          byte[] attestation = bytes(added.attestation());
          RegistrationData data =
              manager.verify(
                  new RegistrationRequest(attestation, bytes(added.clientData())),
                  new RegistrationParameters(server(challenge), PARAMETERS, true, true));
          AuthenticatorData<?> made = data.getAttestationObject().getAuthenticatorData();
          return new Key(
              text(made.getAttestedCredentialData().getCredentialId()),
              attestation,
              made.getSignCount());
        });
  }

  /**
   * How far the device has counted.
   *
   * @throws Refused if another key signed, for another server, without its user, or if the device
   *     has counted no further since, as a copy of it would
   */
  long counter(PasskeyRow key, Secret challenge, PasskeyBody.Answer answer) {
    return proven(
        () -> {
          byte[] id = bytes(key.credential);
          CredentialRecordImpl known =
              new CredentialRecordImpl(
                  new AttestationObjectConverter(converter).convert(key.key), null, null, null);
          known.setCounter(key.counter);
          AuthenticationData data =
              manager.verify(
                  new AuthenticationRequest(
                      id,
                      bytes(answer.user()),
                      bytes(answer.authenticatorData()),
                      bytes(answer.clientData()),
                      bytes(answer.signature())),
                  new AuthenticationParameters(server(challenge), known, List.of(id), true));
          return data.getAuthenticatorData().getSignCount();
        });
  }

  static Refused tooOld() {
    return new Refused(
        Refusal.Unfit.of(
            "device", say("This took too long, or was sent before. Press the button once more.")));
  }

  private ServerProperty server(Secret challenge) {
    return ServerProperty.builder()
        .origin(new Origin(here.origin()))
        .rpId(here.host())
        .challenge(new DefaultChallenge(bytes(challenge.text())))
        .build();
  }

  private static <T> T proven(Supplier<T> look) {
    try {
      return look.get();
    } catch (WebAuthnException | IllegalArgumentException e) {
      // Which check failed would help whoever forges, and nobody else.
      throw new Refused(
          Refusal.Unfit.of(
              "device",
              say(
                  "What this device has sent cannot be taken. Press the button once more, or sign in with name and password.")));
    }
  }

  private static byte[] bytes(String text) {
    return Base64.getUrlDecoder().decode(text == null ? "" : text);
  }

  private static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
