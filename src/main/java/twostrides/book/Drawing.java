package twostrides.book;

/**
 * A drawing that lies in the book.
 *
 * @param svg its file, seen from the book's folder
 * @param forSlides what to put on a slide: the PNG where one was asked for, else the SVG
 * @param alternative what it shows, in words
 * @param width of the drawing, in pixels at scale 1
 * @param height of the drawing, in pixels at scale 1
 */
public record Drawing(String svg, String forSlides, String alternative, int width, int height) {}
