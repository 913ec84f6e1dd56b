package vestiary.web;

import io.quarkus.qute.EngineConfiguration;
import io.quarkus.qute.ParserHelper;
import io.quarkus.qute.ParserHook;

/**
 * Gives every template its Spanish when it is parsed: here and when the build checks it, so that
 * the expressions of both languages are checked.
 */
@EngineConfiguration
public class SpeakSpanishToo implements ParserHook {

  @Override
  public void beforeParsing(ParserHelper template) {
    String id = template.getTemplateId();
    if (id.contains("/") && !id.endsWith(".txt")) {
      PageWords words = PageWords.in(id.substring(0, id.indexOf('/')));
      template.addContentFilter(source -> TemplateText.with(source, words));
    }
  }
}
