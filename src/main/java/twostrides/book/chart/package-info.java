/**
 * Pictures of the book. A picture is a record of what it shows, in plain counts, seconds and
 * metres; its method {@code picture} draws it as SVG in a wide form and in a narrow form of its
 * own, with a text alternative and, when asked, as PNG.
 *
 * <p>Lengths on a drawing are pixels at the width of its form; lengths on the ice are metres, times
 * are seconds, shares are 0 to 1. Colours stand in {@code chart.css} only, where every class of the
 * drawings has its look in the light and in the dark theme. Diagrams are drawn by {@code Sketch},
 * charts of a player by JFreeChart and then brought to the same classes by {@code ChartSvg}.
 *
 * <p>May import {@code rink} and {@code rates}; knows no table, no page and no file.
 */
package twostrides.book.chart;
