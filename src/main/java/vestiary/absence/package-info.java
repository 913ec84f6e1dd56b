/**
 * Who is away when, and what that comes to: entered by those who keep people, by the person, or on
 * one press from a phone. The absences themselves are kept in {@code people}; this room knows the
 * Masses too. Start at {@link vestiary.absence.WhatItTouches}.
 */
package vestiary.absence;
