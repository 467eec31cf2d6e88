package twostrides.sheet;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
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
   * Opens a file, unpacked by its name.
   *
   * @throws IOException when it cannot be opened
   */
  static InputStream open(Path file) throws IOException {
    InputStream in = new BufferedInputStream(Files.newInputStream(file));
    String name = Sheet.fileName(file);
    if (name.equals(unpackedName(name))) {
      return in;
    }
    try {
      return new BufferedInputStream(new GZIPInputStream(in));
    } catch (IOException e) {
      in.close();
      throw e;
    }
  }

  /**
   * The bytes of a file, unpacked.
   *
   * @throws IOException when it cannot be read, or holds more than {@link SheetText#LARGEST}
   */
  static byte[] read(Path file) throws IOException {
    try (InputStream in = open(file)) {
      byte[] bytes = in.readNBytes((int) SheetText.LARGEST + 1);
      if (bytes.length > SheetText.LARGEST) {
        throw new ZipException("more than " + SheetText.LARGEST + " bytes");
      }
      return bytes;
    } catch (EOFException e) {
      throw (ZipException) new ZipException("it breaks off").initCause(e);
    }
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
