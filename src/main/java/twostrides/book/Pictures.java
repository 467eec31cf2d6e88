package twostrides.book;

import java.util.Optional;

/**
 * The drawings of a team or player.
 *
 * @param ways attempts by way out and strength; none where there are too few attempts for any bar
 *     to say a share
 * @param map releases short of center
 */
public record Pictures(Optional<Drawing> ways, Drawing map) {}
