package vestiary.planning;

import static vestiary.web.Invented.DECIDE;
import static vestiary.web.Invented.MUST;

import java.util.List;
import vestiary.allocation.remedy.Cost;
import vestiary.calendar.Colour;
import vestiary.planning.ClashView.TallyLine;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Standing;

/** Clashes of the demo, as their pages get them. */
final class InventedClash {

  private static final List<Link> TURN =
      List.of(new Link("The day", "/day/2026-12-08"), new Link("The Mass", "/masses/7"));

  private InventedClash() {}

  static ClashView shortage(Frame frame) {
    return new ClashView(
        frame,
        DECIDE,
        "Saint Anne, Millferry · Tuesday 8 December, 18:30",
        "Three concelebrants need white; two white sets are there",
        "White, The Immaculate Conception. Oakhallow wears his own gold set; the three beside him"
            + " need white. One set is short. Mass can be celebrated all the same.",
        TURN,
        CountPicture.of(count()),
        JourneyPicture.Drawing.NONE,
        ProofView.COUNTED,
        List.of(
            "At 18:30 Tarnwick, Ilverton and Wexcombe stand at the altar together. No set can serve"
                + " two of them, so three are needed.",
            "Saint Anne owns three white sets. SA-W1 and SA-W2 are in the cupboard. SA-W3 is at the"
                + " cleaner from 27 November until 11 December."),
        "Three needed, two there, one short.",
        "Checked by counting both, not by search. Colour: GIRM 346. Vesture of concelebrants: GIRM"
            + " 209.",
        "The thirteen white sets of the cluster",
        List.of(
            new TallyLine(2, List.of("white", "white"), "here and free", "SA-W1, SA-W2"),
            new TallyLine(1, List.of("away"), "at the cleaner to 11 December", "SA-W3"),
            new TallyLine(1, List.of("away"), "being mended to 18 December", "SJ-W2"),
            new TallyLine(1, List.of("gold"), "stays in its church", "HT-W4"),
            new TallyLine(
                8,
                List.of("white", "white", "white", "white", "white", "white", "white", "white"),
                "elsewhere and free, can be carried",
                "HT 3, OL 2, SJ 1, PP 1, SM 1")),
        "Thirteen, each counted once.",
        "Oakhallow’s gold set is his own and is not counted.",
        List.of(
            "One concelebrant in stole over alb, for a good reason (GIRM 209, Redemptionis"
                + " Sacramentum 124)."),
        List.of(
            "Three whites from Holy Trinity, Tollbridge: 14 minutes.",
            "Two whites from Our Lady of the Rosary, Coldorchard: 22 minutes."),
        MendingView.NONE);
  }

  /** The same with ways out, one of them accepted by name and one mere advice. */
  static ClashView mendable(Frame frame) {
    return shortage(frame)
        .with(
            new MendingView(
                "/clashes/2026-12-08/2/remedies",
                List.of(
                    remedy(1, "Bring three matching white sets from Holy Trinity.", false, false),
                    remedy(2, "One concelebrant in alb and stole.", true, false),
                    remedy(3, "Borrow one white set from outside the cluster.", false, true)),
                List.of(),
                List.of("Fr Cosmas Ilverton"),
                "",
                ""));
  }

  /** The page of a clash that is gone, and why. */
  static MendedView mended(Frame frame) {
    return new MendedView(
        frame,
        "Saint Anne, Tuesday 8 December, 18:30",
        "Three concelebrants need white; two white sets are there",
        TURN,
        new MendingView(
            "/clashes/2026-12-08/2/remedies",
            List.of(),
            List.of(
                new AppliedRemedy(
                    "2026-12-08-0123456789abcdef",
                    1,
                    "Saint Anne, Tuesday 8 December, 18:30",
                    "Three concelebrants need white; two white sets are there",
                    "Bring three matching white sets from Holy Trinity.",
                    "30 November 2026, 10:42",
                    "2026-11-30T10:42:00-06:00")),
            List.of(),
            "",
            ""));
  }

  private static OfferedRemedy remedy(
      int place, String sentence, boolean takesName, boolean isAdvice) {
    return new OfferedRemedy(
        place,
        sentence,
        "Somebody brings HT-W1, HT-W2 and HT-W3: leaves Holy Trinity by 17:46, at Saint Anne by"
            + " 18:00.",
        "One drive of 14 minutes by whoever goes.",
        List.of(),
        "",
        new Cost(List.of(0L, 0L, 0L), List.of(0L, 0L, 0L), 1, 14, 0, 0),
        List.of(),
        isAdvice,
        takesName,
        false,
        "0123456789abcdef");
  }

  private static CountPicture.Count count() {
    return new CountPicture.Count(
        "At 18:30 three white chasubles are needed at once; two white sets are at Saint Anne.",
        18 * 60 + 30,
        "White chasubles needed",
        "3 needed",
        List.of(need("Tarnwick"), need("Ilverton"), need("Wexcombe")),
        "White sets at Saint Anne",
        "2 there",
        List.of(
            new CountPicture.Piece("SA-W1", Colour.WHITE, true, "in the cupboard"),
            new CountPicture.Piece("SA-W2", Colour.WHITE, true, "in the cupboard"),
            new CountPicture.Piece(
                "SA-W3", Colour.WHITE, false, "at the cleaner until 11 December")),
        "Thin line: set out at 18:00, put away by 20:15. Bar: the Mass. On the red line: three marks"
            + " above, two below.");
  }

  private static CountPicture.Need need(String who) {
    return new CountPicture.Need(who, Colour.WHITE, 1080, 1110, 1200, 1215, "at the altar");
  }

  static ClashView unreachable(Frame frame) {
    return new ClashView(
        frame,
        MUST,
        "Holy Trinity, Tollbridge · Sunday 13 December, 10:30",
        "The rose set comes eleven minutes too late",
        "The one rose set of the cluster is wanted at Upper Wenlow and at Tollbridge.",
        TURN,
        CountPicture.Drawing.NONE,
        JourneyPicture.of(
            new JourneyPicture.Late(
                "The rose set leaves Upper Wenlow at 09:45 and is at Tollbridge at 10:11; it was due"
                    + " at 10:00.",
                new JourneyPicture.Stop(
                    "Saints Peter and Paul", "Upper Wenlow", Colour.ROSE, 510, 570),
                new JourneyPicture.Stop("Holy Trinity", "Tollbridge", Colour.ROSE, 630, 690),
                585,
                611,
                600,
                "due 10:00",
                "there at 10:11",
                "Cleared by 09:45, then 26 minutes on the road: eleven late.")),
        ProofView.COUNTED,
        List.of("The Mass at Upper Wenlow ends at 09:30 and the set is cleared by 09:45."),
        "Due at 10:00, there at 10:11.",
        "",
        "",
        List.of(),
        "",
        "",
        List.of("Violet in place of rose, always right on this Sunday (GIRM 346)."),
        List.of(),
        MendingView.NONE);
  }

  static ClashView forced(Frame frame) {
    return new ClashView(
        frame,
        MUST,
        "Wednesday 20 January, Holy Trinity (10:00), Saint Anne (10:30) and Our Lady (12:00)",
        "Three Masses need red close together; the two sets that could serve them do not suffice",
        "Red: votive Masses of the Holy Spirit.",
        TURN,
        CountPicture.Drawing.NONE,
        JourneyPicture.Drawing.NONE,
        new ProofView(
            "In time",
            "One choice after another",
            List.of("", "For", "Left", "Since"),
            List.of(
                List.of("1", "Saint Anne, 10:30", "SA-R1", "nothing else can serve it"),
                List.of("2", "Holy Trinity, 10:00", "HT-R1", "SA-R1 goes to Saint Anne, 10:30"),
                List.of("3", "Our Lady, 12:00", "none", "HT-R1 goes to Holy Trinity, 10:00")),
            ""),
        List.of(
            "Only SA-R1 can serve Saint Anne, 10:30; so only HT-R1 is left for Holy Trinity, 10:00;"
                + " so none is left for Our Lady, 12:00."),
        "Three needed, two at most can be served, one short.",
        "Checked by following each choice, not by search.",
        "",
        List.of(),
        "",
        "",
        List.of(),
        List.of(),
        MendingView.NONE);
  }

  static ClashesView list(Frame frame) {
    return new ClashesView(
        frame,
        "30 November to 13 December 2026",
        "2026-11-30",
        "2026-12-13",
        List.of(new Link("The week", "/week/2026-11-30")),
        new Standing(
            "Six things stand in the way.",
            List.of(
                new Standing.Count(MUST, "Four must be mended"),
                new Standing.Count(DECIDE, "two are to be decided"))),
        List.of(
            new ClashesView.Day(
                "Saturday 5 December",
                List.of(
                    item(MUST, "08:30", "Ilverton would say three Masses; two are permitted him"),
                    item(DECIDE, "10:30", "Five need red; three red sets are there"))),
            new ClashesView.Day(
                "Tuesday 8 December",
                List.of(
                    item(
                        DECIDE,
                        "18:30",
                        "Three concelebrants need white; two white sets are there")))));
  }

  private static ClashesView.Item item(vestiary.web.ClashMark mark, String time, String title) {
    return new ClashesView.Item(
        mark, time, "Holy Trinity, Tollbridge", title, "One set is short.", "/clashes/2");
  }

  static ClashesView none(Frame frame) {
    return new ClashesView(
        frame,
        "30 November to 13 December 2026",
        "2026-11-30",
        "2026-12-13",
        List.of(),
        new Standing("Nothing stands in the way.", List.of()),
        List.of());
  }
}
