package vestiary.access;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.exchange.ScenarioLists;
import vestiary.pool.PutInCare;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Two clusters on one server: neither sees, changes or disturbs the other. */
@QuarkusTest
class TwoClustersTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject ScenarioLists lists;
  @Inject PutInCare care;
  @Inject FullCluster full;
  @Inject @Any Instance<PanacheRepositoryBase<?, ?>> repositories;

  private UUID other;
  private String foreignMass;
  private String foreignCare;

  @BeforeEach
  void the_other_cluster_is_full_and_ours_is_empty() {
    full.load();
    foreignMass = full.mass();
    other = scenario.becomeAnother();
    scenario.within(
        other,
        () ->
            foreignCare =
                care.put("HT-W1-C", new PutInCare.Request("2026-12-20", null, "Theirs"))
                    .id()
                    .toString());
  }

  @Test
  void no_repository_finds_a_row_of_the_other_cluster() {
    assertTrue(tenanted().size() >= 10, "found only " + tenanted().size());

    assertEquals(List.of(), inOurs(r -> r.count() > 0));
    assertEquals(List.of(), inOurs(r -> !r.listAll().isEmpty()));
    assertEquals(tenanted().size(), in(other, r -> r.count() > 0).size());
  }

  @Test
  void no_repository_changes_or_deletes_a_row_of_the_other_cluster() {
    assertEquals(List.of(), inOurs(r -> r.deleteAll() > 0));
    assertEquals(List.of(), inOurs(r -> r.update("clusterId = clusterId") > 0));
    assertEquals(tenanted().size(), in(other, r -> r.count() > 0).size());
  }

  @Test
  void no_list_of_the_api_shows_the_other_cluster() {
    for (String list :
        List.of(
            "/api/churches",
            "/api/journeys",
            "/api/people",
            "/api/users",
            "/api/patterns",
            "/api/pieces",
            "/api/sets",
            "/api/masses?from=2026-11-30&to=2026-12-31",
            "/api/movements?from=2026-11-30&to=2026-12-31",
            "/api/consents?from=2026-11-30&to=2026-12-31",
            "/api/clashes?from=2026-11-30&to=2026-12-31")) {
      assertEquals(List.of(), Asking.list(list), list);
    }
    get("/api/settings").then().statusCode(200).body("name", not(containsString("Wenlow")));
  }

  @Test
  void what_the_other_cluster_has_is_not_there() {
    refusing.notThere(() -> get("/api/masses/" + foreignMass));
    refusing.notThere(() -> delete("/api/masses/" + foreignMass));
    refusing.notThere(() -> get("/api/churches/ht"));
    refusing.notThere(() -> get("/api/churches/ht/days?from=2026-12-08&to=2026-12-08"));
    refusing.notThere(() -> get("/api/pieces/HT-W1-C"));
    refusing.notThere(() -> delete("/api/pieces/HT-W1-C"));
    refusing.notThere(() -> delete("/api/pieces/HT-W1-C/care/" + foreignCare));
    refusing.notThere(() -> get("/api/sets/HT-W1"));
    refusing.notThere(() -> delete("/api/sets/HT-W1"));
    refusing.notThere(
        () ->
            put("/api/masses/" + foreignMass, Map.of("church", "ht", "start", "2026-12-08T18:30")));
  }

  @Test
  void what_the_other_cluster_has_cannot_be_named() {
    refusing.unfit(
        () -> post("/api/masses", Map.of("church", "ht", "start", "2026-12-08T18:30")), "church");
    refusing.unfit(
        () ->
            post(
                "/api/pieces",
                Map.of("code", "X", "kind", "cope", "colours", List.of("white"), "home", "ht")),
        "home");
  }

  @Test
  void both_use_the_same_names_and_codes_and_the_same_hours() {
    Sending.church("ht");
    Sending.piece("HT-W1-C", "chasuble", "white", "ht");

    post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-20", "reason", "Ours"))
        .then()
        .statusCode(201);

    assertEquals(1, Asking.list("/api/pieces").size());
    refusing.notThere(() -> delete("/api/pieces/HT-W1-C/care/" + foreignCare));
  }

  @Test
  void a_session_without_a_cluster_fails_aloud() {
    for (PanacheRepositoryBase<?, ?> repository : tenanted()) {
      IllegalStateException failure =
          assertThrows(
              IllegalStateException.class, () -> scenario.withoutCluster(repository::count));
      assertTrue(failure.getMessage().contains("no cluster"), failure.getMessage());
    }
    assertFalse(tenanted().isEmpty());
  }

  private List<String> inOurs(Predicate<PanacheRepositoryBase<?, ?>> which) {
    return in(scenario.ours(), which);
  }

  private List<String> in(UUID cluster, Predicate<PanacheRepositoryBase<?, ?>> which) {
    List<String> found = new ArrayList<>();
    scenario.within(
        cluster, () -> tenanted().stream().filter(which).forEach(r -> found.add(name(r))));
    return found;
  }

  /**
   * All but the clusters' own, whose row each request asks for by its id, and the history, which no
   * request can write at all.
   */
  private List<PanacheRepositoryBase<?, ?>> tenanted() {
    List<PanacheRepositoryBase<?, ?>> tenanted = new ArrayList<>();
    repositories.stream()
        .filter(r -> !name(r).startsWith("ClusterRows") && !name(r).startsWith("AuditRows"))
        .forEach(tenanted::add);
    return tenanted;
  }

  private static String name(PanacheRepositoryBase<?, ?> repository) {
    return repository.getClass().getSimpleName();
  }
}
