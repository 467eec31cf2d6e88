package twostrides.book;

import twostrides.season.Flag;

/**
 * A release that may be flagged, as a page shows it.
 *
 * @param id its place on the page of flags
 * @param flag the release
 * @param picture its diagram
 * @param thumbnail the same small and without words
 */
public record FlagCard(String id, Flag flag, String picture, String thumbnail) {}
