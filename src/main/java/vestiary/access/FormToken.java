package vestiary.access;

import io.quarkus.arc.Arc;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;

/** What the forms of pages carry, for templates: {@code inject:formToken.value}. */
@Named("formToken")
@ApplicationScoped
public class FormToken {

  static final String FIELD = "form-token";

  private final CurrentVisitor current;

  FormToken(CurrentVisitor current) {
    this.current = current;
  }

  /** The token of the present session; empty without one, or outside a request. */
  public String getValue() {
    return Arc.container().requestContext().isActive() ? current.formToken() : "";
  }

  /**
   * What tells whoever is there from others, for what a browser keeps until it is sent: an id, and
   * no name. Empty for nobody, or outside a request.
   */
  public String getWho() {
    return Arc.container().requestContext().isActive() ? current.visitor().mark() : "";
  }
}
