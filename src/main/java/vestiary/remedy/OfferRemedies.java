package vestiary.remedy;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.allocation.Shortage;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Remedy;
import vestiary.planning.CheckClashes;
import vestiary.planning.Clash;
import vestiary.planning.ClashSeverity;
import vestiary.planning.OfferedRemedy;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/**
 * What mends a clash, best first. Each remedy of the core is tried out on the span as it is loaded:
 * offered is only what the very check that found the clash finds no more.
 */
@ApplicationScoped
class OfferRemedies {

  private static final int LETTERS = 16;

  /** From more churches nobody wants to choose. */
  private static final int MOST_CARRIES = 4;

  private final KnownOffers known;
  private final CheckClashes check;
  private final ReadMasses masses;

  OfferRemedies(KnownOffers known, CheckClashes check, ReadMasses masses) {
    this.known = known;
    this.check = check;
    this.masses = masses;
  }

  /** A remedy with what it does and says. */
  record Offer(OfferedRemedy words, Deed deed) {}

  /** Empty where pieces play no part. */
  List<Offer> of(Clash clash, SpanToCheck span) {
    return clash.findProof().map(shortage -> of(clash, shortage, span)).orElse(List.of());
  }

  private List<Offer> of(Clash clash, Shortage shortage, SpanToCheck span) {
    DatedMass last = clash.masses().get(clash.masses().size() - 1);
    SpanToCheck days = span.on(clash.first().date(), last.date());
    return known.of(clash, days, () -> find(clash, shortage, days));
  }

  private List<Offer> find(Clash clash, Shortage shortage, SpanToCheck days) {
    RemedyWords words = new RemedyWords(new RemedyScene(days, shortage));
    Set<String> standing = check.in(days).stream().map(Clash::id).collect(Collectors.toSet());
    List<Offer> offers = new ArrayList<>();
    int carries = 0;
    for (Remedy remedy : RemedyQuestion.of(shortage, days).answer()) {
      boolean tooMany = remedy.change() instanceof Change.Carry && carries == MOST_CARRIES;
      Optional<Deed> deed =
          tooMany ? Optional.empty() : findDeed(clash, shortage, days, remedy, standing);
      if (deed.isPresent()) {
        carries += remedy.change() instanceof Change.Carry ? 1 : 0;
        String print = fingerprint(clash, remedy);
        offers.add(new Offer(words.of(remedy, deed.get(), offers.size() + 1, print), deed.get()));
      }
    }
    return offers;
  }

  /** Empty if it does not mend the clash after all. */
  private Optional<Deed> findDeed(
      Clash clash, Shortage shortage, SpanToCheck days, Remedy remedy, Set<String> standing) {
    if (isAdvice(remedy)) {
      return Optional.of(Deed.NONE);
    }
    Deed deed = DeedOf.of(days, shortage, remedy);
    if (remedy.change() instanceof Change.Release release
        && deed.released().size() < release.holds().size()) {
      return Optional.empty();
    }
    return !deed.isNothing() && mends(deed, clash, days, standing)
        ? Optional.of(deed)
        : Optional.empty();
  }

  /** No row can say it: somebody has to ask, and then enters what comes of it. */
  static boolean isAdvice(Remedy remedy) {
    Change change = remedy.change();
    return change instanceof Change.Borrow
        || change instanceof Change.Buy
        || change instanceof Change.BringBack;
  }

  private boolean mends(Deed deed, Clash clash, SpanToCheck days, Set<String> standing) {
    SpanToCheck after = deed.on(days, (mass, change) -> masses.with(days.cluster(), mass, change));
    boolean sameDays =
        after.masses().stream()
            .filter(mass -> deed.moves().stream().anyMatch(m -> m.after().mass().equals(mass.id())))
            .allMatch(
                mass ->
                    days.masses().stream()
                        .anyMatch(was -> was.id().equals(mass.id()) && isSameMass(was, mass)));
    return sameDays && check.in(after).stream().noneMatch(one -> isAgainst(one, clash, standing));
  }

  /** Another hour or colour must not make another Mass of it. */
  private static boolean isSameMass(DatedMass was, DatedMass is) {
    return was.kind() == is.kind()
        && was.date().equals(is.date())
        && was.option().celebration().id().equals(is.option().celebration().id())
        && is.isColourLawful();
  }

  /** The clash itself, or one that was not there before. */
  private static boolean isAgainst(Clash one, Clash clash, Set<String> standing) {
    return one.severity() != ClashSeverity.KNOW
        && (one.id().equals(clash.id()) || !standing.contains(one.id()));
  }

  private static String fingerprint(Clash clash, Remedy remedy) {
    String about = clash.id() + remedy.change() + remedy.journeys();
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(about.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest).substring(0, LETTERS);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
