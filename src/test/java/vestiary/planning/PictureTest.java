package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.planning.CountPicture.Count;
import vestiary.planning.CountPicture.Need;
import vestiary.planning.CountPicture.Piece;
import vestiary.planning.DayPicture.Church;
import vestiary.planning.DayPicture.Mass;
import vestiary.web.Invented;

class PictureTest {

  @Test
  void a_mass_twice_as_long_is_drawn_twice_as_wide() {
    Church church = new Church("Holy Trinity", "", List.of(mass(480, 30), mass(720, 60)));

    DayPicture.Drawing drawing = DayPicture.of(List.of(church), List.of());

    List<DayPicture.Bar> bars = drawing.rows().get(0).bars();
    double hour = drawing.hours().get(1).x() - drawing.hours().get(0).x();
    assertEquals(4 * hour, bars.get(1).x() - bars.get(0).x(), .5);
  }

  @Test
  void words_of_masses_that_follow_closely_stand_on_two_lines() {
    Church church = new Church("Holy Trinity", "", List.of(mass(480, 30), mass(515, 30)));

    List<DayPicture.Bar> bars =
        DayPicture.of(List.of(church, late()), List.of()).rows().get(0).bars();

    assertTrue(bars.get(1).wordsY() > bars.get(0).wordsY());
  }

  @Test
  void a_mass_past_midnight_stays_on_its_evening() {
    Church vigil = new Church("Saint Anne", "", List.of(mass(22 * 60 + 30, 180)));

    DayPicture.Drawing drawing = DayPicture.of(List.of(vigil), List.of());

    assertTrue(drawing.hours().stream().anyMatch(h -> h.clock().equals("01:00")));
    assertTrue(drawing.hours().stream().allMatch(h -> h.x() <= drawing.width()));
  }

  @Test
  void a_slope_begins_and_ends_on_the_lines_of_its_churches() {
    Church church = new Church("Holy Trinity", "", List.of(mass(480, 60)));
    DayPicture.Journey journey = new DayPicture.Journey(0, 1, 555, 569, "Ilverton, 14 min", true);

    DayPicture.Drawing drawing = DayPicture.of(List.of(church, late()), List.of(journey));

    DayPicture.Slope slope = drawing.slopes().get(0);
    assertEquals(drawing.rows().get(0).y(), slope.y1());
    assertEquals(drawing.rows().get(1).y(), slope.y2());
    assertTrue(slope.x2() > slope.x1());
  }

  @Test
  void a_day_without_masses_is_not_drawn() {
    assertSame(
        DayPicture.Drawing.NONE,
        DayPicture.of(List.of(new Church("Holy Trinity", "", List.of())), List.of()));
  }

  @Test
  void only_pieces_that_can_serve_are_numbered() {
    CountPicture.Drawing drawing =
        CountPicture.of(
            count(
                1110,
                new Piece("SA-W1", Colour.WHITE, true, ""),
                new Piece("SA-W3", Colour.WHITE, false, "at the cleaner"),
                new Piece("SA-W2", Colour.WHITE, true, "")));

    assertEquals(
        List.of("1", "", "2"),
        drawing.pieces().stream().map(CountPicture.PieceBar::number).toList());
    assertEquals("18:30", drawing.moment().get(0).clock());
  }

  @Test
  void needs_without_a_common_moment_have_no_red_line() {
    CountPicture.Drawing drawing =
        CountPicture.of(count(-1, new Piece("SA-W1", Colour.WHITE, true, "")));

    assertEquals(List.of(), drawing.moment());
    assertTrue(drawing.needs().get(0).wordsX() > drawing.needs().get(0).x());
  }

  @Test
  void what_comes_late_arrives_to_the_right_of_its_red_line() {
    JourneyPicture.Drawing drawing =
        JourneyPicture.of(
            new JourneyPicture.Late(
                "",
                new JourneyPicture.Stop("Saints Peter and Paul", "", Colour.ROSE, 510, 570),
                new JourneyPicture.Stop("Holy Trinity", "", Colour.ROSE, 630, 690),
                585,
                611,
                600,
                "due 10:00",
                "there at 10:11",
                ""));

    assertTrue(drawing.leavesX() < drawing.dueX());
    assertTrue(drawing.dueX() < drawing.arrivesX());
  }

  private static Church late() {
    return new Church("Saint Anne", "", List.of(mass(1200, 60)));
  }

  private static Mass mass(int start, int minutes) {
    int end = start + minutes;
    DayPicture.Said said = new DayPicture.Said(Invented.MUST, "one white short");
    return new Mass(start - 20, start, end, end + 15, Colour.RED, "confirmation", List.of(said));
  }

  private static Count count(int at, Piece... pieces) {
    Need need = new Need("Tarnwick", Colour.WHITE, 1080, 1110, 1200, 1215, "at the altar");
    return new Count("", at, "", "", List.of(need), "", "", List.of(pieces), "");
  }
}
