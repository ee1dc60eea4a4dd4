package crumbtrail.cli;

import crumbtrail.rules.RuleBase;
import picocli.CommandLine.IVersionProvider;

/** What is running, as far as it can be told at once: nothing is laid out for it. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {
      "crumbtrail " + program(),
      "rules " + RuleBase.bundledEdition() + ", " + RuleBase.bundledHash(),
      "Java " + java()
    };
  }

  /** The program's version, from its jar. */
  static String program() {
    String version = Version.class.getPackage().getImplementationVersion();
    return version == null ? "(not packaged)" : version;
  }

  /** The Java that runs it. */
  static String java() {
    return Runtime.version() + ", " + System.getProperty("java.vendor");
  }
}
