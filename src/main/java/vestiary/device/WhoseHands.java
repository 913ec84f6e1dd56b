package vestiary.device;

import static vestiary.web.Speech.say;

import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jboss.resteasy.reactive.server.WithFormRead;
import org.jboss.resteasy.reactive.server.core.ResteasyReactiveRequestContext;
import org.jboss.resteasy.reactive.server.core.multipart.FormData;
import org.jboss.resteasy.reactive.server.spi.ResteasyReactiveContainerRequestContext;
import vestiary.access.CurrentVisitor;
import vestiary.access.OpenToAll;
import vestiary.access.Visitor;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.PageAnswer;

/**
 * Whatever is changed on a shared device is held until somebody has said who does it: the form is
 * answered by a page that asks, and carries all that was typed along.
 */
final class WhoseHands {

  static final String PERSON = "device-person";
  static final String CODE = "device-code";

  private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
  private static final int FORBIDDEN = 403;

  /** After the form has been found to be ours. */
  private static final int LATE = Priorities.USER + 100;

  private final CurrentVisitor current;
  private final Hands hands;
  private final SharedDevicesOfCluster devices;
  private final DeviceSheets sheets;

  WhoseHands(
      CurrentVisitor current, Hands hands, SharedDevicesOfCluster devices, DeviceSheets sheets) {
    this.current = current;
    this.hands = hands;
    this.devices = devices;
    this.sheets = sheets;
  }

  /** The question, or {@code null} to let the request go on, as the framework wants it. */
  @WithFormRead
  @ServerRequestFilter(priority = LATE)
  Response ask(ResteasyReactiveContainerRequestContext request, ResourceInfo target) {
    if (!(current.visitor() instanceof Visitor.Device device)
        || READING.contains(request.getMethod())
        || isOpenToAll(target)) {
      return null;
    }
    FormData form =
        ((ResteasyReactiveRequestContext) request.getServerRequestContext()).getFormData();
    if (form == null) {
      throw new Refused(
          new Refusal.NotAllowed(
              say("On a shared device changes are made on its pages, which ask who makes them.")));
    }
    return devices.isStopped(device.id()) ? stopped(request) : ask(device, form, request);
  }

  private Response ask(
      Visitor.Device device, FormData form, ResteasyReactiveContainerRequestContext request) {
    String code = first(form, CODE);
    Optional<UUID> hand =
        code.isEmpty()
            ? hands.byName(device.church(), first(form, PERSON))
            : hands.byCode(device.id(), device.church(), code);
    if (hand.isPresent()) {
      current.actAs(hand.get());
      return null;
    }
    if (devices.isStopped(device.id())) {
      return stopped(request);
    }
    String problem =
        code.isEmpty() ? "" : say("This is nobody’s code here. Nothing was changed yet.");
    return PageAnswer.of(
        problem.isEmpty() ? 200 : FORBIDDEN,
        DevicesPage.Templates.who(
            sheets.who(device.church(), address(request), typed(form), problem)));
  }

  private Response stopped(ResteasyReactiveContainerRequestContext request) {
    return PageAnswer.of(
        FORBIDDEN, DevicesPage.Templates.stopped(sheets.stopped(address(request))));
  }

  private static List<WhoView.Typed> typed(FormData form) {
    List<WhoView.Typed> typed = new ArrayList<>();
    for (String field : form) {
      if (!Set.of(PERSON, CODE, "form-token").contains(field)) {
        form.get(field).stream()
            .filter(value -> !value.isFileItem())
            .forEach(value -> typed.add(new WhoView.Typed(field, value.getValue())));
      }
    }
    return typed;
  }

  private static String first(FormData form, String field) {
    return Optional.ofNullable(form.getFirst(field))
        .filter(value -> !value.isFileItem())
        .map(value -> value.getValue().strip())
        .orElse("");
  }

  private static String address(ResteasyReactiveContainerRequestContext request) {
    String query = request.getUriInfo().getRequestUri().getRawQuery();
    return request.getUriInfo().getRequestUri().getRawPath() + (query == null ? "" : "?" + query);
  }

  private static boolean isOpenToAll(ResourceInfo target) {
    return target.getResourceMethod().isAnnotationPresent(OpenToAll.class)
        || target.getResourceClass().isAnnotationPresent(OpenToAll.class);
  }
}
