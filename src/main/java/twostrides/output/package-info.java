/**
 * An output folder that is replaced whole or not at all, by one run at a time, and in which only
 * files that an earlier run wrote are ever replaced or removed. Knows files, not what is in them.
 */
package twostrides.output;
