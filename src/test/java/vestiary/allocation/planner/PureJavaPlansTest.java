package vestiary.allocation.planner;

import vestiary.allocation.solver.Solvers;

/** Plans where no native library loads. */
class PureJavaPlansTest extends PlansOfEverySolver {

  PureJavaPlansTest() {
    super(Solvers.pureJava(), 100);
  }
}
