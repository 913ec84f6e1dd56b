package vestiary.scenario;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A server that mails by SMTP, to wherever the test has a mail server or has none. */
public final class WithSmtp implements QuarkusTestProfile {

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "quarkus.mailer.host",
        "localhost",
        "quarkus.mailer.port",
        String.valueOf(FreePort.find()),
        "quarkus.mailer.mock",
        "false",
        "quarkus.mailer.from",
        "vestments@parishes.example",
        "vestiary.public-url",
        WithMail.ADDRESS + "/");
  }
}
