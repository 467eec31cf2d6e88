package twostrides.book;

/**
 * The pictures of one page: drawing text for the page itself and where the PNG beside it lies.
 *
 * @param ways SVG of attempts by way out and strength
 * @param waysPng PNG of the same, relative to the page
 * @param map SVG of the release map
 * @param mapPng PNG of the same, relative to the page
 */
public record Pictures(String ways, String waysPng, String map, String mapPng) {}
