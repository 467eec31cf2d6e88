package twostrides.rulebook;

/** What a book says of one release, with its reason. */
public sealed interface Ruling {

  /** The reason in one plain sentence part. */
  String reason();

  /**
   * Place and manpower allow an icing.
   *
   * @param reason why
   */
  record MayBeIcing(String reason) implements Ruling {}

  /**
   * No icing, whatever followed.
   *
   * @param reason why
   */
  record NotIcing(String reason) implements Ruling {}

  /**
   * A fact is missing.
   *
   * @param reason which one
   */
  record NotDecided(String reason) implements Ruling {}
}
