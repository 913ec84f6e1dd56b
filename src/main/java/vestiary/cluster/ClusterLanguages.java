package vestiary.cluster;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import vestiary.access.CurrentCluster;
import vestiary.web.OfferedLanguages;

/** Answers in which languages pages are offered: those that the cluster says its people have. */
@ApplicationScoped
class ClusterLanguages implements OfferedLanguages {

  private final CurrentCluster current;
  private final ClusterRows clusters;

  ClusterLanguages(CurrentCluster current, ClusterRows clusters) {
    this.current = current;
    this.clusters = clusters;
  }

  @Override
  public List<Locale> languages() {
    return current.isUnknown() || !BlockingOperationControl.isBlockingAllowed()
        ? List.of()
        : QuarkusTransaction.joiningExisting().call(this::read);
  }

  private List<Locale> read() {
    return clusters
        .findByIdOptional(current.id())
        .map(row -> Stream.of(row.languages).map(Locale::forLanguageTag).toList())
        .orElse(List.of());
  }
}
