package vestiary.web;

import io.quarkus.qute.EngineConfiguration;
import io.quarkus.qute.ParserHelper;
import io.quarkus.qute.ParserHook;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Gives every template its Spanish when it is parsed: here and when the build checks it, so that
 * the expressions of both languages are checked.
 */
@EngineConfiguration
public class SpeakSpanishToo implements ParserHook {

  /** Read once for all templates of a folder. */
  private final Map<String, PageWords> byFolder = new ConcurrentHashMap<>();

  @Override
  public void beforeParsing(ParserHelper template) {
    String id = template.getTemplateId();
    if (id.contains("/") && !id.endsWith(".txt")) {
      PageWords words = byFolder.computeIfAbsent(id.substring(0, id.indexOf('/')), PageWords::in);
      template.addContentFilter(source -> TemplateText.with(source, words));
    }
  }
}
