package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.stream.Stream;

/**
 * Brings the invented cluster in, through the importer that users use, with the fixed fortnight
 * that begins on Monday 30 November 2026.
 */
@ApplicationScoped
public class ScenarioLists {

  private final ImportCsv imports;

  ScenarioLists(ImportCsv imports) {
    this.imports = imports;
  }

  /** Fills the current cluster. */
  @Transactional
  public void bringIn() {
    Stream.of(ImportWhat.values()).forEach(this::bringIn);
  }

  private void bringIn(ImportWhat what) {
    byte[] file =
        what == ImportWhat.CHURCHES || what.isDated()
            ? DemoLists.scenario(what.id())
            : DemoLists.demo(what.id());
    ImportCsv.Outcome outcome = imports.bringIn(what, file, DateWords.ISO, false);
    assertEquals(List.of(), outcome.bad());
  }
}
