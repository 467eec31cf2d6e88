/**
 * Pages served to this machine only: {@link twostrides.serve.LocalServer} listens on the loopback
 * address behind a gate that asks for its token, Host and Origin; {@link
 * twostrides.serve.BookFiles} gives out the files of a book, {@link twostrides.serve.MediaFile} a
 * video in ranges of bytes. It knows neither hockey nor sheets.
 *
 * <p>May import nothing of the project.
 */
package twostrides.serve;
