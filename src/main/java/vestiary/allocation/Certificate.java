package vestiary.allocation;

import java.util.List;
import java.util.Objects;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * What shows that the needs of a finding cannot all be served, so that anybody can check it by
 * hand. Holds for the pieces that the finding counts as available; {@link ShortageProof} checks it.
 */
public sealed interface Certificate {

  /** In the order in which they are preferred. */
  CertificateKind kind();

  /**
   * No two of the needs can share a piece, and they are more than the pieces that serve any of
   * them.
   *
   * <p>Source: P. Hall, "On representatives of subsets" (1935), for the count; R. P. Dilworth, "A
   * decomposition theorem for partially ordered sets" (1950), for the largest such set.
   */
  record AllClash() implements Certificate {
    @Override
    public CertificateKind kind() {
      return CertificateKind.ALL_CLASH;
    }
  }

  /**
   * Each piece by itself can serve only so many of the needs in turn; added up they are fewer than
   * the needs.
   *
   * @param chains one for each piece that serves any of the needs, in order of code
   */
  record Chains(List<Chain> chains) implements Certificate {
    public Chains {
      chains = List.copyOf(chains);
    }

    @Override
    public CertificateKind kind() {
      return CertificateKind.CHAINS;
    }

    /** How many of the needs the pieces serve at most. */
    public int atMost() {
      return chains.stream().mapToInt(chain -> chain.needs().size()).sum();
    }
  }

  /**
   * @param needs the most that the piece can serve in turn, in order of time, one or more
   */
  record Chain(Piece piece, List<Need> needs) {
    public Chain {
      Objects.requireNonNull(piece, "piece");
      needs = List.copyOf(needs);
    }
  }

  /**
   * One choice after another is the only one left, until none is left for a need.
   *
   * @param choices in the order in which they follow, one or more
   * @param without the need for which no piece is left
   * @param gone all pieces that serve it, with the needs that took them
   */
  record ForcedChoices(List<Choice> choices, Need without, List<Taken> gone)
      implements Certificate {
    public ForcedChoices {
      Objects.requireNonNull(without, "without");
      choices = List.copyOf(choices);
      gone = List.copyOf(gone);
    }

    @Override
    public CertificateKind kind() {
      return CertificateKind.FORCED_CHOICES;
    }
  }

  /**
   * A need with the only piece left for it.
   *
   * @param pieces that piece; or several that are alike for these needs, of which it takes one
   * @param gone all other pieces that serve it, with the needs that took them
   */
  record Choice(Need need, List<Piece> pieces, List<Taken> gone) {
    public Choice {
      Objects.requireNonNull(need, "need");
      pieces = List.copyOf(pieces);
      gone = List.copyOf(gone);
    }
  }

  /**
   * @param pieces one or more
   * @param by needs of as many earlier choices, which clash with one another and with the need that
   *     goes on to look
   */
  record Taken(List<Piece> pieces, List<Need> by) {
    public Taken {
      pieces = List.copyOf(pieces);
      by = List.copyOf(by);
    }
  }

  /**
   * Every way to hand the pieces out leaves a need without, and none of the needs can be left out
   * of this: without any one, the others are served.
   *
   * @param options the pieces that serve each need, in canonical order of the needs
   */
  record Exhaustion(List<Option> options) implements Certificate {
    public Exhaustion {
      options = List.copyOf(options);
    }

    @Override
    public CertificateKind kind() {
      return CertificateKind.EXHAUSTION;
    }
  }

  /**
   * @param pieces those that serve the need, in order of code
   */
  record Option(Need need, List<Piece> pieces) {
    public Option {
      Objects.requireNonNull(need, "need");
      pieces = List.copyOf(pieces);
    }
  }

  /** What was to show it did not hold when it was checked again, so that nothing is shown. */
  record Unproven() implements Certificate {
    @Override
    public CertificateKind kind() {
      return CertificateKind.UNPROVEN;
    }
  }
}
