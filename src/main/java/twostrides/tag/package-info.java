/**
 * Logging exits from a video: a page served to this machine only, a journal that loses nothing, and
 * the tag sheet that the review reads. Places are metres in the acting team's frame, video is
 * seconds; cells stay the words that the sheet will hold.
 *
 * <p>{@link twostrides.tag.TagDesk} keeps the rows, {@link twostrides.tag.TagServer} serves the
 * page. What a row may hold is decided by the readers of {@code game}, not here.
 *
 * <p>May import {@code sheet}, {@code game}, {@code rink} and {@code serve}.
 */
package twostrides.tag;
