package vestiary.proper;

import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * A day of one's own to be entered or changed, or a date of one year.
 *
 * @param title for example "Our Lady of the Ford" or "A day of your own"
 * @param action where the form is sent
 * @param problem what keeps the whole form from being saved; empty if nothing does
 * @param isOfOneYear whether celebration, date and churches are asked for and nothing else
 * @param celebration what the calendar has; the first option is none
 * @param month the first option is none
 * @param churches any number of them; none stands for all
 * @param removal to the question whether to remove it; none for a new one
 * @param version of what was read, to notice a lost race; empty for a new one
 */
public record ProperForm(
    Frame frame,
    String title,
    String action,
    String problem,
    Link back,
    boolean isOfOneYear,
    Choice celebration,
    Field name,
    Field latin,
    Field spanish,
    Field day,
    Choice month,
    Choice colour,
    Choice place,
    Choice onSunday,
    Field keptOn,
    Choice churches,
    Link removal,
    String version) {}
