package crumbtrail.cli;

/** What a first run without arguments is told. */
final class Welcome {
  private Welcome() {}

  /** Where to begin, in five lines. */
  static String text() {
    return """
        Why did my bread fail, and what do I change? Begin with one of these:
          crumbtrail new            answer questions about a bake; then trace bake.json
          crumbtrail trace demo     see how a failed loaf is traced (or: precheck demo)
          crumbtrail serve          the same on pages in your browser
          crumbtrail --help         everything else
        """;
  }
}
