package vestiary.browser;

import java.lang.reflect.Field;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Opens a browser and starts the program, on the demo as it is after a first start, before the
 * tests of a class, and ends both afterwards.
 */
final class ServerAndBrowser implements BeforeAllCallback, AfterAllCallback {

  private static final ExtensionContext.Namespace OURS =
      ExtensionContext.Namespace.create(ServerAndBrowser.class);

  @Override
  public void beforeAll(ExtensionContext tests) throws Exception {
    // The browser first: where none can be had, no server need be started.
    OpenBrowser browser = OpenBrowser.open();
    stands(tests, OpenBrowser.class, browser);
    Path folder =
        tests
            .getRoot()
            .getStore(OURS)
            .computeIfAbsent(DemoFolder.class, made -> DemoFolder.make(), DemoFolder.class)
            .copy();
    stands(tests, Path.class, folder);
    stands(tests, PackagedServer.class, PackagedServer.start(folder));
  }

  @Override
  public void afterAll(ExtensionContext tests) throws Exception {
    ExtensionContext.Store store = tests.getStore(OURS);
    for (Class<? extends AutoCloseable> type : List.of(OpenBrowser.class, PackagedServer.class)) {
      AutoCloseable opened = store.remove(type, type);
      if (opened != null) {
        opened.close();
      }
    }
    Path folder = store.remove(Path.class, Path.class);
    if (folder != null) {
      DemoFolder.delete(folder);
    }
  }

  private static <T> void stands(ExtensionContext tests, Class<T> type, T opened)
      throws IllegalAccessException {
    tests.getStore(OURS).put(type, opened);
    for (Field field : tests.getRequiredTestClass().getDeclaredFields()) {
      if (field.getType() == type) {
        field.setAccessible(true);
        field.set(null, opened);
      }
    }
  }
}
