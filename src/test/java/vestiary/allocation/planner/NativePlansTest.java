package vestiary.allocation.planner;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import vestiary.allocation.solver.Solvers;

/** Plans by the best solver of this machine. */
class NativePlansTest extends PlansOfEverySolver {

  NativePlansTest() {
    super(Solvers.best(), 1100);
  }

  @Test
  void the_native_libraries_load_where_the_tests_are_run() {
    boolean linux = System.getProperty("os.name").equals("Linux");
    boolean known = System.getProperty("os.arch").matches("amd64|aarch64");
    assertTrue(Solvers.isNative() || !linux || !known);
  }
}
