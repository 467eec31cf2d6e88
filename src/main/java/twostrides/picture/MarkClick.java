package twostrides.picture;

import twostrides.rink.RinkMark;

/**
 * A mark of the rink where it was clicked.
 *
 * @param mark the mark
 * @param at the point of the picture
 */
public record MarkClick(RinkMark mark, Pixel at) {}
