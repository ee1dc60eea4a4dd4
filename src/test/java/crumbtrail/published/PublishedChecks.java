package crumbtrail.published;

import java.util.List;

/**
 * The published numbers of one model. Implementations are listed in
 * src/test/resources/META-INF/services; {@link CheckTablesTest} holds the models to them and writes
 * them to docs/science/checks.md.
 */
public interface PublishedChecks {
  /** Heading of the table. */
  String title();

  /** The checks, in the order of the table. */
  List<Check> checks();
}
