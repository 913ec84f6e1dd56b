package vestiary.access;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.container.ResourceInfo;
import java.lang.annotation.Annotation;
import java.lang.reflect.Method;
import java.util.Optional;

/** What an address asks of whoever calls it, as its method or its class says. */
final class Asks {

  private Asks() {}

  static boolean isOpenToAll(ResourceInfo target) {
    return isOpenToAll(target.getResourceMethod(), target.getResourceClass());
  }

  static boolean isOpenByKey(ResourceInfo target) {
    return target.getResourceMethod().isAnnotationPresent(OpenByKey.class);
  }

  static Action action(ResourceInfo target) {
    return action(target.getResourceMethod(), target.getResourceClass());
  }

  static boolean isOpenToAll(Method method, Class<?> type) {
    return find(OpenToAll.class, method, type).isPresent();
  }

  /**
   * What reads is looking, unless the method itself says otherwise; what changes something and
   * names no action is left to those who may do everything.
   */
  static Action action(Method method, Class<?> type) {
    Optional<Needs> own = Optional.ofNullable(method.getAnnotation(Needs.class));
    if (own.isPresent()) {
      return own.get().value();
    }
    return method.isAnnotationPresent(GET.class)
        ? Action.LOOK
        : find(Needs.class, method, type).map(Needs::value).orElse(Action.SETTLE_CLUSTER);
  }

  static <A extends Annotation> Optional<A> find(Class<A> what, Method method, Class<?> type) {
    return Optional.ofNullable(method.getAnnotation(what))
        .or(() -> Optional.ofNullable(type.getAnnotation(what)));
  }
}
