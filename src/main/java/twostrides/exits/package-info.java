/**
 * The pipeline: touches table, exits table, releases table, restarts table, rates tables. Every
 * column is named in one place, {@link twostrides.exits.Columns}, with its unit in the name.
 *
 * <p>May import {@code game}, {@code rulebook} (with {@code rulebook.penalty}), {@code race} and
 * {@code stats}, and {@code rink} for places.
 */
package twostrides.exits;
