package vestiary.reservation;

import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;

/** The form of a Mass that is not in the schedule yet. */
record ToBeView(
    Frame frame,
    String problem,
    Choice church,
    Field date,
    Field time,
    Field minutes,
    Choice liturgy,
    Choice massColour,
    Field celebrant,
    boolean bishop,
    Field concelebrants,
    Field deacons) {}
