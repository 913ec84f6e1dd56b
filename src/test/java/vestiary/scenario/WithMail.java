package vestiary.scenario;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.List;
import java.util.Map;

/**
 * A server that people reach from elsewhere, with a mail server and a sign-in service named, as one
 * profile, since each costs a start.
 */
public final class WithMail implements QuarkusTestProfile {

  public static final String ADDRESS = "https://vestments.example";

  @Override
  public List<TestResourceEntry> testResources() {
    return List.of(new TestResourceEntry(SignInService.class));
  }

  @Override
  public Map<String, String> getConfigOverrides() {
    return Map.of(
        "quarkus.mailer.host",
        "mail.example",
        "quarkus.mailer.mock",
        "true",
        "vestiary.public-url",
        ADDRESS + "/");
  }
}
