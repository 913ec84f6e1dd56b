package vestiary.web;

import io.quarkus.qute.EngineConfiguration;
import io.quarkus.qute.ResultNode;
import io.quarkus.qute.SectionBlock;
import io.quarkus.qute.SectionHelper;
import io.quarkus.qute.SectionHelperFactory;
import io.quarkus.qute.TemplateInstance;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CompletionStage;

/** {@code {#spoken}English{#es}Spanish{/spoken}}: one of the two, by the language of the page. */
final class Spoken implements SectionHelper {

  private static final String SPANISH = "es";

  private final SectionBlock here;
  private final SectionBlock spanish;

  private Spoken(SectionBlock here, SectionBlock spanish) {
    this.here = here;
    this.spanish = spanish;
  }

  @Override
  public CompletionStage<ResultNode> resolve(SectionResolutionContext context) {
    Object locale = context.resolutionContext().getAttribute(TemplateInstance.LOCALE);
    boolean isSpanish = locale instanceof Locale named && named.getLanguage().equals(SPANISH);
    return context.execute(isSpanish ? spanish : here, context.resolutionContext());
  }

  /** Makes it when a template is parsed. */
  @EngineConfiguration
  public static class Factory implements SectionHelperFactory<Spoken> {

    @Override
    public List<String> getDefaultAliases() {
      return List.of("spoken");
    }

    @Override
    public List<String> getBlockLabels() {
      return List.of(SPANISH);
    }

    @Override
    public Spoken initialize(SectionInitContext context) {
      return new Spoken(context.getBlock(MAIN_BLOCK_NAME), context.getBlock(SPANISH));
    }
  }
}
