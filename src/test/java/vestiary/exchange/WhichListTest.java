package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class WhichListTest {

  private static final byte[] CALENDAR =
      Ics.file("UID:1|SUMMARY:Mass|LOCATION:HT|DTSTART:20270206T103000");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void the_form_begins_with_what_the_columns_say() {
    assertEquals(List.of(WhichList.UNSAID), Browsing.page("/import").form("/import").get("what"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "MASSES ! Location;Mass date;Start time;Priest;Remarks ! ht;3.2.2027;6 pm;;",
        "MASSES ! Iglesia;Fecha;Hora;Sacerdote;Observaciones ! Santa Clara;3.2.2027;18.30 h;;",
        "MASSES ! Kirche;Datum;Uhrzeit;Zelebrant ! ht;3.2.2027;18.30 Uhr;",
        "PATTERNS ! Church;Recurrence;Since;Hour;Duration ! ht;FREQ=WEEKLY;1.1.2027;18:30;60",
        "PATTERNS ! Parroquia;Regla;Desde;Hora;Duración ! ht;FREQ=WEEKLY;1.1.2027;18:30;60",
        "CHURCHES ! Code;Church name;Parish name;Town;Dedication title ! ol;Our Lady;Our Lady;Ford;O",
        "CHURCHES ! Clave;Nombre de la iglesia;Parroquia;Pueblo;Advocación ! ol;La Virgen;A;B;C",
        "JOURNEYS ! From church;To church;Driving minutes ! ht;sa;14",
        "JOURNEYS ! Desde;Hasta;Tiempo de viaje ! ht;sa;14",
        "PEOPLE ! Key;Full name;Last name;Office ! a-b;Ann Bell;Bell;reader",
        "PEOPLE ! Clave;Nombre y apellidos;Apellidos;Oficio ! a-b;Ana Bel;Bel;lector",
        "ABSENCES ! Who;First day;Until;Why ! a-b;3.2.2027;4.2.2027;",
        "ABSENCES ! Quién;Desde;Hasta;Motivo ! a-b;3.2.2027;4.2.2027;",
        "PIECES ! Inventory number;Garment;Kept at;Colors;Drawer ! A1;alb;ht;;2",
        "PIECES ! Número de inventario;Prenda;Sede;Colores;Cajón ! A1;alb;ht;;2",
        "CARE ! Piece code;Away from;What is wrong ! A1;3.2.2027;torn",
        "OUT ! Piece code;Who has it;Went on;Due back ! A1;the cathedral;3.2.2027;4.2.2027",
        "OUT ! Pieza;Prestado a;Desde;Devolver ! A1;la catedral;3.2.2027;4.2.2027",
        "CLUSTER ! Name;Calendar;Time zone;Languages ! Valley;us;America/Chicago;en"
      })
  void names_that_others_use_tell_which_list_it_is(ImportWhat what, String header, String line) {
    Page sent = Browsing.sendList(WhichList.UNSAID, Csv.file(header, line));

    Browsing.page(sent.wayOn())
        .isHeaded("Import: " + ImportWords.name(what))
        .says("It is read as this list: %s.".formatted(ImportWords.name(what)));
  }

  @Test
  void a_list_that_lacks_what_is_needed_is_refused_with_the_one_it_comes_nearest_to() {
    byte[] file = Csv.file("Date,Time,Celebrant", "3.2.2027,6 pm,");

    Page page = refusing.unchanged(() -> Browsing.sendList(WhichList.UNSAID, file));

    page.is(400)
        .faults(
            "what",
            "By its columns the file is none of the lists for certain. It comes nearest to"
                + " \"Masses\", but has no column for: Church. If it is that list, choose it; what"
                + " is missing can be said on the next page.");
    Browsing.page(Browsing.sendList("masses", file).wayOn()).isHeaded("Import: Masses");
  }

  @Test
  void columns_that_none_has_are_named() {
    refusing
        .unchanged(() -> Browsing.sendList(WhichList.UNSAID, Csv.file("Name,Phone", "A,1")))
        .is(400)
        .faults(
            "what",
            "The file does not say which list it is; its first line says: Name and Phone. Choose"
                + " the list, or see below how its columns are called.");
  }

  @Test
  void two_lists_that_fit_equally_are_both_named() {
    byte[] file = Csv.file("person,from,to,minutes", "a,,,b");

    refusing
        .unchanged(() -> Browsing.sendList(WhichList.UNSAID, file))
        .is(400)
        .faults(
            "what",
            "By its columns the file may be any of these lists: Journeys and Who is away. Choose which"
                + " it is.");
  }

  @ParameterizedTest
  @CsvSource({"''", "masses", "calendar"})
  void what_begins_as_a_calendar_is_one_whatever_was_chosen(String chosen) {
    Browsing.page(Browsing.sendList(chosen, CALENDAR).wayOn())
        .isHeaded("Import: A Mass calendar (iCalendar)")
        .says("What of the calendar is wanted")
        .keepsSilentOn("It is another list");
  }

  @Test
  void a_list_that_was_said_to_be_a_calendar_is_refused_with_both_ways_on() {
    refusing
        .unchanged(() -> Browsing.sendList("calendar", Csv.file("from,to,minutes", "ht,sa,14")))
        .is(400)
        .faults(
            "file",
            "The file is no calendar: it does not begin with BEGIN:VCALENDAR. If it is a list,"
                + " choose which; a calendar is saved in the form iCalendar (.ics).");
  }

  @Test
  void a_list_that_was_taken_for_another_is_brought_in_as_what_it_is() {
    String address = Browsing.sendList("absences", Csv.file("from,to,minutes", "ht,sa,14")).wayOn();
    Browsing.goOn(address, Map.of("dryRun", "true"));

    Browsing.send(address + "/what", Map.of("what", List.of("journeys"))).leadsTo(address);

    Browsing.page(address).isHeaded("Import: Journeys").keepsSilentOn("Tried");
    Browsing.goOn(address, Map.of("dryRun", "false")).says("One line was brought in.");
    assertEquals(2, Asking.list("/api/journeys").size());
    refusing
        .unchanged(() -> Browsing.send(address + "/what", Map.of("what", List.of("absences"))))
        .is(404);
  }

  @Test
  void a_list_is_taken_for_none_that_there_is_not() {
    String list = Browsing.sendList("journeys", Csv.file("from,to,minutes", "ht,sa,14")).wayOn();
    String calendar = Browsing.sendList("", CALENDAR).wayOn();

    refusing
        .unchanged(() -> Browsing.send(list + "/what", Map.of("what", List.of("organs"))))
        .is(400)
        .says("Choose what is in the list.", "Import: Journeys");
    refusing
        .unchanged(() -> Browsing.send(calendar + "/what", Map.of("what", List.of("masses"))))
        .is(409);
  }
}
