package crumbtrail.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.bouncycastle.crypto.generators.Argon2BytesGenerator;
import org.bouncycastle.crypto.params.Argon2Parameters;

/**
 * Hashes passwords with Argon2id (RFC 9106), so that whoever gets hold of the hashes has to spend
 * memory and time on each guess. The parameters are those that the OWASP Password Storage Cheat
 * Sheet (cheatsheetseries.owasp.org) gives as the least for Argon2id: 19 MiB of memory, two passes,
 * one lane.
 */
public final class Passwords {
  /** Characters of the shortest password. */
  public static final int SHORTEST = 10;

  /** Characters of the longest. */
  public static final int LONGEST = 200;

  private static final int KIBIBYTES = 19 * 1024;
  private static final int PASSES = 2;
  private static final int LANES = 1;
  private static final int SALT_BYTES = 16;
  private static final int HASH_BYTES = 32;
  private static final int MOST_KIBIBYTES = 256 * 1024;
  private static final int MOST_PASSES = 20;

  private static final Pattern WRITTEN =
      Pattern.compile(
          "\\$argon2id\\$v=19\\$m=(\\d{1,7}),t=(\\d{1,3}),p=(\\d{1,2})\\$([\\w+/]+)\\$([\\w+/]+)");
  private static final SecureRandom RANDOM = new SecureRandom();

  // Each takes its share of memory and a core, so many at once would take all there is.
  private static final Semaphore AT_ONCE =
      new Semaphore(Math.max(2, Runtime.getRuntime().availableProcessors()));

  /** Of no password; checked for names that nobody has, so that these take as long as others. */
  private static final String NOBODY =
      write(KIBIBYTES, PASSES, LANES, new byte[SALT_BYTES], new byte[HASH_BYTES]);

  private Passwords() {}

  /** What is wrong with a password that somebody chose. */
  public enum Fault {
    TOO_SHORT,
    TOO_LONG,
    /** It is the name. */
    THE_NAME
  }

  /** What is wrong with a password that somebody of this name chose; empty if nothing is. */
  public static Optional<Fault> fault(String password, String name) {
    int length = password.codePointCount(0, password.length());
    if (length < SHORTEST) {
      return Optional.of(Fault.TOO_SHORT);
    }
    if (length > LONGEST) {
      return Optional.of(Fault.TOO_LONG);
    }
    return Names.key(password).equals(Names.key(name))
        ? Optional.of(Fault.THE_NAME)
        : Optional.empty();
  }

  /** The hash of a password, with its parameters and a salt of its own. */
  public static String hash(String password) {
    byte[] salt = new byte[SALT_BYTES];
    RANDOM.nextBytes(salt);
    return write(KIBIBYTES, PASSES, LANES, salt, argon2(password, salt, KIBIBYTES, PASSES, LANES));
  }

  /** Whether a hash was made of this password. */
  public static boolean matches(String password, String secret) {
    Matcher parts = WRITTEN.matcher(secret);
    if (!parts.matches()) {
      return false;
    }
    int kibibytes = Integer.parseInt(parts.group(1));
    int passes = Integer.parseInt(parts.group(2));
    int lanes = Integer.parseInt(parts.group(3));
    if (kibibytes > MOST_KIBIBYTES || passes > MOST_PASSES || lanes == 0 || passes == 0) {
      return false;
    }
    byte[] salt = Base64.getDecoder().decode(parts.group(4));
    byte[] known = Base64.getDecoder().decode(parts.group(5));
    return MessageDigest.isEqual(known, argon2(password, salt, kibibytes, passes, lanes));
  }

  /** Takes as long as a check of a password that is wrong. */
  public static void matchesNobody(String password) {
    matches(password, NOBODY);
  }

  /** Whether a hash was made with other parameters than a new one would be. */
  public static boolean outdated(String secret) {
    return !secret.startsWith("$argon2id$v=19$m=%d,t=%d,p=%d$".formatted(KIBIBYTES, PASSES, LANES));
  }

  private static byte[] argon2(String password, byte[] salt, int kibibytes, int passes, int lanes) {
    Argon2BytesGenerator generator = new Argon2BytesGenerator();
    generator.init(
        new Argon2Parameters.Builder(Argon2Parameters.ARGON2_id)
            .withVersion(Argon2Parameters.ARGON2_VERSION_13)
            .withMemoryAsKB(kibibytes)
            .withIterations(passes)
            .withParallelism(lanes)
            .withSalt(salt)
            .build());
    byte[] hash = new byte[HASH_BYTES];
    AT_ONCE.acquireUninterruptibly();
    try {
      generator.generateBytes(password.getBytes(StandardCharsets.UTF_8), hash);
    } finally {
      AT_ONCE.release();
    }
    return hash;
  }

  private static String write(int kibibytes, int passes, int lanes, byte[] salt, byte[] hash) {
    Base64.Encoder letters = Base64.getEncoder().withoutPadding();
    return "$argon2id$v=19$m=%d,t=%d,p=%d$%s$%s"
        .formatted(
            kibibytes, passes, lanes, letters.encodeToString(salt), letters.encodeToString(hash));
  }
}
