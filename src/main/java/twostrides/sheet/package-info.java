/**
 * CSV in: column maps, declared columns, located problems and rows set aside. Knows files, not
 * hockey: what a column means is declared by whoever reads it. Text in, text out; no units.
 *
 * <p>A {@link twostrides.sheet.SheetSchema} declares the columns, a {@link
 * twostrides.sheet.SheetMap} says where a provider keeps them, {@link twostrides.sheet.SheetReader}
 * reads a file by both. A file that cannot be read at all is a {@link
 * twostrides.sheet.SheetException}; a row that cannot be used is a {@link
 * twostrides.sheet.DoubtfulRow}, kept in its own words.
 *
 * <p>May import nothing else of the project.
 */
package twostrides.sheet;
