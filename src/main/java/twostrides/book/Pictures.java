package twostrides.book;

/**
 * The drawings of a team or player.
 *
 * @param ways attempts by way out and strength
 * @param map releases short of center
 */
public record Pictures(Drawing ways, Drawing map) {}
