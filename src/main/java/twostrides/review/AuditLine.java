package twostrides.review;

/**
 * An icing that the sheet writes and the book would not call: something to look at again, no error.
 *
 * @param restart the restart
 * @param what what the sheet says and what the book says, a sentence
 */
public record AuditLine(RestartLine restart, String what) {}
