package twostrides.cli;

/** Entry point of the runnable jar. */
public final class Main {
  private Main() {}

  /**
   * Runs one command.
   *
   * @param args the command line
   */
  public static void main(String[] args) {
    System.out.println("Two Strides");
  }
}
