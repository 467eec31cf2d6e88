package twostrides.book.chart;

/**
 * What a picture says to those who do not see it.
 *
 * @param id beginning of the ids in the picture, unique on its page: a-z, 0-9 and hyphens
 * @param title what it shows, in a line; any text
 * @param description what is to be seen, in words; any text
 */
record Caption(String id, String title, String description) {

  Caption {
    if (!id.matches("[a-z][a-z0-9-]*")) {
      throw new IllegalArgumentException("ids are made of a-z, 0-9 and hyphens, not " + id);
    }
  }
}
