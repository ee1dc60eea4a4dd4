package crumbtrail.rules;

import java.util.List;

/**
 * The kind of bread.
 *
 * @param name plain name of the style
 * @param tags the families it belongs to
 */
public record Bread(String name, List<String> tags) {
  public Bread {
    tags = List.copyOf(tags);
  }
}
