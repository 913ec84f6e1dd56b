package vestiary.proper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static vestiary.proper.ProperResourceTest.enter;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.postgresql.util.PSQLException;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What the database itself refuses, whoever writes to it, and two who write at once. */
@QuarkusTest
class ProperTableTest {

  private static final Map<String, Object> ROMUALD =
      Map.of("celebration", "romuald", "place", "memorial");

  @Inject Scenario scenario;
  @Inject OwnerDatabase database;

  @BeforeEach
  void one_church_with_a_day_of_its_own_and_a_patron_of_the_diocese() {
    scenario.empty();
    Sending.church("sm");
    enter(Sending.with(ROMUALD, "churches", List.of("sm")));
    enter(ProperResourceTest.OUR_LADY);
  }

  @Test
  void a_celebration_twice_for_all_churches() throws SQLException {
    refused("proper_of_all_once", copy("our-lady-of-the-ford", "'again'", "celebration"));
  }

  @Test
  void a_second_patron_of_the_diocese() throws SQLException {
    refused("proper_place_once", copy("our-lady-of-the-ford", "'again'", "'agnes'"));
  }

  @Test
  void an_id_twice() throws SQLException {
    refused("proper_slug_once", copy("our-lady-of-the-ford", "slug", "'agnes'"));
  }

  @Test
  void a_celebration_twice_in_one_church() throws SQLException {
    write(copy("romuald", "'again'", "celebration"));

    refused(
        "proper_of_church_once",
        """
        insert into proper_church (cluster_id, id, proper_id, celebration, kept_year, church_id)
        select c.cluster_id, gen_random_uuid(), p.id, p.celebration, p.kept_year, c.id
        from church c join proper p on p.slug = 'again'
        """);
  }

  @Test
  void a_proper_changed_by_hand_takes_its_churches_along() throws SQLException {
    write("update proper set celebration = 'agnes' where slug = 'romuald'");
    write(copy("romuald", "'again'", "'romuald'"));
    write("update proper set kept_on = '2027-01-22', place = '' where slug = 'romuald'");

    assertEquals(
        List.of("agnes"),
        Sending.get("/api/propers").jsonPath().getList("findAll { it.keptOn }.celebration"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          update proper set colour = 'gold'          | proper_colour_check
          update proper set place = ''               | proper_says_something
          update proper set month = 3 where name = '' | proper_day_is_whole
          update proper set kept_on = '2301-01-01'   | proper_kept_on_check
          update church set titular_colour = 'gold'  | church_title_is_no_metal
          """)
  void what_could_not_be_read_again(String change, String constraint) throws SQLException {
    refused(constraint, change);
  }

  @Test
  void a_day_that_not_every_year_has() {
    SQLException refused =
        assertThrows(SQLException.class, () -> write("update proper set month = 2, day = 29"));

    // datetime_field_overflow; PostgreSQL documentation, appendix A.
    assertEquals("22008", refused.getSQLState());
  }

  @Test
  void of_two_who_enter_the_same_at_once_one_is_told() {
    List<CompletableFuture<Integer>> both =
        Stream.of("secondary-patron", "feast-of-the-diocese")
            .map(
                place ->
                    CompletableFuture.supplyAsync(
                        () ->
                            Sending.post("/api/propers", Sending.with(ROMUALD, "place", place))
                                .statusCode()))
            .toList();

    assertEquals(
        new TreeSet<>(List.of(201, 409)),
        new TreeSet<>(both.stream().map(CompletableFuture::join).toList()));
  }

  /** A row like another, with other words for its id and its celebration. */
  private static String copy(String slug, String newSlug, String celebration) {
    return """
        insert into proper (cluster_id, id, slug, celebration, name, latin, spanish, month, day,
          colour, place, on_sunday, everywhere, version)
        select cluster_id, gen_random_uuid(), %s, %s, '', '', '', month, day,
          '', place, on_sunday, everywhere, 0 from proper where slug = '%s'
        """
        .formatted(newSlug, celebration, slug);
  }

  private void refused(String constraint, String change) throws SQLException {
    PSQLException refused = assertThrows(PSQLException.class, () -> write(change), change);

    assertEquals(constraint, refused.getServerErrorMessage().getConstraint());
  }

  private void write(String change) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute(change);
    }
  }
}
