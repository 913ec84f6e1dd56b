package vestiary.pool;

import static vestiary.web.Speech.say;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.vesting.PieceKind;
import vestiary.web.Choice;
import vestiary.web.Entries;
import vestiary.web.Speech;

/**
 * Which pieces the reader wants to see. What is not known counts as not asked for.
 *
 * @param churches all there are
 * @param church short name of a church, or empty for all
 * @param colour id of a colour, or empty for all; what a piece is, not what it may serve as
 * @param kind id of a kind, or empty for all
 */
record PoolSift(List<Church> churches, String church, String colour, String kind) {

  PoolSift {
    String wanted = church;
    churches = List.copyOf(churches);
    church = churches.stream().anyMatch(c -> c.slug().equals(wanted)) ? wanted : "";
    colour = Term.find(Colour.class, colour).map(Term::id).orElse("");
    kind = Term.find(PieceKind.class, kind).map(Term::id).orElse("");
  }

  boolean isOpen() {
    return church.isEmpty() && colour.isEmpty() && kind.isEmpty();
  }

  boolean lets(PooledPiece piece) {
    return (colour.isEmpty() || piece.colour().id().equals(colour))
        && (kind.isEmpty() || piece.kind().id().equals(kind));
  }

  List<Church> chosenChurches() {
    return church.isEmpty()
        ? churches
        : churches.stream().filter(c -> c.slug().equals(church)).toList();
  }

  Choice churchChoice() {
    return choice(
        say("All churches"),
        church,
        churches.stream().map(c -> Choice.Option.of(c.slug(), c.name())));
  }

  Choice colourChoice() {
    return choice(
        say("All colours"),
        colour,
        Arrays.stream(Colour.values()).map(c -> Choice.Option.of(c.id(), Speech.colour(c))));
  }

  Choice kindChoice() {
    return choice(
        say("All kinds"),
        kind,
        Arrays.stream(PieceKind.values()).map(k -> Choice.Option.of(k.id(), PieceWords.kind(k))));
  }

  private static Choice choice(String all, String chosen, Stream<Choice.Option> options) {
    return Entries.empty()
        .with("it", chosen)
        .choice("it", Stream.concat(Stream.of(Choice.Option.of("", all)), options));
  }
}
