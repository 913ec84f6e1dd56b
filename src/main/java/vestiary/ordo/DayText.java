package vestiary.ordo;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import vestiary.calendar.Day;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** What is printed for a day, as plain sentences one below the other. */
final class DayText {

  private final DayLines lines;
  private final DayNotes notes;

  DayText(Ordo ordo) {
    this.lines = new DayLines(ordo);
    this.notes = new DayNotes(ordo);
  }

  /** Rank, duty, what else may be celebrated, the evening and the notes; never what is kept. */
  String of(Day day) {
    List<String> sentences = new ArrayList<>(rank(lines.kept(day)));
    if (!DayNotes.duty(day).isEmpty()) sentences.add(DayNotes.duty(day) + ".");
    lines.others(day).forEach(line -> sentences.add(sentence(line)));
    lines.eves(day.date()).forEach(line -> sentences.add(sentence(line)));
    notes.of(day).forEach(note -> sentences.add(sentence(note)));
    return String.join("\n", sentences);
  }

  /** What a single church keeps instead, of which the rank alone is left to be said. */
  String ofOwn(Day day) {
    return String.join("\n", rank(lines.kept(day)));
  }

  private static List<String> rank(OrdoView.Line kept) {
    String rank = kept.name().celebration().rankWord();
    return rank.isEmpty() ? List.of() : List.of(rank + ".");
  }

  private static String sentence(OrdoView.Line line) {
    String where = line.church().isEmpty() ? "" : line.church() + ", ";
    String colours = Speech.choice(line.ribbons().stream().map(Ribbon::name).toList());
    String what = line.name().celebration().lead() + " " + line.name().celebration().name();
    return "%s (%s).".formatted(Speech.sentence(where + what), colours);
  }

  private static String sentence(OrdoView.Note note) {
    return note.names().isEmpty()
        ? note.words()
        : note.names().stream()
            .map(OrdoView.Text::text)
            .collect(Collectors.joining("; ", note.words() + " ", "."));
  }
}
