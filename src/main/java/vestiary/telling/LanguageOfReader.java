package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Locale;
import java.util.UUID;
import vestiary.cluster.ReadCluster;
import vestiary.mail.ReaderLanguages;

/** In which language somebody is written to. */
@ApplicationScoped
@Transactional
public class LanguageOfReader implements ReaderLanguages {

  private final ChooseLetters choices;
  private final ReadCluster cluster;

  LanguageOfReader(ChooseLetters choices, ReadCluster cluster) {
    this.choices = choices;
    this.cluster = cluster;
  }

  /** As they chose, else as the cluster. */
  public Tongue of(UUID reader) {
    return ChooseLetters.tongue(choices.of(reader), cluster.cluster());
  }

  @Override
  public Locale language(UUID reader) {
    return of(reader).locale();
  }

  public Tongue ofCluster() {
    return Tongue.of(cluster.cluster().language());
  }
}
