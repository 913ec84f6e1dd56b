/**
 * Priests, deacons and other ministers, for now by name alone. What they do is kept elsewhere under
 * their id, so that a person can be erased while the record stands.
 */
package vestiary.people;
