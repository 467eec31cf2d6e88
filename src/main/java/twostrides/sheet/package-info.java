/**
 * CSV in: column maps, declared columns, located problems and rows set aside. Knows files, not
 * hockey: what a column means is declared by whoever reads it. Text in, text out; no units.
 *
 * <p>May import nothing else of the project.
 */
package twostrides.sheet;
