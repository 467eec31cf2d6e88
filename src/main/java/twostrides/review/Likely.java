package twostrides.review;

/**
 * A chance with how sure it is.
 *
 * @param p the chance, 0 to 1
 * @param low lower end of its 95 % interval
 * @param high upper end
 */
public record Likely(double p, double low, double high) {}
