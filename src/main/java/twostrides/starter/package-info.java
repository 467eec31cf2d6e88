/**
 * Looks at a sheet that nobody has described and writes a map to start from: columns guessed by
 * name and content, words, clock, places and direction, each with what it rests on, and a question
 * where the sheet cannot tell. It decides nothing about hockey: a person reads the map, answers and
 * checks.
 */
package twostrides.starter;
