package vestiary.allocation.solver;

import com.google.ortools.Loader;

/** Which solver there is on this machine. */
public final class Solvers {

  private Solvers() {}

  /** The native one if it loads here, else the one in pure Java; the same one every time. */
  public static Solver best() {
    return Loaded.NATIVE ? new NativeSolver() : pureJava();
  }

  /** The one in pure Java. */
  public static Solver pureJava() {
    return new PureJavaSolver();
  }

  /** Whether the native libraries load here. */
  public static boolean isNative() {
    return Loaded.NATIVE;
  }

  private static final class Loaded {

    static final boolean NATIVE = load();

    private static boolean load() {
      try {
        Loader.loadNativeLibraries();
        return true;
      } catch (RuntimeException | LinkageError absent) {
        // Another processor or another C library: there is a solver without natives.
        return false;
      }
    }
  }
}
