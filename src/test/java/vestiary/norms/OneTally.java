package vestiary.norms;

import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands every table of facts the same tally, which JUnit closes when the run ends. */
final class OneTally implements ParameterResolver {

  @Override
  public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
    return parameter.getParameter().getType() == FactTally.class;
  }

  @Override
  public FactTally resolveParameter(ParameterContext parameter, ExtensionContext context) {
    return context
        .getRoot()
        .getStore(Namespace.GLOBAL)
        .computeIfAbsent(FactTally.class, type -> new FactTally(), FactTally.class);
  }
}
