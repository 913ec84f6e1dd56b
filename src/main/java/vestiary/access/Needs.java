package vestiary.access;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The action that an address carries out. On a class it holds for every address that changes
 * something and names none of its own. What reads needs no more than {@link Action#LOOK}, unless
 * its method says so; what changes something and names no action is left to administrators.
 */
@Target({ElementType.METHOD, ElementType.TYPE})
@Retention(RetentionPolicy.RUNTIME)
public @interface Needs {

  Action value();
}
