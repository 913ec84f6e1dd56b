package vestiary.people;

import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Somebody, to be filled in.
 *
 * @param problem what keeps the whole form from being sent; empty if nothing does
 * @param action where it is sent
 * @param seen what was seen of the person when the form was opened; empty of somebody new
 * @param churches where he serves; none ticked: in all
 * @param minor whether the person is under 18
 */
record PersonForm(
    Frame frame,
    String title,
    String problem,
    String action,
    String seen,
    Field name,
    Field called,
    Choice role,
    boolean visiting,
    Choice churches,
    Choice days,
    Field languages,
    Field mostADay,
    Field wishes,
    Field ownSet,
    Field permittedWeekday,
    Field permittedSunday,
    Field grantedBy,
    Field grantedOn,
    boolean minor,
    Field responsible,
    Link back) {}
