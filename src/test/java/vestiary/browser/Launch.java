package vestiary.browser;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * How a browser is launched.
 *
 * @param how where it was found, for whoever reads the tests' output
 * @param environment beside that of the tests
 */
record Launch(
    String how, Path executable, List<String> arguments, Map<String, String> environment) {

  Launch {
    arguments = List.copyOf(arguments);
    environment = Map.copyOf(environment);
  }

  static Launch of(String how, Path executable) {
    return new Launch(how, executable, List.of(), Map.of());
  }
}
