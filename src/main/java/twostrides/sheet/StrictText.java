package twostrides.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;

/**
 * The text of a stream, decoded strictly. What stands before a byte that is no text is given first;
 * only who asks for more gets the error, so that the lines before it are known by then.
 */
final class StrictText extends Reader {
  private static final int BUFFER = 1 << 16;

  private final InputStream source;
  private final CharsetDecoder decoder;
  private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER).flip();
  private boolean ended;

  /** A byte that is no text. */
  static final class BadByteException extends IOException {
    private static final long serialVersionUID = 1L;

    private final byte value;

    private BadByteException(byte value) {
      super("a byte that is no text");
      this.value = value;
    }

    /** The byte. */
    byte value() {
      return value;
    }
  }

  /** The disk, not the text, is to blame. */
  static final class DiskException extends IOException {
    private static final long serialVersionUID = 1L;

    private DiskException(IOException cause) {
      super(cause);
    }
  }

  StrictText(InputStream source, Charset charset) {
    this.source = source;
    this.decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    CharBuffer out = CharBuffer.wrap(buffer, offset, length);
    while (true) {
      CoderResult result = decoder.decode(bytes, out, ended);
      if (out.position() > offset) {
        return out.position() - offset;
      }
      if (result.isError()) {
        throw new BadByteException(bytes.get(bytes.position()));
      }
      if (ended) {
        return -1;
      }
      fill();
    }
  }

  private void fill() throws IOException {
    bytes.compact();
    try {
      int n = source.read(bytes.array(), bytes.position(), bytes.remaining());
      ended = n < 0;
      bytes.position(bytes.position() + Math.max(0, n));
    } catch (IOException e) {
      throw new DiskException(e);
    } finally {
      bytes.flip();
    }
  }

  @Override
  public void close() throws IOException {
    source.close();
  }
}
