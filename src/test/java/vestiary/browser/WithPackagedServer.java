package vestiary.browser;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.api.extension.ExtendWith;

/**
 * The tests of the class look at the packaged program, on a folder of data of its own, in a
 * browser: both stand in its static fields of type {@link PackagedServer} and {@link OpenBrowser}.
 */
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ExtendWith(ServerAndBrowser.class)
@interface WithPackagedServer {}
