/**
 * Commands, exit codes and what the console says; the only user of {@code System.out}.
 *
 * <p>May import every other package.
 */
package twostrides.cli;
