package twostrides.sheet;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;

/** Sheets that are packed: one in a gzip file, several in a zip file. */
final class Packed {
  private static final String GZIP = ".gz";
  private static final String ZIP = ".zip";

  private Packed() {}

  /** A file's name without the ending that says that it is packed. */
  static String unpackedName(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(GZIP)
        ? name.substring(0, name.length() - GZIP.length())
        : name;
  }

  /** Whether a file is a zip file by its name. */
  static boolean isZip(Path file) {
    return Sheet.fileName(file).toLowerCase(Locale.ROOT).endsWith(ZIP);
  }

  /**
   * The bytes of a file, unpacked by its name.
   *
   * @param file the file
   * @param raw its bytes as they are on the disk
   * @throws IOException when they are not packed as the name says
   */
  static InputStream unpacked(Path file, InputStream raw) throws IOException {
    String name = Sheet.fileName(file);
    boolean plain = name.equals(unpackedName(name));
    return new BufferedInputStream(plain ? raw : new GZIPInputStream(raw));
  }

  /**
   * The bytes of a file, unpacked.
   *
   * @param file the file
   * @param digest what its bytes on the disk are put through
   * @throws IOException when it cannot be read, or holds more than {@link SheetText#LARGEST}
   */
  static byte[] read(Path file, MessageDigest digest) throws IOException {
    byte[] raw = Files.readAllBytes(file);
    digest.update(raw);
    try (InputStream in = unpacked(file, new ByteArrayInputStream(raw))) {
      byte[] bytes = in.readNBytes((int) SheetText.LARGEST + 1);
      if (bytes.length > SheetText.LARGEST) {
        throw new ZipException("more than " + SheetText.LARGEST + " bytes");
      }
      return bytes;
    } catch (EOFException e) {
      throw (ZipException) new ZipException("it breaks off").initCause(e);
    }
  }

  /** A packed file that is not whole. */
  static SheetException broken(Path file, ZipException e) {
    return SheetException.ofFile(
        SheetText.display(file),
        "a file that cannot be unpacked (" + e.getMessage() + ")",
        "a whole gzip file",
        "Fetch it again, or unpack it yourself.");
  }

  /**
   * The files in a zip file, those in its folders too. They can be read until the program ends.
   *
   * @throws IOException when the zip file cannot be read
   */
  static List<Path> inside(Path zip) throws IOException {
    List<Path> files = new ArrayList<>();
    FileSystem packed = FileSystems.newFileSystem(zip, (ClassLoader) null);
    for (Path root : packed.getRootDirectories()) {
      try (Stream<Path> all = Files.walk(root)) {
        all.filter(Files::isRegularFile)
            .filter(f -> !f.startsWith("/__MACOSX") && !Sheet.fileName(f).startsWith("."))
            .forEach(files::add);
      }
    }
    return files;
  }
}
