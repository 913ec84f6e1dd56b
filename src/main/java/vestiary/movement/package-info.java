/**
 * The journeys of the plans that hold, for those who drive and those who own: listed, given to a
 * person by name, answered with one press. Stands on {@link vestiary.plan}, whose journeys they
 * are, and {@link vestiary.asking}, which keeps the answers. Start at {@link
 * vestiary.movement.ReadErrands}.
 */
package vestiary.movement;
