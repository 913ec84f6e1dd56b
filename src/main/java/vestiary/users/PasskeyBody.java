package vestiary.users;

import java.util.List;

/** What the script of the pages and the server say to each other of keys; bytes are base64url. */
final class PasskeyBody {

  private PasskeyBody() {}

  /**
   * Asked of a device that is to be added.
   *
   * <p>Source: W3C Web Authentication 5.4, Options for Credential Creation.
   *
   * @param algorithms COSE numbers, the best first
   * @param known credentials that the user has already, which are not made again
   */
  record ToAdd(
      String challenge,
      String site,
      String user,
      String login,
      String name,
      List<Long> algorithms,
      List<String> known,
      long milliseconds) {

    ToAdd {
      algorithms = List.copyOf(algorithms);
      known = List.copyOf(known);
    }
  }

  /**
   * Asked of a device by which somebody signs in.
   *
   * <p>Source: W3C Web Authentication 5.5, Options for Assertion Generation.
   */
  record ToSignIn(String challenge, String site, long milliseconds) {}

  /** The password of whoever adds a device; empty where they have none. */
  record Password(String password) {}

  /**
   * The answer of a device that is added.
   *
   * @param name what its user calls it
   */
  record Added(String name, String clientData, String attestation) {}

  /**
   * The answer of a device by which somebody signs in.
   *
   * @param user the user handle that was given when it was added
   * @param stays whether the session is to outlast the browser
   * @param back where to go afterwards
   */
  record Answer(
      String credential,
      String user,
      String clientData,
      String authenticatorData,
      String signature,
      Boolean stays,
      String back) {}

  /** Where to go on. */
  record Way(String to) {}
}
