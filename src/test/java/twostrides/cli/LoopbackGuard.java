package twostrides.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.Permission;
import java.util.Set;

/**
 * Lets a program do what it likes, but for asking anything outside this machine or starting another
 * program that might: each such try is refused and written down, so that it is known even where the
 * program goes on. Started by {@code -Djava.security.manager}, which Java has up to version 23.
 */
@SuppressWarnings("removal")
public final class LoopbackGuard extends SecurityManager {

  /** The property that names the file for what was tried. */
  static final String TRIED = "twostrides.tried";

  private static final Set<String> HERE =
      Set.of("localhost", "127.0.0.1", "::1", "0:0:0:0:0:0:0:1");

  private static void refuse(String what) {
    try {
      Files.writeString(
          Path.of(System.getProperty(TRIED)),
          what + "\n",
          StandardOpenOption.CREATE,
          StandardOpenOption.APPEND);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    throw new SecurityException(what);
  }

  /** On Linux Java names a list of fonts by the machine's own name, and looks that up; not ours. */
  private static boolean javasFonts() {
    return StackWalker.getInstance()
        .walk(all -> all.anyMatch(f -> f.getClassName().equals("sun.font.FcFontConfiguration")));
  }

  /** A port of -1 asks for the address of a name. */
  @Override
  public void checkConnect(String host, int port) {
    if (!HERE.contains(host) && !(port == -1 && javasFonts())) {
      refuse("connect " + host + " " + port);
    }
  }

  @Override
  public void checkConnect(String host, int port, Object context) {
    checkConnect(host, port);
  }

  @Override
  public void checkMulticast(InetAddress group) {
    refuse("multicast " + group);
  }

  @Override
  public void checkAccept(String host, int port) {
    if (!HERE.contains(host)) {
      refuse("accept " + host + " " + port);
    }
  }

  @Override
  public void checkExec(String program) {
    refuse("start " + program);
  }

  @Override
  public void checkPermission(Permission permission) {}

  @Override
  public void checkPermission(Permission permission, Object context) {}
}
