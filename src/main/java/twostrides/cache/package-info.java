/**
 * What a run found of each sheet, kept for later runs: records as bytes, and a folder of them. It
 * knows no record by name.
 *
 * <p>May import {@code output}.
 */
package twostrides.cache;
