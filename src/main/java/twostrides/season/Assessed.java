package twostrides.season;

import twostrides.exits.Release;

/**
 * A release with what came out for it.
 *
 * @param release the release
 * @param assessment its chances and the verdict
 */
public record Assessed(Release release, Assessment assessment) {}
