package vestiary.users;

import java.io.ByteArrayOutputStream;
import java.math.BigInteger;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.Signature;
import java.security.interfaces.ECPublicKey;
import java.security.spec.ECGenParameterSpec;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

/**
 * A device with a key, made byte by byte after the standard, so that the server is not tested with
 * the library that it stands on. What it says of itself can be falsified.
 *
 * <p>Source: W3C Web Authentication 5.8.1 (client data), 6.1 (authenticator data), 6.5 (attestation
 * object), 8.7 (attestation "none"); RFC 9052, 7.1 and RFC 9053, 7.1.1 (COSE key); RFC 8949 (CBOR).
 */
final class SoftDevice {

  static final byte PRESENT = 0x01;
  static final byte VERIFIED = 0x04;
  private static final byte WITH_KEY = 0x40;

  /** A map of five: EC2, ES256, P-256, x of 32 bytes follows. */
  private static final byte[] COSE_BEFORE_X = HexFormat.of().parseHex("a5010203262001215820");

  private static final byte[] COSE_BEFORE_Y = HexFormat.of().parseHex("225820");

  /** A map of three: "fmt" is "none", "attStmt" is empty, "authData" of up to 255 bytes follows. */
  private static final byte[] ATTESTATION =
      HexFormat.of().parseHex("a363666d74646e6f6e656761747453746d74a068617574684461746158");

  private final KeyPair keys = pair();
  private final byte[] id =
      UUID.randomUUID().toString().substring(0, 16).getBytes(StandardCharsets.US_ASCII);

  String site = "localhost";
  String origin = "http://localhost:8080";
  byte flags = PRESENT | VERIFIED;
  int counter;

  /** What it answers when it is added. */
  Map<String, Object> added(String challenge, String name) {
    return Map.of(
        "name", name,
        "clientData", text(clientData("webauthn.create", challenge)),
        "attestation", text(attestation()));
  }

  /** What it answers when its user signs in. */
  Map<String, Object> answer(String challenge, String user) {
    byte[] said = clientData("webauthn.get", challenge);
    byte[] data = authenticatorData(flags);
    Map<String, Object> answer = new LinkedHashMap<>();
    answer.put("credential", text(id));
    answer.put("user", user);
    answer.put("clientData", text(said));
    answer.put("authenticatorData", text(data));
    answer.put("signature", text(sign(joined(data, sha256(said)))));
    answer.put("back", "/vestments");
    return answer;
  }

  private byte[] clientData(String type, String challenge) {
    return """
        {"type":"%s","challenge":"%s","origin":"%s","crossOrigin":false}"""
        .formatted(type, challenge, origin)
        .getBytes(StandardCharsets.UTF_8);
  }

  private byte[] attestation() {
    byte[] data =
        joined(
            authenticatorData((byte) (flags | WITH_KEY)),
            new byte[16],
            ByteBuffer.allocate(2).putShort((short) id.length).array(),
            id,
            COSE_BEFORE_X,
            coordinate(((ECPublicKey) keys.getPublic()).getW().getAffineX()),
            COSE_BEFORE_Y,
            coordinate(((ECPublicKey) keys.getPublic()).getW().getAffineY()));
    return joined(ATTESTATION, new byte[] {(byte) data.length}, data);
  }

  private byte[] authenticatorData(byte what) {
    return joined(
        sha256(site.getBytes(StandardCharsets.UTF_8)),
        new byte[] {what},
        ByteBuffer.allocate(4).putInt(counter).array());
  }

  /** 32 bytes, whatever the sign byte or leading zeros of the number. */
  private static byte[] coordinate(BigInteger number) {
    byte[] bytes = number.toByteArray();
    byte[] fixed = new byte[32];
    int length = Math.min(32, bytes.length);
    System.arraycopy(bytes, bytes.length - length, fixed, 32 - length, length);
    return fixed;
  }

  private byte[] sign(byte[] what) {
    try {
      Signature signature = Signature.getInstance("SHA256withECDSA");
      signature.initSign(keys.getPrivate());
      signature.update(what);
      return signature.sign();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static KeyPair pair() {
    try {
      KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
      generator.initialize(new ECGenParameterSpec("secp256r1"));
      return generator.generateKeyPair();
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    Arrays.stream(parts).forEach(all::writeBytes);
    return all.toByteArray();
  }

  static String text(byte[] bytes) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }
}
