package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Whatever a file holds, it is read or its faults are told; nothing is thrown. */
class AnyFileTest {

  @Property(tries = 300)
  void no_text_whatever_is_a_fault_of_ours(@ForAll String text) {
    byte[] file = ("from,to,minutes\n" + text).getBytes(StandardCharsets.UTF_8);

    Reading<JourneyLine> reading = JourneyLine.read(CsvTable.parse(file, ImportWhat.JOURNEYS));

    assertTrue(reading.isGood() || reading.bad().stream().noneMatch(b -> b.reason().isBlank()));
  }

  @Property(tries = 300)
  void no_bytes_whatever_are_a_fault_of_ours(@ForAll byte[] file) {
    CsvTable table = CsvTable.parse(file, ImportWhat.JOURNEYS);

    assertTrue(table.lines().isEmpty() || table.faults().isEmpty());
  }
}
