package twostrides.book.chart;

/**
 * What values are compared with: one line with a name.
 *
 * @param label for example "team"; any text
 * @param value in the unit of the picture; a share is 0 to 1
 */
public record Reference(String label, double value) {}
