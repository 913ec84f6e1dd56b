package vestiary.cluster;

import vestiary.web.Frame;

/**
 * The first page of an empty cluster.
 *
 * @param action where the form is sent
 * @param problem what keeps the whole form from being saved; empty if nothing does
 */
public record SetupView(Frame frame, String action, String problem, CalendarFields fields) {}
