/**
 * Photographs of pieces and of damage: read with suspicion, made anew, kept small. Start at {@link
 * vestiary.photo.KeepPhoto} and {@link vestiary.photo.ReadPicture}.
 */
package vestiary.photo;
