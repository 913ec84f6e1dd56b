package vestiary.access;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * An address for programs that can send nothing but an address, as those that keep calendars: the
 * key of a feed in it ({@code ?key=}) lets in like a token that reads only, here and nowhere else.
 */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
public @interface OpenByKey {}
