package crumbtrail.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/** Secrets that are drawn by lot. */
public final class Tokens {
  private static final SecureRandom RANDOM = new SecureRandom();
  private static final int BYTES = 32;

  // Without signs that are taken for each other when they are read from a board.
  private static final String SIGNS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
  private static final int CODE = 10;

  private Tokens() {}

  /** A token of 256 bits, as a cookie can hold it. */
  public static String fresh() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
  }

  /** What is kept of a token; it cannot be turned back, since the token cannot be guessed. */
  public static String hash(String token) {
    return sha256("log-in:" + token);
  }

  /** What the forms of somebody with this token carry; the token cannot be found out by it. */
  public static String seal(String token) {
    return sha256("seal:" + token);
  }

  /** A code to join a class: 49 bits, in two groups. */
  public static String code() {
    StringBuilder code = new StringBuilder();
    for (int i = 0; i < CODE; i++) {
      code.append(i == CODE / 2 ? "-" : "").append(SIGNS.charAt(RANDOM.nextInt(SIGNS.length())));
    }
    return code.toString();
  }

  /** Whether two secrets are the same, in a time that does not tell how far they agree. */
  public static boolean same(String one, String other) {
    return MessageDigest.isEqual(
        one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
  }

  private static String sha256(String text) {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
