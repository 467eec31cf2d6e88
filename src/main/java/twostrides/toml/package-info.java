/**
 * TOML in: a file's text becomes a table, or one complaint that knows its line. Knows TOML, not
 * what the keys mean. Imports nothing of the project.
 */
package twostrides.toml;
