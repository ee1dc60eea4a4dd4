package crumbtrail.web;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Reads a form as browsers post it ({@code application/x-www-form-urlencoded}, UTF-8). Reading is
 * strict, since the only sender is our own form: a broken escape or broken UTF-8 is refused instead
 * of being guessed at.
 */
final class FormBody {

  private FormBody() {}

  /** The fields by name, the last one where a name comes twice; empty if the body is malformed. */
  static Optional<Map<String, String>> read(byte[] body) {
    Map<String, String> fields = new LinkedHashMap<>();
    int start = 0;
    while (start <= body.length) {
      int end = indexOf(body, '&', start, body.length);
      if (end > start) {
        int equals = indexOf(body, '=', start, end);
        Optional<String> name = decode(body, start, equals);
        Optional<String> value = decode(body, Math.min(equals + 1, end), end);
        if (name.isEmpty() || value.isEmpty()) {
          return Optional.empty();
        }
        fields.put(name.get(), value.get());
      }
      start = end + 1;
    }
    return Optional.of(fields);
  }

  /** Text that must be UTF-8 throughout. */
  static Optional<String> text(byte[] bytes, int length) {
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes, 0, length)).toString());
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  private static int indexOf(byte[] body, char wanted, int from, int to) {
    for (int i = from; i < to; i++) {
      if (body[i] == wanted) {
        return i;
      }
    }
    return to;
  }

  private static Optional<String> decode(byte[] body, int from, int to) {
    byte[] plain = new byte[to - from];
    int length = 0;
    for (int i = from; i < to; i++) {
      byte b = body[i];
      if (b == '%') {
        int high = i + 2 < to ? Character.digit(body[i + 1], 16) : -1;
        int low = i + 2 < to ? Character.digit(body[i + 2], 16) : -1;
        if (high < 0 || low < 0) {
          return Optional.empty();
        }
        plain[length++] = (byte) (high * 16 + low);
        i += 2;
      } else {
        plain[length++] = b == '+' ? (byte) ' ' : b;
      }
    }
    return text(plain, length);
  }
}
