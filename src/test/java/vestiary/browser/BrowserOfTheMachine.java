package vestiary.browser;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The browsers that the machine has, and its other programs. */
final class BrowserOfTheMachine {

  private static final List<String> NAMES =
      List.of(
          "chromium",
          "chromium-browser",
          "google-chrome",
          "google-chrome-stable",
          "microsoft-edge",
          "chrome");

  private static final List<String> WINDOWS =
      List.of(
          "Google/Chrome/Application/chrome.exe",
          "Chromium/Application/chrome.exe",
          "Microsoft/Edge/Application/msedge.exe");

  private static final List<String> MACOS =
      List.of(
          "Google Chrome.app/Contents/MacOS/Google Chrome",
          "Chromium.app/Contents/MacOS/Chromium",
          "Microsoft Edge.app/Contents/MacOS/Microsoft Edge");

  private BrowserOfTheMachine() {}

  /** All that are there, the likeliest to work first. */
  static List<Launch> all() {
    List<Path> found = new ArrayList<>();
    NAMES.forEach(name -> findProgram(name).ifPresent(found::add));
    folders("ProgramFiles", "ProgramFiles(x86)", "LocalAppData")
        .forEach(folder -> WINDOWS.forEach(path -> found.add(folder.resolve(path))));
    Stream.of(Path.of("/Applications"), Path.of(System.getProperty("user.home"), "Applications"))
        .forEach(folder -> MACOS.forEach(path -> found.add(folder.resolve(path))));
    return found.stream()
        .filter(Files::isExecutable)
        .map(path -> Launch.of("of this machine", path))
        .toList();
  }

  /** A program of that name in the folders of {@code PATH}. */
  static Optional<Path> findProgram(String name) {
    return Stream.of(
            Objects.requireNonNullElse(System.getenv("PATH"), "").split(File.pathSeparator))
        .filter(folder -> !folder.isBlank())
        .flatMap(folder -> Stream.of(Path.of(folder, name), Path.of(folder, name + ".exe")))
        .filter(Files::isRegularFile)
        .filter(Files::isExecutable)
        .findFirst();
  }

  private static Stream<Path> folders(String... variables) {
    return Stream.of(variables).map(System::getenv).filter(Objects::nonNull).map(Path::of);
  }
}
