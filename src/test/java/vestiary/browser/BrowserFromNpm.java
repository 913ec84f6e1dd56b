package vestiary.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Assertions;

/**
 * A headless Chromium from the npm registry, for a machine without any browser: the executable, its
 * software renderer, its libraries and a font, packed with brotli. It is fetched once and kept in
 * the user's cache.
 */
final class BrowserFromNpm {

  private static final String PACKAGE = "@sparticuz/chromium";
  private static final String VERSION = "147.0.0";

  /** Of the very file this was tried with, so that no other is ever run. */
  private static final String SHA_512 =
      "e1929e01041af2ea769adebbe6a4a2b73b4b75b42b95ff0129d0b99da79aa7ee"
          + "4cbf5395d4e94974fa14f84242fe9e6c414254426378afeab9f8485a68e507a5";

  private static final String UNPACK =
      """
      const fs = require('fs'), zlib = require('zlib');
      for (const name of ['chromium', 'al2023.tar', 'fonts.tar', 'swiftshader.tar'])
        fs.writeFileSync(name, zlib.brotliDecompressSync(fs.readFileSync('package/bin/' + name + '.br')));
      """;

  private static final String FONTS =
      """
      <?xml version="1.0"?>
      <!DOCTYPE fontconfig SYSTEM "fonts.dtd">
      <fontconfig>
        <dir>%1$s/fonts</dir>
        <dir>/usr/share/fonts</dir>
        <cachedir>%1$s/fonts-cache</cachedir>
      </fontconfig>
      """;

  private BrowserFromNpm() {}

  /**
   * Nothing unless this is Linux on x86-64, which is all the package holds, with npm on the path.
   */
  static Optional<Launch> find() {
    boolean fits =
        System.getProperty("os.name").equals("Linux")
            && System.getProperty("os.arch").equals("amd64");
    return fits && BrowserOfTheMachine.findProgram("npm").isPresent()
        ? Optional.of(launch(kept()))
        : Optional.empty();
  }

  private static Launch launch(Path folder) {
    return new Launch(
        "from the npm package %s %s".formatted(PACKAGE, VERSION),
        folder.resolve("chromium"),
        List.of("--no-sandbox", "--use-gl=angle", "--use-angle=swiftshader"),
        Map.of(
            "LD_LIBRARY_PATH", folder.resolve("lib").toString(),
            "FONTCONFIG_PATH", folder.toString()));
  }

  private static Path kept() {
    String chosen = System.getenv("XDG_CACHE_HOME");
    Path cache =
        chosen == null || chosen.isBlank()
            ? Path.of(System.getProperty("user.home"), ".cache")
            : Path.of(chosen);
    Path folder = cache.resolve("vestiary-browser").resolve(VERSION);
    if (!Files.exists(folder)) {
      fetch(folder);
    }
    return folder;
  }

  /** Unpacked beside its place and moved there at the end, so that half of it is never found. */
  private static void fetch(Path folder) {
    System.out.println("Fetching a browser " + launch(folder).how() + " once, 68 MB.");
    try {
      Files.createDirectories(folder.getParent());
      Path place = Files.createTempDirectory(folder.getParent(), "unpacking");
      run(place, "npm", "pack", "--silent", PACKAGE + "@" + VERSION);
      Path packed = place.resolve("sparticuz-chromium-" + VERSION + ".tgz");
      Assertions.assertEquals(SHA_512, digest(packed), packed + " is not the file that was tried");
      run(place, "tar", "-xzf", packed.toString());
      run(place, "node", "-e", UNPACK);
      for (String part : List.of("al2023.tar", "fonts.tar", "swiftshader.tar")) {
        run(place, "tar", "-xf", part);
        Files.delete(place.resolve(part));
      }
      Files.delete(packed);
      run(place, "rm", "-r", "package");
      run(place, "chmod", "+x", "chromium");
      Files.writeString(place.resolve("fonts.conf"), FONTS.formatted(folder));
      Files.move(place, folder, StandardCopyOption.ATOMIC_MOVE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void run(Path folder, String... command) throws IOException {
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes());
    try {
      if (process.waitFor() != 0) {
        throw new IOException(String.join(" ", command) + " failed: " + said);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException(e);
    }
  }

  private static String digest(Path file) throws IOException {
    try {
      return HexFormat.of()
          .formatHex(MessageDigest.getInstance("SHA-512").digest(Files.readAllBytes(file)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
