package vestiary.photo;

/**
 * A photograph as it is kept: upright, without anything the camera wrote into it.
 *
 * @param width in pixels, of the large one
 * @param height in pixels, of the large one
 * @param large JPEG, at most 1,600 pixels either way
 * @param small JPEG, at most 320 pixels either way
 */
public record Picture(int width, int height, byte[] large, byte[] small) {}
