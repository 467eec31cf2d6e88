/**
 * From a point of a picture to a place on the ice: marks of the rink clicked in the picture give
 * the way, with its error. Points are picture elements from the upper left corner, places metres.
 *
 * <p>{@link twostrides.picture.PictureFit} is the way in.
 *
 * <p>May import {@code rink}.
 */
package twostrides.picture;
