package crumbtrail.lessons;

import crumbtrail.knowledge.Cause;
import crumbtrail.lessons.Verdict.Observation;
import crumbtrail.lessons.Verdict.Suspect;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.text.WordUtils;

/** The end of a mystery in words. */
public final class MysteryText {
  private final StringBuilder text = new StringBuilder();
  private final int width;

  private MysteryText(int width) {
    this.width = width;
  }

  /** How many suspects a number of bits stands for: "about 5 suspects". */
  public static String suspects(double bits) {
    long many = Math.max(1, Math.round(Math.pow(2, bits)));
    return many == 1 ? "one suspect" : "about " + many + " suspects";
  }

  /** What an answer taught: "4.3 to 2.4 bits: from about 20 suspects to about 5". */
  public static String taught(double before, double after) {
    double gain = before - after;
    if (Math.abs(gain) < 0.05) {
      return "It tells nothing new (" + Numbers.bits(after) + " bits unknown).";
    }
    String moved =
        Numbers.bits(before)
            + " to "
            + Numbers.bits(after)
            + " bits unknown, from "
            + suspects(before)
            + " to "
            + suspects(after).replace(" suspects", "").replace("one suspect", "one")
            + ".";
    return gain > 0 ? moved : moved + " It shakes what seemed clear.";
  }

  /** The first sentence of the verdict. */
  public static String outcome(Verdict verdict, String named, String cause) {
    return switch (verdict.outcome()) {
      case RIGHT -> "Right: " + cause + ".";
      case ALSO_AT_WORK ->
          "Nearly: " + named + " was at work too, but the chief cause was: " + cause + ".";
      case NEAR -> "Nearly: " + named + " is close kin to what it was: " + cause + ".";
      case WRONG -> "It was another cause: " + cause + ".";
    };
  }

  /**
   * The whole verdict.
   *
   * @param named name of the cause that the learner named, empty if they gave up
   * @param cause the true cause
   * @param others names of further causes
   * @param width characters of a line at most
   */
  public static String of(
      Verdict verdict, String named, Cause cause, List<String> others, int width) {
    MysteryText page = new MysteryText(width);
    page.write(verdict, named, cause, others);
    return page.text.toString();
  }

  private void write(Verdict verdict, String named, Cause cause, List<String> others) {
    line(named.isEmpty() ? "It was: " + cause.name() + "." : outcome(verdict, named, cause.name()));
    if (!others.isEmpty()) {
      line("Also at work: " + String.join(", ", others) + ".");
    }
    line(
        "By what you knew, "
            + Numbers.percent(verdict.shareTrue())
            + " of the suspicion lay on it"
            + (named.isEmpty() || named.equals(cause.name())
                ? "."
                : ", and " + Numbers.percent(verdict.shareNamed()) + " on what you named."));
    line("");
    line(cause.what() + " " + cause.mechanism());
    line("How to tell it: " + cause.tell());
    line("Next time: " + cause.change());
    line("");
    line(
        "At the start: "
            + Numbers.bits(verdict.start())
            + " bits unknown, "
            + suspects(verdict.start())
            + ".");
    if (!verdict.asked().isEmpty()) {
      line("What you asked:");
      verdict.asked().forEach(this::observation);
    }
    line("How a good diagnostician would have gone about it, by what each question promised:");
    verdict.better().forEach(this::observation);
  }

  private void observation(Observation one) {
    text.append(
        String.format(
            "  %4s to %4s bits  %s%n",
            Numbers.bits(one.before()), Numbers.bits(one.after()), one.clue().ask()));
    String likeliest =
        one.likeliest().stream()
            .filter(suspect -> suspect.share() >= 0.05)
            .map(MysteryText::suspect)
            .collect(Collectors.joining(", "));
    if (!likeliest.isEmpty()) {
      text.append(WordUtils.wrap(likeliest, width - 21, "\n", false).indent(21));
    }
  }

  private static String suspect(Suspect suspect) {
    return suspect.name() + " " + Numbers.percent(suspect.share());
  }

  private void line(String words) {
    text.append(WordUtils.wrap(words, width, "\n", false)).append('\n');
  }
}
