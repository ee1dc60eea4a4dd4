package crumbtrail.cli.screen;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Colours a text that says everything without them: headings and names of causes are set bold, the
 * words that lead a line of evidence and those that tell where a number lies get a colour. Takes
 * the eight colours of every terminal, which follow its own light or dark.
 */
public final class Paint {
  private static final String END = "\u001b[0m";
  private static final String BOLD = "\u001b[1m";
  private static final String GREEN = "\u001b[32m";
  private static final String YELLOW = "\u001b[33m";
  private static final String MAGENTA = "\u001b[35m";
  private static final String CYAN = "\u001b[36m";

  private static final Pattern RULE = Pattern.compile("[-=]{3,}");
  private static final Pattern RANKED = Pattern.compile("(\\d+\\. .*?)(\\s+[#.]{5,}.*)");
  private static final Pattern LEAD = Pattern.compile("   (for|against|change)(  +.*)");
  private static final Pattern OUTSIDE = Pattern.compile("(.*, )(above|below)");
  private static final Pattern CARE = Pattern.compile("(!)( .*)");
  private static final Pattern VERDICT = Pattern.compile("(Right|Nearly|It was[a-z ]*):(.*)");

  private Paint() {}

  /** The text, coloured; without the colours it is the same text. */
  public static String report(String text) {
    List<String> lines = text.lines().toList();
    StringBuilder painted = new StringBuilder(text.length() + 200);
    for (int at = 0; at < lines.size(); at++) {
      String next = at + 1 < lines.size() ? lines.get(at + 1) : "";
      painted.append(line(lines.get(at), next)).append('\n');
    }
    boolean open = !text.isEmpty() && !text.endsWith("\n");
    return open ? painted.substring(0, painted.length() - 1) : painted.toString();
  }

  /** Words that are set bold. */
  public static String bold(String words) {
    return BOLD + words + END;
  }

  private static String line(String line, String next) {
    boolean heading = RULE.matcher(next).matches() && !RULE.matcher(line).matches();
    if (heading && !line.isBlank()) {
      return bold(line);
    }
    Matcher ranked = RANKED.matcher(line);
    if (ranked.matches()) {
      return bold(ranked.group(1)) + ranked.group(2);
    }
    Matcher lead = LEAD.matcher(line);
    if (lead.matches()) {
      return "   " + leading(lead.group(1)) + lead.group(1) + END + lead.group(2);
    }
    Matcher outside = OUTSIDE.matcher(line);
    if (outside.matches()) {
      return outside.group(1) + YELLOW + outside.group(2) + END;
    }
    Matcher care = CARE.matcher(line);
    if (care.matches()) {
      return YELLOW + care.group(1) + END + care.group(2);
    }
    Matcher verdict = VERDICT.matcher(line);
    return verdict.matches() ? bold(verdict.group(1) + ":") + verdict.group(2) : line;
  }

  private static String leading(String word) {
    return switch (word) {
      case "for" -> GREEN;
      case "against" -> MAGENTA;
      default -> CYAN;
    };
  }
}
